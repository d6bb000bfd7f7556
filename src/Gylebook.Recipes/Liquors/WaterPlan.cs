using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Recipes.Liquors;

/// <summary>From which waters, with which salts and acids, to which ions and pH.</summary>
public sealed record WaterPlan
{
    /// <summary>What the brewer calls it.</summary>
    public required string Name { get; init; }

    /// <summary>Anything to remember; null when nothing.</summary>
    public string? Notes { get; init; }

    /// <summary>The waters at hand; more than one is a blend.</summary>
    public required IReadOnlyList<WaterSource> Sources { get; init; }

    /// <summary>A recipe file beside the plan, for grist and litres; null when both stand in the plan or come from elsewhere.</summary>
    public string? Recipe { get; init; }

    /// <summary>Liquor the mash starts in; null to take it from the recipe.</summary>
    public Entered<VolumeAt20C>? Strike { get; init; }

    /// <summary>Liquor that rinses the grain; null to take it from the recipe, or for none.</summary>
    public Entered<VolumeAt20C>? Sparge { get; init; }

    /// <summary>Litres packaged, for salts into the package; null to take them from the recipe.</summary>
    public Entered<VolumeAt20C>? Package { get; init; }

    /// <summary>Ions wanted, from a named balance and line by line; empty when none.</summary>
    public IReadOnlyList<IonTarget> Targets { get; init; } = [];

    /// <summary>Salts at hand.</summary>
    public IReadOnlyList<OfferedSalt> Salts { get; init; } = [];

    /// <summary>Acids at hand; the first is used.</summary>
    public IReadOnlyList<OfferedAcid> Acids { get; init; } = [];

    /// <summary>Largest share of the liquor that distilled water may replace; null when there is none at hand.</summary>
    public Entered<Fraction>? Dilution { get; init; }

    /// <summary>pH wanted of the mash, sample cooled to 20 °C; null when none.</summary>
    public double? MashPh { get; init; }

    /// <summary>pH wanted of the sparge liquor at 20 °C; null when none.</summary>
    public double? SpargePh { get; init; }

    /// <summary>pH wanted of the wort in the kettle, sample cooled to 20 °C; null when none.</summary>
    public double? WortPh { get; init; }

    /// <summary>What a meter read of the wort before acid for it; null to take the mash's pH.</summary>
    public MeterReading? WortReading { get; init; }

    /// <summary>What a meter read of the mash; null when nobody has measured yet.</summary>
    public MeterReading? MashReading { get; init; }

    /// <summary>Malts the brewer has titrated or learned; they overrule the table.</summary>
    public IReadOnlyList<TitratedMalt> Malts { get; init; } = [];

    /// <summary>What is mashed, when no recipe says so.</summary>
    public IReadOnlyList<GristLine> Grist { get; init; } = [];
}

/// <summary>A water and its share of the liquor.</summary>
/// <param name="Name">What the brewer calls it.</param>
/// <param name="Share">Its share; 100 % when it is the only one.</param>
/// <param name="Report">What the laboratory printed; null for distilled water.</param>
/// <param name="Boiled">Whether it is boiled, left to settle and drawn off its chalk first.</param>
/// <param name="BoiledTo">Alkalinity measured after boiling; null to take what chalk and air leave.</param>
public sealed record WaterSource(string Name, Fraction Share, WaterReport? Report, bool Boiled, Equivalents? BoiledTo);

/// <summary>Where a salt goes in.</summary>
public enum LiquorPlace
{
    /// <summary>Mash and sparge liquor alike; alkaline salts into the mash alone.</summary>
    Liquor,

    /// <summary>The mash.</summary>
    Mash,

    /// <summary>The sparge liquor.</summary>
    Sparge,

    /// <summary>The kettle, counted on all the liquor.</summary>
    Kettle,

    /// <summary>The finished beer, counted on the litres packaged; no alkaline salt.</summary>
    Package,
}

/// <summary>A salt at hand.</summary>
/// <param name="Salt">Which.</param>
/// <param name="Into">Where it goes.</param>
/// <param name="Most">No more than this in its liquor; null for the usual limit.</param>
/// <param name="Least">No less than this; null for none.</param>
/// <param name="Price">How unwelcome it is: 1 g/L of it counts as much as missing one ion by this share; null for next to nothing.</param>
public sealed record OfferedSalt(BrewingSalt Salt, LiquorPlace Into, Entered<Concentration>? Most, Entered<Concentration>? Least, Fraction? Price = null);

/// <summary>An acid at hand.</summary>
/// <param name="Name">As typed: "lactic 88 %".</param>
/// <param name="Acid">As sold.</param>
/// <param name="MostMillilitres">mL (grams of a powder) in all, at most; null for no limit.</param>
public sealed record OfferedAcid(string Name, AcidAsSold Acid, double? MostMillilitres);

/// <summary>Malt or food in the mash, as far as its acidity goes.</summary>
/// <param name="Name">Name to show.</param>
/// <param name="Amount">How much.</param>
/// <param name="Titration">Its curve; null when nobody has measured one.</param>
/// <param name="Malt">The malt of the table it is; null for a food, or a malt that is not there.</param>
public sealed record GristLine(string Name, Mass Amount, MaltTitration? Titration, Malt? Malt = null);

/// <summary>What a meter read.</summary>
/// <param name="Ph">The pH it showed.</param>
/// <param name="Sample">How warm the sample was then.</param>
/// <param name="AcidUnits">mL (grams of a powder) of the plan's acid that was in by then; null for what the plan itself puts in.</param>
public sealed record MeterReading(double Ph, Entered<Temperature> Sample, double? AcidUnits);

/// <summary>A malt of the table with a titration of the brewer's own.</summary>
/// <param name="Malt">Which.</param>
/// <param name="Titration">Its curve.</param>
public sealed record TitratedMalt(Malt Malt, MaltTitration Titration);
