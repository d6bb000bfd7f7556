using Gylebook.Engine.Drawing;
using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Readings;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report.Doubt;
using Gylebook.Recipes;
using Gylebook.Recipes.Readings;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Report.Readings;

/// <summary>What readings say of a brew: each held against its forecast, what was learned, and the corrections there are.</summary>
public sealed record AfterReadings
{
    /// <summary>Each reading that means something to this brew, in the order of the run.</summary>
    public required IReadOnlyList<ReadingOutcome> Readings { get; init; }

    /// <summary>What was learned, the most first.</summary>
    public required IReadOnlyList<LearnedFigure> Learned { get; init; }

    /// <summary>What these readings cannot tell apart.</summary>
    public required IReadOnlyList<InseparablePair> Pairs { get; init; }

    /// <summary>Ways on from here, the one that comes nearest to the plan first.</summary>
    public IReadOnlyList<Mend> Mends { get; init; } = [];

    /// <summary>What is odd about the readings, and what was done.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>The brew with its medians where the readings moved them.</summary>
    public required BrewPlan Brew { get; init; }

    /// <summary>All draws, moved, and all that can be told of each.</summary>
    public required Ensemble Ensemble { get; init; }

    /// <summary>The draws as they were before any reading.</summary>
    public required Draws Before { get; init; }

    /// <summary>The last stage that was read and taken; null when nothing was.</summary>
    internal ReadingPoint? Latest => Readings.Where(outcome => outcome.Gate.Trust != ReadingTrust.SetAside).Select(outcome => (ReadingPoint?)outcome.Reading.Taken.At).Max();

    /// <summary>The last pH of the mash that was read and taken, as it was shown, and how warm the sample was; null when there is none.</summary>
    internal (double Ph, Entered<Temperature> Sample)? MashPh => Readings
        .Where(outcome => outcome.Gate.Trust != ReadingTrust.SetAside && ReferenceEquals(outcome.Reading.Meant.Readout, PhReadouts.MashPh))
        .Select(outcome => ((double, Entered<Temperature>)?)(outcome.Reading.Taken.Ph!.Value, ReadingMeaning.SampleOf(outcome.Reading.Taken)))
        .LastOrDefault();

    /// <summary>The stage of that.</summary>
    internal Stage? ReadUpTo => Latest is { } latest ? ReadingMeaning.StageOf(latest) : null;

    /// <summary>Draws a brew and its instruments, and brings it to what was read.</summary>
    /// <param name="brew">The brew as planned.</param>
    /// <param name="likely">Its likely run.</param>
    /// <param name="readings">What was read.</param>
    /// <param name="seed">The word of the draws.</param>
    /// <param name="draws">How many.</param>
    internal static AfterReadings Of(BrewPlan brew, RunOutcome likely, BrewReadings readings, string seed, int draws)
    {
        List<Finding> findings = [];
        ReadingMeaning meaning = new(brew, likely, findings);
        IReadOnlyList<MeantReading> meant = meaning.Of(readings);
        findings.AddRange(ReadingChecks.Disagreeing(meant));
        Ensemble before = DrawnBrew.Of(brew, likely, seed, draws, [.. meant.SelectMany(reading => reading.Instrument.Off.Parameters).DistinctBy(parameter => parameter.Id)]);
        List<ReadingOutcome> outcomes = [.. new Gatekeeper(brew.Plan!, before, meaning, seed, findings).Of(meant)];
        Reading[] taken = [.. outcomes.Where(outcome => outcome.Gate.Trust != ReadingTrust.SetAside).Select(outcome => outcome.AsTaken)];
        (Ensemble after, IReadOnlyList<double> medians) = taken.Length == 0
            ? new(before, [.. before.Draws.Parameters.Select(parameter => parameter.Median)])
            : Assimilation.Repeated(brew.Plan!, before, taken, ReadingReach.Of(brew.Plan!, before, taken), seed, Environment.ProcessorCount);
        IReadOnlyList<LearnedParameter> learned = LearnedParameter.Of(before.Draws, after.Draws);
        return new AfterReadings
        {
            Readings = [.. outcomes.Select(outcome => outcome.After(before, after))],
            Learned = [.. learned.Select(figure => LearnedFigure.Of(figure))],
            Pairs = InseparablePair.Of(learned, after),
            Findings = findings,
            Brew = WithMedians(brew, medians),
            Ensemble = after,
            Before = before.Draws,
        };
    }

