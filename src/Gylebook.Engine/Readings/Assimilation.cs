using Gylebook.Engine.Drawing;
using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Science.Numerics;

namespace Gylebook.Engine.Readings;

/// <summary>Draws brought to what was read: at once on the numbers that are there, or in four steps that run the brew anew each time.</summary>
/// <remarks>
/// <para>Source: ensemble smoother with multiple data assimilation, Emerick and Reynolds, Computers &amp; Geosciences 55:3 (2013): the error
/// variance of each step is α times the reading's, with Σ 1/α = 1; from memory.</para>
/// <para>Accuracy: exact for straight lines but for the draws' own noise. On a bent model (e^(x/2), docs/science/uncertainty.md) four steps
/// end with the right centre and a fifth too wide.</para>
/// <para>Notes: parameters move on the scale of their family, so that their ends hold. What models leave open never gets narrower than
/// half its prior. The scatter of each draw's reading hangs on the seed and the reading's id alone. The likely run goes along with the draws
/// and is none of them: it moves by how far off it was itself, so that a reading just as it forecast leaves it where it is.</para>
/// </remarks>
public static class Assimilation
{
    private const double ModelFloor = 0.5;
    private const string ModelPrefix = "model.";

    /// <summary>By how much the error variance is larger in each of the four steps.</summary>
    public static IReadOnlyList<double> FourSteps { get; } = [4, 4, 4, 4];

    /// <summary>What an instrument is forecast to show, draw by draw.</summary>
    public static double[] ForecastOf(Ensemble ensemble, Reading reading)
    {
        ArgumentNullException.ThrowIfNull(ensemble);
        ArgumentNullException.ThrowIfNull(reading);
        double[] shown = ensemble[reading.Readout].ToArray();
        ReadOnlySpan<double> share = Drawn(ensemble, reading.Instrument.Share), offset = Drawn(ensemble, reading.Instrument.Offset);
        for (int draw = 0; draw < shown.Length; draw++)
        {
            shown[draw] = (shown[draw] * (1 + (share.IsEmpty ? 0 : share[draw]))) + (offset.IsEmpty ? 0 : offset[draw]);
        }

        return shown;
    }

    /// <summary>One step on the joint draws as they are: parameters and readouts together, and no run.</summary>
    /// <param name="before">The draws, and all that was read off them.</param>
    /// <param name="readings">What was read, each with the variance it is taken with.</param>
    /// <param name="reach">Which parameters each tells of.</param>
    /// <param name="seed">The word of the draws.</param>
    public static Ensemble AtOnce(Ensemble before, IReadOnlyList<Reading> readings, ReadingReach reach, string seed)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(reach);
        SmootherStep step = StepOf(before, readings, seed, "once", 1);
        Draws draws = Moved(before.Draws, step, reach, [], []);
        Ensemble after = before.With(draws);
        foreach (Readout readout in after.Readouts)
        {
            step.Move(after.Column(readout));
        }

