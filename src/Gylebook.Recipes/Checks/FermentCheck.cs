using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Checks;

/// <summary>Fermentation: how warm, how long, and whether there is yeast.</summary>
internal static class FermentCheck
{
    private const double MostDays = 400;

    /// <summary>Days below which a beer has not even begun to ferment, and below which hardly any has ended. Common practice, no source.</summary>
    private const double LeastDays = 0.5;
    private const double QuickDays = 3;
    private static readonly RestCheck Rests = new("ferment.temperature", -2, 45, "below, beer freezes; above, yeast dies");

    internal static void Check(Recipe recipe, FindingList findings)
    {
        if (recipe.Ferment.Count == 0)
        {
            findings.Error("ferment.none", "ferment", "no fermentation; write at least one temperature and time", "0 rests", "1 rest");
        }

        Rests.Check(recipe.Ferment, "ferment", findings);
        var days = Days(recipe);
        if (days > MostDays)
        {
            var total = Invariant($"{days:0.#} d");
            findings.Warning("ferment.long", "ferment", Invariant($"{total} in all; longer than {MostDays} d is ageing, which is not modelled"), total, Invariant($"{MostDays} d"));
        }

        if (!recipe.Ingredients.Any(line => line.Kind == IngredientKind.Yeast))
        {
            findings.Warning("yeast.none", "ingredients", "no yeast; nothing ferments", "none", "a yeast");
        }
        else if (recipe.Ferment.Count > 0 && days < QuickDays)
        {
            Short(recipe.Ferment, days, findings);
        }
    }

    private static void Short(IReadOnlyList<Rest> rests, double days, FindingList findings)
    {
        var total = rests.Count == 1 ? rests[0].Time.Text : Invariant($"{days:0.###} d");
        if (days < LeastDays)
        {
            findings.Error(
                "ferment.short", "ferment", Invariant($"{total} in all; must be at least {LeastDays} d: yeast has hardly begun by then (common practice, no source)"),
                total, Invariant($"{LeastDays} d"));
        }
        else
        {
            findings.Warning(
                "ferment.short", "ferment",
                Invariant($"{total} in all; hardly any beer is done in less than {QuickDays} d, and a bottle filled too soon bursts (common practice, no source). The forecast lets it end"),
                total, Invariant($"{QuickDays} d"));
        }
    }

    /// <summary>Days from pitching to the end of fermentation.</summary>
    internal static double Days(Recipe recipe) => recipe.Ferment.Sum(rest => rest.Time.Value.Days);
}
