namespace Gylebook.Engine.Parameters;

/// <summary>A figure that a lab or a brewer could measure again; a run reads it from its draw.</summary>
/// <param name="Id">Stable id, with no value in it: draws are keyed by it.</param>
/// <param name="Median">What the engine takes when it does not draw: the stored value itself.</param>
/// <param name="Prior">How wide it is before anybody reads anything.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Source">Where the figure comes from.</param>
/// <param name="Status">How far to trust it: seen, memory, common practice, computed, entered, judged.</param>
public sealed record Parameter(string Id, double Median, Prior Prior, string Unit, string Source, string Status);
