using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Fermenting;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Report.Pitching;

/// <summary>How much yeast a wort wants, how much there is, and how to come from the one to the other.</summary>
/// <param name="CellsNeededBillions">By the pitch rate of its style-type.</param>
/// <param name="CellsBillions">Living cells in what the recipe pitches, in the middle of the two rules of ageing; null when its form does not say.</param>
/// <param name="OxygenMgPerL">To aim for; null when dry yeast needs none.</param>
public sealed record PitchAdvice(double CellsNeededBillions, double? CellsBillions, double? OxygenMgPerL)
{
    private const double Billion = 1e9;

    /// <summary>Wort stronger than this is strong to yeast: the trade's line for more oxygen. Common practice, no source.</summary>
    internal const double StrongGravity = 1.075;

    /// <summary>Names of the yeasts pitched.</summary>
    public required IReadOnlyList<string> Yeasts { get; init; }

    /// <summary>Million cells per millilitre and degree Plato.</summary>
    public required double Rate { get; init; }

    /// <summary>Living cells by the harsher rule of ageing; null as above.</summary>
    public double? CellsLowBillions { get; init; }

    /// <summary>Living cells by the milder rule; null as above.</summary>
    public double? CellsHighBillions { get; init; }

    /// <summary>Dry yeast that holds the cells needed, g.</summary>
    public required double DryYeastGrams { get; init; }

    /// <summary>Settled slurry that holds the cells needed, mL.</summary>
    public required double SlurryMillilitres { get; init; }

    /// <summary>Of the very slurry that is pitched, what holds the cells needed, mL, by the milder rule of ageing and by the harsher; null unless slurry alone is pitched and some of it lives by both.</summary>
    public (double Low, double High)? OfThisSlurryMillilitres { get; init; }

    /// <summary>Starters that would bring the cells by the harsher rule to the cells needed, one for each model; empty when none is wanted.</summary>
    public required IReadOnlyList<StarterAdvice> Starters { get; init; }

    /// <summary>Why yeast of this beer should not be harvested to pitch again; empty when nothing speaks against it.</summary>
    public required IReadOnlyList<string> HarvestDoubts { get; init; }

    /// <summary>The advice; null when nothing is pitched.</summary>
    internal static PitchAdvice? Of(BrewPlan brew, RunOutcome figures, VolumeAt20C mostStarter)
    {
        List<PlannedLine> yeasts = [.. brew.Lines.Where(l => l.Yeast is not null && l.Line.At.Point == AdditionPoint.Pitch)];
        if (yeasts.Count == 0)
        {
            return null;
        }

        double rate = figures.Plan.Surroundings!.Pitch!.Rate;
        double needed = figures[PackageReadouts.CellsNeeded];
        (double Low, double High)? cells = figures[PackageReadouts.CellsLow] is var low && double.IsNaN(low) ? null : (low, figures[PackageReadouts.CellsHigh]);
        bool allDry = yeasts.All(y => y.Line.Form == IngredientForm.Dry);
        return new PitchAdvice(needed, cells is { } c ? (c.Low + c.High) / 2 : null, allDry ? null : OxygenOf(rate, figures))
        {
            Yeasts = [.. yeasts.Select(y => y.Name)],
            Rate = rate,
            CellsLowBillions = cells?.Low,
            CellsHighBillions = cells?.High,
            DryYeastGrams = PitchRate.DryYeastGrams(needed, figures.Draw[(int)Known.PitchCellsPerGram] / Billion),
            SlurryMillilitres = needed / (figures.Draw[(int)Known.SlurryCellsPerMillilitre] / Billion),
            OfThisSlurryMillilitres = yeasts.All(y => y.Line.Form == IngredientForm.Slurry) && cells is { Low: > 0 } alive ? OfThis(yeasts.Sum(y => y.Kilograms), needed, alive) : null,
            Starters = allDry || cells is not { Low: > 0 } there || there.Low >= needed ? [] : StartersFor(there.Low, needed, mostStarter),
            HarvestDoubts = HarvestDoubt.Of(brew, figures),
        };
    }

    /// <summary>A millilitre of slurry counts as a gram.</summary>
    private static (double Low, double High) OfThis(double kilograms, double needed, (double Low, double High) alive) =>
        (kilograms * 1000 * needed / alive.High, kilograms * 1000 * needed / alive.Low);

    private static double OxygenOf(double rate, RunOutcome figures) => rate > PitchRate.Ale || figures[BeerReadouts.OriginalGravity] > StrongGravity ? TradeRules.OxygenForStrong : TradeRules.OxygenForAle;

    private static List<StarterAdvice> StartersFor(double billions, double needed, VolumeAt20C mostStarter)
    {
        double solids = 1 - Sugars.Find("dry malt extract light").Match!.Water;
        return [.. Enum.GetValues<StarterHandling>().Select(handling =>
        {
            StarterPlan plan = StarterPlan.For(billions, needed, handling, mostStarter.Litres);
            return new StarterAdvice(handling, plan.Reaches, [.. plan.Steps.Select(s =>
                new StarterAdviceStep(s.Litres, s.ExtractGrams / solids, s.StartBillions, s.EndBillions))]);
        })];
    }
}

/// <summary>A starter by one of the two growth models.</summary>
/// <param name="Handling">How it is kept.</param>
/// <param name="Reaches">Whether it comes to the cells needed.</param>
/// <param name="Steps">Its steps.</param>
public sealed record StarterAdvice(StarterHandling Handling, bool Reaches, IReadOnlyList<StarterAdviceStep> Steps);

/// <summary>One step of a starter.</summary>
/// <param name="Litres">Wort of 10 °P, L.</param>
/// <param name="DryExtractGrams">Dry malt extract to weigh, g.</param>
/// <param name="StartBillions">Cells at the start, 10⁹.</param>
/// <param name="EndBillions">Cells at the end, 10⁹.</param>
public sealed record StarterAdviceStep(double Litres, double DryExtractGrams, double StartBillions, double EndBillions);
