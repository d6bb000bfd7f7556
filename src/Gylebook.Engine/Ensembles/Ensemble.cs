using Gylebook.Engine.Drawing;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Engine.Ensembles;

/// <summary>A plan run with every draw, and what was asked for read off each run: draws and readouts side by side, so that a reading of one tells of all others.</summary>
/// <remarks>
/// Each draw is run by itself and writes to its own place, so any number of threads leaves the same bits. A draw that does not come to its end (a
/// kettle that boils dry, more lost than there is) leaves no numbers.
/// </remarks>
public sealed class Ensemble
{
    private readonly double[] _values;
    private readonly Dictionary<Readout, int> _places;

    private Ensemble(Draws draws, IReadOnlyList<Readout> readouts, IReadOnlyList<ModelTerm> terms)
    {
        Terms = terms;
        Draws = draws;
        Readouts = readouts;
        _values = GC.AllocateUninitializedArray<double>(readouts.Count * draws.Count);
        _places = new(readouts.Count, ReferenceEqualityComparer.Instance);
        for (int i = 0; i < readouts.Count; i++)
        {
            _places[readouts[i]] = i;
        }
    }

    /// <summary>Runs a plan with draws of its parameters.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="draws">Draws of the plan's parameters, in the plan's order; those of the terms may follow.</param>
    /// <param name="readouts">What is asked for.</param>
    /// <param name="terms">What models leave open, of parameters that were drawn; null for nothing.</param>
    /// <param name="threads">On how many threads; no number hangs on it.</param>
    public static Ensemble Of(
        RunPlan plan, Draws draws, IReadOnlyList<Readout> readouts, IReadOnlyList<ModelTerm>? terms = null, int threads = 1)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(draws);
        ArgumentNullException.ThrowIfNull(readouts);
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        Ensemble made = new(draws, readouts, terms ?? []);
        ModelMove[] moves = [.. made.Terms.Where(term => made.Has(term.Readout)).Select(made.MoveOf)];
        if (threads == 1)
        {
            made.Run(plan, moves, 0, draws.Count);
        }
        else
        {
            Parallel.For(0, threads, part => made.Run(plan, moves, (int)((long)part * draws.Count / threads), (int)((part + 1L) * draws.Count / threads)));
        }

        return made;
    }

    /// <summary>The draws: the plan's parameters first, what models leave open after them.</summary>
    public Draws Draws { get; }

    /// <summary>What was read.</summary>
    public IReadOnlyList<Readout> Readouts { get; }

    /// <summary>What models leave open, added to each run.</summary>
    public IReadOnlyList<ModelTerm> Terms { get; }

    /// <summary>All values of a readout, a draw each; not a number where the draw has none.</summary>
    public ReadOnlySpan<double> this[Readout readout] => _values.AsSpan(_places[readout] * Draws.Count, Draws.Count);

    /// <summary>The same numbers with other draws, to be moved along with them.</summary>
    internal Ensemble With(Draws draws)
    {
        Ensemble moved = new(draws, Readouts, Terms);
        _values.CopyTo(moved._values, 0);
        return moved;
    }

    /// <summary>A readout's values to write.</summary>
    internal Span<double> Column(Readout readout) => _values.AsSpan(_places[readout] * Draws.Count, Draws.Count);

    /// <summary>Whether a readout was asked for.</summary>
    public bool Has(Readout readout) => _places.ContainsKey(readout);

    /// <summary>The 5, 50 and 95 % of a readout, over the draws that have it.</summary>
    public Quantiles QuantilesOf(Readout readout)
    {
        double[] scratch = new double[Draws.Count];
        return QuantilesOf(readout, scratch);
    }

    /// <summary>Those of all readouts, in their order.</summary>
    public Quantiles[] AllQuantiles()
    {
        double[] scratch = new double[Draws.Count];
        return [.. Readouts.Select(readout => QuantilesOf(readout, scratch))];
    }

    private Quantiles QuantilesOf(Readout readout, double[] scratch)
    {
        this[readout].CopyTo(scratch);
        return Quantiles.Of(scratch);
    }

    private ModelMove MoveOf(ModelTerm term) =>
        new(_places[term.Readout], Draws.PlaceOf(term.Parameter.Id)!.Value, term.PerUnit, term.Multiplies);

    private void Run(RunPlan plan, ModelMove[] moves, int from, int to)
    {
        EnsembleRun runs = new(plan, Draws, Readouts, moves);
        for (int draw = from; draw < to; draw++)
        {
            runs.Run(draw, _values);
        }
    }
}

/// <summary>A term with its places: which readout's row, which number of the draw.</summary>
internal readonly record struct ModelMove(int Readout, int Parameter, double PerUnit, bool Multiplies);

/// <summary>What one thread needs to run draws: made once, and then nothing is allocated.</summary>
internal sealed class EnsembleRun
{
    private readonly RunPlan _plan;
    private readonly Draws _draws;
    private readonly ReadoutOf[] _readouts;
    private readonly ModelMove[] _moves;
    private readonly RunTrace _trace;
    private readonly double[] _draw;

    public EnsembleRun(RunPlan plan, Draws draws, IReadOnlyList<Readout> readouts, ModelMove[] moves)
    {
        (_plan, _draws, _moves) = (plan, draws, moves);
        _readouts = [.. readouts.Select(readout => readout.Of)];
        _trace = new RunTrace(plan);
        _draw = [.. draws.Parameters.Select(parameter => parameter.Median)];
    }

    /// <summary>Runs a draw, and writes what it tells to its place among all others': readout by readout, draw by draw.</summary>
    public void Run(int draw, double[] values)
    {
        _draws.Put(draw, _draw);
        bool isWhole = Running.Run.Through(_plan, _draw, _trace) && IsSound();
        RunView view = new(_plan, _draw, _trace);
        for (int row = 0, at = draw; row < _readouts.Length; row++, at += _draws.Count)
        {
            values[at] = isWhole ? _readouts[row](view) : double.NaN;
        }

        foreach (ref readonly ModelMove move in _moves.AsSpan())
        {
            ref double value = ref values[(move.Readout * _draws.Count) + draw];
            double by = _draw[move.Parameter] * move.PerUnit;
            value = move.Multiplies ? value * by : value + by;
        }
    }

    /// <summary>What is less than nothing stays so to the end.</summary>
    private bool IsSound()
    {
        foreach (int portion in _plan.Packaged)
        {
            if (!_trace.Wort(Stage.Package, portion).IsSound)
            {
                return false;
            }
        }

        return true;
    }
}
