using Gylebook.Forecast.State;

namespace Gylebook.Forecast.Running;

/// <summary>The only two ways anything enters or leaves a run: both change the portion and tell the log in one breath.</summary>
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
        Wort moved = wort.Part(shares.ByComponent());
        wort.Add(moved, -1);
        return moved;
    }
}
