using System.Text.Json.Nodes;
using Gylebook.Gyles;
using Gylebook.Gyles.Cellar;
using Gylebook.Gyles.Portions;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Readings;
using Gylebook.Science.Fermenting.Kinetics;
using Gylebook.Science.Quantities;
using Gylebook.Web.Features.Larders;

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
        CellarSeries series = await SeriesAsync(gyle, portion, pitched, now, cancellation);
        return await Task.Run(
            () =>
            {
                return gyle.Inputs?.Forecast(gyle.Plan.Seed, SettledReadings.BeforePitch(gyle.Log)) is { } forecast
                    ? Fermentation.Of(gyle.Plan, gyle.Log, forecast, series, pitched, now, portion) : null;
            },
            cancellation);
    }

    /// <summary>All that was read of a portion since the pitch, by hand and by devices.</summary>
    /// <param name="gyle">The gyle.</param>
    /// <param name="portion">Which portion; null for the whole.</param>
    /// <param name="pitched">When yeast was pitched.</param>
    /// <param name="now">The time.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public async Task<CellarSeries> SeriesAsync(OpenGyle gyle, string? portion, DateTimeOffset pitched, DateTimeOffset now, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        return CellarSeries.Of(await desk.Book.Sensors.SentAsync(gyle.LogsOf(portion), cancellation), [.. gyle.Log.ReadingsOf(portion)], new CellarSpan(pitched, gyle.PackagedOf(portion)), now);
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

    /// <summary>Puts something into the fermenter that the plan did not have.</summary>
    /// <param name="gyle">The gyle.</param>
    /// <param name="of">What, by name: of the brewer's own larder, or of the tables.</param>
    /// <param name="amount">How much, as typed: "500 g".</param>
    /// <param name="portion">Into which portion; null for the whole.</param>
    /// <param name="at">When; null for now.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <returns>What is wrong with it; nothing once it is in the book.</returns>
    public async Task<IReadOnlyList<Finding>> PutAsync(OpenGyle gyle, string of, string amount, string? portion = null, DateTimeOffset? at = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        ArgumentNullException.ThrowIfNull(of);
        ArgumentNullException.ThrowIfNull(amount);
        DateTimeOffset now = clock.GetUtcNow();
        Larder larder = await OwnLarder.OfAsync(desk.Book, cancellation);
        if (NamedIngredient.Find(of.Trim(), GivenAddition.Kinds, larder, out string? nearest) is not { } named)
        {
            return [new Finding("given.unknown", Severity.Error, "what", $"\"{of}\"; neither larder nor tables have it{(nearest is null ? "" : $". Nearest: {nearest}")}", of, nearest)];
        }

        GivenAddition put = new(named.Kind, named.Of, amount.Trim()) { Sheet = named.Sheet is { } sheet ? LarderFile.Write(sheet) : null };
        BrewAction action = new()
        {
            At = at ?? now, EntryId = Guid.CreateVersion7(now), Kind = ActionKind.Given, Stage = "ferment", Portion = portion, What = $"{put.Amount} {named.Name}", Detail = put.Write(),
        };
        IReadOnlyList<Finding> wrong = gyle.Pitched is not { } pitched || action.At < pitched ? [new Finding("given.early", Severity.Error, "when", "the yeast was not in yet then: change the recipe instead")]
            : action.At > now.AddMinutes(5) ? [new Finding("given.late", Severity.Error, "when", "it is not that late yet")]
            : AsBrewed.Wrong(gyle.Plan, gyle.Log, action);
        if (wrong.Count == 0)
        {
            await desk.DoAsync(gyle, [action], cancellation);
        }

        return wrong;
    }

    /// <summary>Shares the beer out over vessels: from now on each portion has readings, actions and packages of its own.</summary>
    /// <returns>Why it cannot be divided so; null once it is.</returns>
    public async Task<string?> DivideAsync(OpenGyle gyle, IReadOnlyList<DividedPortion> portions, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        ArgumentNullException.ThrowIfNull(portions);
        if (gyle.Division.Wrong(portions, gyle.Log) is { } wrong)
        {
            return wrong;
        }

        await desk.Book.Gyles.DivideAsync(gyle.Line.Id, [.. portions.Select(portion => (portion.Name, portion.Share))], "ferment", cancellation);
        DateTimeOffset now = clock.GetUtcNow();
        string what = $"divided into {string.Join(", ", portions.Select(portion => Invariant($"{portion.Name} ({100 * portion.Share:0.#} %)")))}";
        await desk.DoAsync(gyle, [new BrewAction { At = now, EntryId = Guid.CreateVersion7(now), Kind = ActionKind.Divided, Stage = "ferment", What = what, Detail = Division.Write(portions) }], cancellation);
        return null;
    }

    /// <summary>Says that something planned was done, or is left out.</summary>
    public Task<int> DoneAsync(OpenGyle gyle, CellarTask task, string? portion, bool isLeftOut = false, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(task);
        DateTimeOffset now = clock.GetUtcNow();
        return desk.DoAsync(gyle, [new BrewAction { At = now, EntryId = Guid.CreateVersion7(now), Kind = isLeftOut ? ActionKind.Skipped : ActionKind.Done, Step = task.Day, Stage = "ferment", Portion = portion, What = task.What }], cancellation);
    }

    /// <summary>Writes down something that was done, in the brewer's own words.</summary>
    /// <param name="gyle">The gyle.</param>
    /// <param name="portion">To which portion; null for the whole.</param>
    /// <param name="what">What.</param>
    /// <param name="set">How warm it was set to, when that is what was done: the course goes on at that; null for nothing of the kind.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <returns>What is wrong with it; null once it is in the book.</returns>
    public async Task<string?> SayAsync(OpenGyle gyle, string? portion, string what, Temperature? set = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(what);
        if (what.Trim().Length is 0 or > MostText)
        {
            return Invariant($"what: {what.Trim().Length} characters; must be from 1 to {MostText}");
        }

        if (set is { Celsius: not (>= TemperatureCourse.LeastCelsius and <= TemperatureCourse.MostCelsius) })
        {
            return Invariant($"how warm: {set.Value.Celsius:0.#} °C; must be from {TemperatureCourse.LeastCelsius} to {TemperatureCourse.MostCelsius} °C");
        }

        DateTimeOffset now = clock.GetUtcNow();
        await desk.DoAsync(gyle, [new BrewAction { At = now, EntryId = Guid.CreateVersion7(now), Kind = ActionKind.Said, Stage = "ferment", Portion = portion, What = what.Trim(), Temperature = set }], cancellation);
        return null;
    }

    private const int MostText = 2000;

    /// <summary>Takes an entry back, in the log that has it.</summary>
    public Task<int> UndoAsync(OpenGyle gyle, Guid entry, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        string? portion = gyle.Log.Actions.FirstOrDefault(action => action.EntryId == entry)?.Portion ?? gyle.Log.Readings.FirstOrDefault(reading => reading.EntryId == entry)?.Portion;
        DateTimeOffset now = clock.GetUtcNow();
        return desk.DoAsync(gyle, [new BrewAction { At = now, EntryId = Guid.CreateVersion7(now), Kind = ActionKind.Undone, Portion = portion, Undoes = entry, What = "" }], cancellation);
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
