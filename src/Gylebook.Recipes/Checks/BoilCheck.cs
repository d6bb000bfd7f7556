namespace Gylebook.Recipes.Checks;

/// <summary>The boil and the stand after it.</summary>
internal static class BoilCheck
{
    private const double MostHours = 6;
    private const double HottestStand = 100;

    internal static void Check(Recipe recipe, FindingList findings)
    {
        if (recipe.Boil is { } boil && boil.Time.Value.Hours > MostHours)
        {
            findings.Warning(
                "boil.long", "boil.time", Invariant($"{boil.Time}; longer than {MostHours} h boils most kettles dry, and no bitterness model reaches that far"),
                boil.Time.Text, Invariant($"{MostHours} h"));
        }

        if (recipe.Stand is { } stand && stand.Temperature.Value.Celsius is < 0 or > HottestStand)
        {
            findings.Error(
                "stand.temperature", "stand.temperature", Invariant($"{recipe.Stand.Temperature}; must be 0 °C to {HottestStand} °C: wort off the boil is no hotter"),
                recipe.Stand.Temperature.Text, Invariant($"0 °C to {HottestStand} °C"));
        }
    }
}
