using Gylebook.Science.Liquids;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Readings;

/// <summary>What was read of one brew, in the order in which it was read.</summary>
public sealed record BrewReadings
{
    /// <summary>What to call it by.</summary>
    public required string Name { get; init; }

    /// <summary>Anything the brewer wants to remember; null when nothing.</summary>
    public string? Notes { get; init; }

    /// <summary>The readings.</summary>
    public required IReadOnlyList<TakenReading> Readings { get; init; }
}

/// <summary>One reading as it was typed: nothing corrected.</summary>
/// <param name="At">Where in the brew.</param>
public sealed record TakenReading(ReadingPoint At)
{
    /// <summary>Gravity as the instrument showed it.</summary>
    public Entered<SpecificGravity>? Gravity { get; init; }

    /// <summary>Volume as it stood in the vessel.</summary>
    public Entered<HotVolume>? Volume { get; init; }

    /// <summary>pH as the meter showed it.</summary>
    public PhTarget? Ph { get; init; }

    /// <summary>How warm the sample was, or what stood in the vessel; alone, it is itself what was read.</summary>
    public Entered<Temperature>? Temperature { get; init; }

    /// <summary>With what, by id or name in <c>data/instruments.csv</c>; null for the usual one.</summary>
    public string? Instrument { get; init; }

    /// <summary>Which of several instruments of that kind; null for the only one.</summary>
    public string? Called { get; init; }

    /// <summary>Whether somebody has checked the instrument: in water, in ice, on a scale, in buffers.</summary>
    public bool? IsChecked { get; init; }

    /// <summary>The temperature a hydrometer is marked for; null for 20 °C.</summary>
    public Entered<Temperature>? Marked { get; init; }

    /// <summary>How the sample was taken; null for settled.</summary>
    public SampleKind? Sample { get; init; }

    /// <summary>Whether the gas was shaken out of it; null when unsaid.</summary>
    public bool? IsDegassed { get; init; }

    /// <summary>The portion it is of; null for the whole.</summary>
    public string? Portion { get; init; }

    /// <summary>Whether the brewer has read it again and stands by it, however odd it is.</summary>
    public bool? IsSure { get; init; }

    /// <summary>Whether a gravity was typed that only makes sense in °P: "12.4".</summary>
    public bool IsPlatoWithoutUnit => Gravity is { } gravity && ReadingText.PlatoOf(gravity.Text) is not null;
}

/// <summary>Where in a brew something is read.</summary>
public enum ReadingPoint
{
    /// <summary>The first wort, before any rinse; the mash for its pH and temperature.</summary>
    Mash,

    /// <summary>All the wort in the kettle, before the boil.</summary>
    CopperUp,

    /// <summary>Flame off.</summary>
    KnockOut,

    /// <summary>Cooled, in the kettle.</summary>
    Chill,

    /// <summary>In the fermenter, before yeast.</summary>
    Cast,

    /// <summary>Fermented.</summary>
    Ferment,

    /// <summary>Chilled to clear.</summary>
    Crash,

    /// <summary>Clear beer off its sludge.</summary>
    Rack,

    /// <summary>In bottles or keg.</summary>
    Package,
}

/// <summary>How a sample was taken.</summary>
public enum SampleKind
{
    /// <summary>Left to settle.</summary>
    Settled,

    /// <summary>Through a filter.</summary>
    Filtered,

    /// <summary>With all that swims in it.</summary>
    AsDrawn,
}

/// <summary>Gravities as brewers type them.</summary>
internal static class ReadingText
{
    /// <summary>Weaker is water, and stronger does not pour; between them a bare number can only be °P.</summary>
    private const double LeastPlato = 1.5, MostPlato = 40;

    /// <summary>The °P that a text without a unit, or with SG, must mean; null where it means a gravity, or nothing.</summary>
    public static double? PlatoOf(string text) =>
        !UnitTable.TryParse(text, out Entered<SpecificGravity> _, out _)
        && UnitTable.TryParse(Invariant($"{text.Replace("SG", "", StringComparison.OrdinalIgnoreCase)} °P"), out Entered<SpecificGravity> plato, out _)
        && SucroseSolution.PlatoAt(plato.Value.Ratio) is >= LeastPlato and <= MostPlato and var extract
            ? extract : null;

    /// <summary>The gravity a text means, in whatever unit, or in °P without one.</summary>
    public static bool TryGravity(string text, out Entered<SpecificGravity> gravity)
    {
        bool isGravity = UnitTable.TryParse(text, out gravity, out _);
        if (!isGravity && PlatoOf(text) is { } plato)
        {
            gravity = new(SpecificGravity.FromRatio(SucroseSolution.GravityAt(plato)), text);
            return true;
        }

        return isGravity;
    }
}
