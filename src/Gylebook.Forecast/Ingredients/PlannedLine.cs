using Gylebook.Engine.State;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Mashing;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Ingredients;

/// <summary>A recipe line with what the tables know of it.</summary>
/// <param name="Number">Its place in the recipe, from 0.</param>
/// <param name="Line">The line as written.</param>
/// <param name="Name">Name to show.</param>
/// <param name="Kilograms">How much, weighed.</param>
public sealed record PlannedLine(int Number, IngredientLine Line, string Name, double Kilograms)
{
    /// <summary>Where findings point to.</summary>
    public string Path => PathOf(Number);

    /// <summary>Where findings point to for the line of that number.</summary>
    internal static string PathOf(int number) => number < Paths.Length ? Paths[number] : Written(number);

    /// <summary>What the larder knows of it; null for a line that no larder was asked for.</summary>
    public LineInHand? Hand { get; init; }

    /// <summary>The malt it is, or null.</summary>
    public Malt? Malt { get; init; }

    /// <summary>The sugar or extract it is, or null.</summary>
    public Sugar? Sugar { get; init; }

    /// <summary>The food it is, or null.</summary>
    public FoodMakeup? Food { get; init; }

    /// <summary>The food it is under the name that is shown, or null.</summary>
    internal FoodMakeup? NamedFood => Food is null || Food.Name == Name ? Food : Food with { Name = Name };

    /// <summary>The yeast it is, or null.</summary>
    public YeastStyle? Yeast { get; init; }

    /// <summary>The salt it is, or null.</summary>
    public BrewingSalt? Salt { get; init; }

    /// <summary>The acid it is, by the millimole, or null.</summary>
    public MashPhAcid? Acid { get; init; }

    /// <summary>The row of the table that a hop is, or null.</summary>
    public HopCultivar? Cultivar { get; init; }

    /// <summary>Whether these are whole hops that were boiled, and so stay in the kettle.</summary>
    public bool StaysInKettle => Stays(Line);

    /// <summary>The same of a line as written.</summary>
    internal static bool Stays(IngredientLine line) => line is { Kind: IngredientKind.Hop, Form: IngredientForm.Whole, At.Point: <= AdditionPoint.Stand };

    /// <summary>Alpha acids by mass on brew day, for a hop.</summary>
    public double Alpha { get; init; }

    /// <summary>Where the alpha acids are from: the brewer's own figure, or the table.</summary>
    public Provenance? AlphaFrom { get; init; }

    /// <summary>All of it as components, at the medians.</summary>
    public Wort Makeup { get; init; }

    /// <summary>As many as most recipes have lines: every key asks for all of them.</summary>
    private static readonly string[] Paths = [.. Enumerable.Range(0, 64).Select(Written)];

    private static string Written(int number) => Invariant($"ingredients[{number}]");
}
