namespace Gylebook.Science.Quantities;

/// <summary>A unit that a person may type.</summary>
/// <param name="Symbol">How we write it: "US gal".</param>
/// <param name="Definition">What it is, exactly, and by whose definition.</param>
/// <param name="Scale">How it belongs to the base unit of its kind.</param>
/// <param name="Spellings">Other ways to type it; capitals may differ, see <see cref="QuantityKind.Find"/>.</param>
public sealed record Unit(string Symbol, string Definition, UnitScale Scale, params IReadOnlyList<string> Spellings)
{
    /// <inheritdoc/>
    public override string ToString() => Symbol;
}

/// <summary>A word that means more than one unit, and is refused until the writer says which.</summary>
/// <param name="Spellings">The word, as it may be typed.</param>
/// <param name="Candidates">The units it could be.</param>
public sealed record AmbiguousUnit(IReadOnlyList<string> Spellings, IReadOnlyList<string> Candidates);

/// <summary>The unit that a number without one is read in, and between which values.</summary>
/// <param name="Symbol">The unit.</param>
/// <param name="Low">The least such number.</param>
/// <param name="High">The largest.</param>
public sealed record BareNumber(string Symbol, double Low, double High);
