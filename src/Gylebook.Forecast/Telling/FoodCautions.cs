using System.Globalization;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Science.Foods.Doses;

namespace Gylebook.Forecast.Telling;

/// <summary>What to look out for with a food, wherever it goes in; the recipe's own cautions speak of the place it does.</summary>
public static class FoodCautions
{
    private const string Trade = "common practice, no source";
    private const double DryBelow = 0.2;
    private const double FattyAbove = 0.05;
    private const double SugaryAbove = 0.05;

    /// <summary>All that hold for this food.</summary>
    public static IReadOnlyList<Caution> Of(FoodMakeup food) =>
        [.. Allergens(food), .. Places(food), .. Beer(food), .. Doses(food)];

    /// <summary>A powder or a sugar in hot wort.</summary>
    internal static Caution Powder(string name, string at) => new(
        "boilover.powder", Severity.Warning, at,
        $"{name} foams in hot wort and can burn on: flame off, stirred to a slurry first, in five parts, with a third of the kettle empty.", Trade);

    /// <summary>Anything into fermenting beer.</summary>
    internal static Caution Foam(string name, string at) => new(
        "foam.fermenter", Severity.Warning, at,
        $"{name} shakes gas out of fermenting beer. Cool it, leave a third of the room, and add it in five parts.", Trade);

    /// <summary>Something solid into cold beer.</summary>
    internal static Caution Raw(string name, string at) => new(
        "food.raw", Severity.Warning, at,
        $"{name} goes into cold beer: heat it to 75 °C for ten minutes or steep it in spirit first, add it below pH 4.6 and with alcohol present, and keep purées cold until then.", Trade);

    private static IEnumerable<Caution> Allergens(FoodMakeup food)
    {
        if (food.Allergens.Count > 0)
        {
            yield return new(
                "allergen.food", Severity.Warning, "package",
                $"Brings {string.Join(", ", food.Allergens)}. Say so to everyone who drinks it, on the glass and on the label; traces reach the next beer through hoses and pans.",
                "21 U.S.C. 321(qq); Regulation (EU) No 1169/2011, Annex II");
        }
    }

    private static IEnumerable<Caution> Places(FoodMakeup food)
    {
        if (food.Water < DryBelow)
        {
            yield return Powder(Capital(food.Name), "boil");
        }

        yield return Foam(Capital(food.Name), "ferment");
        if (food.Insoluble > 0)
        {
            yield return Raw(Capital(food.Name), "ferment");
        }

        double sugar = food.Sucrose + food.Glucose + food.Fructose + food.Maltose;
        if (sugar > SugaryAbove)
        {
            yield return new(
                "sugar.package", Severity.Warning, "package",
                $"{Grams(sugar)} g of sugar in a kilogram of {food.Name} ferment, in the package too. Add it while the yeast still works, and bottle only when the gravity has stood still for three days.",
                "stoichiometry; resting time common practice, no source");
        }
    }

    private static IEnumerable<Caution> Beer(FoodMakeup food)
    {
        if (food.Fat > FattyAbove)
        {
            yield return new(
                "fat.head", Severity.Note, "ferment",
                $"{Grams(food.Fat)} g of fat in a kilogram of {food.Name}: fat that reaches the beer takes its head away and goes stale.", Trade);
        }

        if (food.Starch > 0 && food.StarchIsOpen)
        {
            yield return new(
                "starch.later", Severity.Note, "boil",
                $"The starch of {food.Name} is open: mash it, or it hangs in the beer as haze that a diastatic or wild yeast could still eat in the package.", Trade);
        }
    }

    private static IEnumerable<Caution> Doses(FoodMakeup food)
    {
        if (Stimulants.CaffeineMilligramsPer100Grams(food.Name) is > 0 and var caffeine)
        {
            yield return Dose(
                "dose.caffeine", $"100 g of {food.Name} bring {caffeine.ToString("0", CultureInfo.InvariantCulture)} mg of caffeine", CaffeineDose.AdultsADay);
            yield return new(
                "grain.pets", Severity.Warning, "mash", "Spent grain with it is no feed: caffeine, theobromine and hops can kill dogs.", Trade);
        }

        if (food.Id.StartsWith("nutmeg", StringComparison.Ordinal))
        {
            yield return Dose("dose.nutmeg", "Nutmeg poisons in large doses", NutmegDose.Toxic);
            yield return Dose("dose.nutmegCap", "The most nutmeg we advise in beer", NutmegDose.AdvisedCap);
        }

        if (food.Id.StartsWith("cinnamon", StringComparison.Ordinal))
        {
            yield return Dose("dose.coumarin", "Cassia cinnamon brings coumarin, Ceylon cinnamon next to none", CoumarinDose.TolerableDailyIntake);
        }
    }

    private static Caution Dose(string code, string what, PublishedLimit limit) => new(
        code, Severity.Warning, "glass",
        $"{what}. Limit: {limit.Value.ToString("0.##", CultureInfo.InvariantCulture)} {limit.Unit}. {limit.Meaning}", limit.Source);

    private static string Capital(string name) => string.Concat(char.ToUpperInvariant(name[0]).ToString(), name.AsSpan(1));

    private static string Grams(double kilogramsPerKilogram) => (kilogramsPerKilogram * 1000).ToString("0", CultureInfo.InvariantCulture);
}
