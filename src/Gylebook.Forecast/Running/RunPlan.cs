using Gylebook.Forecast.Stages;
using Gylebook.Forecast.State;
using Gylebook.Science.Boiling;

namespace Gylebook.Forecast.Running;

/// <summary>A recipe laid out for one kit: steps and their figures, ready to run any number of times.</summary>
public sealed record RunPlan
{
    /// <summary>The moves, in order.</summary>
    public required Step[] Steps { get; init; }

    /// <summary>How many portions the run needs room for.</summary>
    public required int PortionCount { get; init; }

    /// <summary>Portions that end in a package.</summary>
    public required int[] Packaged { get; init; }

    /// <summary>All parameters; a draw has one number for each.</summary>
    public required IReadOnlyList<Parameter> Parameters { get; init; }

    /// <summary>The draw with every parameter at its median.</summary>
    public required double[] Medians { get; init; }

    /// <summary>What reacts to what.</summary>
    public required Reactions Reactions { get; init; }

    /// <summary>Kilograms of liquor, for strike and top-up steps. The planner fills these in.</summary>
    public required double[] Liquors { get; init; }

    /// <summary>What dissolves in the liquors; nothing when nobody has said.</summary>
    public Minerals Minerals { get; init; } = Minerals.None;

    /// <summary>What goes in, one row an addition.</summary>
    public required Addition[] Additions { get; init; }

    /// <summary>The mash.</summary>
    public required MashStep Mash { get; init; }

    /// <summary>The rinse.</summary>
    public required RinseStep Rinse { get; init; }

    /// <summary>Sourings, for sour steps; none when nothing is soured.</summary>
    public SourStep[] Sourings { get; init; } = [];

    /// <summary>Minutes, for boil steps.</summary>
    public required double[] BoilMinutes { get; init; }

    /// <summary>What each of those does to alpha acid.</summary>
    public required IsomerisationStep[] BoilHeats { get; init; }

    /// <summary>The same for stand and cooling, for steep steps.</summary>
    public required IsomerisationStep[] Steeps { get; init; }

    /// <summary>Alpha acid of the additions, one row an addition.</summary>
    public required HopDose[] HopDoses { get; init; }

    /// <summary>Where the kinetics' losses are drawn.</summary>
    public required IsoLosses IsoLosses { get; init; }

    /// <summary>Which bitterness is shown.</summary>
    public BitternessModel Bitterness { get; init; }

    /// <summary>Hops that were boiled.</summary>
    public required BoiledHop[] BoiledHops { get; init; }

    /// <summary>Shares, for split steps: of what is still there.</summary>
    public required double[] SplitShares { get; init; }

    /// <summary>Yeasts, one row a portion that ferments.</summary>
    public required FermentStep[] Ferments { get; init; }

    /// <summary>Packages, one row a portion that is packaged.</summary>
    public required PackageStep[] Packages { get; init; }
}
