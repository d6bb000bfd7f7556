namespace Gylebook.Recipes;

/// <summary>How much a finding or a caution weighs.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Doubtful, or a hazard: look before going on.</summary>
    Warning,

    /// <summary>Cannot be brewed, or cannot be right.</summary>
    Error,
}

/// <summary>Something wrong or doubtful in what was entered.</summary>
/// <param name="Code">Stable name: <c>volumes.noSolution</c>.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Where">The field, as a path: <c>ingredients[2].amount</c>.</param>
/// <param name="Message">What is wrong, in plain words, with value and limit.</param>
/// <param name="Value">What was entered or came out, or null.</param>
/// <param name="Limit">What it ran into, or null.</param>
public sealed record Finding(
    string Code, Severity Severity, string Where, string Message, string? Value = null, string? Limit = null);
