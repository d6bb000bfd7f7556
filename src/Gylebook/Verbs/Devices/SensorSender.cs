using System.Net;
using System.Net.Http.Headers;
using Gylebook.Gyles.Cellar;
using Gylebook.Web.Features.Devices;

namespace Gylebook.Verbs.Devices;

/// <summary>Sends readings as a device ought to: in parts, and each part until the book says that it has it.</summary>
/// <param name="book">The book's address.</param>
/// <param name="token">The device's token.</param>
/// <param name="rate">Readings a second at most; null for no limit.</param>
internal sealed class SensorSender(Uri book, string token, double? rate) : IDisposable
{
    private const int Part = 250;

    /// <summary>How long a book that does not answer is waited for.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(1);

    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(200);

    private readonly HttpClient _client = new() { BaseAddress = book, Timeout = TimeSpan.FromSeconds(20) };

    /// <summary>Readings that were new.</summary>
    public int Taken { get; private set; }

    /// <summary>Readings that the book had: it took them, and its answer was lost.</summary>
    public int Known { get; private set; }

    /// <summary>Readings that were refused.</summary>
    public int Refused { get; private set; }

    /// <summary>Parts that had to be sent again.</summary>
    public int SentAgain { get; private set; }

    /// <inheritdoc/>
    public void Dispose() => _client.Dispose();

    /// <summary>Sends all.</summary>
    /// <returns>Why not all are in the book; null when they are.</returns>
    public async Task<string?> SendAsync(IEnumerable<SensorReading> readings, CancellationToken cancellation)
    {
        // A slow one sends each by itself, as a float would; a fast one gathers.
        int size = rate is { } slow ? (int)Math.Clamp(slow, 1, Part) : Part;
        foreach (SensorReading[] part in readings.Chunk(size))
        {
            Task pace = rate is { } aSecond ? Task.Delay(TimeSpan.FromSeconds(part.Length / aSecond), cancellation) : Task.CompletedTask;
            if (await SendAsync(part, cancellation) is { } fault)
            {
                return fault;
            }

            await pace;
        }

        return Refused == 0 ? null : Invariant($"{Refused} readings were refused.");
    }

    private async Task<string?> SendAsync(SensorReading[] part, CancellationToken cancellation)
    {
        string? last = null;
        for (TimeSpan waited = TimeSpan.Zero; waited < Patience; waited += Pause)
        {
            try
            {
                using HttpRequestMessage request = new(HttpMethod.Post, "intake") { Content = JsonContent.Create(part.Select(Said)) };
                request.Headers.Authorization = new AuthenticationHeaderValue("Bearer", token);
                using HttpResponseMessage answer = await _client.SendAsync(request, cancellation);
                if (answer.StatusCode is HttpStatusCode.OK)
                {
                    Count((await answer.Content.ReadFromJsonAsync<IntakeReport>(cancellation))!);
                    return null;
                }

                last = Invariant($"The book answered {(int)answer.StatusCode}: {await answer.Content.ReadAsStringAsync(cancellation)}");
                if (answer.StatusCode is not (HttpStatusCode.TooManyRequests or HttpStatusCode.ServiceUnavailable))
                {
                    return last;
                }
            }
            catch (Exception fault) when (fault is HttpRequestException or IOException || (fault is TaskCanceledException && !cancellation.IsCancellationRequested))
            {
                last = $"{book} does not answer: {fault.Message}";
            }

            SentAgain++;
            await Task.Delay(Pause, cancellation);
        }

        return last;
    }

    private void Count(IntakeReport report) => (Taken, Known, Refused) = (Taken + report.Taken, Known + report.Known, Refused + report.Refused.Count);

    private static object Said(SensorReading reading) => new
    {
        at = reading.At,
        gravity = reading.Gravity?.Ratio,
        temperature = reading.Temperature?.Celsius,
        battery = reading.BatteryVolts,
    };
}
