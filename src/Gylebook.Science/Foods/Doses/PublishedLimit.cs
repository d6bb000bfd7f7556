namespace Gylebook.Science.Foods.Doses;

/// <summary>A limit somebody published.</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">Its unit: <c>mg/L</c>.</param>
/// <param name="Meaning">What happens there, in plain words.</param>
/// <param name="Source">Who says so; "from memory" or "common practice, no source" where that is all there is.</param>
public sealed record PublishedLimit(double Value, string Unit, string Meaning, string Source);
