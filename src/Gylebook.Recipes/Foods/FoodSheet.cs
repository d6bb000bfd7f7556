using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Lots;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Foods;

/// <summary>What a brewer wrote down of a food.</summary>
public sealed record FoodSheet : LarderSheet<FoodComposition>
{
    /// <summary>Its family, by id or name: <c>nut or seed flour, defatted</c>.</summary>
    public required string Family { get; init; }

    /// <summary>The nutrition panel; null when there is none.</summary>
    public LabelPanel? Label { get; init; }

    /// <summary>A better analysis; what it says goes before the label.</summary>
    public FoodComposition? Composition { get; init; }

    /// <summary>The list of ingredients, as printed; null when there is none.</summary>
    public string? Ingredients { get; init; }

    /// <summary>What it may contain traces of, as printed; null when nothing.</summary>
    public string? MayContain { get; init; }

    /// <summary>Acid and buffer in the mash, as measured; null when nobody has.</summary>
    public MaltTitration? Acidity { get; init; }

    /// <summary>What the brewer knows better than the family does.</summary>
    public FoodAssume Assume { get; init; } = new(null, null);

    /// <summary>Bench trials of it, in the order of the file.</summary>
    public IReadOnlyList<KeptTrial> Trials { get; init; } = [];
}

/// <summary>What the brewer knows better than the family does.</summary>
/// <param name="InsolubleShare">Insolubles by mass of the food as is, starch not among them; null to borrow from the family.</param>
/// <param name="HeldLitresPerKg">Litres of beer or wort that a kilogram of the food as is holds; null to borrow from the family.</param>
public sealed record FoodAssume(Entered<Fraction>? InsolubleShare, double? HeldLitresPerKg);
