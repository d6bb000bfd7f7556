using System.Threading.Channels;
using Gylebook.Gyles.Cellar;
using Gylebook.Store;
using Microsoft.Extensions.Hosting;

namespace Gylebook.Web.Features.Devices;

/// <summary>The one pen for what devices send: whatever came while the last commit was on its way to the disk goes into the next.</summary>
/// <remarks>Each commit waits for the disk, so one for all who wait is what makes many small senders fast. Who sent is answered after the commit, and not before.</remarks>
/// <param name="book">The book.</param>
internal sealed class SensorWriter(Book book) : BackgroundService
{
    /// <summary>Rows of one commit: pages and taps on brew day want the pen, too.</summary>
    private const int MostRows = 5_000;

    /// <summary>Requests that may wait; more of them wait at the door.</summary>
    private const int MostWaiting = 256;

    private readonly Channel<Waiting> _waiting = Channel.CreateBounded<Waiting>(new BoundedChannelOptions(MostWaiting) { SingleReader = true });

    /// <summary>Writes readings; they are on disk when it returns.</summary>
    /// <returns>How many were new.</returns>
    /// <exception cref="BookUnavailableException">The book cannot be written; nothing of it was taken.</exception>
    public async Task<int> WriteAsync(long device, IReadOnlyList<SensorReading> readings, CancellationToken cancellation)
    {
        Waiting waiting = new(new SensorBatch(device, readings));
        await _waiting.Writer.WriteAsync(waiting, cancellation);
        return await waiting.Done.Task.WaitAsync(cancellation);
    }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            while (await _waiting.Reader.WaitToReadAsync(stoppingToken))
            {
                await WriteAsync(Next());
            }
        }
        catch (OperationCanceledException)
        {
            // Closing time: who was not answered sends again.
            while (_waiting.Reader.TryRead(out Waiting? late))
            {
                late.Done.TrySetCanceled(stoppingToken);
            }
        }
    }

    private List<Waiting> Next()
    {
        List<Waiting> next = [];
        int rows = 0;
        while (rows < MostRows && _waiting.Reader.TryRead(out Waiting? waiting))
        {
            next.Add(waiting);
            rows += waiting.Batch.Readings.Count;
        }

        return next;
    }

    private async Task WriteAsync(List<Waiting> all)
    {
        try
        {
            IReadOnlyList<int> added = await book.Sensors.AppendAsync(all.ConvertAll(waiting => waiting.Batch));
            for (int i = 0; i < added.Count; i++)
            {
                all[i].Done.TrySetResult(added[i]);
            }
        }
#pragma warning disable CA1031 // Whatever it was, those who wait are told, and the next who send find a pen.
        catch (Exception fault)
        {
            all.ForEach(waiting => waiting.Done.TrySetException(fault));
        }
#pragma warning restore CA1031
    }

    private sealed record Waiting(SensorBatch Batch)
    {
        public TaskCompletionSource<int> Done { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);
    }
}
