namespace Gylebook.Web.Widgets;

/// <summary>The pause after the last key, until what was typed counts.</summary>
internal sealed class TypingPause : IDisposable
{
    private static readonly TimeSpan Length = TimeSpan.FromMilliseconds(300);

    private CancellationTokenSource? _running;

    /// <summary>Waits from now on; a wait that runs already ends.</summary>
    /// <returns>Whether nothing ended it early: another key, leaving the field, leaving the page.</returns>
    public async Task<bool> PassesAsync(TimeProvider clock)
    {
        End();
        _running = new CancellationTokenSource();
        try
        {
            await Task.Delay(Length, clock, _running.Token);
            return true;
        }
        catch (OperationCanceledException)
        {
            return false;
        }
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
