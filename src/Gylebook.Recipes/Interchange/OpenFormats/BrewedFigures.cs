using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats;

/// <summary>What a recipe comes to on a kit, for the formats that state it; null for what is not known.</summary>
public sealed record BrewedFigures
{
    /// <summary>Litres into the fermenter.</summary>
    public VolumeAt20C? Cast { get; init; }

    /// <summary>Litres at the beginning of the boil.</summary>
    public VolumeAt20C? PreBoil { get; init; }

    /// <summary>Liquor the mash starts in.</summary>
    public VolumeAt20C? Strike { get; init; }

    /// <summary>Original gravity.</summary>
    public SpecificGravity? OriginalGravity { get; init; }

    /// <summary>Final gravity.</summary>
    public SpecificGravity? FinalGravity { get; init; }

    /// <summary>Alcohol by volume.</summary>
    public Fraction? Alcohol { get; init; }

    /// <summary>Bitterness.</summary>
    public Bitterness? Bitterness { get; init; }

    /// <summary>Colour of the beer.</summary>
    public BeerColour? Colour { get; init; }
}
