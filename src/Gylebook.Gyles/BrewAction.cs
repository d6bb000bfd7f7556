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

    /// <summary>The portion it was done to; null for the whole.</summary>
    public string? Portion { get; init; }

    /// <summary>Mass that went in.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Volume that went in or was moved, as it stood.</summary>
    public HotVolume? Volume { get; init; }

    /// <summary>Temperature that was set or met.</summary>
    public Temperature? Temperature { get; init; }

    /// <summary>What sort of action it is.</summary>
    public ActionKind Kind { get; init; }

    /// <summary>Key of the step it belongs to; of an added step, the one it stands behind. Null when it belongs to none.</summary>
    public string? Step { get; init; }

    /// <summary>Key of what was ticked off; null for the step itself.</summary>
    public string? Item { get; init; }

    /// <summary>The lot that was used: <c>sheet/lot</c>; null where none is named.</summary>
    public string? Lot { get; init; }

    /// <summary>When a timer ends, on the clock on the wall.</summary>
    public DateTimeOffset? Until { get; init; }

    /// <summary>The entry that this one takes back: an action's or a reading's.</summary>
    public Guid? Undoes { get; init; }

    /// <summary>More of it, as JSON of the form its kind has; null for most.</summary>
    public string? Detail { get; init; }

    /// <summary>Number of the action that this one corrects.</summary>
    public long? ReplacesId { get; init; }
}

/// <summary>Sorts of action. Their names stand in books: none changes what it means.</summary>
public enum ActionKind
{
    /// <summary>Something in the brewer's own words.</summary>
    Said,

    /// <summary>A step is done.</summary>
    Done,

    /// <summary>A step is left out, and why.</summary>
    Skipped,

    /// <summary>A step is taken up again.</summary>
    Reopened,

    /// <summary>Something went in.</summary>
    Ticked,

    /// <summary>A timer runs.</summary>
    Timed,

    /// <summary>A timer was stopped or heard.</summary>
    Heard,

    /// <summary>A step that the plan did not have: a mend that was taken, or one of the brewer's own.</summary>
    Added,

    /// <summary>An earlier entry is taken back.</summary>
    Undone,

    /// <summary>Beer was filled into packages; what and how stands in <see cref="BrewAction.Detail"/>.</summary>
    Packaged,

    /// <summary>Somebody tasted it.</summary>
    Tasted,

    /// <summary>Tasters were asked whether two beers differ.</summary>
    Compared,

    /// <summary>Beer left its package, litres.</summary>
    Poured,

    /// <summary>Yeast was taken out to be used again.</summary>
    Harvested,

    /// <summary>Something the gyle taught was taken into a kit or a sheet, or was left.</summary>
    Taught,

    /// <summary>The beer was shared out over vessels; the shares stand in <see cref="BrewAction.Detail"/>.</summary>
    Divided,

    /// <summary>Something went into the fermenter that the plan did not have; what, stands in <see cref="BrewAction.Detail"/>.</summary>
    Given,

    /// <summary>Something was given that helps it to clear; what and how much stands in <see cref="BrewAction.Detail"/>.</summary>
    Fined,
}
