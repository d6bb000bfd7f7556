using Gylebook.Science.Fermenting;

namespace Gylebook.Forecast.Telling;

/// <summary>How much yeast.</summary>
/// <param name="CellsNeededBillions">By the pitch rate of its style-type.</param>
/// <param name="CellsBillions">Living cells in what the recipe pitches, in the middle of the two rules of ageing; null when its form does not say.</param>
/// <param name="OxygenMgPerL">To aim for; null when dry yeast needs none.</param>
public sealed record PitchAdvice(double CellsNeededBillions, double? CellsBillions, double? OxygenMgPerL)
{
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

    /// <summary>Starters that would bring the cells by the harsher rule to the cells needed, one for each model; empty when none is wanted.</summary>
    public required IReadOnlyList<StarterAdvice> Starters { get; init; }

    /// <summary>Why yeast of this beer should not be harvested to pitch again; empty when nothing speaks against it.</summary>
    public required IReadOnlyList<string> HarvestDoubts { get; init; }
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
