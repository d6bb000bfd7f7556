namespace Gylebook.Recipes.Forms;

/// <summary>What came out of a file: the thing itself, or all that kept it from being read.</summary>
/// <param name="Value">What was read; null when any finding is an error.</param>
/// <param name="Findings">Everything noticed, errors and notes, in the order of the file.</param>
/// <typeparam name="T">What the file holds.</typeparam>
public sealed record Reading<T>(T? Value, IReadOnlyList<Finding> Findings)
    where T : class
{
    /// <summary>What could be read of it, stand-ins where it could not; null when it is no file of that form at all.</summary>
    internal T? Rough { get; init; }
}
