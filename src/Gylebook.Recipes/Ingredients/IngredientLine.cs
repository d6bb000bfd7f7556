using Gylebook.Science.Boiling;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Ingredients;

/// <summary>One line of a recipe: what, how much, when.</summary>
public sealed record IngredientLine
{
    /// <summary>What sort of thing it is.</summary>
    public required IngredientKind Kind { get; init; }

    /// <summary>Id or name in the tables, as typed: <c>pale ale malt</c>.</summary>
    public required string Of { get; init; }

    /// <summary>Which lot of a sheet in the larder; null when unsaid.</summary>
    public string? Lot { get; init; }

    /// <summary>A name to show instead; null to show the table's own.</summary>
    public string? As { get; init; }

    /// <summary>How much.</summary>
    public required Amount Amount { get; init; }

    /// <summary>Share of the grist that it holds; null when its weight decides.</summary>
    public Entered<Fraction>? Share { get; init; }

    /// <summary>When it goes in.</summary>
    public required AdditionTime At { get; init; }

    /// <summary>The portion it goes into; null for all.</summary>
    public string? Portion { get; init; }

    /// <summary>A hop's alpha acids by mass; null for the cultivar's typical value.</summary>
    public Entered<Fraction>? Alpha { get; init; }

    /// <summary>Whole or pellet for hops, dry or liquid for yeast; null when unsaid.</summary>
    public IngredientForm? Form { get; init; }

    /// <summary>A malt's own colour; null for the table's.</summary>
    public Entered<MaltColour>? Colour { get; init; }

    /// <summary>Time since a hop's assay, or since yeast was packed or harvested; null for fresh.</summary>
    public Entered<Duration>? Age { get; init; }

    /// <summary>How a hop was kept since its assay; null when unsaid.</summary>
    public HopStorage? Storage { get; init; }

    /// <summary>Cells that yeast held when fresh; null when its form must tell.</summary>
    public CellCount? Cells { get; init; }

    /// <summary>How far this yeast took the brewer's last beer of such a grist, apparent; null for what is usual of its type.</summary>
    public Entered<Fraction>? Attenuation { get; init; }
}

/// <summary>How hops were kept.</summary>
/// <param name="Temperature">How cold.</param>
/// <param name="Pack">What kept the air out.</param>
/// <param name="Lost">Share of its alpha acid this cultivar loses in six months at 20 °C in the open; null when unknown.</param>
public sealed record HopStorage(Entered<Temperature> Temperature, HopPack Pack, Entered<Fraction>? Lost);

/// <summary>A number of cells, and the text it was typed as: "100 billion".</summary>
/// <param name="Billions">10⁹ cells.</param>
/// <param name="Text">As typed.</param>
public readonly record struct CellCount(double Billions, string Text);

/// <summary>What sort of thing goes in.</summary>
public enum IngredientKind
{
    /// <summary>Malt or mashed grain.</summary>
    Malt,

    /// <summary>Extract of malt, dry or syrup.</summary>
    Extract,

    /// <summary>Sugar or syrup.</summary>
    Sugar,

    /// <summary>Anything else to eat: it has a food sheet.</summary>
    Food,

    /// <summary>Hops.</summary>
    Hop,

    /// <summary>A spice: a food in grams.</summary>
    Spice,

    /// <summary>Yeast.</summary>
    Yeast,

    /// <summary>Helps beer to clear.</summary>
    Fining,

    /// <summary>A brewing salt.</summary>
    Salt,

    /// <summary>An acid.</summary>
    Acid,

    /// <summary>Plain liquor.</summary>
    Water,
}

/// <summary>The form a hop or a yeast is bought in.</summary>
public enum IngredientForm
{
    /// <summary>Whole cones, which stay in the kettle.</summary>
    Whole,

    /// <summary>Pellets, whose debris goes where wort goes.</summary>
    Pellet,

    /// <summary>Dry yeast.</summary>
    Dry,

    /// <summary>Liquid yeast.</summary>
    Liquid,

    /// <summary>Settled yeast harvested from an earlier beer.</summary>
    Slurry,
}

/// <summary>A mass or a volume, as the brewer measured it.</summary>
/// <param name="Mass">When weighed.</param>
/// <param name="Volume">When measured in a jug.</param>
public readonly record struct Amount(Entered<Mass>? Mass, Entered<VolumeAt20C>? Volume)
{
    /// <summary>Whether it is none at all.</summary>
    public bool IsNothing => (Mass?.Value.Kilograms ?? Volume?.Value.Litres) == 0;

    /// <summary>The text as typed.</summary>
    public string Text => Mass?.Text ?? Volume?.Text ?? "";

    /// <summary>So many times as much, with no text of its own.</summary>
    public Amount Times(double times) => new(
        Mass is { } mass ? new Entered<Mass>(mass.Value * times, "") : null,
        Volume is { } volume ? new Entered<VolumeAt20C>(VolumeAt20C.FromLitres(volume.Value.Litres * times), "") : null);
}
