using Gylebook.Engine.Makeups;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;

namespace Gylebook.Engine.Running;

/// <summary>What one run leaves to be read: the state at every stage, every loss, and what went in. Made for a plan, and written over by each run.</summary>
public sealed class RunTrace
{
    private const int StageCount = (int)Stage.Pour + 1;
    private const int LossCount = (int)Loss.Racking + 1;

    private int _portions;

    // Row of a stage and portion, and of a loss and portion; 0 is what never was. A plan has few of all there could be.
    private int[] _stageRows = [];
    private int[] _lossRows = [];
    private Wort[] _reached = [];
    private Wort[] _unfermented = [];
    private bool[] _wasReached = [];

    // What every second readout asks for, reckoned at the first look; not a number until then.
    private double[] _gravities = [];
    private double[] _litresOf = [];
    private double[] _isoAlone = [];
    private MashLoad? _mash;
    private Wort[] _lost = [];
    private Wort[] _makeups = [];
    private double[] _bitterness = [];
    private double[] _litres = [];

    /// <summary>Room for the runs of a plan.</summary>
    public RunTrace(RunPlan plan) => LayOut(plan);

    /// <summary>Makes it room for the runs of another plan, as if it were new.</summary>
    public void LayOut(RunPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        IsWhole = false;
        _portions = plan.PortionCount;
        Extracts.AskForNone();
        foreach (Makeup makeup in plan.Makeups)
        {
            if (makeup is MaltMakeup malt)
            {
                Extracts.AskFor(malt.Family);
            }
        }

        (int stages, int losses) = ClaimRows(plan);
        Clear(ref _reached, stages);
        Clear(ref _unfermented, _portions);
        Clear(ref _wasReached, stages);
        Clear(ref _gravities, stages);
        Clear(ref _litresOf, stages);
        Clear(ref _isoAlone, plan.Additions.Length);
        Clear(ref _lost, losses);
        Clear(ref _makeups, plan.Makeups.Length);
        Clear(ref _bitterness, plan.Additions.Length);
        Clear(ref _litres, plan.Additions.Length);
        Forget();
    }

    /// <summary>Gives each stage and loss that the plan may have a row.</summary>
    /// <returns>How many rows there are of each.</returns>
    private (int Stages, int Losses) ClaimRows(RunPlan plan)
    {
        Clear(ref _stageRows, StageCount * _portions);
        Clear(ref _lossRows, 2 * LossCount * _portions);
        int stages = 1, losses = 1;
        foreach (ref readonly Step step in plan.Steps.AsSpan())
        {
            stages += step.LeavesFrom ? Claim(_stageRows, At(step.Stage, step.From), stages) : 0;
            stages += step.LeavesTo ? Claim(_stageRows, At(step.Stage, step.To), stages) : 0;

            foreach ((Loss loss, Place place) in step.Loses())
            {
                losses += Claim(_lossRows, At(loss, place.Portion, place.Stage == Stage.Sour), losses);
            }
        }

        return (stages, losses);
    }

    /// <summary>At least so many rows, all of them empty.</summary>
    private static void Clear<T>(ref T[] rows, int count)
    {
        if (rows.Length < count)
        {
            rows = new T[count];
        }
        else
        {
            Array.Clear(rows);
        }
    }

    private static int Claim(int[] rows, int at, int next)
    {
        if (rows[at] > 0)
        {
            return 0;
        }

        rows[at] = next;
        return 1;
    }

    /// <summary>Whether the run came to its end: no kettle boiled dry.</summary>
    public bool IsWhole { get; internal set; }

    /// <summary>What malts' extracts are made of, at this run's draw.</summary>
    internal MaltExtracts Extracts { get; } = new();

    /// <summary>What something that goes in is made of, at this run's draw.</summary>
    public ref readonly Wort Makeup(int row) => ref _makeups[row];

    /// <summary>Whether a stage was reached.</summary>
    public bool Has(Stage stage, int portion = 0) => _wasReached[_stageRows[At(stage, portion)]];

    /// <summary>The wort as a stage left it, the last time it was reached; nothing when it never was.</summary>
    public ref readonly Wort Wort(Stage stage, int portion = 0) => ref _reached[_stageRows[At(stage, portion)]];

