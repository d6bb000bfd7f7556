using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Boiling;
using Gylebook.Science.Fermenting;

namespace Gylebook.Recipes.Checks;

/// <summary>Whether hops and yeast are young enough, and kept so that the laws of ageing say something.</summary>
internal static class AgeCheck
{
    internal const double MostLostPercent = 99;

    private const double MostDays = 3650;
    private const double HopLawDays = 730;
    private const double YeastRuleDays = 142;

    internal static void Check(IngredientLine line, string where, FindingList findings)
    {
        if (line.Age is { } age && age.Value.Days > MostDays)
        {
            findings.Error(
                $"{Kind(line)}.age", $"{where}.age", Invariant($"{age}; must be at most {MostDays} d: nothing is known of anything so old"),
                age.Text, Invariant($"{MostDays} d"));
        }
        else if (line.Kind == IngredientKind.Hop)
        {
            Hop(line, where, findings);
        }
        else if (line is { Age: not null, Form: IngredientForm.Dry })
        {
            findings.Note("yeast.dryAge", $"{where}.age", "dry yeast keeps for years; its age is not counted", line.Age!.Value.Text);
        }
        else if (line is { Age: { } old } && !YeastViability.IsWithinPublishedRange(old.Value.Days))
        {
            findings.Warning(
                "yeast.age", $"{where}.age", Invariant($"{old}; after {YeastRuleDays} d one of the two rules of thumb counts no living cell: make a starter and see"),
                old.Text, Invariant($"{YeastRuleDays} d"));
        }
    }

    private static void Hop(IngredientLine line, string where, FindingList findings)
    {
        if (line.Storage is { } storage)
        {
            var celsius = storage.Temperature.Value.Celsius;
            if (celsius is < -80 or > 60)
            {
                findings.Error(
                    "hop.storage", $"{where}.storage.temperature", $"{storage.Temperature}; must be -80 °C to 60 °C",
                    storage.Temperature.Text, "-80 °C to 60 °C");
            }

            if (storage.Lost is { } lost && lost.Value.Percent > MostLostPercent)
            {
                findings.Error(
                    "hop.lost", $"{where}.storage.lost", $"{lost}; must be at most 99 %: nothing would be left to age", lost.Text, "99 %");
            }

            if (line.Age is null)
            {
                findings.Warning("hop.ageUnsaid", $"{where}.storage", "how it was kept counts only with an age", null, "an age");
            }
        }

        if (line.Age is { } age)
        {
            if (!HopAgeing.IsWithinPublishedRange(age.Value.Days, line.Storage?.Temperature.Value.Celsius ?? 20))
            {
                findings.Warning(
                    "hop.old", $"{where}.age", Invariant($"{age}; the law of ageing is for {HopLawDays} d and -20 °C to 30 °C: have the hops assayed"),
                    age.Text, Invariant($"{HopLawDays} d"));
            }

            if (line.Storage is null)
            {
                findings.Note("hop.storageUnsaid", $"{where}.storage", "not given; taken as open to the air at 20 °C", "open, 20 °C");
            }
        }
    }

    private static string Kind(IngredientLine line) => line.Kind == IngredientKind.Hop ? "hop" : "yeast";
}
