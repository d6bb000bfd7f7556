using Gylebook.Store;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace Gylebook.Web.Hosting;

/// <summary>Reads through the book once a day, a few rows at a time, and says in the terminal what the disk has changed.</summary>
internal sealed partial class SlowSweep(Book book, TimeProvider clock, ILogger<SlowSweep> log) : BackgroundService
{
    /// <summary>A hundred rows a second: nobody at a page feels it, and a long book takes some minutes.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(200);

    private static readonly TimeSpan Interval = TimeSpan.FromDays(1);

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        // The start is not held up, nor the first page.
        await Task.Yield();
        while (!stoppingToken.IsCancellationRequested)
        {
            await SweepAsync(stoppingToken);
            await Task.Delay(Interval, clock, stoppingToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }
    }

    private async Task SweepAsync(CancellationToken stopping)
    {
        try
        {
            await foreach (DamagedPlace place in book.SweepAsync(Pause, stopping))
            {
                Tell(log, place.Sentence);
            }
        }
        catch (OperationCanceledException) when (stopping.IsCancellationRequested)
        {
            // Closing time.
        }
#pragma warning disable CA1031 // A sweep that fails must not stop the site, which tells the same trouble where it matters.
        catch (Exception fault)
        {
            CutShort(log, fault.Message);
        }
#pragma warning restore CA1031
    }

    [LoggerMessage(LogLevel.Warning, "{Sentence}")]
    private static partial void Tell(ILogger log, string sentence);

    [LoggerMessage(LogLevel.Warning, "The book could not be read through: {Why}")]
    private static partial void CutShort(ILogger log, string why);
}
