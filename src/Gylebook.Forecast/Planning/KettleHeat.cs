using Gylebook.Engine.Running;
using System.Collections.Concurrent;
using Gylebook.Engine.Stages;
using Gylebook.Forecast.Cooling;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Boiling;

namespace Gylebook.Forecast.Planning;

/// <summary>How hot the wort is on the hot side, and what that does to alpha acid: reckoned once, so that a run only multiplies.</summary>
/// <remarks>
/// The boil at this kit's height; the stand at its own temperature; then cooling, by the chiller or left alone, followed down to
/// 60 °C, below which a whole hour turns less than 2 % of the alpha acid. Wort that runs off through a chiller is cold at once, and
/// what waits in the kettle cools as if left alone. Warming up to the boil and the mash are not counted.
/// </remarks>
internal sealed class KettleHeat
{
    private const double FollowedTo = 60;

    /// <summary>Coolant when the kit does not say. Common practice, no source.</summary>
    private const double TapCelsius = 15;

    /// <summary>How long is followed what never falls to 60 °C.</summary>
    private const double NeverMinutes = 500;
    private const double MostMinutes = 7 * 24 * 60;

    /// <summary>Coolings that do not ask how much wort there is: the same kit cools the same at every keystroke.</summary>
    private static readonly ConcurrentDictionary<(double Start, double Towards, double Rate), IsomerisationStep> Cooled = new();

    private static readonly double Alone = StartingParameters.Of("chill.alone").Median;
    private static readonly double Rate = StartingParameters.Of("chill.rate").Median;

    private readonly double _boil;
    private readonly double _stand;
    private readonly double? _pitch;
    private readonly WortChill _chill;

    /// <summary>The heat of a recipe on a kit.</summary>
    public KettleHeat(Recipe recipe, Kit kit)
    {
        _boil = BoilingPoint.CelsiusAt(kit.MetresAboveSea);
        double last = recipe.Boil is not null ? _boil : recipe.Souring?.Temperature.Value.Celsius ?? recipe.Mash?.Rests.LastOrDefault()?.Temperature.Value.Celsius ?? TapCelsius;
        _stand = recipe.Stand?.Temperature.Value.Celsius ?? last;
        _pitch = recipe.Ferment.FirstOrDefault()?.Temperature.Value.Celsius;
        _chill = new WortChill(kit);
    }

    /// <summary>Whether cooling starts hot enough to matter.</summary>
    public bool CoolsFromHot => _stand > FollowedTo;

    /// <summary>Whether how fast it cools hangs on how much there is.</summary>
    public bool AsksForWort => _chill.RunsThrough || _chill.Coil is not null;

    /// <summary>Minutes of boil.</summary>
    public HeatStep Boil(double minutes) => new(minutes, _boil, false);

    /// <summary>Minutes of stand.</summary>
    public HeatStep Stand(double minutes) => new(minutes, _stand, true);

    /// <summary>Cooling of so much wort; a chiller without figures is taken as an ordinary coil.</summary>
    public IsomerisationStep Chill(in HotWort wort)
    {
        if (!CoolsFromHot)
        {
            return IsomerisationStep.None;
        }

        if (_chill.From(_stand, _pitch ?? FollowedTo).Through(wort) is { } run)
        {
            return IsomerisationStep.RunningOff(
                Math.Min(MostMinutes, run.Minutes), t => WortCooling.AloneCelsius(_stand, Alone, t));
        }

        if (_chill.Coil is { } coil && wort.IsThere)
        {
            return Towards(_stand, coil.CoolantCelsius, 1 / coil.CoolingMinutes(wort.Kilograms, wort.KilojoulesPerKilogramKelvin));
        }

        (double towards, double rate) = _chill switch
        {
            { AloneHours: { } hours } => (_chill.Room, 1 / (60 * hours)),
            { Kind: ChillerKind.None } => (WortCooling.AloneEndsAtCelsius, Alone),
            _ => (_chill.CoolerCelsius ?? TapCelsius, Rate),
        };
        return Cooled.GetOrAdd((_stand, towards, rate), cooling => Towards(cooling.Start, cooling.Towards, cooling.Rate));
    }

    private static IsomerisationStep Towards(double start, double celsius, double perMinute)
    {
        double minutes = celsius < FollowedTo ? Math.Log((start - celsius) / (FollowedTo - celsius)) / perMinute : NeverMinutes;
        return IsomerisationStep.Along(Math.Min(MostMinutes, minutes), t => WortCooling.TowardsCelsius(start, celsius, perMinute, t));
    }
}
