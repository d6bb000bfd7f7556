namespace Gylebook.Store;

/// <summary>A recipe, a kit, a food or a water plan as it stands today.</summary>
/// <param name="Id">Whose draft it is.</param>
/// <param name="Document">The whole text.</param>
/// <param name="Revision">To be named when saving.</param>
/// <param name="Updated">When it last changed.</param>
/// <param name="UndoLabel">What undo would take back; null when there is nothing.</param>
/// <param name="RedoLabel">What redo would bring back; null when there is nothing.</param>
/// <param name="IsDamaged">Whether the disk no longer gives back what was written.</param>
public sealed record Draft(
    Guid Id, string Document, long Revision, DateTimeOffset Updated, string? UndoLabel, string? RedoLabel, bool IsDamaged = false);

/// <summary>A wish: an edit is to make one step with the same tab's edit of the same field a moment before.</summary>
/// <param name="Before">The text that earlier edit began with, to which undo is to go back.</param>
/// <param name="Label">What both did together.</param>
public sealed record DraftJoin(string Before, string Label)
{
    /// <summary>How soon one must follow the other.</summary>
    public static TimeSpan Within { get; } = TimeSpan.FromSeconds(5);
}

/// <summary>The answer to a save: it is on disk, or somebody else was there first.</summary>
public abstract record DraftSave
{
    private DraftSave()
    {
    }

    /// <summary>On disk.</summary>
    /// <param name="Revision">To be named at the next save.</param>
    /// <param name="IsJoined">Whether it makes one step with the edit before it.</param>
    public sealed record Saved(long Revision, bool IsJoined = false) : DraftSave;

    /// <summary>The text had changed since it was read. Nothing is lost: here are both.</summary>
    /// <param name="Theirs">What the book holds.</param>
    /// <param name="Yours">What was to be saved.</param>
    /// <param name="TheirRevision">To be named when saving over it, knowingly.</param>
    public sealed record Stale(string Theirs, string Yours, long TheirRevision) : DraftSave;
}

/// <summary>The answer to undo and redo.</summary>
public abstract record DraftMove
{
    private DraftMove()
    {
    }

    /// <summary>Done, and on disk.</summary>
    /// <param name="Draft">The draft as it stands now.</param>
    /// <param name="Label">The edit that was taken back or brought back.</param>
    public sealed record Moved(Draft Draft, string Label) : DraftMove;

    /// <summary>There was nothing to take back or bring back.</summary>
    public sealed record NothingLeft : DraftMove;

    /// <summary>The draft had changed since it was read; nothing was moved.</summary>
    /// <param name="Theirs">The draft as it stands now.</param>
    public sealed record Stale(Draft Theirs) : DraftMove;
}

/// <summary>One line of a history.</summary>
/// <param name="Id">Grows with time.</param>
/// <param name="ParentId">The edit that undo goes to; null for the first.</param>
/// <param name="Label">What was edited.</param>
/// <param name="At">When.</param>
/// <param name="TabId">Where.</param>
/// <param name="Before">The text that undo goes to; empty where it can no longer be had.</param>
/// <param name="After">The text after; empty where it can no longer be had.</param>
/// <param name="IsSetAside">It came too late to be saved and was kept beside the draft.</param>
/// <param name="IsDamaged">Whether the disk no longer gives back what was written.</param>
public sealed record DraftEdit(
    long Id, long? ParentId, string Label, DateTimeOffset At, string TabId, string Before, string After, bool IsSetAside, bool IsDamaged = false);
