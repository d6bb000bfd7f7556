using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Checks;

/// <summary>Whether each addition has a moment to be added at, and hops could be that bitter.</summary>
internal static class AdditionCheck
{
    internal const double MostAlphaPercent = 30;

    /// <summary>A yeast that takes neither maltose nor maltotriose reaches about 15 %; a hundred is a beer as light as water.</summary>
    internal const double LeastAttenuationPercent = 5, MostAttenuationPercent = 100;

    internal static void Check(Recipe recipe, FindingList findings)
    {
        for (var i = 0; i < recipe.Ingredients.Count; i++)
        {
            var line = recipe.Ingredients[i];
            Time(recipe, line, i, findings);
            if (line.Alpha is { } alpha && alpha.Value.Percent > MostAlphaPercent)
            {
                findings.Error(
                    "hop.alpha", Invariant($"ingredients[{i}].alpha"), Invariant($"{alpha}; must be at most {MostAlphaPercent} %: no hop cone or pellet has more alpha acids"),
                    alpha.Text, Invariant($"{MostAlphaPercent} %"));
            }
            else if (line.Alpha is { Value.Percent: 0 } none)
            {
                findings.Error(
                    "hop.alpha", Invariant($"ingredients[{i}].alpha"), $"{none}; must be above 0 %: leave the key out for the cultivar's usual value",
                    none.Text, "above 0 %");
            }

            Attenuation(line, i, findings);
            if (line.Age is not null || line.Storage is not null)
            {
                AgeCheck.Check(line, Invariant($"ingredients[{i}]"), findings);
            }
        }
    }

    private static void Attenuation(IngredientLine line, int number, FindingList findings)
    {
        if (line.Attenuation is { } told && told.Value.Percent is < LeastAttenuationPercent or > MostAttenuationPercent)
        {
            string limit = Invariant($"{LeastAttenuationPercent} % to {MostAttenuationPercent} %");
            findings.Error("yeast.attenuation", Invariant($"ingredients[{number}].attenuation"), $"{told}; must be {limit}, apparent: of gravities, (1.050 - 1.013)/0.050 is 74 %", told.Text, limit);
        }
    }

    private static void Time(Recipe recipe, IngredientLine line, int number, FindingList findings)
    {
        if (line.Kind == IngredientKind.Malt && line.At.Point != AdditionPoint.Mash)
        {
            var typed = AdditionTimeText.Write(line.At);
            findings.Error("malt.late", TimeOf(number), $"{typed}; malt goes into the mash (for a small steep beside extract, method \"part\")", typed, "mash");
            return;
        }

        switch (line.At.Point)
        {
            case AdditionPoint.Mash when recipe.Mash is not { Method: not MashMethod.None } && line.Kind != IngredientKind.Malt:
                findings.Error("at.noMash", TimeOf(number), "mash; this recipe has no mash", "mash", "a mash");
                break;
            case AdditionPoint.Boil:
                Within(line.At, recipe.Boil?.Time.Value.Minutes, "boil", number, findings);
                break;
            case AdditionPoint.Stand:
                Within(line.At, recipe.Stand?.Time.Value.Minutes, "stand", number, findings);
                break;
            case AdditionPoint.Ferment when line.At.Count > FermentCheck.Days(recipe):
                var day = AdditionTimeText.Write(line.At);
                var days = Invariant($"day {FermentCheck.Days(recipe):0.#}");
                findings.Error("at.afterFerment", TimeOf(number), $"{day}; fermentation is over on {days}", day, days);
                break;
            default:
                break;
        }
    }

    private static void Within(AdditionTime at, double? lasts, string stage, int number, FindingList findings)
    {
        if (at.Count <= lasts)
        {
            return;
        }

        var typed = AdditionTimeText.Write(at);
        if (lasts is not { } minutes)
        {
            findings.Error($"at.no{char.ToUpperInvariant(stage[0])}{stage[1..]}", TimeOf(number), $"{typed}; this recipe has no {stage}", typed, $"a {stage}");
        }
        else
        {
            var limit = Invariant($"{minutes:0.###} min");
            findings.Error($"at.before{char.ToUpperInvariant(stage[0])}{stage[1..]}", TimeOf(number), $"{typed}; the {stage} lasts {limit}, counted back from its end", typed, limit);
        }
    }

    private static string TimeOf(int number) => Invariant($"ingredients[{number}].at");
}
