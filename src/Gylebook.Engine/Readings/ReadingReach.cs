using Gylebook.Engine.Drawing;
using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;

namespace Gylebook.Engine.Readings;

/// <summary>Which parameters a reading can tell of: those that the run itself takes to it, the instrument's own, and what is tied to them.</summary>
/// <remarks>
/// Found out by trying: a few draws are run again with one figure of another draw. What leaves every bit of the readout alone
/// cannot be told by it, whatever the draws say by chance; nothing that acts after the stage of a reading ever moves.
/// </remarks>
public sealed class ReadingReach
{
    private const int Tries = 6;

    private readonly bool[][] _reaches;

    private ReadingReach(bool[][] reaches) => _reaches = reaches;

    /// <summary>By parameter's place, which of the readings tell of it.</summary>
    public ReadOnlySpan<bool> this[int parameter] => _reaches[parameter];

    /// <summary>Finds it out.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="ensemble">Draws of it, those of the terms and instruments behind them.</param>
    /// <param name="readings">The readings.</param>
    public static ReadingReach Of(RunPlan plan, Ensemble ensemble, IReadOnlyList<Reading> readings)
    {
        Draws draws = ensemble.Draws;
        bool[][] reaches = [.. draws.Parameters.Select(_ => new bool[readings.Count])];
        Trial trial = new(plan, draws, readings, Whole(ensemble));
        foreach (int place in draws.Moving)
        {
            if (place < plan.Parameters.Length)
            {
                trial.Try(place, reaches[place]);
            }

            for (int reading = 0; reading < readings.Count; reading++)
            {
                reaches[place][reading] |= IsBesides(ensemble, draws.Parameters[place], readings[reading]);
            }
        }

        foreach (IGrouping<string, int> bond in draws.Moving.ToArray().GroupBy(place => Bonds.NameOf(draws.Parameters[place])).Where(bond => bond.Count() > 1))
        {
            bool[] any = [.. Enumerable.Range(0, readings.Count).Select(reading => bond.Any(place => reaches[place][reading]))];
            foreach (int place in bond)
            {
                reaches[place] = any;
            }
        }

        return new(reaches);
    }

    /// <summary>The same once readings have tied to each other what they tell of: each moves all that any of them reaches.</summary>
    public ReadingReach Tied() => new([.. _reaches.Select(reach => Enumerable.Repeat(reach.Contains(true), reach.Length).ToArray())]);

    /// <summary>That of the last reading alone, after what the others have tied.</summary>
    public ReadingReach Last() => new([.. _reaches.Select(reach => new[] { reach.Contains(true) })]);

    private static bool IsBesides(Ensemble ensemble, Parameter parameter, Reading reading) =>
        reading.Instrument.Parameters.Any(its => its.Id == parameter.Id)
        || ensemble.Terms.Any(term => term.Parameter.Id == parameter.Id && ReferenceEquals(term.Readout, reading.Readout));

    private static int[] Whole(Ensemble ensemble) =>
        [.. Enumerable.Range(0, ensemble.Draws.Count).Where(draw => ensemble.Readouts.Count == 0 || double.IsFinite(ensemble[ensemble.Readouts[0]][draw])).Take(2 * Tries)];

    private sealed class Trial(RunPlan plan, Draws draws, IReadOnlyList<Reading> readings, int[] whole)
    {
        private readonly double[] _draw = [.. draws.Parameters.Select(parameter => parameter.Median)];
        private readonly RunTrace _trace = new(plan);

        public void Try(int place, bool[] reaches)
        {
            for (int i = 0; i + 1 < whole.Length; i += 2)
            {
                draws.Put(whole[i], _draw);
                double[] asItIs = Read();
                _draw[place] = draws[place][whole[i + 1]];
                double[] other = Read();
                for (int reading = 0; reading < reaches.Length; reading++)
                {
                    reaches[reading] |= !asItIs[reading].Equals(other[reading]);
                }
            }
        }

        private double[] Read()
        {
            Run.Through(plan, _draw, _trace);
            double[] read = new double[readings.Count];
            RunView view = new(plan, _draw, _trace);
            for (int i = 0; i < read.Length; i++)
            {
                read[i] = readings[i].Readout.Of(view);
            }

            return read;
        }
    }
}
