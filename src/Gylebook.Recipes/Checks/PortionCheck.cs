using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Checks;

/// <summary>Whether the portions make up the cast, and the ingredients name portions there are.</summary>
internal static class PortionCheck
{
    // Shares are typed as decimal percents; adding them up in doubles is off by no more than this.
    private const double Rounding = 1e-9;

    private const int MostPortions = 24;

    internal static void Check(Recipe recipe, FindingList findings)
    {
        Shares(recipe.Portions, findings);
        for (var i = 0; i < recipe.Ingredients.Count; i++)
        {
            if (recipe.Ingredients[i].Portion is { } named)
            {
                Line(recipe.Ingredients[i], named, recipe.Portions, Invariant($"ingredients[{i}].portion"), findings);
            }
        }
    }

    private static void Shares(IReadOnlyList<PortionShare> portions, FindingList findings)
    {
        if (portions.Count == 0)
        {
            return;
        }

        if (portions.Count > MostPortions)
        {
            findings.Error(
                "portions.many", "portions", $"{portions.Count} portions; must be at most {MostPortions}, or it is no longer one brew",
                $"{portions.Count}", $"{MostPortions}");
            return;
        }

        var sum = portions.Sum(portion => portion.Share.Value.Ratio);
        if (Math.Abs(sum - 1) > Rounding)
        {
            var total = Invariant($"{100 * sum:0.######} %");
            findings.Error("portions.sum", "portions", $"the shares come to {total}; must be 100 %, all of the cast and no more", total, "100 %");
        }

        for (var i = 0; i < portions.Count; i++)
        {
            if (portions[i].Share.Value.Ratio == 0)
            {
                findings.Error("portion.empty", Invariant($"portions[{i}].share"), $"{portions[i].Share}; must be above 0 %", portions[i].Share.Text, "above 0 %");
            }

            if (portions.Take(i).Any(before => before.Name == portions[i].Name))
            {
                findings.Error("portion.twice", Invariant($"portions[{i}].name"), $"\"{portions[i].Name}\" names an earlier portion too; names must differ", portions[i].Name);
            }
        }
    }

    private static void Line(IngredientLine line, string named, IReadOnlyList<PortionShare> portions, string where, FindingList findings)
    {
        if (!portions.Any(portion => portion.Name == named))
        {
            var nearest = NearestWord.To(named, portions.Select(portion => portion.Name));
            findings.Error(
                "portion.unknown", where,
                nearest is null ? $"\"{named}\"; the recipe has no portions" : $"\"{named}\" is no portion of this recipe; the nearest is \"{nearest}\"",
                named, string.Join(", ", portions.Select(portion => portion.Name)));
        }

        if (line.At.Point < AdditionPoint.Pitch)
        {
            findings.Error("portion.early", where, $"\"{named}\"; the cast is not divided until it is in the fermenters, so this must be at pitch or later", named, "pitch");
        }
    }
}
