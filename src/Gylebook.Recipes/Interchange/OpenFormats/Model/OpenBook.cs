using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats.Model;

/// <summary>What one file of an open standard holds, whichever standard it is.</summary>
internal sealed record OpenBook
{
    public IReadOnlyList<OpenRecipe> Recipes { get; init; } = [];

    public IReadOnlyList<OpenFermentable> Fermentables { get; init; } = [];

    public IReadOnlyList<OpenHop> Hops { get; init; } = [];

    public IReadOnlyList<OpenCulture> Cultures { get; init; } = [];

    public IReadOnlyList<OpenMisc> Miscellaneous { get; init; } = [];

    public IReadOnlyList<OpenWater> Waters { get; init; } = [];

    public IReadOnlyList<OpenKit> Kits { get; init; } = [];
}

/// <summary>A mass, a volume or a count.</summary>
/// <param name="Weighed">A mass or a volume; null for a count.</param>
/// <param name="Count">How many; null for a mass or a volume.</param>
internal sealed record OpenAmount(Amount? Weighed, double? Count);

/// <summary>Where in the run something goes in, as the standards part it.</summary>
internal enum OpenUse
{
    Mash,
    FirstWort,
    Boil,
    Stand,
    Fermentation,
    Rack,
    Package,
}

/// <summary>When something goes in.</summary>
internal sealed record OpenTiming
{
    public OpenUse? Use { get; init; }

    /// <summary>Before the end of the boil or the stand, after the beginning of anything else.</summary>
    public Entered<Duration>? Time { get; init; }

    /// <summary>How long it stays in, where that is said.</summary>
    public Entered<Duration>? Duration { get; init; }

    /// <summary>The step of its process that it belongs to, counted from 1.</summary>
    public double? Step { get; init; }
}

/// <summary>What all ingredients share.</summary>
internal abstract record OpenThing
{
    /// <summary>Where it stood in its file.</summary>
    public string Path { get; init; } = "";

    public string? Name { get; init; }

    /// <summary>What its maker calls it: in files of ours the id.</summary>
    public string? ProductId { get; init; }

    public string? Notes { get; init; }

    public OpenAmount? Amount { get; init; }

    /// <summary>How much is at hand.</summary>
    public OpenAmount? Inventory { get; init; }

    public OpenTiming? Timing { get; init; }
}

/// <summary>A malt, an extract, a sugar, or a food that brings extract.</summary>
internal sealed record OpenFermentable : OpenThing
{
    public FermentableType? Type { get; init; }

    public GrainGroup? Group { get; init; }

    /// <summary>Extract, fine grind: of dry matter for grain, as is for all else.</summary>
    public Entered<Fraction>? Yield { get; init; }

    /// <summary>Gravity of a pound in a US gallon of wort.</summary>
    public Entered<SpecificGravity>? Potential { get; init; }

    public Entered<MaltColour>? Colour { get; init; }

    public Entered<Fraction>? Moisture { get; init; }

    public DiastaticPower? DiastaticPower { get; init; }

    /// <summary>Whether it goes in after the boil; null when unsaid.</summary>
    public bool? IsAddedAfterBoil { get; init; }

    /// <summary>Whether it wants a mash; null when unsaid.</summary>
    public bool? WantsMash { get; init; }
}

/// <summary>What a fermentable is.</summary>
internal enum FermentableType
{
    Adjunct,
    DryExtract,
    Extract,
    Grain,
    Sugar,
    Fruit,
    Juice,
    Honey,
    Other,
}

/// <summary>What sort of grain it is.</summary>
internal enum GrainGroup
{
    Base,
    Caramel,
    Flaked,
    Roasted,
    Specialty,
    Smoked,
    Adjunct,
}

/// <summary>A hop.</summary>
internal sealed record OpenHop : OpenThing
{
    public HopShape? Form { get; init; }

    public Entered<Fraction>? Alpha { get; init; }

    public Entered<Fraction>? Beta { get; init; }

    public Entered<Fraction>? Lost { get; init; }
}

/// <summary>In what shape hops are sold.</summary>
internal enum HopShape
{
    Extract,
    Leaf,
    WetLeaf,
    Pellet,
    Powder,
    Plug,
}

/// <summary>A yeast or another culture.</summary>
internal sealed record OpenCulture : OpenThing
{
    public CultureType? Type { get; init; }

    public CultureForm? Form { get; init; }

    public Entered<Fraction>? Attenuation { get; init; }

    public OpenRange<Fraction>? AttenuationRange { get; init; }

    public double? CellsBillions { get; init; }

    /// <summary>Whether it goes in when the beer is racked.</summary>
    public bool? IsAddedToSecondary { get; init; }
}

/// <summary>From a low end to a high one.</summary>
internal sealed record OpenRange<T>(Entered<T>? Low, Entered<T>? High)
    where T : struct, IQuantity<T>;

/// <summary>What a culture is.</summary>
internal enum CultureType
{
    Ale,
    Bacteria,
    Brett,
    Champagne,
    Kveik,
    Lacto,
    Lager,
    Malolactic,
    MixedCulture,
    Other,
    Pedio,
    Spontaneous,
    Wheat,
    Wine,
}

/// <summary>In what form a culture is sold.</summary>
internal enum CultureForm
{
    Liquid,
    Dry,
    Slant,
    Culture,
    Dregs,
}

/// <summary>Anything else.</summary>
internal sealed record OpenMisc : OpenThing
{
    public MiscType? Type { get; init; }
}

/// <summary>What anything else is.</summary>
internal enum MiscType
{
    Spice,
    Fining,
    WaterAgent,
    Herb,
    Flavor,
    Wood,
    Other,
}

/// <summary>A water.</summary>
internal sealed record OpenWater
{
    public string Path { get; init; } = "";

    public string? Name { get; init; }

    public string? Notes { get; init; }

    public Entered<VolumeAt20C>? Amount { get; init; }

    public Entered<Concentration>? Calcium { get; init; }

    public Entered<Concentration>? Bicarbonate { get; init; }

    public Entered<Concentration>? Carbonate { get; init; }

    public Entered<Concentration>? Sulphate { get; init; }

    public Entered<Concentration>? Chloride { get; init; }

    public Entered<Concentration>? Sodium { get; init; }

    public Entered<Concentration>? Magnesium { get; init; }

    public Entered<Concentration>? Potassium { get; init; }

    public Entered<Concentration>? Nitrate { get; init; }

    public double? Ph { get; init; }
}
