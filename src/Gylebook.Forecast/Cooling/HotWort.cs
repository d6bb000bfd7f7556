using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Science.Mashing;

namespace Gylebook.Forecast.Cooling;

/// <summary>Wort that has to be cooled.</summary>
/// <param name="Kilograms">In the kettle.</param>
/// <param name="KilojoulesPerKilogramKelvin">Its specific heat.</param>
/// <param name="RunOffKilograms">What of it runs off into the fermenter.</param>
/// <param name="RunOffLitres">The same, litres at 20 °C.</param>
internal readonly record struct HotWort(
    double Kilograms, double KilojoulesPerKilogramKelvin, double RunOffKilograms, double RunOffLitres)
{
    /// <summary>Whether there is any.</summary>
    public bool IsThere => Kilograms > 0 && RunOffLitres > 0;

    /// <summary>From the wort before the chiller and in the fermenter.</summary>
    public static HotWort Of(in Wort kettle, in Wort cast) =>
        new(kettle.Mass, WortHeat.OfWort(Math.Clamp(kettle.RealExtractPlato, 0, 100)), cast.Mass, cast.Litres);

    /// <summary>From a run at the medians: what cools does not move mass.</summary>
    public static HotWort Of(RunTrace trace)
    {
        ref readonly Wort kettle = ref trace.Wort(Stage.Chill);
        ref readonly Wort cast = ref trace.Wort(Stage.Cast);
        return trace.IsWhole && kettle.Mass > 0 && kettle.IsSound && cast.IsSound ? Of(kettle, cast) : default;
    }
}
