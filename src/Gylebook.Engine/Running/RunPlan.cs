using Gylebook.Engine.Makeups;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Science.Boiling;

namespace Gylebook.Engine.Running;

/// <summary>A recipe laid out for one kit: steps and their figures, ready to run any number of times.</summary>
public sealed record RunPlan
{
    /// <summary>The steps, in order.</summary>
    public required Step[] Steps { get; init; }

    /// <summary>How many portions the run needs room for.</summary>
    public required int PortionCount { get; init; }

    /// <summary>Portions that end in a package.</summary>
    public required int[] Packaged { get; init; }

    /// <summary>All parameters; a draw has one number for each.</summary>
    public required Parameter[] Parameters { get; init; }

    /// <summary>The draw with every parameter at its median.</summary>
    public required double[] Medians { get; init; }

    /// <summary>What reacts to what.</summary>
    public required Reactions Reactions { get; init; }

    /// <summary>Kilograms of liquor, row by row. The planner fills these in.</summary>
    public required double[] Liquors { get; init; }

    /// <summary>What dissolves in the liquors; nothing when nobody has said.</summary>
    public Minerals Minerals { get; init; } = Minerals.None;

    /// <summary>What goes in, one row an addition.</summary>
    public required Addition[] Additions { get; init; }

    /// <summary>What that is made of; additions share a row where one line goes into several portions.</summary>
    public required Makeup[] Makeups { get; init; }

    /// <summary>The mash.</summary>
    public required MashStep Mash { get; init; }

    /// <summary>The rinse.</summary>
    public required RinseStep Rinse { get; init; }

    /// <summary>Sourings; none when nothing is soured.</summary>
    public SourStep[] Sourings { get; init; } = [];

    /// <summary>Stretches of boil.</summary>
    public required HeatStep[] Boils { get; init; }

    /// <summary>Stretches of stand.</summary>
    public required HeatStep[] Stands { get; init; }

    /// <summary>What cooling does to alpha acid; the planner fills it in, since it hangs on how much wort there is.</summary>
    public IsomerisationStep Cooling { get; set; } = IsomerisationStep.None;

    /// <summary>Where the kinetics' losses are drawn.</summary>
    public required IsoLosses IsoLosses { get; init; }

    /// <summary>Which bitterness is shown.</summary>
    public BitternessModel Bitterness { get; init; }

    /// <summary>Shares that part the cast: of what is still there.</summary>
    public required double[] SplitShares { get; init; }

    /// <summary>Yeasts, one row a portion that ferments.</summary>
    public required FermentStep[] Ferments { get; init; }

    /// <summary>Packages, one row a portion that is packaged.</summary>
    public required PackageStep[] Packages { get; init; }

    /// <summary>What is known of its acidity.</summary>
    public AcidityPlan Acidity { get; init; } = AcidityPlan.None;

    /// <summary>What moves no mass and yet decides what is told; null for a plan that is only run.</summary>
    public Surroundings? Surroundings { get; init; }

    /// <summary>The row of its yeast and its package that a packaged portion has.</summary>
    public int RowOf(int portion) => Array.IndexOf(Packaged, portion);
}
