using System.Globalization;
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
    public static IEnumerable<Finding> Findings(params IReadOnlyList<(string Place, TreatedLiquor Liquor)> places) => places
        .SelectMany(place => place.Liquor.Misses.Select(miss => (place.Place, Miss: miss, Why: Why(miss))))
        .GroupBy(each => (each.Miss.Ion, each.Miss.Target, each.Why))
        .OrderBy(group => group.Key.Ion)
        .Select(group => One(group.Key.Why, [.. group.Select(each => (each.Place, each.Miss))]));

    private static Finding One(string why, IReadOnlyList<(string Place, TargetMiss Miss)> missed)
    {
        TargetMiss first = missed[0].Miss;
        string ion = WaterJson.KeyOf(first.Ion), wanted = DiagnosisFinding.Number(first.Target, "mg/L");
        string where = missed.Count == 1 ? missed[0].Place : "liquor";
        string reached = missed.Count == 1
            ? DiagnosisFinding.Number(first.Reached, "mg/L")
            : string.Join(", ", missed.Select(each => string.Create(CultureInfo.InvariantCulture, $"{each.Place} {each.Miss.Reached:0.#}"))) + " mg/L";
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
