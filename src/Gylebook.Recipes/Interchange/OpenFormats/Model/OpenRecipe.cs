using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats.Model;

/// <summary>A recipe as an open standard has it.</summary>
internal sealed record OpenRecipe
{
    /// <summary>Where it stood in its file.</summary>
    public string Path { get; init; } = "";

    public string? Name { get; init; }

    public RecipeType? Type { get; init; }

    public string? Author { get; init; }

    public string? Notes { get; init; }

    /// <summary>Litres into the fermenter.</summary>
    public Entered<VolumeAt20C>? Batch { get; init; }

    /// <summary>Litres at the beginning of the boil.</summary>
    public Entered<VolumeAt20C>? PreBoil { get; init; }

    public Entered<Duration>? BoilTime { get; init; }

    /// <summary>The rest after knock-out.</summary>
    public Rest? Stand { get; init; }

    /// <summary>Share of the grain's extract that reaches the fermenter.</summary>
    public Entered<Fraction>? Brewhouse { get; init; }

    public OpenMash? Mash { get; init; }

    public IReadOnlyList<OpenStep> Ferment { get; init; } = [];

    public Entered<VolumeAt20C>? Packaged { get; init; }

    public IReadOnlyList<OpenPackage> Packages { get; init; } = [];

    /// <summary>Volumes of CO2 in one of beer.</summary>
    public double? Carbonation { get; init; }

    public IReadOnlyList<OpenFermentable> Fermentables { get; init; } = [];

    public IReadOnlyList<OpenHop> Hops { get; init; } = [];

    public IReadOnlyList<OpenCulture> Cultures { get; init; } = [];

    public IReadOnlyList<OpenMisc> Miscellaneous { get; init; } = [];

    public IReadOnlyList<OpenWater> Waters { get; init; } = [];

    public OpenKit? Kit { get; init; }

    /// <summary>What it was reckoned to come to.</summary>
    public OpenResults Results { get; init; } = new();

    /// <summary>The steps of the boil, where a format has them.</summary>
    public IReadOnlyList<OpenStep> BoilSteps { get; init; } = [];
}

/// <summary>What sort of brew it is.</summary>
internal enum RecipeType
{
    Cider,
    Kombucha,
    Soda,
    Other,
    Mead,
    Wine,
    Extract,
    PartialMash,
    AllGrain,
}

/// <summary>What a recipe was reckoned to come to; told, never read: it is reckoned anew.</summary>
internal sealed record OpenResults
{
    public Entered<SpecificGravity>? OriginalGravity { get; init; }

    public Entered<SpecificGravity>? FinalGravity { get; init; }

    public Entered<Fraction>? Alcohol { get; init; }

    public Entered<Bitterness>? Bitterness { get; init; }

    public Entered<BeerColour>? Colour { get; init; }

    public double? Ph { get; init; }
}

/// <summary>What beer is filled into.</summary>
internal sealed record OpenPackage
{
    public string Path { get; init; } = "";

    public string? Name { get; init; }

    public PackageType? Type { get; init; }

    public double? Carbonation { get; init; }
}

/// <summary>What sort of package it is.</summary>
internal enum PackageType
{
    Keg,
    Bottle,
    Cask,
    Tank,
    Firkin,
    Other,
}

/// <summary>A mash.</summary>
internal sealed record OpenMash
{
    public string Path { get; init; } = "";

    public string? Name { get; init; }

    public Entered<Temperature>? GrainTemperature { get; init; }

    public IReadOnlyList<OpenMashStep> Steps { get; init; } = [];

    /// <summary>Of the rinse, where a format says it beside the steps.</summary>
    public Entered<Temperature>? SpargeTemperature { get; init; }
}

/// <summary>A step of a mash.</summary>
internal sealed record OpenMashStep
{
    public string Path { get; init; } = "";

    public string? Name { get; init; }

    public MashStepType? Type { get; init; }

    public Entered<VolumeAt20C>? Amount { get; init; }

    public Entered<Temperature>? Temperature { get; init; }

    public Entered<Duration>? Time { get; init; }

    public double? EndPh { get; init; }
}

/// <summary>What a step of a mash does.</summary>
internal enum MashStepType
{
    Infusion,
    Temperature,
    Decoction,
    SouringMash,
    SouringWort,
    Drain,
    Sparge,
}

/// <summary>A step of a boil or a fermentation.</summary>
internal sealed record OpenStep
{
    public string Path { get; init; } = "";

    public string? Name { get; init; }

    public Entered<Temperature>? Start { get; init; }

    public Entered<Temperature>? End { get; init; }

    public Entered<Duration>? Time { get; init; }
}

/// <summary>Equipment.</summary>
internal sealed record OpenKit
{
    public string Path { get; init; } = "";

    public string? Name { get; init; }

    public IReadOnlyList<OpenVessel> Vessels { get; init; } = [];
}

/// <summary>A vessel with what it holds and keeps.</summary>
internal sealed record OpenVessel
{
    public string Path { get; init; } = "";

    public string? Name { get; init; }

    public VesselForm? Form { get; init; }

    public Entered<VolumeAt20C>? Holds { get; init; }

    public Entered<VolumeAt20C>? Keeps { get; init; }

    public Entered<SpecificVolume>? GrainKeeps { get; init; }

    /// <summary>Boiled off in an hour.</summary>
    public Entered<VolumeAt20C>? BoiledOff { get; init; }

    public Entered<Mass>? Weight { get; init; }

    /// <summary>kJ/(kg K).</summary>
    public double? SpecificHeat { get; init; }
}

/// <summary>What a vessel is for.</summary>
internal enum VesselForm
{
    HotLiquor,
    MashTun,
    LauterTun,
    Kettle,
    Fermenter,
    Aging,
    Package,
}
