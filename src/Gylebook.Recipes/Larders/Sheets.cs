using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Lots;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Larders;

/// <summary>A malt of the brewer's own.</summary>
public sealed record MaltSheet : LikeSheet<MaltFigures>;

/// <summary>A hop of the brewer's own.</summary>
public sealed record HopSheet : LikeSheet<HopFigures>;

/// <summary>A yeast of the brewer's own.</summary>
public sealed record YeastSheet : LikeSheet<YeastFigures>;

/// <summary>Anything else at hand: a salt, an acid, a sugar, an extract, a spice, a fining, bought water.</summary>
public sealed record ShelfSheet : LikeSheet<ShelfFigures>
{
    /// <summary>What sort of thing it is.</summary>
    public required IngredientKind Kind { get; init; }
}

/// <summary>What a pack or an assay says of a hop; null for what it does not say.</summary>
public sealed record HopFigures
{
    /// <summary>Alpha acids by mass.</summary>
    public Entered<Fraction>? Alpha { get; init; }

    /// <summary>Beta acids by mass. Nothing is reckoned from them yet.</summary>
    public Entered<Fraction>? Beta { get; init; }

    /// <summary>Share of its alpha acids it loses in six months at 20 °C in the open.</summary>
    public Entered<Fraction>? Lost { get; init; }

    /// <summary>Whole or pellet.</summary>
    public IngredientForm? Form { get; init; }

    /// <summary>The day it was harvested. Its age counts only where a recipe's line says one.</summary>
    public DateOnly? Harvested { get; init; }
}

/// <summary>What is known of a yeast; null for what is not.</summary>
public sealed record YeastFigures
{
    /// <summary>Dry, liquid or slurry.</summary>
    public IngredientForm? Form { get; init; }

    /// <summary>Cells in so much of it when fresh.</summary>
    public CellCount? Cells { get; init; }

    /// <summary>The mass or volume that holds those cells: a gram, a pack.</summary>
    public Amount? Per { get; init; }

    /// <summary>Apparent attenuation it reached last time.</summary>
    public Entered<Fraction>? Attenuation { get; init; }

    /// <summary>Where it comes from, of a lot that was taken out of a fermenter; null for any other.</summary>
    public YeastHarvest? Harvest { get; init; }

    /// <summary>Cells in that much of it; null when nobody says. A millilitre counts as a gram, as for slurry.</summary>
    public CellCount? CellsIn(Amount amount) => Cells is { } cells && Per is { } per && Kilograms(per) > 0
        ? new CellCount(cells.Billions * Kilograms(amount) / Kilograms(per), Invariant($"{cells.Billions * Kilograms(amount) / Kilograms(per):0.##} billion"))
        : null;

    private static double Kilograms(Amount amount) => amount.Mass?.Value.Kilograms ?? amount.Volume?.Value.Litres ?? 0;
}

/// <summary>What is known of anything else.</summary>
public sealed record ShelfFigures
{
    /// <summary>The colour of an extract or a sugar.</summary>
    public Entered<MaltColour>? Colour { get; init; }
}
