using Gylebook.Web.Reading;

namespace Gylebook.Web.Widgets;

/// <summary>The pause after the last key, until what was typed counts.</summary>
internal sealed class TypingPause : IDisposable
{
    private static readonly TimeSpan Length = TimeSpan.FromMilliseconds(300);

    private CancellationTokenSource? _running;

    /// <summary>Waits from now on, then does the work; a wait that runs already ends.</summary>
    /// <param name="clock">The time.</param>
    /// <param name="saves">Hears that something is waiting to be saved; null when nobody asks.</param>
    /// <param name="work">Left out when something ends the wait early: another key, leaving the field, leaving the page.</param>
    public async Task ThenAsync(TimeProvider clock, PageSaves? saves, Func<Task> work)
    {
        End();
        using PageSaves.Run? run = saves?.Begin();
        run?.LeavesItToOthers();
        _running = new CancellationTokenSource();
        try
        {
            await Task.Delay(Length, clock, _running.Token);
        }
        catch (OperationCanceledException)
        {
            return;
        }

        await work();
    }

    /// <summary>Ends the wait early, if one runs.</summary>
    public void End()
    {
        _running?.Cancel();
        _running?.Dispose();
        _running = null;
    }

    /// <inheritdoc/>
    public void Dispose() => End();
}