    private static BrewPlan WithMedians(BrewPlan brew, IReadOnlyList<double> medians)
    {
        RunPlan plan = brew.Plan!;
        return brew with
        {
            Plan = plan with
            {
                Medians = [.. medians.Take(plan.Parameters.Length)],
                Parameters = [.. plan.Parameters.Select((parameter, place) => parameter with { Median = medians[place] })],
            },
        };
    }
}

/// <summary>A reading held against its forecast, and what became of it.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Gate">How far off it was, given those before it, and what was done.</param>
public sealed record ReadingOutcome(MeantReading Reading, GatedReading Gate)
{
    /// <summary>What the number itself was forecast to be, before any reading; mean of the draws.</summary>
    public double Forecast { get; private init; }

    /// <summary>What it is now thought to be.</summary>
    public double Now { get; private init; }

    /// <summary>How much of what was read is thought to be the instrument's own, in the unit of the reading.</summary>
    public double InstrumentOff { get; private init; }

    /// <summary>The reading with the variance it is taken with.</summary>
    internal Reading AsTaken => Reading.Meant with { ScatterVariance = Gate.ErrorVariance };

    /// <summary>In words.</summary>
    public string Sentence
    {
        get
        {
            Readout readout = Reading.Meant.Readout;
            string instrument = double.Parse(readout.Digits(InstrumentOff), System.Globalization.CultureInfo.InvariantCulture) == 0 ? "" : $"; {readout.Digits(Math.Abs(InstrumentOff))} of it too {(InstrumentOff > 0 ? "much" : "little")} may be your {Reading.Instrument.Said}";
            string done = Gate.Trust switch
            {
                ReadingTrust.AsItIs => "taken as it is",
                ReadingTrust.Halfway => "it counts for less",
                _ => "set aside, nothing moved",
            };
            return Invariant($"{Reading.Said}: {readout.Told(Reading.Meant.Value)} read, {readout.Digits(Gate.Forecast)} expected by then ({readout.Digits(Forecast)} before any reading), {Math.Abs(Gate.Off):0.0} standard deviations off: {done}; now {readout.Digits(Now)}{instrument}");
        }
    }

    internal ReadingOutcome After(Ensemble before, Ensemble after)
    {
        Readout readout = Reading.Meant.Readout;
        double shown = Mean(Assimilation.ForecastOf(after, Reading.Meant)), now = Mean(after[readout]);
        return this with { Forecast = Mean(before[readout]), Now = now, InstrumentOff = shown - now };
    }

    private static double Mean(ReadOnlySpan<double> values)
    {
        double sum = 0;
        int count = 0;
        foreach (double value in values)
        {
            (sum, count) = double.IsFinite(value) ? (sum + value, count + 1) : (sum, count);
        }

        return sum / count;
    }
}

/// <summary>Lets readings in one after the other, each held against what those before it have left.</summary>
internal sealed class Gatekeeper(RunPlan plan, Ensemble before, ReadingMeaning meaning, string seed, List<Finding> findings)
{
    public IEnumerable<ReadingOutcome> Of(IReadOnlyList<MeantReading> readings)
    {
        Ensemble now = before;
        Ensemble? unfermented = null;
        List<Reading> taken = [];
        foreach (MeantReading reading in readings)
        {
            unfermented ??= StallCheck.IsAfterFermentation(reading) ? now : null;
            if (unfermented is not null && reading == readings.LastOrDefault(StallCheck.IsAfterFermentation)
                && StallCheck.Of(reading, Held(reading, reading.Meant.Value, unfermented), unfermented.QuantilesOf(BeerReadouts.OriginalGravity).Middle) is { } stall)
            {
                findings.Add(stall);
            }

            GatedReading gate = Held(reading, reading.Meant.Value, now);
            if (reading.Taken.IsSure == true && gate.Trust == ReadingTrust.SetAside)
            {
                gate = gate with { Trust = ReadingTrust.Halfway };
            }

            Tell(reading, gate, now, taken.Count);
            ReadingOutcome outcome = new(reading, gate);
            if (gate.Trust != ReadingTrust.SetAside)
            {
                taken.Add(outcome.AsTaken);
                now = Assimilation.AtOnce(now, [outcome.AsTaken], ReadingReach.Of(plan, before, taken).Last(), seed);
            }

            yield return outcome;
        }
    }

