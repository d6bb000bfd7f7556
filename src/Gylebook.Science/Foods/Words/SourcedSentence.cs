namespace Gylebook.Science.Foods.Words;

/// <summary>A sentence of advice and who says so.</summary>
/// <param name="Text">The sentence.</param>
/// <param name="Source">Statute, regulation, journal or agency; "from memory" where it could not be opened.</param>
public sealed record SourcedSentence(string Text, string Source);
