using Gylebook.Recipes;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Liquors;

/// <summary>What is doubtful in a water plan, or cannot be reached with it, as findings with their place in the plan.</summary>
internal static class LiquorFinding
{
    /// <summary>A miss up to this share of the target, or this many mg/L, is a compromise worth a note: common practice, no source.</summary>
    private const double SmallShare = 0.1;
    private const double SmallMilligrams = 10;

    /// <summary>What the liquor science finds doubtful.</summary>
    public static Finding Of(WaterDiagnosis diagnosis, string where) => new(
        diagnosis.Code, Severity.Warning, where, diagnosis.Message,
        Number(diagnosis.Value, diagnosis.Unit), Number(diagnosis.Limit, diagnosis.Unit));

    internal static string Number(double value, string unit) =>
        Invariant($"{value:0.##} {unit}").TrimEnd();

    /// <summary>A pH that is not reached, with what would bring it.</summary>
    /// <param name="place">mash, sparge or wort: its key in the plan is <c>mashPh</c> and so on.</param>
    /// <param name="ph">What is reached.</param>
    /// <param name="wanted">What is wanted.</param>
    /// <param name="what">What to offer.</param>
    public static Finding PhNotReached(string place, double ph, double wanted, string what)
    {
        string reached = Number(ph, ""), asked = Number(wanted, "");
        return new(
            $"{place}.phNotReached", Severity.Warning, $"{place}Ph",
            $"{reached} where {asked} is wanted; offer {what}, or more of it", reached, asked);
    }

    /// <summary>Ions that are not reached: one line for an ion and a reason, naming the places.</summary>
    /// <remarks>
    /// What counts is the last place that salts go into: what mash and sparge lack, kettle and package may bring. Where nothing at
    /// hand there moves the ion, the place before holds the reason, and is told too.
    /// </remarks>
    /// <param name="stages">Places in the order of the brew; those of one stage stand beside each other.</param>
    public static IEnumerable<Finding> IonsNotReached(params IReadOnlyList<IReadOnlyList<(string Place, TreatedLiquor Liquor)>> stages) => Ions.All
        .SelectMany(ion => Missed(stages, ion))
        .GroupBy(each => (each.Miss.Ion, Why: Why(each.Miss)))
        .Select(group => One(group.Key.Why, [.. group]));

    private static List<(string Place, TargetMiss Miss)> Missed(IReadOnlyList<IReadOnlyList<(string Place, TreatedLiquor Liquor)>> stages, Ion ion)
    {
        List<(string Place, TargetMiss Miss)> missed = [];
        for (int stage = stages.Count - 1; stage >= 0; stage--)
        {
            List<(string Place, TargetMiss Miss)> here = [.. stages[stage].SelectMany(place =>
                place.Liquor.Misses.Where(miss => miss.Ion == ion).Select(miss => (place.Place, miss)))];
            missed.InsertRange(0, here);
            if (here.Count == 0 || here.Exists(each => each.Miss.Reason is MissReason.OfferAtLimit or MissReason.OtherTargets))
            {
                break;
            }
        }

        return missed;
    }

    private static Finding One(string why, IReadOnlyList<(string Place, TargetMiss Miss)> missed)
    {
        TargetMiss first = missed[0].Miss;
        string ion = Words.Of(first.Ion), wanted = Number(first.Target, "mg/L");
        string where = missed.Count == 1 ? missed[0].Place : "liquor";
        string reached = missed.Count == 1
            ? Number(first.Reached, "mg/L")
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
