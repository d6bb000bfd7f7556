using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Engine.Parameters;

/// <summary>How wide a parameter is before any reading. The centre is the parameter's own median, never the prior's.</summary>
public abstract record Prior
{
    /// <summary>No width is known of it, or it has none: it stays where it is.</summary>
    public static Prior Point { get; } = new Still();

    /// <summary>A parameter that is not drawn.</summary>
    public sealed record Still : Prior;

    /// <summary>A distribution about the median.</summary>
    /// <param name="Between">From brewer to brewer, lot to lot, strain to strain.</param>
    /// <param name="Within">From gyle to gyle of one brewer: what learning never goes below; null where nobody knows it.</param>
    /// <param name="Group">Parameters of one group are drawn together, as shares that sum to one are; empty for none.</param>
    public sealed record Spread(Width Between, Width? Within, string Group) : Prior;

    /// <summary>One figure of a food's label: drawn with the others of the food, inside the balance of its panel.</summary>
    /// <param name="Food">Id of the food.</param>
    /// <param name="Low">Low end that the printed figures allow.</param>
    /// <param name="High">High end.</param>
    public sealed record Label(string Food, double Low, double High) : Prior;
}
