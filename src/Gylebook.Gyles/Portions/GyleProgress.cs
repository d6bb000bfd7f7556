using Gylebook.Gyles.BrewDay;

namespace Gylebook.Gyles.Portions;

/// <summary>How far a gyle is by its log.</summary>
public static class GyleProgress
{
    /// <summary>What a last pouring says: nothing is left.</summary>
    public const string Emptied = "empty";

    /// <summary>Where it stands: with yeast in it ferments, and with that taken back it is on brew day again. Once each of its portions is filled it is packaged, and once each is emptied finished; one that was planned or poured away is no matter of this log.</summary>
    /// <param name="now">Where the book says it stands.</param>
    /// <param name="log">Its log.</param>
    /// <param name="division">How it is divided.</param>
    public static GyleStatus Of(GyleStatus now, GyleLog log, Division division)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(division);
        return now is not (GyleStatus.Brewing or GyleStatus.Fermenting or GyleStatus.Packaged or GyleStatus.Finished) ? now
            : log.Pitched is null ? GyleStatus.Brewing
            : !division.Names.All(portion => IsPackaged(log, portion)) ? GyleStatus.Fermenting
            : division.Names.All(portion => IsEmptied(log, portion)) ? GyleStatus.Finished : GyleStatus.Packaged;
    }

    /// <summary>Whether a portion was filled.</summary>
    public static bool IsPackaged(GyleLog log, string? portion)
    {
        ArgumentNullException.ThrowIfNull(log);
        return log.ActionsOf(portion).Any(action => action.Kind == ActionKind.Packaged);
    }

    /// <summary>Whether somebody said that nothing is left of a portion.</summary>
    public static bool IsEmptied(GyleLog log, string? portion)
    {
        ArgumentNullException.ThrowIfNull(log);
        return log.ActionsOf(portion).Any(action => action is { Kind: ActionKind.Poured, Item: Emptied });
    }

    /// <summary>Whether an action may move a gyle on, or back: one of the pitch, of dividing, of filling, of emptying, or one that takes another back.</summary>
    public static bool MayMove(BrewAction action)
    {
        ArgumentNullException.ThrowIfNull(action);
        return action.Step == BrewSteps.PitchKey || action.Kind is ActionKind.Undone or ActionKind.Packaged or ActionKind.Divided || action is { Kind: ActionKind.Poured, Item: Emptied };
    }
}
