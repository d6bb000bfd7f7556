using System.Text.Json;
using System.Threading.RateLimiting;
using Gylebook.Gyles.Cellar;
using Gylebook.Store;
using Gylebook.Web.Hosting.Entry;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Features.Devices;

/// <summary>What became of readings that a device sent.</summary>
/// <param name="Taken">How many are in the book now that were not.</param>
/// <param name="Known">How many were in it before.</param>
/// <param name="Refused">Those that cannot be taken.</param>
public sealed record IntakeReport(int Taken, int Known, IReadOnlyList<RefusedReading> Refused);

/// <summary>A reading that cannot be taken.</summary>
/// <param name="Item">Its place among those sent, from 0.</param>
/// <param name="Field">The field that is wrong; empty for all of it.</param>
/// <param name="Message">Field, value and limit.</param>
public sealed record RefusedReading(int Item, string Field, string Message);

/// <summary>The door for devices: <c>POST /intake</c> with a token of the device's own, see <c>docs/guide/sensors.md</c>.</summary>
/// <remarks>A broker's messages would come in here as well: whoever listens to it hands <see cref="SensorWriter"/> what <see cref="SentReading"/> makes of them.</remarks>
internal static class IntakeApi
{
    /// <summary>Where devices send to.</summary>
    public const string Path = "/intake";

    /// <summary>The policy of that address.</summary>
    private const string Policy = "intake";

    /// <summary>Readings in one request; a device that has gathered more sends them in parts.</summary>
    private const int MostReadings = 5_000;

    /// <summary>Bytes of one request.</summary>
    private const int MostBytes = 1 << 20;

    /// <summary>Requests in a minute from one address: a house full of floats, and a simulator. Judged, no source.</summary>
    private const int MostInAMinute = 1_200;

    private const string Bearer = "Bearer ";

    private static readonly JsonDocumentOptions Shallow = new() { MaxDepth = 8 };

    /// <summary>What the door needs.</summary>
    public static void Services(IServiceCollection services)
    {
        services.AddSingleton<SensorWriter>().AddHostedService(provider => provider.GetRequiredService<SensorWriter>());
        services.AddSingleton<DeviceDesk>();
        services.AddRateLimiter(limits => limits.AddPolicy(Policy, context => RateLimitPartition.GetFixedWindowLimiter(
            EntryTries.Caller(context.Connection.RemoteIpAddress),
            _ => new FixedWindowRateLimiterOptions { PermitLimit = MostInAMinute, Window = TimeSpan.FromMinutes(1) })));
    }

    /// <summary>Answers that address: open to whoever has a token, and to nobody else.</summary>
    public static void Map(WebApplication site) => site.MapPost(Path, AnswerAsync).OpenTo(EntryPaths.Exempt.Devices).RequireRateLimiting(Policy);

    private static async Task<IResult> AnswerAsync(HttpContext context, DeviceDesk devices, SensorWriter writer, TimeProvider clock)
    {
        CancellationToken gone = context.RequestAborted;
        if (await DeviceAsync(context.Request, devices, gone) is not { } device)
        {
            context.Response.Headers.WWWAuthenticate = "Bearer";
            return Refused(StatusCodes.Status401Unauthorized, "Say the device's token: \"Authorization: Bearer TOKEN\". Settings, Devices has it; a token that was renewed, or of a retired device, is worth nothing.");
        }

        try
        {
            (JsonDocument? body, IResult? fault) = await BodyAsync(context, gone);
            using (body)
            {
                return body is null ? fault! : await TakeAsync(body.RootElement, device, writer, clock.GetUtcNow(), gone);
            }
        }
        catch (BookUnavailableException trouble)
        {
            return Refused(StatusCodes.Status503ServiceUnavailable, $"Nothing was taken; send it again later. {trouble.Message}");
        }
    }

    private static async Task<IResult> TakeAsync(JsonElement sent, long device, SensorWriter writer, DateTimeOffset now, CancellationToken gone)
    {
        IReadOnlyList<JsonElement> items = sent.ValueKind == JsonValueKind.Array ? [.. sent.EnumerateArray()] : [sent];
        if (items.Count > MostReadings)
        {
            return Refused(StatusCodes.Status413PayloadTooLarge, Invariant($"{items.Count} readings at once; at most {MostReadings} are taken."));
        }

        List<SensorReading> readings = [];
        List<RefusedReading> refused = [];
        for (int i = 0; i < items.Count; i++)
        {
            if (SentReading.Read(items[i], now, out SensorReading reading) is var (field, why))
            {
                refused.Add(new RefusedReading(i, field, why));
            }
            else
            {
                readings.Add(reading);
            }
        }

        int taken = readings.Count == 0 ? 0 : await writer.WriteAsync(device, readings, gone);
        return Results.Json(
            new IntakeReport(taken, readings.Count - taken, refused),
            statusCode: readings.Count == 0 && refused.Count > 0 ? StatusCodes.Status400BadRequest : StatusCodes.Status200OK);
    }

    private static async Task<long?> DeviceAsync(HttpRequest request, DeviceDesk devices, CancellationToken gone)
    {
        string said = request.Headers.Authorization.ToString();
        return said.StartsWith(Bearer, StringComparison.OrdinalIgnoreCase) ? await devices.FindAsync(said[Bearer.Length..].Trim(), gone) : null;
    }

    /// <summary>The body as JSON; or why it is none.</summary>
    private static async Task<(JsonDocument? Body, IResult? Fault)> BodyAsync(HttpContext context, CancellationToken gone)
    {
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
        {
            size.MaxRequestBodySize = MostBytes;
        }

        try
        {
            return (await JsonDocument.ParseAsync(context.Request.Body, Shallow, gone), null);
        }
        catch (BadHttpRequestException fault) when (fault.StatusCode == StatusCodes.Status413PayloadTooLarge)
        {
            return (null, Refused(fault.StatusCode, Invariant($"More than {MostBytes} bytes at once; send it in parts.")));
        }
        catch (JsonException fault)
        {
            return (null, Refused(StatusCodes.Status400BadRequest, Invariant($"This is no JSON, in line {fault.LineNumber + 1} at byte {fault.BytePositionInLine + 1}. Send one reading as an object, or several as an array.")));
        }
    }

    private static IResult Refused(int status, string why) => Results.Problem(why, statusCode: status);
}
