namespace Gylebook.Fuzz.Tests;

/// <summary>Runs a case, and tells what failed in it: an exception, or a hang.</summary>
internal static class Watchdog
{
    /// <summary>No case takes a second of work; one that is not done after so much hangs. Work, not time: a busy machine hangs nothing.</summary>
    private static readonly TimeSpan Work = TimeSpan.FromSeconds(30);

    /// <summary>One that waits for something does no work, and waits no longer than this.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(10);

    /// <summary>What failed; null when nothing did.</summary>
    /// <param name="journey">The case's whole way; whether it came to something.</param>
    /// <param name="ran">Counts the cases that came to something.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public static string? Failure(Func<bool> journey, ref int ran, CancellationToken cancellation)
    {
        Task<bool> going = Task.Run(journey, cancellation);
        try
        {
            TimeSpan before = Environment.CpuUsage.TotalTime;
            long began = Environment.TickCount64;
            while (!going.Wait(TimeSpan.FromSeconds(1), cancellation))
            {
                if (Environment.CpuUsage.TotalTime - before > Work || Environment.TickCount64 - began > Patience.TotalMilliseconds)
                {
                    return $"hangs: not done after {Work.TotalSeconds} s of work";
                }
            }

            ran += going.Result ? 1 : 0;
            return null;
        }
        catch (AggregateException failed)
        {
            return failed.InnerException!.ToString();
        }
    }

    /// <summary>Failures whose last words are alike, numbers aside, are one.</summary>
    public static string KindOf(string failure)
    {
        const int Words = 80;
        string message = failure.Split('\n')[0];
        return string.Concat(message[Math.Max(0, message.Length - Words)..].Where(letter => !char.IsAsciiDigit(letter)));
    }
}
