using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Science.Cooling;

namespace Gylebook.Engine.Readouts;

/// <summary>Down to the pitch: how long, and what runs meanwhile.</summary>
public static class ChillReadouts
{
    /// <summary>Minutes down to the pitch; for a run-off through an exchanger, until the kettle is empty.</summary>
    public static Readout Minutes { get; } = Row("chillMinutes", "to chill it", "min", 0, static (in run, in plan) => MinutesOf(run, plan));

    /// <summary>Cooling water that runs meanwhile.</summary>
    public static Readout CoolantLitres { get; } = Row("coolantLitres", "cooling water", "L", 0, static (in run, in plan) => plan switch
    {
        { Coil: { } coil } => MinutesOf(run, plan) * coil.LitresPerMinute,
        { Exchanger: var (exchanger, _) } => ThroughOf(run, plan) is { } through ? through.Minutes * exchanger.LitresPerMinute : double.NaN,
        _ => double.NaN,
    });

    /// <summary>Cooling water as it comes out, at its hottest, °C.</summary>
    public static Readout CoolantOutCelsius { get; } = Row("coolantOutCelsius", "cooling water as it comes out", "°C", 0, static (in run, in plan) => plan switch
    {
        { Coil: { } coil } => coil.CoolantCelsius + (coil.Effectiveness * (plan.FromCelsius - coil.CoolantCelsius)),
        _ => ThroughOf(run, plan)?.WaterCelsius ?? double.NaN,
    });

    /// <summary>Wort through the chiller, L/min.</summary>
    public static Readout WortLitresPerMinute { get; } = Row(
        "chillWortLitresPerMinute", "wort through the chiller", "L/min", 2, static (in run, in plan) => ThroughOf(run, plan)?.LitresPerMinute ?? double.NaN);

    /// <summary>Wort as it comes out, °C.</summary>
    public static Readout WortOutCelsius { get; } = Row(
        "chillWortOutCelsius", "wort as it comes out", "°C", 1, static (in run, in plan) => ThroughOf(run, plan)?.WortCelsius ?? double.NaN);

    /// <summary>Wort that would still come out at the pitch, L/min.</summary>
    public static Readout MostWortLitresPerMinute { get; } = Row(
        "chillMostWortLitresPerMinute", "wort that still comes out cold enough", "L/min", 2, static (in run, in plan) => ThroughOf(run, plan)?.MostLitresPerMinute ?? double.NaN);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Readout> All { get; } =
        [Minutes, CoolantLitres, CoolantOutCelsius, WortLitresPerMinute, WortOutCelsius, MostWortLitresPerMinute];

    private delegate double OfPlan(in RunView run, in ChillPlan plan);

    private static Readout Row(string id, string title, string unit, int decimals, OfPlan of) => new(
        id, title, unit, decimals, new(Stage.Chill), (in run) => run.Plan.Surroundings?.Chill is { } plan ? of(run, plan) : double.NaN);

    private static RunThrough? ThroughOf(in RunView run, ChillPlan plan) => plan.Exchanger is null ? null : plan.Through(HotWort.Of(run.Trace));

    private static double MinutesOf(in RunView run, ChillPlan plan)
    {
        HotWort wort = HotWort.Of(run.Trace);
        return !wort.IsThere ? double.NaN : plan switch
        {
            { Coil: { } coil } => coil.Minutes(wort.Kilograms, wort.KilojoulesPerKilogramKelvin, plan.FromCelsius, plan.ToCelsius) ?? double.NaN,
            { Exchanger: not null } => plan.Through(wort)?.Minutes ?? double.NaN,
            { Alone: var (room, hours) } => NewtonCooling.Hours(plan.FromCelsius, plan.ToCelsius, room, hours) * 60 ?? double.NaN,
            _ => double.NaN,
        };
    }
}
