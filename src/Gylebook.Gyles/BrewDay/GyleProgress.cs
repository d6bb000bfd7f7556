namespace Gylebook.Gyles.BrewDay;

/// <summary>How far a gyle is by its log.</summary>
public static class GyleProgress
{
    /// <summary>Where it stands: with yeast in it ferments, and with that taken back it is on brew day again. What comes before and after is no matter of this log.</summary>
    /// <param name="now">Where the book says it stands.</param>
    /// <param name="log">Its log.</param>
    public static GyleStatus Of(GyleStatus now, GyleLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return now is not (GyleStatus.Brewing or GyleStatus.Fermenting) ? now
            : log.Pitched is null ? GyleStatus.Brewing : GyleStatus.Fermenting;
    }

    /// <summary>Whether an action may move a gyle on, or back: one of the pitch, or one that takes another back.</summary>
    public static bool MayMove(BrewAction action)
    {
        ArgumentNullException.ThrowIfNull(action);
        return action.Step == BrewSteps.PitchKey || action.Kind == ActionKind.Undone;
    }
}
