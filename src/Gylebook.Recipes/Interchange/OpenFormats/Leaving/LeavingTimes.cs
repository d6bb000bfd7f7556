using System.Globalization;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats.Leaving;

/// <summary>Times of addition as the open standards part them.</summary>
internal static class LeavingTimes
{
    /// <summary>The timing of a place in the run.</summary>
    public static OpenTiming Of(AdditionTime at) => at.Point switch
    {
        AdditionPoint.Mash => new OpenTiming { Use = OpenUse.Mash },
        AdditionPoint.CopperUp => new OpenTiming { Use = OpenUse.FirstWort },
        AdditionPoint.Boil => new OpenTiming { Use = OpenUse.Boil, Time = Minutes(at.Count) },
        AdditionPoint.KnockOut => new OpenTiming { Use = OpenUse.Boil, Time = Minutes(0) },
        AdditionPoint.Stand => new OpenTiming { Use = OpenUse.Stand, Time = Minutes(at.Count) },
        AdditionPoint.Pitch => new OpenTiming { Use = OpenUse.Fermentation },
        AdditionPoint.Ferment => new OpenTiming { Use = OpenUse.Fermentation, Time = new(Duration.FromDays(at.Count), $"{Text(at.Count)} d") },
        AdditionPoint.Rack => new OpenTiming { Use = OpenUse.Rack },
        AdditionPoint.Package => new OpenTiming { Use = OpenUse.Package },
        _ => throw new ArgumentOutOfRangeException(nameof(at), at, "No such place in the run."),
    };

    private static Entered<Duration> Minutes(double count) => new(Duration.FromMinutes(count), $"{Text(count)} min");

    private static string Text(double count) => count.ToString("0.############", CultureInfo.InvariantCulture);
}
