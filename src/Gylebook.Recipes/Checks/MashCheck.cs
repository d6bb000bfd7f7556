using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Checks;

/// <summary>Whether grain and mash belong together, and whether the mash could work.</summary>
internal static class MashCheck
{
    private const double Boiling = 100;
    private const double HarshRinse = 80;
    private static readonly RestCheck UsefulRests =
        new("mash.rest", 30, 85, "below, starch stays shut; above, the enzymes are gone at once");

    internal static void Check(Recipe recipe, FindingList findings)
    {
        var hasMalt = recipe.Ingredients.Any(line => line.Kind == IngredientKind.Malt);
        if (recipe.Mash is not { Method: not MashMethod.None } mash)
        {
            if (hasMalt)
            {
                var where = recipe.Mash is null ? "mash" : "mash.method";
                var value = recipe.Mash is null ? "no mash" : "none";
                findings.Error("mash.missing", where, $"{value}; there is malt among the ingredients, and malt gives nothing unless it is mashed", value, "a mash");
            }

            return;
        }

        if (!hasMalt && !recipe.Ingredients.Any(line => line.At.Point == AdditionPoint.Mash))
        {
            findings.Error("mash.empty", "mash", "nothing goes into this mash; leave it out, or write malt among the ingredients", "0 kg", "above 0 kg");
        }

        Rests(mash, findings);
        Sparge(mash, findings);
    }

    private static void Rests(MashPlan mash, FindingList findings)
    {
        if (mash.Rests.Count == 0)
        {
            findings.Error("mash.rests", "mash.rests", "no rests; a mash needs at least one, its first sets the strike temperature", "0 rests", "1 rest");
        }

        UsefulRests.Check(mash.Rests, "mash.rests", findings);
    }

    private static void Sparge(MashPlan mash, FindingList findings)
    {
        var sparge = mash.Sparge;
        if (sparge.Method == SpargeMethod.None && sparge.Volume is { } unused && unused.Value.Litres > 0)
        {
            findings.Error("sparge.unused", "mash.sparge.volume", $"{unused}; the method is none, so no liquor can be given", unused.Text, "0 L");
        }

        if (sparge.Method != SpargeMethod.None && sparge.Volume is null)
        {
            findings.Error("sparge.volume", "mash.sparge.volume", "no volume; a rinse needs its litres", "none", "a volume");
        }

        if (sparge.Temperature is not { } temperature)
        {
            return;
        }

        if (temperature.Value.Celsius is < 0 or > Boiling)
        {
            findings.Error(
                "sparge.temperature", "mash.sparge.temperature", Invariant($"{temperature}; must be 0 °C to {Boiling} °C, or it is not liquid water"),
                temperature.Text, Invariant($"0 °C to {Boiling} °C"));
        }
        else if (temperature.Value.Celsius > HarshRinse)
        {
            findings.Warning(
                "sparge.hot", "mash.sparge.temperature",
                Invariant($"{temperature}; above {HarshRinse} °C a rinse draws harshness from husks and starch that is no longer converted (common practice, no source)"),
                temperature.Text, Invariant($"{HarshRinse} °C"));
        }
    }
}
