using Gylebook.Engine.State;
using Gylebook.Science.Cooling;
using Gylebook.Science.Mashing;

namespace Gylebook.Engine.Running;

/// <summary>How wort is brought down to the pitch.</summary>
/// <param name="FromCelsius">Where it starts.</param>
/// <param name="ToCelsius">Where it is to end.</param>
public sealed record ChillPlan(double FromCelsius, double ToCelsius)
{
    /// <summary>A coil in the kettle; null for another way.</summary>
    public ImmersionChiller? Coil { get; init; }

    /// <summary>An exchanger that wort runs through, with the wort's litres a minute where the kit says; null for another way.</summary>
    public (CounterflowChiller Exchanger, double? WortLitresPerMinute)? Exchanger { get; init; }

    /// <summary>A closed vessel left alone: the room, °C, and the hours in which its warmth falls to 1/e; null for another way.</summary>
    public (double RoomCelsius, double Hours)? Alone { get; init; }

    /// <summary>Wort through the exchanger: as fast as the kit says, else as fast as still reaches the pitch; null when not known or not to be had.</summary>
    public RunThrough? Through(in HotWort wort)
    {
        if (!wort.IsThere || FromCelsius <= ToCelsius || Exchanger is not var (exchanger, litres))
        {
            return null;
        }

        double kilogramsPerLitre = wort.RunOffKilograms / wort.RunOffLitres;
        double? most = exchanger.WortKilogramsPerMinute(wort.KilojoulesPerKilogramKelvin, FromCelsius, ToCelsius);
        double? kilograms = litres * kilogramsPerLitre ?? most;
        return kilograms is not double run ? null : new RunThrough(
            run / kilogramsPerLitre,
            wort.RunOffKilograms / run,
            exchanger.WortCelsius(run, wort.KilojoulesPerKilogramKelvin, FromCelsius),
            exchanger.WaterCelsius(run, wort.KilojoulesPerKilogramKelvin, FromCelsius),
            most / kilogramsPerLitre);
    }
}

/// <summary>Wort that has to be cooled.</summary>
/// <param name="Kilograms">In the kettle.</param>
/// <param name="KilojoulesPerKilogramKelvin">Its specific heat.</param>
/// <param name="RunOffKilograms">What of it runs off into the fermenter.</param>
/// <param name="RunOffLitres">The same, litres at 20 °C.</param>
public readonly record struct HotWort(
    double Kilograms, double KilojoulesPerKilogramKelvin, double RunOffKilograms, double RunOffLitres)
{
    /// <summary>Whether there is any.</summary>
    public bool IsThere => Kilograms > 0 && RunOffLitres > 0;

    /// <summary>As a run left it before the chiller and in the fermenter: what cools does not move mass.</summary>
    public static HotWort Of(RunTrace trace)
    {
        ArgumentNullException.ThrowIfNull(trace);
        ref readonly Wort kettle = ref trace.Wort(Stage.Chill);
        ref readonly Wort cast = ref trace.Wort(Stage.Cast);
        return trace.IsWhole && kettle.Mass > 0 && kettle.IsSound && cast.IsSound
            ? new(kettle.Mass, WortHeat.OfWort(Math.Clamp(kettle.RealExtractPlato, 0, 100)), cast.Mass, trace.Litres(Stage.Cast)) : default;
    }
}

/// <summary>A run-off through an exchanger.</summary>
/// <param name="LitresPerMinute">Wort.</param>
/// <param name="Minutes">Until the kettle is empty.</param>
/// <param name="WortCelsius">Wort as it comes out.</param>
/// <param name="WaterCelsius">Water as it comes out.</param>
/// <param name="MostLitresPerMinute">Wort that still comes out at the pitch; null when the water is not that cold.</param>
public readonly record struct RunThrough(
    double LitresPerMinute, double Minutes, double WortCelsius, double WaterCelsius, double? MostLitresPerMinute);
