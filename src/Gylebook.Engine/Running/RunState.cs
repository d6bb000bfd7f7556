using Gylebook.Engine.Parameters;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;

namespace Gylebook.Engine.Running;

/// <summary>A run under way: the portions, and the one switch that moves them on, step by step, telling the log.</summary>
/// <typeparam name="TLog">Who watches.</typeparam>
internal ref struct RunState<TLog>
    where TLog : struct, IRunLog
{
    private readonly RunPlan _plan;
    private readonly Draw _draw;
    private readonly RunTrace _trace;
    private readonly Span<Portion> _portions;
    private readonly Span<BoilMark> _marks;
    private readonly ref TLog _log;

    public RunState(RunPlan plan, Draw draw, RunTrace trace, Span<Portion> portions, Span<BoilMark> marks, ref TLog log)
    {
        _plan = plan;
        _draw = draw;
        _trace = trace;
        _portions = portions;
        _marks = marks;
        _log = ref log;
    }

    /// <summary>Takes one step.</summary>
    public readonly void Take(in Step step)
    {
        ref Portion portion = ref _portions[step.To];
        ref Wort wort = ref portion.Wort;
        switch (step.Move)
        {
            case Move.AddLiquor: AddLiquor(step); break;
            case Move.AddIngredient: AddIngredient(step); break;
            case Move.ConvertStarch: Mash.Convert(ref wort, _plan.Mash, _draw, _plan.Reactions); Reach(step, step.To); break;
            case Move.PartGrain: Lift.Part(ref _portions[step.From].Wort, ref wort, _draw); Reach(step, step.From); break;
            case Move.RinseGrain: RinseGrain(step); break;
            case Move.DropGrain: DropGrain(step); break;
            case Move.Look: Reach(step, step.To); break;
            case Move.MakeAcid: MakeAcid(step); break;
            case Move.BoilOff: BoilOff(step); break;
            case Move.Steep: Steep(step); break;
            case Move.Settle: Boil.KnockOut(ref portion, _plan.Additions, _plan.Reactions.Coagulation, _marks, _draw, ref _log); Reach(step, step.To); break;
            case Move.CastOver: CastOver(step); break;
            case Move.Divide: Divide(step); break;
            case Move.Join: Parting.Blend(ref _portions[step.From], ref portion); Reach(step, step.To); break;
            case Move.FermentOut: FermentOut(step); break;
            case Move.EndFermentation: Isomerisation.Keep(ref wort, 1 - _draw[_plan.IsoLosses.Cellar]); Reach(step, step.To); break;
            case Move.RackOff: Rack.Off(ref wort, step.To, _draw, ref _log); Reach(step, step.To); break;
            case Move.Fill: Package.Prime(ref wort, step.To, _plan.Packages[step.Row], ref _log); Reach(step, step.To); break;
            case Move.MakeGas: MakeGas(step); break;
            default: throw new ArgumentOutOfRangeException(nameof(step), step.Move, "No such move.");
        }
    }

    private readonly void Reach(in Step step, int portion) => _log.Reached(step.Stage, portion, _portions[portion]);

    private readonly void AddLiquor(in Step step)
    {
        Wort minerals = step.Stage == Stage.Strike ? _plan.Minerals.Strike : _plan.Minerals.TopUp;
        Parting.Enter(ref _portions[step.To].Wort, step.Stage, step.To, Minerals.In(minerals, _plan.Liquors[step.Row]), ref _log);
        Reach(step, step.To);
    }

    private readonly void AddIngredient(in Step step)
    {
        ref Portion portion = ref _portions[step.To];
        Addition addition = _plan.Additions[step.Row];
        _marks[step.Row] = new BoilMark(portion.BoiledMinutes, portion.GravityMinutes);
        addition.Into(ref portion, step.To, _trace.Makeup(addition.Makeup), ref _log);
        _trace.Dose(step.Row, Isomerisation.Dose(ref portion.Wort, addition.Hop, _draw));
    }

    private readonly void RinseGrain(in Step step)
    {
        Rinse.Through(
            ref _portions[step.To].Wort, ref _portions[step.From].Wort, step.To, _plan.Rinse, _plan.Minerals.Rinse, _draw, ref _log);
        Reach(step, step.To);
    }

    private readonly void DropGrain(in Step step)
    {
        Lift.DeadSpace(ref _portions[step.To].Wort, step.To, _draw, ref _log);
        Parting.Leave(ref _portions[step.From].Wort, step.Stage, step.From, Loss.HeldInGrain, Shares.Of(1), ref _log);
    }

    private readonly void MakeAcid(in Step step)
    {
        double start = MaltWort.Of(_plan, _draw, _trace).Alone(_draw);
        Sour.To(ref _portions[step.To].Wort, step.To, _plan.Sourings[step.Row], start, _plan.Reactions, _draw, ref _log);
        Reach(step, step.To);
    }

    private readonly void BoilOff(in Step step)
    {
        HeatStep heat = _plan.Boils[step.Row];
        Boil.For(ref _portions[step.To], step.To, heat.Minutes, _draw, ref _log);
        Isomerisation.Heat(ref _portions[step.To].Wort, heat.At(_draw));
    }

    private readonly void Steep(in Step step) => Isomerisation.Heat(
        ref _portions[step.To].Wort, step.Stage == Stage.Chill ? _plan.Cooling : _plan.Stands[step.Row].At(_draw));

    private readonly void CastOver(in Step step)
    {
        double keeps = (1 - _draw[_plan.IsoLosses.Trub]) * _draw[Known.UtilisationFactor];
        Isomerisation.Keep(ref _portions[step.To].Wort, keeps);
        Cast.Over(ref _portions[step.To], step.To, _draw, ref _log);
        Reach(step, step.To);
    }

    private readonly void Divide(in Step step)
    {
        Parting.Split(ref _portions[step.From], ref _portions[step.To], Shares.Of(_plan.SplitShares[step.Row]));
        Reach(step, step.From);
        Reach(step, step.To);
    }

    private readonly void FermentOut(in Step step)
    {
        FermentStep yeast = _plan.Ferments[step.Row];
        ref Wort wort = ref _portions[step.To].Wort;
        Ferment.Out(ref wort, yeast, _plan.Reactions, _draw);
        Ferment.Vent(ref wort, step.Stage, step.To, _draw[yeast.ResidualGas], ref _log);
    }

    private readonly void MakeGas(in Step step)
    {
        Package.Condition(
            ref _portions[step.To].Wort, step.To, _plan.Packages[step.Row], _plan.Ferments[step.Row], _plan.Reactions, _draw, ref _log);
        Reach(step, step.To);
    }
}
