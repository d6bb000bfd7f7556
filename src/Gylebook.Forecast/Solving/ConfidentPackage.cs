using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report.Doubt;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Numerics;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Solving;

/// <summary>A package that is full with a confidence asked for: planned for so much beer that this share of the draws fills it.</summary>
/// <param name="PlannedLitres">The package it was planned for, litres at 20 °C: what is there in the likely brew.</param>
/// <param name="FullShare">Share of the draws in which the package is full.</param>
public sealed record ConfidentPackage(double PlannedLitres, double FullShare)
{
    /// <summary>Draws that a share is counted over: enough to tell a per cent.</summary>
    private const int DrawCount = 2000;

    /// <summary>So close to the share asked for is close enough: a hundredth, which so many draws just tell.</summary>
    private const double ShareClose = 0.005;

    private const double MostTimes = 3;

    /// <summary>The least package to plan for; null when not even three times as much fills it so often.</summary>
    /// <param name="recipe">The recipe; its own weights scale with the package in each trial.</param>
    /// <param name="kit">The kit.</param>
    /// <param name="larder">The brewer's own sheets.</param>
    /// <param name="litres">What must be full, litres at 20 °C.</param>
    /// <param name="confidence">Share of brews, above 0 and below 1.</param>
    public static ConfidentPackage? For(Recipe recipe, Kit kit, Larder larder, double litres, double confidence)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(litres);
        if (!(confidence is > 0 and < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "Expected above 0 and below 1.");
        }

        double? Full(double planned) => ShareFull((recipe with { Liquor = null }).Grown(new Entered<VolumeAt20C>(VolumeAt20C.FromLitres(planned), "")), kit, larder, litres);
        SecantResult found = BracketedSecant.Search(Full, confidence, new Bracket(0.2 * litres, MostTimes * litres), litres, ShareClose);
        return found.Solved ? new ConfidentPackage(found.At, found.Reached) : null;
    }

    /// <summary>In how many of the draws there is at least so much to package; null when the recipe cannot be planned.</summary>
    private static double? ShareFull(Recipe recipe, Kit kit, Larder larder, double litres)
    {
        BrewPlan planned = BrewPlanner.Plan(recipe, kit, larder);
        if (planned.Plan is not { } plan)
        {
            return null;
        }

        ReadOnlySpan<double> packaged =
            DrawnBrew.Of(planned, RunOutcome.Likely(plan), "confidence", DrawCount, [], readouts: [BeerReadouts.PackagedLitres])[BeerReadouts.PackagedLitres];
        int full = 0;
        foreach (double each in packaged)
        {
            full += each >= litres ? 1 : 0;
        }

        return (double)full / packaged.Length;
    }
}
