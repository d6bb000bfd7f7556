using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Numerics;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Foods;

/// <summary>The plain beer that a food is tried in: pale malt, an ale yeast, and a kit that loses nothing but what solids hold.</summary>
/// <remarks>
/// Pale ale malt mashed at 66 °C to 1.050 and fermented out. Without evaporation, dead volumes and siphon losses every difference
/// between the beer with the food and the beer without it is the food's own doing. It is laid out and run by the engine like any
/// other recipe.
/// </remarks>
internal static class PlainBrew
{
    /// <summary>Gravity of the plain wort as cast.</summary>
    public const double Gravity = 1.050;

    private const double LitresClose = 1e-9;
    private const int MostRuns = 40;

    /// <summary>The plain brew that has the dose's litres where it goes in, the same with the food, and the food's row among its additions; null when the food leaves no beer.</summary>
    public static (RunPlan Plain, RunPlan Dosed, int FoodRow)? For(FoodMakeup food, Dose dose)
    {
        double strike = StrikeForOneKilogram(dose.At);
        double kilograms = dose.Into.Litres / LitresAt(dose.At, RunOutcome.Likely(Plain(dose, 1, strike)));
        BrewPlan dosed = PlanOf(food, dose, kilograms, strike * kilograms);
        int row = dosed.AdditionLines.ToList().FindIndex(line => line.Food is not null);
        return dosed.Plan is null || row < 0 ? null : (Plain(dose, kilograms, strike * kilograms), dosed.Plan, row);
    }

    /// <summary>Litres of the plain brew where the dose goes in.</summary>
    private static double LitresAt(AdditionTime at, RunOutcome run) =>
        run[at.Point >= AdditionPoint.Rack ? BeerReadouts.PackagedLitres : BeerReadouts.CastLitres];

    /// <summary>Litres of strike liquor that a kilogram of malt wants for the gravity: bisection, since more liquor always thins.</summary>
    private static double StrikeForOneKilogram(AdditionTime at)
    {
        RunPlan plan = Plain(new Dose(default, at, VolumeAt20C.FromLitres(1)), 1, 5);
        return new Bracket(2, 30).Halved(TooStrong, MostRuns, LitresClose).Middle;

        double TooStrong(double litres)
        {
            plan.Liquors[0] = litres * Wort.WaterKilogramsPerLitre;
            return RunOutcome.Likely(plan)[BeerReadouts.CastGravity] - Gravity;
        }
    }

    private static RunPlan Plain(Dose dose, double maltKilograms, double strikeLitres)
    {
        BrewPlan plain = PlanOf(null, dose, maltKilograms, strikeLitres);
        return plain.Plan ?? throw new InvalidOperationException(
            "The plain brew cannot be laid out: " + string.Join("; ", plain.Findings.Select(f => f.Message)));
    }

    private static BrewPlan PlanOf(FoodMakeup? food, Dose dose, double maltKilograms, double strikeLitres)
    {
        List<IngredientLine> lines =
        [
            Line(IngredientKind.Malt, "pale-ale-malt", maltKilograms, new(AdditionPoint.Mash)),
            Line(IngredientKind.Yeast, YeastStyles.All[0].Id, 0.0005 * strikeLitres, new(AdditionPoint.Pitch)) with { Form = IngredientForm.Dry },
        ];
        if (food is not null)
        {
            lines.Insert(1, Line(IngredientKind.Food, food.Id, dose.Amount.Kilograms, dose.At));
        }

        return BrewPlanner.Plan(RecipeOf(lines, dose.At, strikeLitres), Kit, food is null ? Larder.Empty : Larder.OfFoods(food));
    }

    private static Recipe RecipeOf(List<IngredientLine> lines, AdditionTime at, double strikeLitres) => new()
    {
        Name = "plain brew",
        Package = new PackageWish(Litres(strikeLitres), Kit.Packages[0].Kind, null),
        Mash = new MashPlan(MashMethod.Bag, [Rest(66, 60)], SpargePlan.None),
        Liquor = new LiquorPlan(Litres(strikeLitres), null),
        Boil = new BoilPlan(Minutes(Math.Max(60, at.Point == AdditionPoint.Boil ? at.Count : 0))),
        Stand = at.Point == AdditionPoint.Stand ? Rest(80, Math.Max(20, at.Count)) : null,
        Ferment = [Rest(20, 60 * 24 * Math.Max(14, at.Point == AdditionPoint.Ferment ? at.Count + 7 : 0))],
        Ingredients = lines,
    };

    private static readonly Kit Kit = Lossless(BuiltInKit.LanternShed);

    private static Kit Lossless(Kit kit) => kit with
    {
        Kettle = kit.Kettle with
        {
            Evaporation = new(Evaporation.FromLitresPerHour(0), "0 L/h"),
            LeftBehind = Litres(0),
            SolidsLeft = new(Fraction.FromRatio(0), "0 %"),
        },
        RackingLeftBehind = Litres(0),
    };

    private static IngredientLine Line(IngredientKind kind, string of, double kilograms, AdditionTime at) => new()
    {
        Kind = kind,
        Of = of,
        Amount = new Amount(new Entered<Mass>(Mass.FromKilograms(kilograms), Text(kilograms, "kg")), null),
        At = at,
    };

    private static Rest Rest(double celsius, double minutes) => new(new(Temperature.FromCelsius(celsius), Text(celsius, "°C")), Minutes(minutes));

    private static Entered<Duration> Minutes(double minutes) => new(Duration.FromMinutes(minutes), Text(minutes, "min"));

    private static Entered<VolumeAt20C> Litres(double litres) => new(VolumeAt20C.FromLitres(litres), Text(litres, "L"));

    private static string Text(double value, string unit) => Invariant($"{value:0.######} {unit}");
}
