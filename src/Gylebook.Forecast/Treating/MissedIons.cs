using Gylebook.Forecast.Telling;
using Gylebook.Recipes;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Treating;

/// <summary>Tells of ions that are not reached: one line for an ion and a reason, naming the places.</summary>
internal static class MissedIons
{
    /// <summary>A miss up to this share of the target, or this many mg/L, is a compromise worth a note: common practice, no source.</summary>
    private const double SmallShare = 0.1;
    private const double SmallMilligrams = 10;

    /// <summary>The findings, ion by ion.</summary>
    /// <remarks>
    /// What counts is the last place that salts go into: what mash and sparge lack, kettle and package may bring. Where nothing at
    /// hand there moves the ion, the place before holds the reason, and is told too.
    /// </remarks>
    /// <param name="stages">Places in the order of the brew; those of one stage stand beside each other.</param>
    public static IEnumerable<Finding> Findings(params IReadOnlyList<IReadOnlyList<(string Place, TreatedLiquor Liquor)>> stages) => Ions.All
        .SelectMany(ion => Told(stages, ion))
        .GroupBy(each => (each.Miss.Ion, Why: Why(each.Miss)))
        .Select(group => One(group.Key.Why, [.. group]));

    private static List<(string Place, TargetMiss Miss)> Told(IReadOnlyList<IReadOnlyList<(string Place, TreatedLiquor Liquor)>> stages, Ion ion)
    {
        List<(string Place, TargetMiss Miss)> told = [];
        for (int stage = stages.Count - 1; stage >= 0; stage--)
        {
            List<(string Place, TargetMiss Miss)> here = [.. stages[stage].SelectMany(place =>
                place.Liquor.Misses.Where(miss => miss.Ion == ion).Select(miss => (place.Place, miss)))];
            told.InsertRange(0, here);
            if (here.Count == 0 || here.Exists(each => each.Miss.Reason is MissReason.OfferAtLimit or MissReason.OtherTargets))
            {
                break;
            }
        }

        return told;
    }

    private static Finding One(string why, IReadOnlyList<(string Place, TargetMiss Miss)> missed)
    {
        TargetMiss first = missed[0].Miss;
        string ion = WaterJson.KeyOf(first.Ion), wanted = DiagnosisFinding.Number(first.Target, "mg/L");
        string where = missed.Count == 1 ? missed[0].Place : "liquor";
        string reached = missed.Count == 1
            ? DiagnosisFinding.Number(first.Reached, "mg/L")
            : string.Join(", ", missed.Select(each => Invariant($"{each.Place} {each.Miss.Reached:0.#}"))) + " mg/L";
        return new(
            "liquor.missed", missed.All(each => IsSmall(each.Miss)) ? Severity.Note : Severity.Warning, $"{where}.{ion}",
            $"{reached} where {wanted} is wanted: {why}", reached, wanted);
    }

    private static bool IsSmall(TargetMiss miss) =>
        Math.Abs(miss.Reached - miss.Target) <= Math.Max(SmallMilligrams, SmallShare * miss.Target);

    private static string Why(TargetMiss miss) => miss.Reason switch
    {
        MissReason.NothingBringsIt => "nothing offered brings it",
        MissReason.NothingRemovesIt => "nothing offered takes it away; dilution would",
        MissReason.OfferAtLimit => $"{miss.Limit} is at its limit",
        _ => miss.Limit.Length > 0 ? $"closer would carry {miss.Limit.ToLowerInvariant()} further off" : "a balance weighs no finer",
    };
}