    private static string Lost(MeantReading reading, GatedReading gate) =>
        reading.Taken.Volume is not null && gate.Off < 0 ? "; less is there than was forecast: look for what was spilled, left behind or drawn off, and at the marks" : "";

    private static GatedReading Held(MeantReading reading, double value, Ensemble now) =>
        GatedReading.Of(value, reading.Meant.ScatterVariance, Assimilation.ForecastOf(now, reading.Meant));

    private void Tell(MeantReading reading, GatedReading gate, Ensemble now, int soFar)
    {
        if (gate.Trust == ReadingTrust.AsItIs)
        {
            return;
        }

        Readout readout = reading.Meant.Readout;
        GatedReading first = Held(reading, reading.Meant.Value, before);
        string against = soFar > 0 && first.Trust == ReadingTrust.AsItIs ? "it contradicts the readings before it; by itself it would fit" : "";
        string done = reading.Taken.IsSure == true ? "you stand by it, so it was taken, as one with a large error"
            : gate.Trust == ReadingTrust.Halfway ? "it was taken, and counts for less than it would by itself"
            : "it was set aside and nothing moved: read it again, and say \"sure\": true if it stands";
        string limit = Invariant($"{readout.Told(gate.Forecast)} ± {GatedReading.AtAllUpTo * gate.Deviation:G3}");
        findings.Add(new(
            gate.Trust == ReadingTrust.Halfway ? "reading.far" : "reading.unexplained",
            gate.Trust == ReadingTrust.Halfway ? Severity.Note : Severity.Warning,
            reading.Path,
            Invariant($"{readout.Told(reading.Meant.Value)}; {readout.Told(gate.Forecast)} was forecast, and it lies {Math.Abs(gate.Off):0.0} standard deviations off{(against.Length > 0 ? "; " : "")}{against}{Lost(reading, gate)}; {done}"),
            readout.Told(reading.Meant.Value), limit));
        if (meaning.OtherwiseMeant(reading) is var (value, why, code) && Held(reading, value, now).Trust == ReadingTrust.AsItIs)
        {
            findings.Add(new(code, Severity.Note, reading.Path, $"{why}. Nothing was corrected", readout.Told(value), limit));
        }
    }
}

/// <summary>Readings held against each other.</summary>
internal static class ReadingChecks
{
    private const double Apart = 2;

    /// <summary>Two readings of one number that lie further apart than their errors.</summary>
    public static IEnumerable<Finding> Disagreeing(IReadOnlyList<MeantReading> readings)
    {
        for (int i = 0; i < readings.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                MeantReading one = readings[j], other = readings[i];
                if (!ReferenceEquals(one.Meant.Readout, other.Meant.Readout))
                {
                    continue;
                }

                bool isSame = one.Instrument.Kind == other.Instrument.Kind && one.Instrument.Called == other.Instrument.Called;
                double error = Math.Sqrt(one.Meant.ScatterVariance + other.Meant.ScatterVariance + (isSame ? 0 : OffVariance(one) + OffVariance(other)));
                double apart = other.Meant.Value - one.Meant.Value;
                if (Math.Abs(apart) > Apart * error)
                {
                    Readout readout = one.Meant.Readout;
                    yield return new(
                        isSame ? "reading.contradicts" : "reading.disagree", Severity.Warning, other.Path,
                        Invariant($"{readout.Told(other.Meant.Value)}; reading {one.Number + 1} of the same, {(isSame ? "with the same instrument" : $"with {one.Instrument.Said}")}, was {readout.Told(one.Meant.Value)}; each was held against the forecast by itself, and both count where both fit"),
                        readout.Told(apart), readout.Told(Apart * error));
                }
            }
        }
    }

    private static double OffVariance(MeantReading reading) =>
        (reading.Taken.IsChecked == true ? reading.Instrument.Kind.Checked : reading.Instrument.Kind.Offset).VarianceAt(reading.Meant.Value);
}
