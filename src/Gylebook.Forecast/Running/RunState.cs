using Gylebook.Forecast.Stages;
using Gylebook.Forecast.State;

namespace Gylebook.Forecast.Running;

/// <summary>A run under way: the portions, and the one switch that moves them on, stage by stage, telling the log.</summary>
/// <typeparam name="TLog">Who watches.</typeparam>
internal ref struct RunState<TLog>
    where TLog : struct, IRunLog
{
    private readonly RunPlan _plan;
    private readonly ReadOnlySpan<double> _draw;
    private readonly Span<Portion> _portions;
    private readonly Span<BoilMark> _marks;
    private readonly Figures _figures;
    private readonly ref TLog _log;

    public RunState(
        RunPlan plan, ReadOnlySpan<double> draw, Span<Portion> portions, Span<BoilMark> marks, Figures figures, ref TLog log)
    {
        _plan = plan;
        _draw = draw;
        _portions = portions;
        _marks = marks;
        _figures = figures;
        _log = ref log;
    }

    /// <summary>Takes one step.</summary>
    public readonly void Take(in Step step)
    {
        switch (step.Kind)
        {
            case StepKind.Strike: AddLiquor(step, Stage.Strike, _plan.Minerals.Strike); break;
            case StepKind.TopUp: AddLiquor(step, Stage.TopUp, _plan.Minerals.TopUp); break;
            case StepKind.Add: Add(step); break;
            case StepKind.Mash: MashIt(step); break;
            case StepKind.Lift: LiftOff(step); break;
            case StepKind.Rinse: RinseBed(step); break;
            case StepKind.SpentGrain: DropGrain(step); break;
            case StepKind.CopperUp: _figures.AtCopperUp(step.To, _portions[step.To].Wort); Reach(Stage.CopperUp, step.To); break;
            case StepKind.Sour: SourIt(step); break;
            case StepKind.Boil: BoilOn(step); break;
            case StepKind.KnockOut: KnockOut(step); break;
            case StepKind.Stand: Reach(Stage.Stand, step.To); break;
            case StepKind.Chill: Reach(Stage.Chill, step.To); break;
            case StepKind.Cast: CastOver(step); break;
            case StepKind.Split: Split(step); break;
            case StepKind.Blend: Blend(step); break;
            case StepKind.Ferment: FermentOut(step); break;
            case StepKind.EndFerment: EndFerment(step); break;
            case StepKind.Crash: Reach(Stage.Crash, step.To); break;
            case StepKind.Rack: RackOff(step); break;
            case StepKind.Package: Fill(step); break;
            case StepKind.Condition: ConditionIt(step); break;
            case StepKind.Pour: _figures.AtPour(step.To, _portions[step.To].Wort, _plan.Bitterness); Reach(Stage.Pour, step.To); break;
            case StepKind.Steep: Isomerisation.Heat(ref _portions[step.To].Wort, _plan.Steeps[step.Index]); break;
            default: throw new ArgumentOutOfRangeException(nameof(step), step.Kind, "No such step.");
        }
    }

    private readonly void Reach(Stage stage, int portion) => _log.Reached(stage, portion, _portions[portion]);

    private readonly void AddLiquor(in Step step, Stage stage, in Wort minerals)
    {
        Wort liquor = Minerals.In(minerals, _plan.Liquors[step.Index]);
        Parting.Enter(ref _portions[step.To].Wort, stage, step.To, liquor, ref _log);
        Reach(stage, step.To);
    }

    private readonly void Add(in Step step)
    {
        ref Portion portion = ref _portions[step.To];
        _marks[step.Index] = new BoilMark(portion.BoiledMinutes, portion.GravityMinutes);
        _plan.Additions[step.Index].Into(ref portion, step.To, _draw, ref _log);
        Isomerisation.Dose(ref portion.Wort, _plan.HopDoses[step.Index], _draw);
    }

    private readonly void SourIt(in Step step)
    {
        Sour.To(ref _portions[step.To].Wort, step.To, _plan.Sourings[step.Index], _plan.Reactions, _draw, ref _log);
        Reach(Stage.Sour, step.To);
    }

    private readonly void BoilOn(in Step step)
    {
        Boil.For(ref _portions[step.To], step.To, _plan.BoilMinutes[step.Index], _draw, ref _log);
        Isomerisation.Heat(ref _portions[step.To].Wort, _plan.BoilHeats[step.Index]);
    }

    private readonly void MashIt(in Step step)
    {
        ref Wort mash = ref _portions[step.To].Wort;
        Mash.Convert(ref mash, _plan.Mash, _draw, _plan.Reactions);
        _figures.AtMash(step.To, mash, _draw);
        Reach(Stage.Mash, step.To);
    }

    private readonly void LiftOff(in Step step)
    {
        ref Wort wort = ref _portions[step.From].Wort;
        Lift.Part(ref wort, ref _portions[step.To].Wort, _draw);
        _figures.AtRunOff(step.From, wort, _plan.Mash.GristKilograms);
        Reach(Stage.Lift, step.From);
    }

    private readonly void RinseBed(in Step step)
    {
        ref Wort kettle = ref _portions[step.To].Wort;
        Rinse.Through(ref kettle, ref _portions[step.From].Wort, step.To, _plan.Rinse, _plan.Minerals.Rinse, _draw, ref _log);
        _figures.AtRunOff(step.To, kettle, _plan.Mash.GristKilograms);
        Reach(Stage.Rinse, step.To);
    }

    private readonly void DropGrain(in Step step)
    {
        Lift.DeadSpace(ref _portions[step.To].Wort, step.To, _draw, ref _log);
        Parting.Leave(ref _portions[step.From].Wort, Stage.Lift, step.From, Loss.HeldInGrain, Shares.Of(1), ref _log);
    }

    private readonly void KnockOut(in Step step)
    {
        ref Portion kettle = ref _portions[step.To];
        Boil.KnockOut(ref kettle, _plan, _marks, _draw, ref _log);
        _figures.AtKnockOut(step.To, kettle.Wort);
        Reach(Stage.KnockOut, step.To);
    }

    private readonly void CastOver(in Step step)
    {
        double keeps = (1 - _draw[_plan.IsoLosses.Trub]) * _draw[(int)Known.UtilisationFactor];
        Isomerisation.Keep(ref _portions[step.To].Wort, keeps);
        Cast.Over(ref _portions[step.To], step.To, _draw, ref _log);
        _figures.AtCast(step.To, _portions[step.To].Wort);
        Reach(Stage.Cast, step.To);
    }

    private readonly void Split(in Step step)
    {
        Parting.Split(ref _portions[step.From], ref _portions[step.To], Shares.Of(_plan.SplitShares[step.Index]));
        _figures.CopyRow(step.From, step.To);
        Reach(Stage.Split, step.From);
        Reach(Stage.Split, step.To);
    }

    private readonly void Blend(in Step step)
    {
        Parting.Blend(ref _portions[step.From], ref _portions[step.To]);
        Reach(Stage.Blend, step.To);
    }

    private readonly void FermentOut(in Step step)
    {
        ref Wort wort = ref _portions[step.To].Wort;
        FermentStep yeast = _plan.Ferments[step.Index];
        Ferment.Out(ref wort, yeast, _plan.Reactions, _draw);
        Ferment.Vent(ref wort, Stage.Ferment, step.To, _draw[yeast.ResidualGas], ref _log);
    }

    private readonly void EndFerment(in Step step)
    {
        Isomerisation.Keep(ref _portions[step.To].Wort, 1 - _draw[_plan.IsoLosses.Cellar]);
        _figures.AtEndOfFermentation(step.To, _portions[step.To], _draw);
        Reach(Stage.Ferment, step.To);
    }

    private readonly void RackOff(in Step step)
    {
        ref Wort beer = ref _portions[step.To].Wort;
        double sludge = Rack.Off(ref beer, step.To, _draw, ref _log);
        _figures.AtRack(step.To, beer, sludge);
        Reach(Stage.Rack, step.To);
    }

    private readonly void Fill(in Step step)
    {
        ref Wort beer = ref _portions[step.To].Wort;
        Package.Prime(ref beer, step.To, _plan.Packages[step.Index], ref _log);
        _figures.AtPackage(step.To, beer, Package.RefermentableVolumes(beer, _plan.Ferments[step.Index], _plan.Reactions, _draw));
        Reach(Stage.Package, step.To);
    }

    private readonly void ConditionIt(in Step step)
    {
        Package.Condition(
            ref _portions[step.To].Wort, step.To, _plan.Packages[step.Index], _plan.Ferments[step.Index], _plan.Reactions,
            _draw, ref _log);
        Reach(Stage.Condition, step.To);
    }
}
