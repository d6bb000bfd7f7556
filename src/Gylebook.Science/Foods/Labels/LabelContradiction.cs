namespace Gylebook.Science.Foods.Labels;

/// <summary>Lines of a panel that cannot all be right.</summary>
/// <param name="Lines">The lines; without any one of them the rest of these would fit.</param>
/// <param name="Message">What is wrong, in plain words, per serving.</param>
/// <param name="Value">What the lines come to at least, g per serving, or the number as typed.</param>
/// <param name="Limit">What there is room for at most, in the same unit.</param>
public sealed record LabelContradiction(IReadOnlyList<LabelLine> Lines, string Message, double Value, double Limit);
