using Gylebook.Forecast.Report;
using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Cellar;
using Gylebook.Gyles.Plans;
using Gylebook.Gyles.Portions;
using Gylebook.Recipes.Readings;
using Gylebook.Store;

namespace Gylebook.Web.Features.Gyles;

/// <summary>A gyle as it stands: its frozen plan, and its log.</summary>
/// <param name="Line">What the list says of it.</param>
/// <param name="Plan">The plan, as it was frozen.</param>
/// <param name="Log">What was done and read.</param>
public sealed record OpenGyle(GyleLine Line, GylePlan Plan, GyleLog Log)
{
    /// <summary>The portion that the whole brew is.</summary>
    public long Whole => Line.Portions[0].Id;

    /// <summary>How it is divided over vessels.</summary>
    public Division Division { get; } = Division.Of(Plan, Log);

    /// <summary>A portion's own log in the book; null where it has none.</summary>
    public long? OwnLogOf(string? portion) => Line.Portions.Skip(1).FirstOrDefault(one => one.Name == portion)?.Id;

    /// <summary>The logs that hold for a portion: the whole's, and its own.</summary>
    public IReadOnlyList<long> LogsOf(string? portion) => portion is null ? [.. Line.Portions.Select(one => one.Id)] : OwnLogOf(portion) is { } own ? [Whole, own] : [Whole];

    /// <summary>When brew day began.</summary>
    public DateTimeOffset Start => Line.Started ?? Plan.Frozen;

    /// <summary>When yeast was pitched; null while it was not.</summary>
    public DateTimeOffset? Pitched => Log.Pitched;

    /// <summary>When the beer was packaged, or the first of its portions; null while it was not.</summary>
    public DateTimeOffset? Packaged => PackagedOf(null);

    /// <summary>When a portion was packaged; null while it was not.</summary>
    public DateTimeOffset? PackagedOf(string? portion) => Log.ActionsOf(portion).FirstOrDefault(action => action.Kind == ActionKind.Packaged)?.At;

    /// <summary>What it really became of; null where this program can no longer read the files of the plan.</summary>
    public GyleInputs? Inputs => AsBrewed.Of(Plan, Log);

    /// <summary>What was read and may be held against the whole brew, as it was typed.</summary>
    public IReadOnlyList<TakenReading> Taken => SettledReadings.Of(Log);

    /// <summary>The forecast of today's engine with all that was read; null where this program can no longer read the files of the plan.</summary>
    public BrewForecast? Live() => Inputs?.Forecast(Plan.Seed, Taken);

    /// <summary>The same, where a fermentation was told already: its own forecast is the live one until something settled was read since the pitch.</summary>
    public BrewForecast? Live(Fermentation? told) => told is not null && Taken.SequenceEqual(SettledReadings.BeforePitch(Log)) ? told.Before : Live();

    /// <summary>The same once something was read or changed; null before, when nothing has moved.</summary>
    public BrewForecast? Moved() => Taken.Count > 0 || Log.Actions.Any(action => action.Kind is ActionKind.Given or ActionKind.Divided) ? Live() : null;
}
