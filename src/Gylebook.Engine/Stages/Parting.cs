using Gylebook.Engine.State;

namespace Gylebook.Engine.Stages;

/// <summary>
/// The only two ways anything enters or leaves a run: both change the portion and tell the log in one breath. Beside them, what
/// only moves from portion to portion.
/// </summary>
public static class Parting
{
    /// <summary>Adds to a portion.</summary>
    public static void Enter<TLog>(ref Wort wort, Stage stage, int portion, in Wort added, ref TLog log)
        where TLog : struct, IRunLog
    {
        wort.Add(added);
        log.Added(stage, portion, added);
    }

    /// <summary>Takes a share of each phase out of a portion, for good.</summary>
    public static void Leave<TLog>(ref Wort wort, Stage stage, int portion, Loss what, in Shares shares, ref TLog log)
        where TLog : struct, IRunLog
    {
        Wort lost = Move(ref wort, shares);
        log.Lost(stage, portion, what, lost);
    }

    /// <summary>Takes an amount of one component out of a portion, for good.</summary>
    public static void Leave<TLog>(
        ref Wort wort, Stage stage, int portion, Loss what, Component component, double amount, ref TLog log)
        where TLog : struct, IRunLog
    {
        Wort lost = default;
        lost[component] = amount;
        wort.Add(lost, -1);
        log.Lost(stage, portion, what, lost);
    }

    /// <summary>Takes a share of each phase out of a portion and gives it back, to lie elsewhere.</summary>
    public static Wort Move(ref Wort wort, in Shares shares)
    {
        Wort moved = wort.Part(shares);
        wort.Add(moved, -1);
        return moved;
    }

    /// <summary>Gives a share of all that is in one portion to another.</summary>
    public static void Split(ref Portion from, ref Portion to, in Shares shares)
    {
        to.Wort.Add(Move(ref from.Wort, shares));
        to.Unfermented.Add(Move(ref from.Unfermented, shares));
    }

    /// <summary>Gives all that is in one portion to another; nothing is left of the first.</summary>
    public static void Blend(ref Portion from, ref Portion to)
    {
        to.Wort.Add(from.Wort);
        to.Unfermented.Add(from.Unfermented);
        from = default;
    }
}
