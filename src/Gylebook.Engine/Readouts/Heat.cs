using Gylebook.Engine.Parameters;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Science.Mashing;

namespace Gylebook.Engine.Readouts;

/// <summary>What heat has to do on brew day: strike, rinse, and the way to the boil.</summary>
public static class Heat
{
    /// <summary>Temperature of the strike liquor, by heat balance, °C.</summary>
    public static Readout StrikeCelsius { get; } = new(
        "strikeCelsius", "strike liquor", "°C", 1, new(Stage.Strike), static (in run) => StrikeOf(run));

    /// <summary>Minutes to heat the strike liquor from the room.</summary>
    public static Readout StrikeMinutes { get; } = new(
        "strikeMinutes", "to heat the strike liquor", "min", 0, new(Stage.Strike), static (in run) => StrikeMinutesOf(run));

    /// <summary>Minutes from the last rest, or the souring, to the boil.</summary>
    public static Readout BoilMinutes { get; } = new(
        "boilMinutes", "to bring it to the boil", "min", 0, new(Stage.CopperUp), static (in run) => BoilMinutesOf(run));

    /// <summary>Kilograms of the wet bag as it comes up.</summary>
    public static Readout LiftKilograms { get; } = new(
        "liftKilograms", "bag as it is lifted", "kg", 1, new(Stage.Lift), static (in run) => LiftOf(run));

    /// <summary>Minutes to heat the rinse from the room.</summary>
    public static Readout RinseMinutes { get; } = new(
        "rinseMinutes", "to heat the sparge liquor", "min", 0, new(Stage.Rinse),
        static (in run) => run.Plan.Surroundings?.Mash is { RinseCelsius: { } celsius } mash
            ? Minutes(run, mash, run.Plan.Rinse.Kilograms * WortHeat.Water, mash.RoomCelsius, celsius) : double.NaN);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Readout> All { get; } = [StrikeCelsius, StrikeMinutes, RinseMinutes, BoilMinutes, LiftKilograms];

    /// <summary>How warm a stage is, °C: as it was meant, moved by what the draw has against it; the strike's follows from the heat.</summary>
    public static double CelsiusAt(in RunView run, Stage stage)
    {
        if (stage == Stage.Strike)
        {
            return StrikeOf(run);
        }

        return run.Plan.Surroundings is { } around && around.Celsius.TryGetValue(stage, out double celsius)
            ? celsius + Warmer(stage, run.Draw) : double.NaN;
    }

    private static double Warmer(Stage stage, Draw draw) => stage switch
    {
        Stage.Mash => draw[Known.MashWarmer],
        Stage.Stand => draw[Known.StandWarmer],
        _ => 0,
    };

    /// <summary>What grain and a vessel that is not warm already take up, kJ/K.</summary>
    public static double GristKilojoulesPerKelvin(in RunView run) => run.Plan.Surroundings?.Mash is { } mash
        ? Infusion.MashKilojoulesPerKelvin(mash.GristKilograms, MoistureOf(run, mash), 0) + mash.VesselKilojoulesPerKelvin : double.NaN;

    /// <summary>Minutes of full heat from one temperature to another; not a number where nobody knows.</summary>
    public static double MinutesFor(in RunView run, double kilojoulesPerKelvin, double from, double to) =>
        run.Plan.Surroundings?.Mash is { } mash ? Minutes(run, mash, kilojoulesPerKelvin, from, to) : double.NaN;

    private static double StrikeOf(in RunView run) => StrikeCelsiusWith(run, run.Plan.Liquors[0]);

    /// <summary>Temperature of so much strike liquor, by heat balance, °C.</summary>
    public static double StrikeCelsiusWith(in RunView run, double liquorKilograms) => run.Plan.Surroundings?.Mash is { } mash && liquorKilograms > 0
        ? StrikeHeat.StrikeCelsius(
            new MashIn
            {
                GrainKilograms = mash.GristKilograms,
                GrainMoisture = MoistureOf(run, mash),
                GrainCelsius = mash.RoomCelsius,
                LiquorKilograms = liquorKilograms,
                VesselKilojoulesPerKelvin = mash.VesselKilojoulesPerKelvin,
                VesselCelsius = mash.RoomCelsius,
                SlakingKelvins = run.Draw[Known.SlakingKelvins],
            },
            mash.FirstRestCelsius)
        : double.NaN;

    /// <summary>Water in the grist, as a share of it; a heat balance of porridge ends at a half.</summary>
    private static double MoistureOf(in RunView run, MashHeatPlan mash)
    {
        double water = 0;
        foreach (Stages.Addition addition in run.Plan.Additions)
        {
            water += addition.Place.Stage == Stage.Mash ? run.Trace.Makeup(addition.Makeup)[Component.Water] : 0;
        }

        return mash.GristKilograms > 0 ? Math.Min(0.5, water / mash.GristKilograms) : 0;
    }

    private static double StrikeMinutesOf(in RunView run) => run.Plan.Surroundings?.Mash is { } mash
        ? Minutes(run, mash, run.Plan.Liquors[0] * WortHeat.Water, mash.RoomCelsius, StrikeOf(run)) : double.NaN;

    private static double BoilMinutesOf(in RunView run)
    {
        ref readonly Wort wort = ref run.Wort(Stage.CopperUp);
        return run.Plan.Surroundings is { Mash: { BoilFromCelsius: { } from } mash } around
            ? Minutes(run, mash, wort.Mass * WortHeat.OfWort(Math.Clamp(wort.RealExtractPlato, 0, 100)), from, around.BoilCelsius)
            : double.NaN;
    }

    /// <summary>Unknown without a heater, or with one so weak that the minutes are none; and for what would have to be hotter than the boil.</summary>
    private static double Minutes(in RunView run, MashHeatPlan mash, double kilojoulesPerKelvin, double from, double to)
    {
        if (mash.Kilowatts * run.Draw[Known.HeatShare] is not > 0 || !(kilojoulesPerKelvin > 0) || !(to <= run.Plan.Surroundings!.BoilCelsius))
        {
            return double.NaN;
        }

        double minutes = HeatUp.Minutes(kilojoulesPerKelvin, 1, from, Math.Max(from, to), mash.Kilowatts!.Value * run.Draw[Known.HeatShare], 1);
        return double.IsFinite(minutes) ? minutes : double.NaN;
    }

    /// <summary>Its solids, and half as much wort again as it holds once drained.</summary>
    private static double LiftOf(in RunView run)
    {
        ref readonly Wort bed = ref run.Trace.Lost(Loss.HeldInGrain, portion: 1);
        double liquid = bed.LiquidMass;
        return bed.Mass - liquid + (liquid * run.Draw[Known.LiftHeldFactor]);
    }
}
