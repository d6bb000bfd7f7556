using Gylebook.Engine.Makeups;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Foods;

/// <summary>What one makeup of a food did: the brew with it against the brew without it, and the food alone through the same stages.</summary>
internal readonly record struct TriedFood
{
    public double GravityPoints { get; private init; }

    public double SuspensionPoints { get; private init; }

    public double FinalGravityPoints { get; private init; }

    /// <summary>Not a number when the food brings no extract.</summary>
    public double FermentableShare { get; private init; }

    public double UnfermentableGramsPerLitre { get; private init; }

    public double StarchGrams { get; private init; }

    public double StarchConvertedGrams { get; private init; }

    public double StarchHazeGrams { get; private init; }

    public double StarchSettledGrams { get; private init; }

    public double StarchLaterVolumes { get; private init; }

    public double InsolubleGrams { get; private init; }

    public double InsolubleWithGrainGrams { get; private init; }

    public double SludgeLitres { get; private init; }

    public double SludgeInAllLitres { get; private init; }

    public double BeerLostLitres { get; private init; }

    public double PackagedLitres { get; private init; }

    public double FatGramsPerLitre { get; private init; }

    public double FatKeptMgPerL { get; private init; }

    public double ProteinGramsPerLitre { get; private init; }

    public double SodiumMgPerL { get; private init; }

    public double PotassiumMgPerL { get; private init; }

    public double AcidsGramsPerLitre { get; private init; }

    public double BeerPh { get; private init; }

    public double WaterLitres { get; private init; }

    public double EthanolGrams { get; private init; }

    public double AlcoholByVolume { get; private init; }

    public double Co2Volumes { get; private init; }

    /// <summary>Tries a makeup of the food in the plain brew.</summary>
    public static TriedFood Of(FoodMakeup food, Dose dose, TrialRun plain, RunPlan dosed, int row)
    {
        Wort makeup = FoodFigures.Placed(food, dose.Amount.Kilograms, dose.At.Point);
        double[] draw = [.. dosed.Medians];
        ((FoodInPlace)dosed.Makeups[dosed.Additions[row].Makeup]).Draw(FoodFigures.Of(food), draw);
        TrialRun with = new(dosed, draw);
        double litres = dose.Into.Litres;
        bool late = dose.At.Point >= AdditionPoint.Rack;
        Wort alone = AloneInTheBeer(makeup, dose, dosed, out double offered);
        double starch = food.Starch * dose.Amount.Grams;
        double haze = 1000 * (with.At(Stage.Package)[Component.HazeStarch] - plain.At(Stage.Package)[Component.HazeStarch]);
        double converted = dose.At.Point == AdditionPoint.Mash ? 1000 * (makeup[Component.Starch] - alone[Component.Starch]) : 0;
        double sludge = late ? SettledLitres(makeup, dosed.Medians) + HeldLitres(makeup, dosed.Medians) : with[BeerReadouts.SludgeLitres] - plain[BeerReadouts.SludgeLitres];
        double clear = late
            ? Points(with.At(Stage.Package).Gravity - plain.At(Stage.Package).Gravity)
            : Points(with[BeerReadouts.OriginalGravity] - plain[BeerReadouts.OriginalGravity]);
        Stage stirred = late ? Stage.Package : dose.At.Point >= AdditionPoint.Pitch ? Stage.Ferment : Stage.Cast;
        return new TriedFood
        {
            GravityPoints = clear,
            SuspensionPoints = clear + with.SolidsLift(stirred) - plain.SolidsLift(stirred),
            FinalGravityPoints = late
                ? Points(with.At(Stage.Pour).Gravity - plain.At(Stage.Pour).Gravity)
                : Points(with[BeerReadouts.FinalGravity] - plain[BeerReadouts.FinalGravity]),
            FermentableShare = offered > Nothing ? (offered - alone.ExtractMass) / offered : double.NaN,
            UnfermentableGramsPerLitre = 1000 * alone.ExtractMass / litres,
            StarchGrams = starch,
            StarchConvertedGrams = converted,
            StarchHazeGrams = haze,
            StarchSettledGrams = Math.Max(0, starch - converted - haze),
            StarchLaterVolumes = haze / litres / Carbonation.GramsPerLitreInOneVolume * GasPerStarch,
            InsolubleGrams = 1000 * food.Insoluble * dose.Amount.Kilograms,
            InsolubleWithGrainGrams = 1000 * (with.Lost(Loss.HeldInGrain)[Component.FoodSolids] - plain.Lost(Loss.HeldInGrain)[Component.FoodSolids]),
            SludgeLitres = sludge,
            SludgeInAllLitres = with[BeerReadouts.SludgeLitres],
            BeerLostLitres = late ? HeldLitres(makeup, dosed.Medians) : LostLitres(with) - LostLitres(plain),
            PackagedLitres = with[BeerReadouts.PackagedLitres] - plain[BeerReadouts.PackagedLitres],
            FatGramsPerLitre = 1000 * makeup[Component.Fat] / litres,
            FatKeptMgPerL = with[BeerReadouts.Fat] - plain[BeerReadouts.Fat],
            ProteinGramsPerLitre = 1000 * makeup[Component.Protein] / litres,
            SodiumMgPerL = with[BeerReadouts.Sodium] - plain[BeerReadouts.Sodium],
            PotassiumMgPerL = IonTracers.MilligramsPerLitre(with.At(Stage.Pour), Ion.Potassium) - IonTracers.MilligramsPerLitre(plain.At(Stage.Pour), Ion.Potassium),
            AcidsGramsPerLitre = food.Acids > 0 ? 1000 * food.Acids * dose.Amount.Kilograms / litres : double.NaN,
            BeerPh = food.Acids > 0 ? with[PhReadouts.BeerPh] - plain[PhReadouts.BeerPh] : double.NaN,
            WaterLitres = makeup[Component.Water] / Wort.WaterKilogramsPerLitre,
            EthanolGrams = 1000 * makeup[Component.Ethanol],
            AlcoholByVolume = with[BeerReadouts.AlcoholByVolume] - plain[BeerReadouts.AlcoholByVolume],
            Co2Volumes = VolumesInPackage(food, dose, plain, dosed),
        };
    }

    /// <summary>Kilograms below which there is none of it.</summary>
    private const double Nothing = 1e-9;

    /// <summary>The food alone through the mash, if it goes there, and past the yeast.</summary>
    private static Wort AloneInTheBeer(in Wort makeup, Dose dose, RunPlan plan, out double offered)
    {
        Wort alone = makeup;
        if (dose.At.Point == AdditionPoint.Mash)
        {
            Mash.Convert(ref alone, plan.Mash, plan.Medians, plan.Reactions);
        }

        offered = alone.ExtractMass;
        Ferment.Out(ref alone, plan.Ferments[0] with { Tires = null }, plan.Reactions, plan.Medians);
        return alone;
    }

    /// <summary>Gas that the food makes in the package, over the litres it goes into, by the stage that conditions beer.</summary>
    private static double VolumesInPackage(FoodMakeup food, Dose dose, TrialRun plain, RunPlan plan)
    {
        Wort beer = default;
        beer.Add(plain.At(Stage.Package), dose.Into.Litres / plain.At(Stage.Package).Litres);
        double without = Package.RefermentableVolumes(beer, plan.Ferments[0], plan.Reactions, plan.Medians);
        beer.Add(FoodFigures.Placed(food, dose.Amount.Kilograms, AdditionPoint.Package));
        return Package.RefermentableVolumes(beer, plan.Ferments[0], plan.Reactions, plan.Medians) - without;
    }

    private static double LostLitres(TrialRun run) => run.Lost(Loss.Sludge).Litres + run.Lost(Loss.HeldInGrain).Litres;

    private static double SettledLitres(in Wort solids, double[] draw) => Sludge.SolidLitres(solids, draw) - (solids[Component.Fat] / draw[(int)Known.FatDensity]);

    // A litre of beer is taken as a kilogram: within 1 %, far inside what is known of the hold.
    private static double HeldLitres(in Wort solids, double[] draw) => Sludge.HeldKilograms(solids, draw);

    private static double Points(double gravity) => 1000 * gravity;

    /// <summary>Kilograms of carbon dioxide that a kilogram of starch would make, if something turned it to glucose and ate it.</summary>
    private static readonly double GasPerStarch = Reactions.HydrationOf(Component.Glucose)
        * Reactions.Published.Conditioning.Single(row => row.Reactant == Component.Glucose)
            .Terms.Single(term => term.Component == Component.CarbonDioxide).PerKilogram;
}
