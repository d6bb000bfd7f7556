using System.Text.Json.Nodes;
using Gylebook.Gyles;
using Gylebook.Gyles.Cellar;
using Gylebook.Gyles.Plans;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Readings;

namespace Gylebook.Web.Features.Gyles.Cellar;

/// <summary>A gyle in the fermenter, as pages and terminal work with it.</summary>
/// <param name="desk">The gyles.</param>
/// <param name="clock">The time.</param>
public sealed class CellarDesk(GyleDesk desk, TimeProvider clock)
{
    /// <summary>The fermentation as it stands; null before the pitch, and where this program can no longer read the plan.</summary>
    /// <param name="gyle">The gyle.</param>
    /// <param name="portion">Which portion, where the cast was divided; null for the whole.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public async Task<Fermentation?> OpenAsync(OpenGyle gyle, string? portion = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        if (gyle.Pitched is not { } pitched)
        {
            return null;
        }

        DateTimeOffset now = clock.GetUtcNow();
        GyleReading[] own = [.. gyle.Log.Readings.Where(reading => portion is null || SettledReadings.PortionOf(reading) is not { } of || of == portion)];
        CellarSeries series = CellarSeries.Of(await desk.Book.Sensors.SentAsync([gyle.Whole], cancellation), own, new CellarSpan(pitched, gyle.Packaged), now);
        return await Task.Run(
            () =>
            {
                return GyleInputs.Of(gyle.Plan)?.Forecast(gyle.Plan.Seed, SettledReadings.BeforePitch(gyle.Log)) is { } forecast
                    ? Fermentation.Of(gyle.Plan, gyle.Log, forecast, series, pitched, now) : null;
            },
            cancellation);
    }

    /// <summary>Puts a reading of the fermentation into the log.</summary>
    /// <param name="gyle">The gyle.</param>
    /// <param name="typed">As it was typed.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <returns>What is wrong with it; nothing once it is in the book.</returns>
    public async Task<IReadOnlyList<Finding>> ReadAsync(OpenGyle gyle, TypedFermentReading typed, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        ArgumentNullException.ThrowIfNull(typed);
        (TakenReading? taken, IReadOnlyList<Finding> findings) = ReadingsFile.ReadEntry(typed.Entry().ToJsonString());
        DateTimeOffset now = clock.GetUtcNow(), at = typed.At ?? now;
        if (taken is null || findings.Any(finding => finding.Severity == Severity.Error))
        {
            return findings;
        }

        if (at > now.AddMinutes(5) || (gyle.Pitched is { } pitched && at < pitched))
        {
            return [new Finding("reading.time", Severity.Error, "when", at > now ? "it is not that late yet" : "the yeast was not in yet then", at.ToString("u", System.Globalization.CultureInfo.InvariantCulture), "from the pitch to now")];
        }

        GyleReading entry = GyleDesk.EntryOf(taken, at, Guid.CreateVersion7(now));
        await desk.KeepAsync(gyle, [typed.IsForced ? entry with { Stage = ForcedFerment.Stage, Typed = null } : entry], cancellation);
        return findings;
    }

    /// <summary>Says that something planned was done, or is left out.</summary>
    public Task<int> DoneAsync(OpenGyle gyle, CellarTask task, bool isLeftOut = false, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(task);
        DateTimeOffset now = clock.GetUtcNow();
        return desk.DoAsync(gyle, [new BrewAction { At = now, EntryId = Guid.CreateVersion7(now), Kind = isLeftOut ? ActionKind.Skipped : ActionKind.Done, Step = task.Day, Stage = "ferment", What = task.What }], cancellation);
    }

    /// <summary>Writes down something in the brewer's own words.</summary>
    public Task<int> SayAsync(OpenGyle gyle, string what, CancellationToken cancellation = default)
    {
        DateTimeOffset now = clock.GetUtcNow();
        return desk.DoAsync(gyle, [new BrewAction { At = now, EntryId = Guid.CreateVersion7(now), Kind = ActionKind.Said, Stage = "ferment", What = what.Trim() }], cancellation);
    }

    /// <summary>Takes an entry back.</summary>
    public Task<int> UndoAsync(OpenGyle gyle, Guid entry, CancellationToken cancellation = default)
    {
        DateTimeOffset now = clock.GetUtcNow();
        return desk.DoAsync(gyle, [new BrewAction { At = now, EntryId = Guid.CreateVersion7(now), Kind = ActionKind.Undone, Undoes = entry, What = "" }], cancellation);
    }
}

/// <summary>A reading of the fermentation as somebody typed it.</summary>
public sealed record TypedFermentReading
{
    /// <summary>Gravity; empty for none.</summary>
    public string Gravity { get; init; } = "";

    /// <summary>Of the sample, or alone of the beer; empty for none.</summary>
    public string Temperature { get; init; } = "";

    /// <summary>When; null for now.</summary>
    public DateTimeOffset? At { get; init; }

    /// <summary>The portion; null for the whole.</summary>
    public string? Portion { get; init; }

    /// <summary>With what; null for the usual one.</summary>
    public string? Instrument { get; init; }

    /// <summary>Whether the gas was shaken out.</summary>
    public bool IsDegassed { get; init; }

    /// <summary>Whether it is of a forced ferment.</summary>
    public bool IsForced { get; init; }

    /// <summary>As an entry of a readings file.</summary>
    public JsonObject Entry()
    {
        JsonObject entry = new() { ["at"] = ReadingsFile.Word(ReadingPoint.Ferment) };
        foreach ((string key, string? text) in new[] { ("gravity", Gravity), ("temperature", Temperature), ("instrument", Instrument), ("portion", Portion) })
        {
            if (!string.IsNullOrWhiteSpace(text))
            {
                entry[key] = text.Trim();
            }
        }

        if (IsDegassed)
        {
            entry["degassed"] = true;
        }

        return entry;
    }
}
