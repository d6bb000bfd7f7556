using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Cooling;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Records;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Cooling;

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
    internal static Chilling? Of(BrewPlan brew, RunRecord record)
    {
        HotWort wort = HotWort.Of(record.At(Stage.Chill), record.At(Stage.Cast));
        if (brew.Plan!.Surroundings?.Chill is not { } planned || !wort.IsThere)
        {
            return null;
        }

        WortChill chill = new(brew.Kit);
        double minutes = record.Outcome[Heat.ChillMinutes];
        Chilling chilling = new(chill.Word, planned.FromCelsius, planned.ToCelsius)
        {
            CoolerCelsius = chill.CoolerCelsius,
            Needs = chill.Needs,
            Minutes = double.IsNaN(minutes) ? null : minutes,
        };
        return chill switch
        {
            { Coil: { } coil } => ByCoil(chilling, coil),
            { WaterLitresPerMinute: { } flow } when chill.Through(wort, planned.FromCelsius, planned.ToCelsius) is { } run => ThroughExchanger(chilling, run, flow),
            _ => chilling,
        };
    }

    private static Chilling ByCoil(Chilling chilling, in ImmersionChiller coil)
    {
        double? minutes = chilling.Minutes;
        return chilling with
        {
            CoolantLitres = minutes * coil.LitresPerMinute,
            CoolantOutCelsius = coil.CoolantCelsius + (coil.Effectiveness * (chilling.FromCelsius - coil.CoolantCelsius)),
        };
    }

    private static Chilling ThroughExchanger(Chilling chilling, in RunThrough run, double litresPerMinute) => chilling with
    {
        CoolantLitres = run.Minutes * litresPerMinute,
        CoolantOutCelsius = run.WaterCelsius,
        WortLitresPerMinute = run.LitresPerMinute,
        WortOutCelsius = run.WortCelsius,
        MostWortLitresPerMinute = run.MostLitresPerMinute,
    };
}
