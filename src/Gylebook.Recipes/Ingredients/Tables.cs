using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Ingredients;

/// <summary>Where a figure comes from, and how far to trust it.</summary>
/// <param name="Source">Publication, data set or measurement.</param>
/// <param name="Status"><c>seen</c>, <c>memory</c>, <c>common practice</c>, <c>computed</c> or <c>invented</c>.</param>
public sealed record Provenance(string Source, string Status);

/// <summary>How a malt's laboratory extract is made up.</summary>
public enum MaltFamily
{
    /// <summary>Pale malts and unmalted grains: mostly starch, some sugar of their own.</summary>
    Base,

    /// <summary>Caramel malts: stewed, all extract already sugar and dextrin.</summary>
    Caramel,

    /// <summary>Roasted malts and grains: all extract already dextrin-like.</summary>
    Roast,
}

/// <summary>A row of the malt table.</summary>
/// <param name="Id">Stable id: <c>pale-ale-malt</c>.</param>
/// <param name="Name">Trade name: <c>pale ale malt</c>.</param>
/// <param name="Family">What its extract is made of.</param>
/// <param name="ExtractFineDry">Laboratory extract, fine grind, on dry matter.</param>
/// <param name="Moisture">Water, as is.</param>
/// <param name="Colour">Certificate colour.</param>
/// <param name="DiastaticPower">Degrees Lintner; 0 when it brings no enzyme.</param>
/// <param name="Cereal">The cereal, for allergens: barley, wheat, rye, oats, maize, rice.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record Malt(
    string Id, string Name, MaltFamily Family, Fraction ExtractFineDry, Fraction Moisture, MaltColour Colour,
    double DiastaticPower, string Cereal, Provenance Provenance);

/// <summary>A row of the sugar table: sugars, syrups and malt extracts, as shares of the mass as is.</summary>
public sealed record Sugar
{
    /// <summary>Stable id: <c>white-sugar</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Trade name: <c>white sugar</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Water.</summary>
    public required double Water { get; init; }

    /// <summary>Sucrose.</summary>
    public double Sucrose { get; init; }

    /// <summary>Glucose, anhydrous.</summary>
    public double Glucose { get; init; }

    /// <summary>Fructose.</summary>
    public double Fructose { get; init; }

    /// <summary>Maltose, anhydrous.</summary>
    public double Maltose { get; init; }

    /// <summary>Maltotriose.</summary>
    public double Maltotriose { get; init; }

    /// <summary>Dextrins and other higher sugars.</summary>
    public double Dextrin { get; init; }

    /// <summary>Lactose, anhydrous.</summary>
    public double Lactose { get; init; }

    /// <summary>Protein, dissolved.</summary>
    public double Protein { get; init; }

    /// <summary>Minerals.</summary>
    public double Minerals { get; init; }

    /// <summary>Its colour as a malt's; null when unknown.</summary>
    public MaltColour? Colour { get; init; }

    /// <summary>Allergen word, or empty: <c>barley</c>, <c>milk</c>.</summary>
    public string Allergen { get; init; } = "";

    /// <summary>Where the row comes from.</summary>
    public required Provenance Provenance { get; init; }
}

/// <summary>A row of the hop table: a public cultivar.</summary>
/// <param name="Id">Stable id: <c>fuggle</c>.</param>
/// <param name="Name">Cultivar name.</param>
/// <param name="Alpha">Typical alpha acids by mass.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record HopCultivar(string Id, string Name, Fraction Alpha, Provenance Provenance);

/// <summary>A row of the yeast table: a style-type, no brand.</summary>
/// <param name="Id">Stable id: <c>english-ale</c>.</param>
/// <param name="Name">Trade name: <c>English ale</c>.</param>
/// <param name="MaltoseShare">Share of maltose it takes: 1 for all but low-alcohol strains.</param>
/// <param name="MaltotrioseShare">Share of maltotriose it takes.</param>
/// <param name="DextrinShare">Share of dextrins it takes: 0 for all but diastatic strains.</param>
/// <param name="Low">Coolest it is usually fermented at.</param>
/// <param name="High">Warmest it is usually fermented at.</param>
/// <param name="PitchRate">Million cells per millilitre and degree Plato.</param>
/// <param name="Provenance">Where the row comes from.</param>
public sealed record YeastStyle(
    string Id, string Name, Fraction MaltoseShare, Fraction MaltotrioseShare, Fraction DextrinShare,
    Temperature Low, Temperature High, double PitchRate, Provenance Provenance);

/// <summary>A row of the starting values: a figure that a lab or a brewer could measure again.</summary>
/// <param name="Id">Stable id: <c>break.share</c>.</param>
/// <param name="Value">What the engine starts from.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="What">What it means.</param>
/// <param name="Provenance">Where it comes from.</param>
public sealed record StartingValue(string Id, double Value, string Unit, string What, Provenance Provenance);
