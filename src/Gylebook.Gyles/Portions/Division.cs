using System.Text.Json.Nodes;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Plans;

namespace Gylebook.Gyles.Portions;

/// <summary>Beer of a gyle that stands in a vessel of its own.</summary>
/// <param name="Name">What the brewer calls it: <c>on fruit</c>.</param>
/// <param name="Share">Its share of the beer, above 0 and at most 1.</param>
public sealed record DividedPortion(string Name, double Share);

/// <summary>How the beer of a gyle is shared out over vessels: by its recipe, from the cast on, or by hand, later.</summary>
/// <remarks>What hands divide counts in the forecast as if the cast had been divided so (<see cref="AsBrewed"/>).</remarks>
public sealed record Division
{
    /// <summary>It stands in one vessel.</summary>
    public static Division None { get; } = new();

    /// <summary>More than this are no longer one brew.</summary>
    public const int Most = 24;

    private const double Rounding = 0.005;

    /// <summary>The portions; empty where it stands in one vessel.</summary>
    public IReadOnlyList<DividedPortion> Portions { get; private init; } = [];

    /// <summary>When hands divided it; null where the recipe does, or nobody did.</summary>
    public DateTimeOffset? At { get; private init; }

    /// <summary>The entry of the log that says so; null where the recipe does, or nobody did.</summary>
    public Guid? Entry { get; private init; }

    /// <summary>Whether it stands in more than one vessel.</summary>
    public bool IsDivided => Portions.Count > 0;

    /// <summary>Whether the recipe divides it.</summary>
    public bool IsPlanned => IsDivided && Entry is null;

    /// <summary>The portions to be told one by one; one without a name where it stands in one vessel.</summary>
    public IReadOnlyList<string?> Names => IsDivided ? [.. Portions.Select(portion => portion.Name)] : [null];

    /// <summary>The portion of that name; null where there is none.</summary>
    public DividedPortion? Find(string? name) => Portions.FirstOrDefault(portion => portion.Name == name);

    /// <summary>How a gyle is divided: by its recipe, or else by hand.</summary>
    /// <param name="plan">Its plan.</param>
    /// <param name="log">Its log.</param>
    public static Division Of(GylePlan plan, GyleLog log) => GyleInputs.Of(plan) is { Recipe.Portions: { Count: > 0 } planned }
        ? new() { Portions = [.. planned.Select(portion => new DividedPortion(portion.Name, portion.Share.Value.Ratio))] } : ByHand(log);

    /// <summary>How hands divided it.</summary>
    /// <param name="log">The gyle's log.</param>
    public static Division ByHand(GyleLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return log.Actions.LastOrDefault(action => action.Kind == ActionKind.Divided) is { } divided && Read(divided.Detail) is { Count: > 0 } portions
            ? new() { Portions = portions, At = divided.At, Entry = divided.EntryId } : None;
    }

    /// <summary>Why it cannot be divided so; null where it can.</summary>
    /// <param name="wanted">The portions that are wanted.</param>
    /// <param name="log">The gyle's log.</param>
    public string? Wrong(IReadOnlyList<DividedPortion> wanted, GyleLog log)
    {
        ArgumentNullException.ThrowIfNull(wanted);
        ArgumentNullException.ThrowIfNull(log);
        double sum = wanted.Sum(portion => portion.Share);
        return IsDivided ? $"it is divided already: {string.Join(", ", Portions.Select(portion => portion.Name))}"
            : log.Pitched is null ? "yeast is not in yet: the recipe divides a cast"
            : log.Actions.Any(action => action.Kind == ActionKind.Packaged) ? "it is packaged already"
            : wanted.Count is < 2 or > Most ? Invariant($"{wanted.Count} portions; must be from 2 to {Most}")
            : wanted.FirstOrDefault(portion => string.IsNullOrWhiteSpace(portion.Name)) is not null ? "each portion needs a name"
            : wanted.GroupBy(portion => portion.Name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(same => same.Count() > 1) is { } twice ? $"\"{twice.Key}\" names two portions; names must differ"
            : wanted.FirstOrDefault(portion => portion.Share is not (> 0 and < 1)) is { } odd ? Invariant($"{odd.Name}: {100 * odd.Share:0.#} %; must be above 0 and below 100 %")
            : Math.Abs(sum - 1) > Rounding ? Invariant($"the shares come to {100 * sum:0.#} %; must be 100 %, all of the beer and no more")
            : null;
    }

    /// <summary>Why a portion cannot be put together with the others again; null where it can.</summary>
    /// <param name="log">The gyle's log.</param>
    public string? Kept(GyleLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return !IsDivided || IsPlanned ? "nobody divided it by hand"
            : log.Actions.Any(action => action.Portion is not null) || log.Readings.Any(reading => reading.Portion is not null) ? "its portions have entries of their own: take those back first"
            : null;
    }

    /// <summary>Shares as the log keeps them.</summary>
    public static string Write(IReadOnlyList<DividedPortion> portions)
    {
        ArgumentNullException.ThrowIfNull(portions);
        return new JsonObject { ["portions"] = new JsonArray([.. portions.Select(portion => new JsonObject { ["name"] = portion.Name, ["share"] = portion.Share })]) }.ToJsonString(DetailText.Plain);
    }

    /// <summary>Shares of an entry of the log; null where they cannot be read.</summary>
    public static IReadOnlyList<DividedPortion>? Read(string? detail) => DetailText.Parsed(detail)?["portions"] is not JsonArray portions ? null
        : [.. portions.OfType<JsonObject>().Select(one => new DividedPortion((string?)one["name"] ?? "", (double?)one["share"] ?? 0))];
}
