using Gylebook.Engine.Readouts;
using Gylebook.Forecast;
using Gylebook.Forecast.Report.Readings;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Packaging;
using Gylebook.Gyles.Plans;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Gyles.Tasting;

/// <summary>A number of the frozen plan beside what was measured.</summary>
/// <param name="Title">What it is, and where.</param>
/// <param name="Readout">Which number.</param>
/// <param name="Ends">5 and 95 % of the plan; null where it had no band.</param>
/// <param name="Measured">What was read, brought to what the number means.</param>
public sealed record HeldNumber(string Title, Readout Readout, (double Low, double High)? Ends, double Measured)
{
    /// <summary>Whether it lies in the band.</summary>
    public bool? IsInside => Ends is var (low, high) ? Measured >= low && Measured <= high : null;

    /// <summary>Why it is as it is, as far as that can be said; null for nothing.</summary>
    public string? Why { get; init; }

    /// <summary>Litres are litres where the readout's name says what they are of.</summary>
    private static string TitleOf(MeantReading reading)
    {
        string what = reading.Meant.Readout.Unit.StartsWith('L') ? "litres" : reading.Meant.Readout.Title;
        return $"{Words.Sentence(what)} at {ReadingsFile.Word(reading.Taken.At)}";
    }

    /// <summary>Each reading that was taken, and the beer that was filled.</summary>
    /// <param name="plan">The plan; its bands are the frozen ones.</param>
    /// <param name="log">The log.</param>
    /// <param name="after">What the readings say; null where there are none.</param>
    public static IReadOnlyList<HeldNumber> Of(GylePlan plan, GyleLog log, AfterReadings? after)
    {
        ArgumentNullException.ThrowIfNull(log);
        FrozenForecast frozen = FrozenForecast.Of(plan);
        string? learned = after?.Learned.Count > 0 ? after.Learned[0].Sentence : null;
        List<HeldNumber> all = [];
        foreach (ReadingOutcome outcome in after?.Readings ?? [])
        {
            HeldNumber held = new(TitleOf(outcome.Reading), outcome.Reading.Meant.Readout, frozen.Ends(outcome.Reading.Meant.Readout.Id), outcome.Reading.Meant.Value);
            all.Add(held with { Why = held.IsInside == false ? learned is null ? "nobody can say why" : $"most likely: {learned}" : null });
        }

        double filled = log.Actions.Where(action => action.Kind == ActionKind.Packaged).SelectMany(action => PackagedDetail.Read(action.Detail) ?? []).Sum(one => one.Litres);
        if (filled > 0)
        {
            all.Add(new("Beer packaged", BeerReadouts.PackagedLitres, frozen.End("packagedLitres", "low") is { } low && frozen.End("packagedLitres", "high") is { } high ? (low, high) : null, filled));
        }

        return all;
    }
}
