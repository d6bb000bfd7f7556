namespace Gylebook.Gyles.Days;

/// <summary>Something of a gyle that has a day: brewing, an addition in the fermenter, the end of a rest, packaging.</summary>
/// <param name="Key">What it is called by, once in a gyle and for ever: <c>brew-day</c>, <c>ferment-day-3</c>.</param>
/// <param name="Title">In a few words.</param>
/// <param name="At">When it begins.</param>
public sealed record GyleDay(string Key, string Title, DateTimeOffset At)
{
    /// <summary>When it ends at the earliest; null for a moment.</summary>
    public DateTimeOffset? Until { get; init; }

    /// <summary>Days after the pitch; null for brew day itself.</summary>
    public double? AfterPitch { get; init; }

    /// <summary>What goes in, as the recipe says it.</summary>
    public IReadOnlyList<string> Items { get; init; } = [];

    /// <summary>The title, and what goes in: "Add to the fermenter: 500 g Buckwheat honey."</summary>
    public string Sentence => Items.Count > 0 ? $"{Title}: {string.Join(", ", Items)}." : $"{Title}.";

    /// <summary>What can hurt, in full.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];
}
