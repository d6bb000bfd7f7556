namespace Gylebook.Science.Numerics.Distributions;

/// <summary>How figures hang together when they are drawn.</summary>
public enum TieKind
{
    /// <summary>Each has a draw of its own.</summary>
    None,

    /// <summary>All take one draw: what moves one moves the others as far, each on its own scale.</summary>
    One,

    /// <summary>Shares whose sum stays: the ratio of each to the largest is drawn.</summary>
    Sum,

    /// <summary>Shares whose sum stays: one of them, which has no width of its own, is what the others leave.</summary>
    Rest,
}

/// <summary>A bond between figures.</summary>
/// <param name="Kind">Of which sort.</param>
/// <param name="Name">What binds them; figures with the same bond belong together.</param>
public readonly record struct Tie(TieKind Kind, string Name)
{
    /// <summary>No bond.</summary>
    public static Tie None { get; } = new(TieKind.None, "");

    /// <summary>Reads <c>one thermometer</c>, <c>sum starch</c>, <c>rest hops</c>; nothing, or a word alone, binds nothing.</summary>
    /// <exception cref="FormatException">There is no such bond.</exception>
    public static Tie Of(string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        return words.Split(' ') switch
        {
            [_] => None,
            ["one", var name] => new(TieKind.One, name),
            ["sum", var name] => new(TieKind.Sum, name),
            ["rest", var name] => new(TieKind.Rest, name),
            _ => throw new FormatException($"{words} is no bond: one, sum or rest, and a name."),
        };
    }
}
