using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Report;

/// <summary>Does the beer come to what was wished? Where something the brewer has fixed stands in the way, both figures and what binds.</summary>
internal static class WishCheck
{
    /// <summary>A miss within this share of the wish is no miss: kettles and fermenters are read no closer. Common practice, no source.</summary>
    internal const double Met = 0.02;

    /// <summary>All wishes that are missed.</summary>
    public static IEnumerable<Finding> Findings(BrewPlan brew, RunOutcome run) => [.. Volume(brew, run), .. Strength(run)];

    /// <summary>Liquor that is fixed by hand makes its own litres.</summary>
    private static IEnumerable<Finding> Volume(BrewPlan brew, RunOutcome run)
    {
        Entered<VolumeAt20C> wish = brew.Recipe.Package.Volume;
        double packaged = run[BeerReadouts.PackagedLitres], wished = wish.Value.Litres;
        if (Math.Abs(packaged - wished) <= Met * wished || Binds(brew.Recipe) is not (string where, string what))
        {
            yield break;
        }

        string comes = Invariant($"{packaged:0.0} L");
        string by = packaged < wished ? "More liquor there" : "Less liquor there";
        yield return new(
            "package.missed", Severity.Warning, where,
            $"{wish.Text} of beer wanted, {comes} come of it: {what}. {by}, or leave it empty and it is planned from the package", comes, wish.Text);
    }

    /// <summary>The liquor that would be planned, were it not fixed.</summary>
    private static (string Where, string What)? Binds(Recipe recipe) => recipe switch
    {
        { Mash.Method: MashMethod.Part, Liquor.TopUp: { } topUp } => ("liquor.topUp", $"the top-up is fixed at {topUp.Text}"),
        { Liquor.Strike: { } strike } => ("liquor.strike", $"the strike is fixed at {strike.Text}"),
        _ => null,
    };

    /// <summary>
    /// A recipe names no gravity that it wishes for. What can be said is when its weights make a thinner wort than any style in print:
    /// as a rule a package that was made larger, with the weights of the smaller one.
    /// </summary>
    private static IEnumerable<Finding> Strength(RunOutcome run)
    {
        StyleStatistics weakest = StyleTable.All.MinBy(style => style.OriginalGravity.Low)!;
        double gravity = run[BeerReadouts.OriginalGravity], least = weakest.OriginalGravity.Low;
        if (gravity < least)
        {
            string has = Invariant($"{gravity:0.000}"), limit = Invariant($"{least:0.000}");
            yield return new(
                "gravity.thin", Severity.Note, "package.volume",
                Invariant($"original gravity {has}, below {limit}, the weakest of the styles in the table ({weakest.Name}, {weakest.Edition}). Weights stay as they are when the package grows: for a stronger beer raise them too"),
                has, limit);
        }
    }
}
