namespace Gylebook.Pictures.Drawing;

/// <summary>A stage in the drawing: its steps side by side, the line it stands on, and the words on the way into it.</summary>
internal sealed class RunLevel
{
    /// <summary>Name of the stage.</summary>
    public required string Name { get; init; }

    /// <summary>The step of each ribbon; one before the cast is parted.</summary>
    public required IReadOnlyList<RunStep> Steps { get; init; }

    /// <summary>Whether the ribbons are branches.</summary>
    public required bool Parted { get; init; }

    /// <summary>Middle and width of each ribbon, in the order of the steps.</summary>
    public required IReadOnlyList<(double Centre, double Width)> Ribbons { get; init; }

    /// <summary>Where the way into the stage begins: its name stands there, over all that happens on the way.</summary>
    public double Top { get; set; }

    /// <summary>Height of the stage's line, where it is reached.</summary>
    public double Y { get; set; }

    /// <summary>Words on the way into the stage, each with its baseline.</summary>
    public List<RunLine> Lines { get; } = [];
}

/// <summary>A line of words on the way into a stage.</summary>
/// <param name="Kind">What it tells.</param>
/// <param name="Ribbon">The ribbon it belongs to.</param>
/// <param name="Text">As it is drawn.</param>
/// <param name="Full">All of it, for whoever points at it.</param>
/// <param name="X">Where it starts, or ends if it stands left of the ribbon.</param>
/// <param name="Y">Its baseline.</param>
/// <param name="Stroke">Width of the stroke that joins or leaves, 0 for none.</param>
internal sealed record RunLine(RunLineKind Kind, int Ribbon, string Text, string Full, double X, double Y, double Stroke);

/// <summary>What a line tells.</summary>
internal enum RunLineKind
{
    /// <summary>An ingredient, at the left of the ribbon.</summary>
    LeftAddition,

    /// <summary>Liquor, at the left of the ribbon.</summary>
    LeftLiquor,

    /// <summary>Something that goes in, among the words.</summary>
    Addition,

    /// <summary>A loss.</summary>
    Loss,

    /// <summary>A hazard.</summary>
    Hazard,

    /// <summary>A limit of a model.</summary>
    Limit,
}
