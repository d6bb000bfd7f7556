using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Foods;

/// <summary>Reads a nutrition panel as a composition per 100 g, each figure a point as printed.</summary>
/// <remarks>
/// What: per serving to per 100 g; European carbohydrate to carbohydrate with fibre; salt to sodium.
/// Source: 21 CFR 101.9; Regulation (EU) No 1169/2011, annexes I and XIV (salt = 2.5 × sodium).
/// Valid for: a serving stated by mass. A panel per 100 mL needs the density, which it does not print.
/// Accuracy: a printed whole gram stands for half a gram either way, times 100 over the serving; laws allow 20 % besides.
/// </remarks>
internal static class LabelReading
{
    private const double SodiumPerSalt = 1 / 2.5;

    /// <summary>Half of the last printed place of most figures, g a serving (U.S.) or per 100 g (EU, 10 g and more).</summary>
    private const double HalfStep = 0.5;

    /// <summary>Protein, fat, carbohydrate: the printed figures whose sum cannot pass the whole.</summary>
    private const int FiguresInSum = 3;

    /// <summary>How far the sum of the printed figures may pass 100 g by rounding alone, g/100 g.</summary>
    public static double RoundingOfSum(LabelPanel label) => FiguresInSum * HalfStep * PerHundred(label);

    /// <summary>The panel as a composition; a missing European fibre is borrowed from the family.</summary>
    public static FoodComposition Read(LabelPanel label, FoodFamily family, MakeupNotes notes)
    {
        var factor = PerHundred(label);
        double? Per100(Entered<Mass>? printed) => printed?.Value.Grams * factor;
        var carbohydrate = Per100(label.Carbohydrate);
        var fibre = Per100(label.Fibre);
        if (label.Style == LabelStyle.Eu && carbohydrate is { } available)
        {
            fibre ??= notes.Borrow(
                "fibre", available * family.FibreOfCarbohydrate / Math.Max(0.01, 1 - family.FibreOfCarbohydrate), "g/100 g", family);
            carbohydrate = available + fibre;
        }
        var composition = new FoodComposition
        {
            Protein = Per100(label.Protein),
            Fat = Per100(label.Fat),
            Carbohydrate = carbohydrate,
            Fibre = fibre,
            Starch = Per100(label.Starch),
            Sugars = Per100(label.Sugars),
            Polyols = Per100(label.SugarAlcohols),
            SodiumMilligrams = 1000 * (Per100(label.Sodium) ?? (Per100(label.Salt) * SodiumPerSalt)),
            EnergyKilocalories = label.EnergyKilocalories * factor,
            Source = "label as printed",
        };
        Doubts(label, composition, factor, notes);
        return composition;
    }

    private static double PerHundred(LabelPanel label) =>
        label.Serving is { Value.Grams: > 0 } serving ? 100 / serving.Value.Grams : 1;

    private static void Doubts(LabelPanel label, FoodComposition food, double factor, MakeupNotes notes)
    {
        notes.Find("food.labelRead", Severity.Note, "label",
            $"Read as printed, as points: a rounded figure may be {MakeupNotes.Say(HalfStep * factor)} g/100 g off either way.");
        // Half a step is a tenth of the food: zeros then say nothing.
        if (HalfStep * factor > 10)
        {
            notes.Find("food.labelSaysLittle", Severity.Warning, "label.serving",
                "The serving is so small that printed figures, zeros above all, say next to nothing. Find a panel per 100 g.",
                label.Serving?.Text, "5 g");
        }
        // In the U.S. sense fibre and sugars are parts of carbohydrate; three roundings may hide 1.5 g a serving.
        if (label.Style == LabelStyle.Us && food.Fibre + food.Sugars > food.Carbohydrate + RoundingOfSum(label))
        {
            notes.Find("food.carbohydrateStyle", Severity.Warning, "label.carbohydrate",
                "Fibre and sugars together are more than the carbohydrate: this looks like a European panel, which counts fibre apart.",
                label.Carbohydrate?.Text);
        }
        Energy(label, food, factor, notes);
    }

    /// <summary>Energy by 4-4-9; the same without fibre and sugar alcohols; and by the European factors, each give or take 20 %.</summary>
    private static void Energy(LabelPanel label, FoodComposition food, double factor, MakeupNotes notes)
    {
        if (food is not { EnergyKilocalories: { } energy, Protein: { } protein, Fat: { } fat, Carbohydrate: { } carbohydrate })
        {
            return;
        }
        var fibre = food.Fibre ?? 0;
        var polyols = food.Polyols ?? 0;
        var rest = (4 * protein) + (9 * fat);
        var all = rest + (4 * carbohydrate);
        var digestible = rest + (4 * Math.Max(0, carbohydrate - fibre - polyols));
        var european = digestible + (2 * fibre) + (2.4 * polyols);
        // Rounded to 5 kcal either way on a U.S. serving above 50 kcal.
        var rounding = 5 * factor;
        var low = (0.8 * Math.Min(digestible, european)) - rounding;
        var high = (1.2 * Math.Max(all, european)) + rounding;
        if (energy < low || energy > high)
        {
            notes.Find("food.energyDiffers", Severity.Note, "label.energy",
                "The energy does not follow from protein, fat and carbohydrate by any of the usual factors, give or take a fifth. Check the figures.",
                MakeupNotes.Say(label.EnergyKilocalories ?? 0) + " kcal",
                $"{MakeupNotes.Say(low / factor)} to {MakeupNotes.Say(high / factor)} kcal");
        }
    }
}
