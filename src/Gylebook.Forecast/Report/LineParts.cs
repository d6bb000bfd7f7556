using Gylebook.Engine.Makeups;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.Stages;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report.Bitterness;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Report;

/// <summary>What one line of a recipe brings; null where that says nothing of its kind.</summary>
/// <param name="Line">Its number in the recipe, from 0.</param>
public sealed record LinePart(int Line)
{
    /// <summary>Of the grist as weighed, per cent.</summary>
    public double? GristPercent { get; init; }

    /// <summary>Points of original gravity that would be missing without it, with everything else and the liquor left as they are.</summary>
    public double? GravityPoints { get; init; }

    /// <summary>Bitterness it leaves in the served beer, IBU.</summary>
    public double? Ibu { get; init; }

    /// <summary>Grams in each litre packaged.</summary>
    public double? GramsPerLitre { get; init; }
}

/// <summary>Tells what each line brings, read off the same run as everything else.</summary>
public static class LineParts
{
    /// <summary>One part a line, in the order of the recipe; none when the recipe cannot be run.</summary>
    public static IReadOnlyList<LinePart> Of(BrewPlan brew)
    {
        if (brew.Plan is not { } plan)
        {
            return [];
        }

        RunOutcome whole = RunOutcome.Likely(plan);
        ILookup<int, double> bitterness = BitternessRows.Of(brew, whole).Where(h => h.Ibu > 0).ToLookup(h => h.Line, h => h.Ibu);
        return
        [
            .. brew.Lines.Select(line => new LinePart(line.Number)
            {
                GristPercent = IsGrist(line) && plan.Mash.GristKilograms > 0 ? 100 * line.Kilograms / plan.Mash.GristKilograms : null,
                GravityPoints = BringsGravity(line) ? Points(brew, plan, line, whole) : null,
                Ibu = bitterness.Contains(line.Number) ? bitterness[line.Number].Sum() : null,
                GramsPerLitre = line.Line.At.Point == AdditionPoint.Package ? line.Kilograms * 1000 / whole[BeerReadouts.PackagedLitres] : null,
            }),
        ];
    }

    private static bool IsGrist(PlannedLine line) =>
        line.Line.At.Point == AdditionPoint.Mash && line.Line.Kind is IngredientKind.Malt or IngredientKind.Food;

    /// <summary>Malt is told by its share: its gravity hangs on the enzymes of the others, and cannot be taken out alone.</summary>
    private static bool BringsGravity(PlannedLine line) =>
        line.Malt is null && line.Makeup.ExtractMass > 0 && line.Line.Kind is IngredientKind.Sugar or IngredientKind.Extract or IngredientKind.Food
        && line.Line.At.Point < AdditionPoint.Package;

    private static double? Points(BrewPlan brew, RunPlan plan, PlannedLine line, RunOutcome whole)
    {
        Makeup[] without = [.. plan.Makeups];
        foreach ((Addition addition, PlannedLine its) in plan.Additions.Zip(brew.AdditionLines))
        {
            if (its.Number == line.Number)
            {
                without[addition.Makeup] = Nothing;
            }
        }

        double points = 1000 * (whole[BeerReadouts.OriginalGravity] - RunOutcome.Likely(plan with { Makeups = without })[BeerReadouts.OriginalGravity]);
        return double.IsFinite(points) ? points : null;
    }

    private static readonly PlainMakeup Nothing = new(default);
}
