using Gylebook.Engine.State;
using Gylebook.Recipes;

namespace Gylebook.Forecast;

/// <summary>A hazard, or a limit of a model, shown where it matters.</summary>
/// <param name="Code">Stable name: <c>boilover.hops</c>; a row of <see cref="CautionKinds"/>.</param>
/// <param name="Place">Where in the brew it belongs.</param>
/// <param name="Message">What to look out for, and what to do.</param>
/// <param name="Source">Who says so, or <c>common practice, no source</c>.</param>
public sealed record Caution(string Code, Place Place, string Message, string Source)
{
    private readonly Severity? _severity;

    /// <summary>What sort it is of.</summary>
    public CautionKind Kind { get; } = CautionKinds.Of(Code);

    /// <summary>How much it weighs: as its sort does, unless this one is worse or milder.</summary>
    public Severity Severity { get => _severity ?? Kind.Severity; init => _severity = value; }

    /// <summary>Whether it is read in full even where cautions are only marked.</summary>
    public bool IsGrave => Kind.Weight == CautionWeight.Grave || Severity == Severity.Error;

    /// <summary>The place in words: <c>boil 60 min</c>.</summary>
    public string Where => Names.Said(Place);
}
