namespace Gylebook.Recipes.Foods;

/// <summary>A food's main constituents once every gap is filled, g/100 g; they add up to 100.</summary>
/// <param name="Water">Water.</param>
/// <param name="Protein">Protein.</param>
/// <param name="Fat">Fat.</param>
/// <param name="Ash">Ash.</param>
/// <param name="Ethanol">Ethanol.</param>
/// <param name="Carbohydrate">All carbohydrate: what the others leave of 100.</param>
internal readonly record struct Balanced(
    double Water, double Protein, double Fat, double Ash, double Ethanol, double Carbohydrate)
{
    /// <summary>Analyses of one food add up to 100 within this, or something is wrong with them; 111 of 113 U.S. rows do within 0.12.</summary>
    private const double Closes = 0.5;

    /// <summary>The rounding of a few doubles, and far below any analysis, g/100 g.</summary>
    private const double MeansNothing = 1e-6;

    /// <summary>Fills water, ash and carbohydrate, whichever are missing.</summary>
    /// <param name="food">What is known.</param>
    /// <param name="family">Whose habits to borrow.</param>
    /// <param name="notes">Takes down what was borrowed and found.</param>
    public static Balanced Fill(FoodComposition food, FoodFamily family, MakeupNotes notes)
    {
        var protein = food.Protein ?? notes.Borrow("protein", 0, "g/100 g", family);
        var fat = food.Fat ?? notes.Borrow("fat", 0, "g/100 g", family);
        var ethanol = food.Ethanol ?? 0;
        var known = protein + fat + ethanol + (food.Carbohydrate ?? ((food.Water ?? 0) + (food.Ash ?? 0)));
        var squeeze = 1.0;
        if (known > 100 + MeansNothing)
        {
            notes.Find("food.overfull", Severity.Error, "composition",
                "The figures together are more than the food; they are scaled down to fit.", MakeupNotes.Say(known) + " g/100 g", "100 g/100 g");
            squeeze = 100 / known;
        }
        protein *= squeeze;
        fat *= squeeze;
        ethanol *= squeeze;
        var carbohydrate = food.Carbohydrate * squeeze;
        var left = Math.Max(0, 100 - protein - fat - ethanol - (carbohydrate ?? 0));
        var (water, ash) = (food.Water, food.Ash);
        if (carbohydrate is null || (water is not null && ash is not null))
        {
            ash ??= notes.Borrow("ash", Math.Min(left, family.Ash), "g/100 g", family);
            water ??= notes.Borrow("moisture", Math.Min(Math.Max(0, left - ash.Value), family.Moisture), "g/100 g", family);
        }
        else if (water is { } measured)
        {
            ash = Rest("ash", left - measured, notes);
        }
        else
        {
            ash ??= notes.Borrow("ash", Math.Min(left, family.Ash), "g/100 g", family);
            water = Rest("moisture", left - ash.Value, notes);
        }
        return Close(new Balanced(water.Value, protein, fat, ash.Value, ethanol, carbohydrate ?? 0), food.Carbohydrate is not null, notes);
    }

    private static double Rest(string what, double left, MakeupNotes notes)
    {
        var rest = Math.Max(0, left);
        notes.Assume(what, $"{MakeupNotes.Say(rest)} g/100 g", "what the other figures leave of 100 g");
        return rest;
    }

    /// <summary>Carbohydrate is by difference, so it takes what the analysis does not close by; water gives when nothing is left.</summary>
    private static Balanced Close(Balanced food, bool stated, MakeupNotes notes)
    {
        var others = food.Water + food.Protein + food.Fat + food.Ash + food.Ethanol;
        var difference = 100 - others;
        if (stated && Math.Abs(difference - food.Carbohydrate) > Closes)
        {
            notes.Find("food.doesNotAddUp", Severity.Warning, "composition",
                "The figures do not add up to 100 g; carbohydrate is taken as what the others leave.",
                MakeupNotes.Say(others + food.Carbohydrate) + " g/100 g", "100 ± 0.5 g/100 g");
        }
        if (difference >= 0)
        {
            return food with { Carbohydrate = difference };
        }
        var water = Math.Max(0, food.Water + difference);
        var fit = 100 / (others - food.Water + water);
        return new Balanced(water * fit, food.Protein * fit, food.Fat * fit, food.Ash * fit, food.Ethanol * fit, 0);
    }
}
