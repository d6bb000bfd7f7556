using System.Collections.ObjectModel;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Solving;

/// <summary>The beer wanted of a recipe.</summary>
public sealed record BeerWish
{
    /// <summary>Whether what is null is to stay what the recipe makes now, on the kit it was weighed for; else it follows.</summary>
    public bool KeepsRest { get; init; } = true;

    /// <summary>What a recipe itself holds, and nothing else; null when it holds nothing.</summary>
    public static BeerWish? HeldBy(Recipes.Recipe recipe)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        Dictionary<int, double> shares = recipe.Ingredients.Index().Where(entry => entry.Item.Share is not null).ToDictionary(entry => entry.Index, entry => entry.Item.Share!.Value.Value.Ratio);
        return recipe.Hold is null && shares.Count == 0 ? null : new BeerWish
        {
            KeepsRest = false,
            OriginalGravity = recipe.Hold?.OriginalGravity?.Value,
            Bitterness = recipe.Hold?.Bitterness?.Value,
            Shares = shares,
        };
    }

    /// <summary>How much is packaged; everything that goes in goes along.</summary>
    public Entered<VolumeAt20C>? Package { get; init; }

    /// <summary>In which share of brews the package is to be full, above 0 and below 1; null for the likely brew, which is about every other one.</summary>
    public double? Confidence { get; init; }

    /// <summary>Original gravity, all in; malt and malt extract are weighed for it.</summary>
    public SpecificGravity? OriginalGravity { get; init; }

    /// <summary>Bitterness; the hops that boil longest are weighed for it.</summary>
    public Bitterness? Bitterness { get; init; }

    /// <summary>How lively; sugar to prime is weighed for it where the recipe has some.</summary>
    public Entered<Carbonation>? Carbonation { get; init; }

    /// <summary>Living cells for each that the wort wants, above 0: yeast is weighed for it. Null to take the yeast along with the extract.</summary>
    public double? Pitch { get; init; }

    /// <summary>Shares of the grist by number of the line, above 0 and up to 1. Other malts share what is left as they do now.</summary>
    public IReadOnlyDictionary<int, double> Shares { get; init; } = ReadOnlyDictionary<int, double>.Empty;
}

/// <summary>A number that was wished or held, and what the amounts as a scale shows them come to.</summary>
/// <param name="Readout">Its stable name: <c>originalGravity</c>.</param>
/// <param name="Wished">What it should be.</param>
/// <param name="Reached">What it is.</param>
/// <param name="Asked">Whether somebody asked for it; else it was to stay as it was.</param>
public sealed record WishReached(string Readout, double Wished, double Reached, bool Asked);

/// <summary>A recipe weighed anew for a wish.</summary>
/// <param name="Recipe">The recipe with the new amounts; as it was when the wish cannot be met.</param>
/// <param name="Fields">What to write into its file: path and text, null to take a field out.</param>
/// <param name="Reached">What was wished or held, and what it comes to.</param>
/// <param name="Findings">Which limit binds, and by how much; none when the wish is met.</param>
public sealed record SolvedRecipe(
    Recipes.Recipe Recipe,
    IReadOnlyList<(string Path, string? Text)> Fields,
    IReadOnlyList<WishReached> Reached,
    IReadOnlyList<Recipes.Finding> Findings)
{
    /// <summary>How much was planned for so that the package is full as often as asked; null where nobody asked.</summary>
    public ConfidentPackage? Confident { get; init; }

    /// <summary>Litres wanted in the package.</summary>
    public double Wanted { get; init; }

    /// <summary>Whether all of the wish is met.</summary>
    public bool IsMet => Findings.Count == 0;
}
