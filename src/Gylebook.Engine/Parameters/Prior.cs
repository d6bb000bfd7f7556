namespace Gylebook.Engine.Parameters;

/// <summary>How wide a parameter is before any reading. The centre is the parameter's own median, never the prior's.</summary>
public abstract record Prior
{
    /// <summary>No width is known: it stays where it is.</summary>
    public static Prior Point { get; } = new Known();

    /// <summary>A single number, of which nobody has said how wide it is.</summary>
    public sealed record Known : Prior;

    /// <summary>A family of distributions with its width and what bounds it.</summary>
    /// <param name="Family">How it is spread.</param>
    /// <param name="Width">Standard deviation on the family's own scale: of the value, of its logarithm, of its logit.</param>
    /// <param name="Low">Lowest value there can be; for a triangle or an even spread its low end.</param>
    /// <param name="High">Highest.</param>
    public sealed record Spread(SpreadFamily Family, double Width, double Low, double High) : Prior
    {
        /// <summary>Standard deviation between gyles of one brewer, on the same scale: what learning cannot go below.</summary>
        public double Floor { get; init; }

        /// <summary>What shares one draw with it: a lot of malt, a maker's method; null for itself alone.</summary>
        public string? SharesDrawWith { get; init; }
    }

    /// <summary>One of several shares that sum to one.</summary>
    /// <param name="Group">All shares of the same group are drawn together.</param>
    /// <param name="Width">Standard deviation of the logarithm of its ratio to the largest of them.</param>
    public sealed record Share(string Group, double Width) : Prior;

    /// <summary>One figure of a food's label: drawn with the others of the food, inside its ends and the balance of the panel.</summary>
    /// <param name="Food">Id of the food.</param>
    /// <param name="Low">Low end that the printed figure allows.</param>
    /// <param name="High">High end.</param>
    public sealed record Label(string Food, double Low, double High) : Prior;
}

/// <summary>How a parameter is spread.</summary>
public enum SpreadFamily
{
    /// <summary>What has a sign, or sits far from any bound.</summary>
    Normal,

    /// <summary>Amounts and rates.</summary>
    LogNormal,

    /// <summary>Shares between two bounds.</summary>
    LogitNormal,

    /// <summary>A guess between two ends.</summary>
    Triangular,

    /// <summary>Anything between two ends.</summary>
    Uniform,

    /// <summary>Anything between two ends, on the scale of the logarithm.</summary>
    LogUniform,
}