    /// <summary>The wort when fermentation is over, as if no yeast had touched it.</summary>
    public ref readonly Wort Unfermented(int portion) => ref _unfermented[portion];

    /// <summary>Specific gravity of the clear liquid as a stage left it.</summary>
    public double Gravity(Stage stage, int portion = 0)
    {
        ref double known = ref _gravities[_stageRows[At(stage, portion)]];
        return double.IsNaN(known) ? known = Wort(stage, portion).Gravity : known;
    }

    /// <summary>Litres at 20 °C of the clear liquid as a stage left it.</summary>
    public double Litres(Stage stage, int portion = 0)
    {
        ref double known = ref _litresOf[_stageRows[At(stage, portion)]];
        return double.IsNaN(known) ? known = Wort(stage, portion).LitresAt(Gravity(stage, portion)) : known;
    }

    /// <summary>Acids and malt that went into the mash.</summary>
    internal MashLoad MashOf(RunPlan plan) => _mash ??= MashLoad.Of(plan, this);

    /// <summary>Milligrams of iso-alpha acid by addition, each hop followed as if it were the only one; not a number until somebody has.</summary>
    internal Span<double> IsoAlone => _isoAlone;

    /// <summary>All that was lost that way; gas that left the souring kettle is told apart from what left the fermenter.</summary>
    public ref readonly Wort Lost(Loss loss, int portion = 0, bool souring = false) => ref _lost[_lossRows[At(loss, portion, souring)]];

    /// <summary>Milligrams of bitterness by the table of time and gravity, by addition.</summary>
    public double Bitterness(int addition) => _bitterness[addition];

    /// <summary>Litres there were of the wort that a hop went into; 0 for what is no hop.</summary>
    public double LitresWhenAdded(int addition) => _litres[addition];

    /// <summary>Clears what adds up.</summary>
    internal void Begin()
    {
        IsWhole = false;
        Array.Clear(_wasReached);
        Array.Clear(_lost);
        Array.Clear(_bitterness);
        Forget();
    }

    /// <summary>Reckons what goes in.</summary>
    internal void ReckonMakeups(RunPlan plan, Draw draw)
    {
        Extracts.Fill(draw);
        for (int i = 0; i < plan.Makeups.Length; i++)
        {
            plan.Makeups[i].Fill(draw, Extracts, out _makeups[i]);
        }
    }

    private void Forget()
    {
        _mash = null;
        Array.Fill(_gravities, double.NaN);
        Array.Fill(_litresOf, double.NaN);
        Array.Fill(_isoAlone, double.NaN);
    }

    internal void Reach(Stage stage, int portion, in Portion state)
    {
        int row = _stageRows[At(stage, portion)];
        _reached[row] = state.Wort;
        _wasReached[row] = true;
        if (stage == Stage.Ferment)
        {
            _unfermented[portion] = state.Unfermented;
        }
    }

    internal void Lose(Stage stage, int portion, Loss loss, in Wort lost) => _lost[_lossRows[At(loss, portion, stage == Stage.Sour)]].Add(lost);

    internal void Dose(int addition, double litres) => _litres[addition] = litres;

    internal void Bitter(int addition, double milligrams) => _bitterness[addition] = milligrams;

    private int At(Stage stage, int portion) => ((int)stage * _portions) + portion;

    private int At(Loss loss, int portion, bool souring) => ((((souring ? LossCount : 0) + (int)loss)) * _portions) + portion;
}

/// <summary>The log that keeps what can be read of a run, and allocates nothing.</summary>
/// <param name="trace">Where to.</param>
public readonly struct TraceLog(RunTrace trace) : IRunLog
{
    /// <inheritdoc/>
    public void Added(Stage stage, int portion, in Wort added)
    {
    }

    /// <inheritdoc/>
    public void Lost(Stage stage, int portion, Loss what, in Wort lost) => trace.Lose(stage, portion, what, lost);

    /// <inheritdoc/>
    public void Reached(Stage stage, int portion, in Portion state) => trace.Reach(stage, portion, state);

    /// <inheritdoc/>
    public void Bittered(int addition, double milligrams) => trace.Bitter(addition, milligrams);
}
