using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Foods;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Foods;

/// <summary>Tries a food: runs a plain brew with and without it, at the likely makeup and at the ends of what its label allows.</summary>
/// <remarks>The plain brew loses nothing but what solids hold, so every dose is tried in a batch of one size, and its grams and litres are multiplied up or down.</remarks>
public static class FoodTrial
{
    private const double BatchLitres = 20;

    /// <summary>What the dose does; null when it leaves no beer: its solids hold all there is.</summary>
    /// <exception cref="ArgumentException">Next to nothing is known of the food: it has no makeup.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There are no litres to put it into.</exception>
    public static FoodEffect? Of(MadeUpFood food, Dose dose)
    {
        FoodMakeup makeup = food.Makeup ?? throw new ArgumentException("The food has no makeup.", nameof(food));
        if (dose.Into.Litres <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(dose), dose.Into.Litres, "A dose goes into more than 0 L.");
        }

        if (dose.Amount.Kilograms <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(dose), dose.Amount.Kilograms, "A dose weighs more than 0 kg.");
        }

        double batches = dose.Into.Litres / BatchLitres;
        Dose whole = dose;
        dose = dose with { Amount = Mass.FromKilograms(dose.Amount.Kilograms / batches), Into = VolumeAt20C.FromLitres(BatchLitres) };
        if (PlainBrew.For(makeup, dose) is not (RunPlan plainPlan, RunPlan dosed, int row))
        {
            return null;
        }

        TrialRun plain = new(plainPlan);
        TriedFood likely = TriedFood.Of(makeup, dose, plain, dosed, row);
        double extraLiquor = ExtraLiquor(dosed, plain);
        List<TriedFood> ends = [likely];
        foreach (FoodMakeup end in EndsOf(food, makeup))
        {
            ends.Add(TriedFood.Of(end, dose, plain, dosed, row));
        }

        FoodEffect effect = Difference(whole, batches, likely, ends, extraLiquor);
        // The balance takes sodium and potassium that nothing states as none; a reader must not.
        effect = food.Composition is { SodiumMilligrams: null } ? effect with { SodiumMgPerL = null } : effect;
        return food.Composition is { PotassiumMilligrams: null } ? effect with { PotassiumMgPerL = null } : effect;
    }

    /// <summary>The label's ends, each at both ends of its hold; for a food without a label, the hold alone.</summary>
    private static IEnumerable<FoodMakeup> EndsOf(MadeUpFood food, FoodMakeup likely)
    {
        bool holdVaries = likely.SettledHoldHigh > likely.SettledHoldLow;
        foreach (FoodMakeup end in food.Ends)
        {
            yield return holdVaries ? end with { SettledHold = end.SettledHoldLow } : end;
            if (holdVaries)
            {
                yield return end with { SettledHold = end.SettledHoldHigh };
            }
        }
    }

    /// <summary>Liquor that fills the package as the plain brew fills it.</summary>
    private static double ExtraLiquor(RunPlan dosed, TrialRun plain)
    {
        double before = dosed.Liquors[0];
        double litres = before / Wort.WaterKilogramsPerLitre;
        PlanOutcome outcome = LiquorPlanner.Solve(dosed, new RunTrace(dosed), 0, plain[BeerReadouts.PackagedLitres], litres, 0);
        dosed.Liquors[0] = before;
        return outcome.Solved ? outcome.LiquorLitres - litres : double.NaN;
    }

    private static FoodEffect Difference(Dose dose, double batches, in TriedFood likely, List<TriedFood> ends, double extraLiquor)
    {
        TriedFood middle = likely;
        Band? Band(Func<TriedFood, double> of, string unit) => BandOf(of(middle), ends.Select(of), unit);
        return new FoodEffect
        {
            Dose = dose,
            GravityPoints = Band(t => t.GravityPoints, "points"),
            SuspensionPoints = Band(t => t.SuspensionPoints, "points"),
            FinalGravityPoints = Band(t => t.FinalGravityPoints, "points"),
            FermentableShare = Band(t => t.FermentableShare, "1"),
            UnfermentableGramsPerLitre = Band(t => t.UnfermentableGramsPerLitre, "g/L"),
            StarchGrams = Band(t => batches * t.StarchGrams, "g"),
            StarchConvertedGrams = Band(t => batches * t.StarchConvertedGrams, "g"),
            StarchHazeGrams = Band(t => batches * t.StarchHazeGrams, "g"),
            StarchSettledGrams = Band(t => batches * t.StarchSettledGrams, "g"),
            StarchLaterVolumes = Band(t => t.StarchLaterVolumes, "volumes"),
            InsolubleGrams = Band(t => batches * t.InsolubleGrams, "g"),
            InsolubleWithGrainGrams = Band(t => batches * t.InsolubleWithGrainGrams, "g"),
            SludgeLitres = Band(t => batches * t.SludgeLitres, "L"),
            SludgeInAllLitres = Band(t => batches * t.SludgeInAllLitres, "L"),
            BeerLostLitres = Band(t => batches * t.BeerLostLitres, "L"),
            PackagedLitres = Band(t => batches * t.PackagedLitres, "L"),
            ExtraLiquorLitres = double.IsNaN(extraLiquor) ? null : Engine.Readouts.Band.Point(batches * extraLiquor, "L"),
            FatGramsPerLitre = Band(t => t.FatGramsPerLitre, "g/L"),
            FatKeptMgPerL = Band(t => t.FatKeptMgPerL, "mg/L"),
            Fat = FatAdvice.For(likely.FatKeptMgPerL),
            ProteinGramsPerLitre = Band(t => t.ProteinGramsPerLitre, "g/L"),
            SodiumMgPerL = Band(t => t.SodiumMgPerL, "mg/L"),
            PotassiumMgPerL = Band(t => t.PotassiumMgPerL, "mg/L"),
            AcidsGramsPerLitre = Band(t => t.AcidsGramsPerLitre, "g/L"),
            BeerPh = Band(t => t.BeerPh, "pH"),
            WaterLitres = Band(t => batches * t.WaterLitres, "L"),
            EthanolGrams = Band(t => batches * t.EthanolGrams, "g"),
            AlcoholByVolume = Band(t => t.AlcoholByVolume, "% vol"),
            Co2VolumesIfPackaged = Band(t => t.Co2Volumes, "volumes"),
        };
    }

    private static Band? BandOf(double likely, IEnumerable<double> ends, string unit)
    {
        List<double> known = [.. ends.Where(double.IsFinite)];
        if (!double.IsFinite(likely) || known.Count == 0)
        {
            return null;
        }

        (double low, double high) = (known.Min(), known.Max());
        bool hasWidth = high - low > MeansNothing * Math.Max(1, Math.Abs(high));
        return hasWidth ? new Band(low, likely, high, unit, BandKind.Bounds) : Engine.Readouts.Band.Point(likely, unit);
    }

    /// <summary>A relative width that is only rounding.</summary>
    private const double MeansNothing = 1e-9;
}
