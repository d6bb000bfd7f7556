using Gylebook.Engine.Running;

namespace Gylebook.Engine.Readouts;

/// <summary>The one table of all that can be told of a plan: a row a number, each a pure function of plan, draw and what the run left.</summary>
/// <remarks>Made once for a plan. Page, terminal, files, pictures, solvers and readings all read it.</remarks>
public sealed class ReadoutTable
{
    private readonly Lazy<Readout[]> _all;
    private readonly Lazy<Dictionary<string, Readout>> _byId;

    /// <summary>The table of a plan.</summary>
    public ReadoutTable(RunPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Stages = [.. plan.Steps.Where(step => step.Move != Move.BoilOff).SelectMany(step => step.Leaves()).Distinct().Select(place => StageReadouts.Of(place.Stage, place.Portion))];
        Losses = [.. plan.Steps.SelectMany(step => step.Loses()).Distinct().Select(at => LossReadouts.Of(at.Loss, at.Place.Stage, at.Place.Portion))];
        Hops = [.. Enumerable.Range(0, plan.Additions.Length).Where(row => plan.Additions[row].Hop.Grams > 0)
            .Select(row => new HopReadouts(row, plan.Additions[row].Place))];
        Rests = [.. Enumerable.Range(0, plan.Mash.Rests.Rests.Count).Select(RestReadouts.Of)];
        _all = new(() =>
        [
            .. BeerReadouts.All, .. PhReadouts.All, .. Heat.All, .. ChillReadouts.All, .. PackageReadouts.All, .. IonReadouts.All,
            RestReadouts.InfusionStrikeLitres, RestReadouts.InfusionStrikeCelsius, .. Rests.SelectMany(rest => rest.All),
            .. Stages.SelectMany(stage => stage.All), .. Losses.SelectMany(loss => loss.All), .. Hops.SelectMany(hop => hop.All),
            .. plan.Packaged.Length > 1 ? plan.Packaged.Select(PortionReadouts.OriginalGravity) : [],
        ]);
        _byId = new(() => All.ToDictionary(readout => readout.Id, StringComparer.Ordinal));
    }

    /// <summary>Every row.</summary>
    public IReadOnlyList<Readout> All => _all.Value;

    /// <summary>The stages of the plan, in order.</summary>
    public IReadOnlyList<StageReadouts> Stages { get; }

    /// <summary>The losses it may have.</summary>
    public IReadOnlyList<LossReadouts> Losses { get; }

    /// <summary>The rests of its mash.</summary>
    public IReadOnlyList<RestReadouts> Rests { get; }

    /// <summary>Its hops, in the order in which they go in.</summary>
    public IReadOnlyList<HopReadouts> Hops { get; }

    /// <summary>The row of that id; null when this plan has none.</summary>
    public Readout? Find(string id) => _byId.Value.GetValueOrDefault(id);

    /// <summary>Reads every row of a run into a buffer, in the order of <see cref="All"/>.</summary>
    public void Read(in RunView run, Span<double> into)
    {
        Readout[] all = _all.Value;
        for (int i = 0; i < all.Length; i++)
        {
            into[i] = all[i].Of(run);
        }
    }
}
