using Gylebook.Forecast.Running;
using Gylebook.Forecast.State;

namespace Gylebook.Forecast.Stages;

/// <summary>Something that goes in, laid out: its makeup at the medians, and which parameters bend it.</summary>
/// <param name="Stage">Where it goes in.</param>
/// <param name="Makeup">All of it, as components, at the medians.</param>
/// <param name="Bends">How draws bend the makeup.</param>
/// <param name="BeforeRacking">Whether it counts into the original gravity: anything between cast and racking.</param>
public sealed record Addition(Stage Stage, Wort Makeup, Bend[] Bends, bool BeforeRacking = false)
{
    private static readonly Wort LiquidShares = new Shares { Liquid = 1 }.ByComponent();

    private readonly Wort _makeup = Makeup;

    /// <summary>All of it, as components, at the medians.</summary>
    public Wort Makeup
    {
        get => _makeup;
        init => _makeup = value;
    }

    /// <summary>The shares that pick the clear liquid out of anything.</summary>
    internal static ref readonly Wort ClearLiquid => ref LiquidShares;

    /// <summary>Puts the addition into a portion.</summary>
    public void Into<TLog>(ref Portion portion, int index, ReadOnlySpan<double> draw, ref TLog log)
        where TLog : struct, IRunLog
    {
        // At the medians nothing bends, and hundreds of bytes need not be copied.
        if (!IsBent(draw))
        {
            Enter(ref portion, index, _makeup, ref log);
            return;
        }

        Wort bent = _makeup;
        foreach (Bend bend in Bends)
        {
            bend.Apply(ref bent, draw);
        }

        Enter(ref portion, index, bent, ref log);
    }

    private bool IsBent(ReadOnlySpan<double> draw)
    {
        foreach (Bend bend in Bends)
        {
            if (draw[bend.Parameter] != bend.Median)
            {
                return true;
            }
        }

        return false;
    }

    private void Enter<TLog>(ref Portion portion, int index, in Wort added, ref TLog log)
        where TLog : struct, IRunLog
    {
        Parting.Enter(ref portion.Wort, Stage, index, added, ref log);
        if (BeforeRacking)
        {
            portion.Unfermented.Add(added.Part(ClearLiquid));
        }
    }
}

/// <summary>One parameter's hold on an addition.</summary>
/// <param name="Parameter">Its place in the draw.</param>
/// <param name="Median">The value the makeup was laid out with.</param>
/// <param name="Of">What it changes.</param>
public readonly record struct Bend(int Parameter, double Median, BendOf Of)
{
    /// <summary>Changes the makeup from the median to the draw; the mass stays.</summary>
    public void Apply(ref Wort makeup, ReadOnlySpan<double> draw)
    {
        double ratio = draw[Parameter] / Median;
        if (ratio == 1)
        {
            return;
        }

        if (Of == BendOf.SettledHold)
        {
            makeup[Component.SettledHold] *= ratio;
            return;
        }

        double grown = 0;
        foreach (Component part in ExtractParts)
        {
            double more = makeup[part] * (ratio - 1);
            makeup[part] += more;
            grown += more;
        }

        makeup[Component.Grain] -= grown;
    }

    private static readonly Component[] ExtractParts =
    [
        Component.Sucrose, Component.Glucose, Component.Maltose, Component.Maltotriose, Component.Dextrin,
        Component.Protein, Component.CoagulableProtein, Component.Minerals, Component.Starch,
    ];
}

/// <summary>What a parameter changes in an addition.</summary>
public enum BendOf
{
    /// <summary>A malt's laboratory extract: what dissolves grows, what does not shrinks.</summary>
    Extract,

    /// <summary>The beer a food's solids hold.</summary>
    SettledHold,
}