        Draws floored = Floored(draws);
        return ReferenceEquals(floored, draws) ? after : Carried(after, floored);
    }

    /// <summary>Four steps, the brew run anew after each.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="before">Its draws, and all that was read off them.</param>
    /// <param name="readings">What was read, each with the variance it is taken with.</param>
    /// <param name="reach">Which parameters each tells of.</param>
    /// <param name="seed">The word of the draws.</param>
    /// <param name="threads">On how many threads; no number hangs on it.</param>
    public static Assimilated Repeated(
        RunPlan plan, Ensemble before, IReadOnlyList<Reading> readings, ReadingReach reach, string seed, int threads = 1)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(reach);
        Readout[] read = [.. readings.Select(reading => reading.Readout).Distinct()];
        ReadingReach tied = reach.Tied();
        Ensemble now = before;
        Draws draws = before.Draws;
        double[] likely = [.. draws.Parameters.Select(parameter => parameter.Median)];
        for (int step = 0; step < FourSteps.Count; step++)
        {
            now = step == 0 ? before : Ensemble.Of(plan, draws, read, before.Terms, threads);
            Ensemble one = Ensemble.Of(plan, draws.One(likely), read, before.Terms, 1);
            SmootherStep smoother = StepOf(now, readings, seed, Invariant($"step {step}"), FourSteps[step]);
            double[] pull = smoother.PullOn([.. readings.Select(reading => reading.Value - ForecastOf(one, reading)[0])]);
            draws = Moved(draws, smoother, step == 0 ? reach : tied, likely, pull);
        }

        return new(Ensemble.Of(plan, Floored(draws), before.Readouts, before.Terms, threads), likely);
    }

    /// <summary>Readings with the scatter of each draw: normal numbers in strata, in an order that hangs on seed and reading.</summary>
    public static double[] Scattered(double read, double variance, string seed, string what, Strata strata)
    {
        int[] order = new int[strata.Count];
        SeededRandom.Of(seed, what).Shuffle(order);
        double deviation = Math.Sqrt(variance);
        return [.. order.Select(place => read + (deviation * strata.Normals[place]))];
    }

    private static SmootherStep StepOf(Ensemble now, IReadOnlyList<Reading> readings, string seed, string step, double alpha)
    {
        Strata strata = new(now.Draws.Count);
        return new SmootherStep(
            [.. readings.Select(reading => ForecastOf(now, reading))],
            [.. readings.Select(reading => Scattered(reading.Value, alpha * reading.ScatterVariance, seed, $"reading {reading.Id} {step}", strata))],
            [.. readings.Select(reading => alpha * reading.ScatterVariance)]);
    }

    /// <summary>The draws moved, and the likely figures with them, in place: by the draws' own covariances, but by how far off the likely run was.</summary>
    private static Draws Moved(Draws before, SmootherStep step, ReadingReach reach, double[] likely, double[] pull)
    {
        Draws after = before.Copy();
        HashSet<string> moved = new(StringComparer.Ordinal);
        foreach (int place in after.Moving)
        {
            if (!reach[place].Contains(true))
            {
                continue;
            }

            Span<double> column = after.Column(place);
            Scale scale = Scale.Of(after.Parameters[place], column);
            double[] on = [.. column.ToArray().Select(scale.To)], from = [.. on];
            double alone = pull.Length == 0 ? 0 : scale.To(likely[place]), stood = alone;
            if (step.Move(on, reach[place], ref alone, pull))
            {
                if (alone != stood)
                {
                    likely[place] = scale.From(alone);
                }

                moved.Add(Bonds.NameOf(after.Parameters[place]));
                for (int draw = 0; draw < on.Length; draw++)
                {
                    column[draw] = on[draw] == from[draw] ? column[draw] : scale.From(on[draw]);
                }
            }
        }

        Bonds.Hold(after, moved);
        if (pull.Length > 0)
        {
            Bonds.Held(after, likely, moved).CopyTo(likely, 0);
        }

        return after;
    }

    /// <summary>The draws with what models leave open at least half as wide as before any reading; the same ones where nothing is too narrow.</summary>
    private static Draws Floored(Draws draws)
    {
        Draws? floored = null;
        foreach (int place in draws.Moving)
        {
            Parameter parameter = draws.Parameters[place];
            if (!parameter.Id.StartsWith(ModelPrefix, StringComparison.Ordinal) || parameter.Prior is not Prior.Spread spread)
            {
                continue;
            }

            Scale scale = Scale.Of(parameter, draws[place]);
            double[] on = [.. draws[place].ToArray().Select(scale.To)];
            double mean = on.Average(), deviation = Math.Sqrt(on.Sum(value => (value - mean) * (value - mean)) / (on.Length - 1));
            double least = ModelFloor * spread.Between.Spread;
            if (deviation < least && deviation > 0)
            {
                floored ??= draws.Copy();
                for (int draw = 0; draw < on.Length; draw++)
                {
                    floored.Column(place)[draw] = scale.From(mean + ((on[draw] - mean) * least / deviation));
                }
            }
        }

        return floored ?? draws;
    }

    /// <summary>The numbers moved by what the floor gave back to the terms.</summary>
    private static Ensemble Carried(Ensemble after, Draws floored)
    {
        Ensemble carried = after.With(floored);
        foreach (ModelTerm term in after.Terms.Where(term => after.Has(term.Readout)))
        {
            int place = floored.PlaceOf(term.Parameter.Id)!.Value;
            Span<double> column = carried.Column(term.Readout);
            for (int draw = 0; draw < column.Length; draw++)
            {
                double was = after.Draws[place][draw], now = floored[place][draw];
                column[draw] = term.Multiplies ? column[draw] * now / was : column[draw] + ((now - was) * term.PerUnit);
            }
        }

        return carried;
    }

    private static ReadOnlySpan<double> Drawn(Ensemble ensemble, Parameter? parameter) =>
        parameter is not null && ensemble.Draws.PlaceOf(parameter.Id) is { } place ? ensemble.Draws[place] : [];
}

/// <summary>What draws have become by what was read.</summary>
/// <param name="Ensemble">The draws, and all that is read off them.</param>
/// <param name="Likely">The figures of the likely run, one a parameter of the draws, moved by the same readings.</param>
public sealed record Assimilated(Ensemble Ensemble, IReadOnlyList<double> Likely);
