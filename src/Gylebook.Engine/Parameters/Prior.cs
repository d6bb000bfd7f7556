using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Engine.Parameters;

/// <summary>How wide a parameter is before any reading. The centre is the parameter's own median, never the prior's.</summary>
public abstract record Prior
{
    /// <summary>No width is known of it, or it has none: it stays where it is.</summary>
    public static Prior Point { get; } = new Still();

    /// <summary>Where the middle of a parameter of that median may lie: between brewers, lots and strains; of a label only the ends are known, and all between them is alike.</summary>
    public Distribution About(double median) => this switch
    {
        Spread spread => spread.Between.About(median),
        Label label => new Distribution(Family.Uniform, median, 0, label.Low, label.High),
        _ => new Distribution(Family.Point, median, 0, median, median),
    };

    /// <summary>A parameter that is not drawn.</summary>
    public sealed record Still : Prior;

    /// <summary>A distribution about the median.</summary>
    /// <param name="Between">From brewer to brewer, lot to lot, strain to strain: where this one's own middle may lie.</param>
    /// <param name="Within">From gyle to gyle of one brewer: what learning never goes below; null where nobody knows it.</param>
    /// <param name="Tie">What it is drawn together with.</param>
    public sealed record Spread(Width Between, Width? Within, Tie Tie) : Prior;

    /// <summary>One figure of a food's label: drawn with the others of the food, inside the balance of its panel.</summary>
    /// <param name="Food">Id of the food.</param>
    /// <param name="Low">Low end that the printed figures allow.</param>
    /// <param name="High">High end.</param>
    /// <param name="IsPart">Whether it is a part of the food's mass: the parts of a kilogram are a kilogram in every draw.</param>
    public sealed record Label(string Food, double Low, double High, bool IsPart) : Prior;
}
