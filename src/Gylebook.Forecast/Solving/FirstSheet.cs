using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Solving;

/// <summary>What goes into a first recipe, with weights to begin a search from.</summary>
/// <remarks>
/// Our choice (common practice, no source), and the draft's note says so. Pale ale malt is the base, pilsner malt where the beer shall be paler than that.
/// Beside it stands one coloured malt, the palest of three that can bring the colour: caramel malt up to 15 % of the grist, chocolate malt up to 8 %,
/// black malt up to 25 %; more of one tastes of little else. Golding boils as long as there is a boil, and a little of it, in proportion to the bitterness,
/// for the last ten minutes. American ale yeast, dry, ferments nearly any such wort clean. The food goes where its make-up suits (<see cref="FoodPlace"/>).
/// </remarks>
/// <param name="Wish">The beer wished.</param>
/// <param name="Food">The food made up; null for none.</param>
/// <param name="Kit">The kit.</param>
/// <param name="Sparge">How the grain is rinsed.</param>
internal sealed record FirstSheet(FirstWish Wish, FoodMakeup? Food, Kit Kit, SpargePlan Sparge)
{
    /// <summary>The line of the coloured malt, behind its base malt.</summary>
    public const int ColouredLine = 1;

    /// <summary>Base malts by id, the one we would rather take first.</summary>
    public static IReadOnlyList<string> Bases { get; } = ["pale-ale-malt", "pilsner-malt"];

    /// <summary>Coloured malts by id, the palest first, and the most of each, as a share of the grist.</summary>
    public static IReadOnlyList<(string Malt, double Most)> Coloured { get; } = [("caramel-malt", 0.15), ("chocolate-malt", 0.08), ("black-malt", 0.25)];

    /// <summary>Grist to begin with, kg for a litre of beer and a per cent of alcohol. Only the search's speed hangs on it.</summary>
    private const double GristToBegin = 0.042;

    /// <summary>Hops to begin with, g for a litre of beer and an IBU. Only the search's speed hangs on it.</summary>
    private const double HopsToBegin = 0.08;

    /// <summary>Hops of the last ten minutes, g for a litre of beer and an IBU.</summary>
    private const double LateHops = 0.03;

    private const double LateMinutes = 10;

    /// <summary>Points of gravity that make about a per cent of alcohol, to begin with.</summary>
    public const double PointsOfAlcohol = 10;

    /// <summary>Strength wished, as per cent of alcohol, or in points that would make about as much.</summary>
    public double Strength => Wish.Alcohol?.Value.Percent ?? ((Wish.OriginalGravity!.Value.Value.Ratio - 1) * 1000 / PointsOfAlcohol);

    /// <summary>A malt's name.</summary>
    public static string Name(string malt) => Malts.Find(malt).Match!.Name;

    /// <summary>The recipe with that base malt, and that coloured malt or none.</summary>
    public Recipe With(string pale, string? coloured)
    {
        double kilograms = GristToBegin * Litres * Strength;
        Recipe blank = BlankRecipe.For(Kit, Food is null ? "First draft" : $"First draft with {Food.Name}");
        return blank with
        {
            Package = blank.Package with { Volume = Wish.Litres },
            Mash = blank.Mash! with { Sparge = Sparge },
            Notes = Note(pale, coloured),
            Ingredients =
            [
                Line(IngredientKind.Malt, Name(pale), kilograms, new(AdditionPoint.Mash)),
                .. coloured is null ? Enumerable.Empty<IngredientLine>() : [Line(IngredientKind.Malt, Name(coloured), 0.05 * kilograms, new(AdditionPoint.Mash))],
                .. FoodLine(),
                .. HopLines(blank.Boil!.Time.Value.Minutes),
                Line(IngredientKind.Yeast, YeastName, 0.0005 * Litres, new(AdditionPoint.Pitch)) with { Form = IngredientForm.Dry },
            ],
        };
    }

    private double Litres => Wish.Litres.Value.Litres;

    private static string HopName => HopCultivars.Find("golding").Match!.Name;

    private static string YeastName => YeastStyles.Find("american-ale").Match!.Name;

    private IEnumerable<IngredientLine> FoodLine()
    {
        if (Food is not null)
        {
            IngredientKind kind = FoodFamilies.Of(Food.FamilyId).IsSpice ? IngredientKind.Spice : IngredientKind.Food;
            yield return Line(kind, Food.Id, 0, FoodPlace.Of(Food)) with { Amount = new Amount(Wish.FoodAmount, null) };
        }
    }

    private IEnumerable<IngredientLine> HopLines(double boilMinutes)
    {
        double kilogramsOfOne = Litres * Wish.Bitterness.Value.Ibu / 1000;
        return kilogramsOfOne == 0 ? [] :
        [
            Line(IngredientKind.Hop, HopName, HopsToBegin * kilogramsOfOne, new(AdditionPoint.Boil, boilMinutes)) with { Form = IngredientForm.Pellet },
            Line(IngredientKind.Hop, HopName, LateHops * kilogramsOfOne, new(AdditionPoint.Boil, LateMinutes)) with { Form = IngredientForm.Pellet },
        ];
    }

    private static IngredientLine Line(IngredientKind kind, string of, double kilograms, AdditionTime at) =>
        new() { Kind = kind, Of = of, Amount = new Amount(new Entered<Mass>(Mass.FromKilograms(kilograms), ""), null), At = at };

    private string Note(string pale, string? coloured)
    {
        string strength = Wish.Alcohol is { } alcohol ? $"{alcohol.Text} of alcohol" : $"original gravity {Wish.OriginalGravity!.Value.Text}";
        string with = Food is null ? "" : $" with {Wish.FoodAmount!.Value.Text} of {Food.Name}";
        string malts = coloured is null ? Name(pale) : $"{Name(pale)}, {Name(coloured)}";
        return $"A first draft for {Wish.Litres.Text}, {strength}, {Wish.Colour.Text}, {Wish.Bitterness.Text}{with}. "
            + $"{Words.Sentence(malts)}, {HopName} and {YeastName} yeast are our choice: change anything.";
    }
}
