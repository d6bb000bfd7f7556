using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Forecast.Report;

namespace Gylebook.Pictures;

/// <summary>The run as a picture: a ribbon from water to glass. Drawn by <see cref="Drawing.RunSvg"/>, told by <see cref="RunTable"/>.</summary>
/// <remarks>Every litre is at 20 °C, so that cooling changes nothing: only what enters, leaves or turns into something else does.</remarks>
public sealed record RunPicture
{
    /// <summary>The recipe's name.</summary>
    public required string Recipe { get; init; }

    /// <summary>The kit's name.</summary>
    public required string Kit { get; init; }

    /// <summary>The stages up to the cast, or all of them when it stays together.</summary>
    public required IReadOnlyList<RunStep> Trunk { get; init; }

    /// <summary>What becomes of each share of a divided cast; empty when it stays together.</summary>
    public required IReadOnlyList<RunBranch> Branches { get; init; }

    /// <summary>How numbers are written for this reader.</summary>
    public required Shown Shown { get; init; }

    /// <summary>The run of another recipe, drawn as a dashed line about this one's; null for none.</summary>
    public RunGhost? Ghost { get; init; }

    /// <summary>Everything in one row: trunk first, then each branch from the parting to the glass.</summary>
    public IEnumerable<RunStep> Steps => Trunk.Concat(Branches.SelectMany(b => b.Steps));

    /// <summary>Litres at the widest place, the high ends of bands included: what the drawing is scaled by.</summary>
    public double WidestLitres =>
        Steps.Select(s => Math.Max(s.Litres.Likely, s.Litres.High)).Concat(Ghost?.Litres.Values ?? []).DefaultIfEmpty(0).Max();

    /// <summary>The picture of a forecast; without steps when the recipe cannot be brewed.</summary>
    public static RunPicture Of(BrewForecast forecast, ReaderUnits? units = null) =>
        new RunReading(forecast, new Shown(units ?? ReaderUnits.Metric)).Picture();
}

/// <summary>Another recipe's run behind a picture: a version that was kept, on the same kit.</summary>
/// <param name="Name">What it is called: <c>version 2</c>.</param>
/// <param name="Litres">Clear liquid at 20 °C by stage and portion.</param>
public sealed record RunGhost(string Name, IReadOnlyDictionary<(Stage Stage, string Portion), double> Litres)
{
    /// <summary>The ghost of a run.</summary>
    public static RunGhost Of(RunPicture picture, string name) =>
        new(name, picture.Steps.ToDictionary(step => (step.Stage, step.Portion), step => step.Litres.Likely));

    /// <summary>Litres of a step's counterpart; null when it has none.</summary>
    public double? Of(RunStep step) => Litres.TryGetValue((step.Stage, step.Portion), out double litres) ? litres : null;
}

/// <summary>A share of the cast on its own way.</summary>
/// <param name="Name">What the recipe calls it.</param>
/// <param name="Steps">From the parting to the glass.</param>
public sealed record RunBranch(string Name, IReadOnlyList<RunStep> Steps);

/// <summary>A stage of the run, and what happened on the way into it.</summary>
public sealed record RunStep
{
    /// <summary>The stage.</summary>
    public required Stage Stage { get; init; }

    /// <summary>The portion; <c>main</c> before the cast is divided.</summary>
    public required string Portion { get; init; }

    /// <summary>The stage's name for people: <c>Copper-up</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Clear liquid at 20 °C once the stage is over.</summary>
    public required Band Litres { get; init; }

    /// <summary>°C; null when nobody knows.</summary>
    public double? TemperatureC { get; init; }

    /// <summary>Specific gravity of the clear liquid.</summary>
    public required double Gravity { get; init; }

    /// <summary>What a brewer wants to know of it, in words: <c>1.013 · 5.8 % alcohol</c>.</summary>
    public required string Says { get; init; }

    /// <summary>What it looks like.</summary>
    public required Tint Tint { get; init; }

    /// <summary>What goes in on the way into this stage.</summary>
    public required IReadOnlyList<RunAddition> Additions { get; init; }

    /// <summary>What is lost on the way into this stage.</summary>
    public required IReadOnlyList<RunLoss> Losses { get; init; }

    /// <summary>What to look out for on the way into this stage.</summary>
    public required IReadOnlyList<RunCaution> Cautions { get; init; }
}

/// <summary>Something that goes in.</summary>
/// <param name="Name">What.</param>
/// <param name="Kilograms">All of it.</param>
/// <param name="Litres">Clear liquid it brings by itself, at 20 °C.</param>
/// <param name="IsLiquor">Whether it is brewing water, drawn as wide as it is.</param>
public sealed record RunAddition(string Name, double Kilograms, double Litres, bool IsLiquor)
{
    /// <summary>Name and amount: litres of liquor, the weight of all else.</summary>
    public string Text(Shown shown) => $"{Name} {(IsLiquor ? shown.Litres(Litres) : shown.Kilograms(Kilograms))}";
}

/// <summary>Something that is lost.</summary>
/// <param name="Name">Where it stays, for people: <c>grain keeps</c>.</param>
/// <param name="Litres">Clear liquid lost, at 20 °C; 0 for gas.</param>
/// <param name="Kilograms">Everything lost, solids and gas included.</param>
public sealed record RunLoss(string Name, double Litres, double Kilograms)
{
    /// <summary>Name and litres; the weight where no liquid goes.</summary>
    public string Text(Shown shown) => $"{Name} {(Litres > 0 ? shown.Litres(Litres) : shown.Kilograms(Kilograms))}";
}

/// <summary>A caution pinned to its stage; those that say the same are one mark.</summary>
/// <param name="Code">Its stable name; the first of those it stands for.</param>
/// <param name="IsHazard">A hazard, rather than a limit of a model.</param>
/// <param name="Message">What to look out for; several messages a line each.</param>
public sealed record RunCaution(string Code, bool IsHazard, string Message)
{
    /// <summary>The code in a word or two: what the mark says.</summary>
    public string Says => CautionKinds.Of(Code).Mark;
}
