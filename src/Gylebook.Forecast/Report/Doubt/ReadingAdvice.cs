using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Report.Doubt;

/// <summary>A reading, and what it would be worth: how much narrower the numbers that come after it would get.</summary>
/// <param name="Reading">What is read, with what.</param>
/// <param name="Words">As people say it.</param>
/// <param name="Narrows">By which share each number's band would get narrower, for those that would.</param>
public sealed record ReadingAdvice(ReadingKind Reading, string Words, IReadOnlyList<Narrowing> Narrows)
{
    /// <summary>Less than this is not worth saying: the draws do not tell it from chance.</summary>
    private const double WorthSaying = 0.03;

    private static readonly Readout[] Targets =
        [BeerReadouts.PackagedLitres, BeerReadouts.OriginalGravity, BeerReadouts.FinalGravity, BeerReadouts.Bitterness];

    /// <summary>How much narrower, over all numbers, for a minute of work.</summary>
    public double WorthPerMinute => Narrows.Sum(narrows => narrows.Share) / Reading.Minutes;

    /// <summary>In words: "original gravity 40 % narrower, beer packaged 5 %".</summary>
    public string Sentence => string.Join(", ", Narrows.OrderByDescending(narrows => narrows.Share)
        .Select((narrows, place) => Invariant($"{narrows.Readout.Title} {100 * narrows.Share:0} %{(place == 0 ? " narrower" : "")}")));

    /// <summary>What is worth reading, the most for a minute's work first.</summary>
    /// <param name="ensemble">The draws.</param>
    /// <param name="readUpTo">The stage that is read already, so that none before it can be; null for none.</param>
    internal static IReadOnlyList<ReadingAdvice> Of(Ensemble ensemble, Stage? readUpTo) =>
        [.. Instruments.Readings.SelectMany(kind => Of(ensemble, kind, readUpTo)).Where(advice => advice.Narrows.Count > 0).OrderByDescending(advice => advice.WorthPerMinute)];

    private static IEnumerable<ReadingAdvice> Of(Ensemble ensemble, ReadingKind kind, Stage? readUpTo)
    {
        foreach (Readout readout in ensemble.Readouts.Where(readout => kind.IsOf(readout.Id) && (readUpTo is null || readout.Place.Stage > readUpTo)))
        {
            yield return Of(ensemble, kind, kind.Words, ensemble[readout].ToArray(), target => readout.Place.Stage < target.Place.Stage);
        }

        for (int place = 0; place < ensemble.Draws.Parameters.Count; place++)
        {
            string id = ensemble.Draws.Parameters[place].Id;
            if (kind.IsOf(id) && ensemble.Draws[place].Length > 0)
            {
                yield return Of(ensemble, kind, kind.Said(id), ensemble.Draws[place].ToArray(), _ => true);
            }
        }
    }

    private static ReadingAdvice Of(Ensemble ensemble, ReadingKind kind, string words, double[] read, Func<Readout, bool> comesAfter)
    {
        double error = kind.Instrument.VarianceAt(read.Where(double.IsFinite).DefaultIfEmpty(0).Average());
        return new ReadingAdvice(kind, words,
        [
            .. Targets.Where(comesAfter)
                .Select(target => new Narrowing(target, 1 - ReadingWorth.WidthLeft(ensemble[target], read, error)))
                .Where(narrows => narrows.Share >= WorthSaying),
        ]);
    }
}

/// <summary>A number whose band gets narrower.</summary>
/// <param name="Readout">Which.</param>
/// <param name="Share">By which share of its width, 0 to 1.</param>
public sealed record Narrowing(Readout Readout, double Share);
