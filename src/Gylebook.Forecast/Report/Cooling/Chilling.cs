using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Forecast.Cooling;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Kits;

namespace Gylebook.Forecast.Report.Cooling;

/// <summary>Down to the pitch, by whatever the kit has.</summary>
/// <param name="Kind"><c>immersion</c>, <c>counterflow</c>, <c>plate</c>, <c>none</c>, or the kit's own word.</param>
/// <param name="FromCelsius">Where it starts.</param>
/// <param name="ToCelsius">Where it is to end: the pitch.</param>
public sealed record Chilling(string Kind, double FromCelsius, double ToCelsius)
{
    /// <summary>Water that cools it, or the room, °C; null when unknown.</summary>
    public double? CoolerCelsius { get; init; }

    /// <summary>How long; null when unknown, or when the cooler is not that cold. A run-off through a chiller ends when the kettle is empty.</summary>
    public double? Minutes { get; init; }

    /// <summary>Cooling water that runs meanwhile.</summary>
    public double? CoolantLitres { get; init; }

    /// <summary>Cooling water as it comes out, at its hottest, °C.</summary>
    public double? CoolantOutCelsius { get; init; }

    /// <summary>Wort through the chiller, L/min; null unless it runs through one.</summary>
    public double? WortLitresPerMinute { get; init; }

    /// <summary>As it comes out, °C.</summary>
    public double? WortOutCelsius { get; init; }

    /// <summary>Wort that would still come out at the pitch, L/min; null when none would.</summary>
    public double? MostWortLitresPerMinute { get; init; }

    /// <summary>Keys of the kit that would make it known.</summary>
    public IReadOnlyList<string> Needs { get; init; } = [];

    /// <summary>Whether wort runs through a chiller out of a hot kettle.</summary>
    public bool RunsThrough => ChillerKinds.Of(Kind).RunsThrough();

    /// <summary>Whether nothing cools it but the room.</summary>
    public bool IsAlone => ChillerKinds.Of(Kind) is ChillerKind.None;

    /// <summary>Chilling; null when nothing has to be chilled.</summary>
    internal static Chilling? Of(BrewPlan brew, RunOutcome run)
    {
        if (brew.Plan!.Surroundings?.Chill is not { } planned || !HotWort.Of(run.Trace).IsThere)
        {
            return null;
        }

        WortChill chill = new(brew.Kit);
        return new Chilling(chill.Word, planned.FromCelsius, planned.ToCelsius)
        {
            CoolerCelsius = chill.CoolerCelsius,
            Needs = chill.Needs,
            Minutes = run.Known(ChillReadouts.Minutes),
            CoolantLitres = run.Known(ChillReadouts.CoolantLitres),
            CoolantOutCelsius = run.Known(ChillReadouts.CoolantOutCelsius),
            WortLitresPerMinute = run.Known(ChillReadouts.WortLitresPerMinute),
            WortOutCelsius = run.Known(ChillReadouts.WortOutCelsius),
            MostWortLitresPerMinute = run.Known(ChillReadouts.MostWortLitresPerMinute),
        };
    }
}
