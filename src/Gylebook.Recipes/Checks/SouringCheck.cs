using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Checks;

/// <summary>Souring in the kettle: how sour, how warm, how long, and what must not stand in its way.</summary>
internal static class SouringCheck
{
    /// <summary>Above this no lactic culture sours wort that is ordinary otherwise. Our own limit.</summary>
    private const double HighestPh = 5;

    /// <summary>Above this the germ of botulism can grow: extension sheets on low-acid foods.</summary>
    private const double SafePh = 4.6;

    /// <summary>°C below which nothing comes of it, and above which lactic bacteria die. From memory.</summary>
    private const double Coolest = 10;
    private const double Warmest = 55;
    private const double MostDays = 7;

    internal static void Check(Recipe recipe, FindingList findings)
    {
        if (recipe.Souring is not { } souring)
        {
            return;
        }

        CheckPh(souring, findings);
        double celsius = souring.Temperature.Value.Celsius;
        if (celsius is < Coolest or > Warmest)
        {
            string limit = Invariant($"{Coolest} °C to {Warmest} °C");
            findings.Error(
                "souring.temperature", "souring.temperature", $"{souring.Temperature}; must be {limit}: below, nothing sours; above, lactic bacteria die",
                souring.Temperature.Text, limit);
        }

        if (souring.Time.Value.Days > MostDays)
        {
            findings.Warning(
                "souring.long", "souring.time", Invariant($"{souring.Time}; longer than {MostDays} d other things grow in warm wort"), souring.Time.Text, Invariant($"{MostDays} d"));
        }

        if (recipe.Boil is null)
        {
            findings.Warning(
                "souring.noBoil", "boil", "soured wort is not boiled: bacteria live on in fermenter and package, make acid and perhaps gas there, and can burst a bottle",
                "no boil", "a boil");
        }

        CheckHops(recipe, findings);
    }

    private static void CheckPh(SouringPlan souring, FindingList findings)
    {
        double lowest = StartingValues.Of("sour.lowestPh").Value;
        if (souring.Ph.Value < lowest || souring.Ph.Value > HighestPh)
        {
            string limit = Invariant($"{lowest:0.0} to {HighestPh:0.0}");
            findings.Error(
                "souring.ph", "souring.ph", $"{souring.Ph}; must be {limit}: lactic bacteria stop near the low end, and wort is hardly soured at the high one",
                souring.Ph.Text, limit);
        }
        else if (souring.Ph.Value > SafePh)
        {
            findings.Warning(
                "souring.phHigh", "souring.ph", Invariant($"{souring.Ph}; above {SafePh:0.0} acid does not keep harmful germs down"),
                souring.Ph.Text, Invariant($"{SafePh:0.0}"));
        }
    }

    /// <summary>Hop acids hold lactic bacteria back. Common practice, no source for how far.</summary>
    private static void CheckHops(Recipe recipe, FindingList findings)
    {
        for (int i = 0; i < recipe.Ingredients.Count; i++)
        {
            IngredientLine line = recipe.Ingredients[i];
            if (line.Kind == IngredientKind.Hop && line.At.Point <= AdditionPoint.CopperUp)
            {
                findings.Warning(
                    "souring.hops", Invariant($"ingredients[{i}].at"), $"{line.Of} is in the wort while it sours: hops hold lactic bacteria back; add them at the boil",
                    line.Of, "boil or later");
            }
        }
    }
}
