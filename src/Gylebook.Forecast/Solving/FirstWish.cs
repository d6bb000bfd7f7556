using Gylebook.Recipes;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Solving;

/// <summary>The beer somebody would like, before there is any recipe: strength, colour, bitterness, litres, and a food if they have one in mind.</summary>
public sealed record FirstWish
{
    /// <summary>Alcohol by volume, in the glass; null when the gravity is wished.</summary>
    public Entered<Fraction>? Alcohol { get; init; }

    /// <summary>Original gravity, all in; null when the alcohol is wished.</summary>
    public Entered<SpecificGravity>? OriginalGravity { get; init; }

    /// <summary>Colour in the glass.</summary>
    public required Entered<BeerColour> Colour { get; init; }

    /// <summary>Bitterness.</summary>
    public required Entered<Bitterness> Bitterness { get; init; }

    /// <summary>Beer to package.</summary>
    public required Entered<VolumeAt20C> Litres { get; init; }

    /// <summary>Id or name of a food, of the larder or the tables; null for none.</summary>
    public string? Food { get; init; }

    /// <summary>How much of it; null for none.</summary>
    public Entered<Mass>? FoodAmount { get; init; }

    /// <summary>What in it cannot be, all at once; each names its field, its value and its limit.</summary>
    /// <remarks>The limits are our choice: what one malt, one hop and one yeast of the usual sort can be asked for.</remarks>
    public IReadOnlyList<Finding> Findings() =>
    [
        .. Strength(),
        .. Within("colour", Colour.Text, Colour.Value.Ebc, 2, 200, "EBC"),
        .. Within("bitterness", Bitterness.Text, Bitterness.Value.Ibu, 0, 120, "IBU"),
        .. Within("litres", Litres.Text, Litres.Value.Litres, 1, 1000, "L"),
        .. FoodWish(),
    ];

    private IEnumerable<Finding> Strength() => (Alcohol, OriginalGravity) switch
    {
        ({ } alcohol, null) => Within("alcohol", alcohol.Text, alcohol.Value.Percent, 0.5, 12, "%"),
        (null, { } gravity) => Within("gravity", gravity.Text, gravity.Value.Ratio, 1.005, 1.120, "SG"),
        (null, null) => [Problem("alcohol", "say how strong it shall be, by alcohol or by original gravity", null, null)],
        ({ } alcohol, { } gravity) => [Problem("gravity", $"{gravity.Text} beside {alcohol.Text} of alcohol: how far the yeast goes decides the other; say one of them", gravity.Text, null)],
    };

    private IEnumerable<Finding> FoodWish() => (Food, FoodAmount) switch
    {
        (null, { } amount) => [Problem("food", $"{amount.Text}, but of what? Name the food, or leave the amount out", amount.Text, null)],
        ({ } food, null) => [Problem("amount", $"how much of {food}? A weight, such as 600 g", null, null)],
        (_, { Value.Kilograms: <= 0 } amount) => [Problem("amount", $"{amount.Text}: must be above 0 g", amount.Text, "above 0 g")],
        _ => [],
    };

    private static IEnumerable<Finding> Within(string field, string text, double value, double low, double high, string unit) => value >= low && value <= high
        ? []
        : [Problem(field, Invariant($"{text}: must be from {low} to {high} {unit}"), text, Invariant($"{low} to {high} {unit}"))];

    private static Finding Problem(string field, string why, string? value, string? limit) => new($"draft.{field}", Severity.Error, field, why, value, limit);
}

/// <summary>A first recipe, or what stands against it.</summary>
/// <param name="Recipe">The draft; null when the wish cannot be met.</param>
/// <param name="Reached">What was wished, and what the weights as a scale shows them come to.</param>
/// <param name="Findings">Which limit binds, and by how much; none when the wish is met.</param>
public sealed record FirstDraft(Recipe? Recipe, IReadOnlyList<WishReached> Reached, IReadOnlyList<Finding> Findings);
