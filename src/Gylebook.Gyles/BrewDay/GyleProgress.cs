namespace Gylebook.Gyles.BrewDay;

/// <summary>How far a gyle is by its log.</summary>
public static class GyleProgress
{
    /// <summary>What a last pouring says: nothing is left.</summary>
    public const string Emptied = "empty";

    /// <summary>Where it stands: with yeast in it ferments, and with that taken back it is on brew day again. Filled it is packaged, and emptied finished; one that was planned or poured away is no matter of this log.</summary>
    /// <param name="now">Where the book says it stands.</param>
    /// <param name="log">Its log.</param>
    public static GyleStatus Of(GyleStatus now, GyleLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return now is not (GyleStatus.Brewing or GyleStatus.Fermenting or GyleStatus.Packaged or GyleStatus.Finished) ? now
            : log.Pitched is null ? GyleStatus.Brewing
            : log.Actions.All(action => action.Kind != ActionKind.Packaged) ? GyleStatus.Fermenting
            : log.Actions.Any(action => action is { Kind: ActionKind.Poured, Item: Emptied }) ? GyleStatus.Finished : GyleStatus.Packaged;
    }

    /// <summary>Whether an action may move a gyle on, or back: one of the pitch, of filling, of emptying, or one that takes another back.</summary>
    public static bool MayMove(BrewAction action)
    {
        ArgumentNullException.ThrowIfNull(action);
        return action.Step == BrewSteps.PitchKey || action.Kind is ActionKind.Undone or ActionKind.Packaged || action is { Kind: ActionKind.Poured, Item: Emptied };
    }
}
