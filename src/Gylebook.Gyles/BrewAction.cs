using Gylebook.Science.Quantities;

namespace Gylebook.Gyles;

/// <summary>Something a hand did to a gyle: added, heated, racked, ticked off. Never changed afterwards.</summary>
public sealed record BrewAction
{
    /// <summary>When it was done.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>What was done, in the brewer's words: <c>added 600 g toasted seed flour</c>.</summary>
    public required string What { get; init; }

    /// <summary>Made where it was tapped, so that sending it twice keeps it once.</summary>
    public Guid? EntryId { get; init; }

    /// <summary>The stage it belongs to; null when unsaid.</summary>
    public string? Stage { get; init; }

    /// <summary>Mass that went in.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Volume that went in or was moved, as it stood.</summary>
    public HotVolume? Volume { get; init; }

    /// <summary>Temperature that was set or met.</summary>
    public Temperature? Temperature { get; init; }

    /// <summary>Number of the action that this one corrects.</summary>
    public long? ReplacesId { get; init; }
}
