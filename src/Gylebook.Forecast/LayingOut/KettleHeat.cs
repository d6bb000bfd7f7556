using System.Collections.Concurrent;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Boiling;

namespace Gylebook.Forecast.LayingOut;

/// <summary>How hot the wort is on the hot side, and what that does to alpha acid: reckoned once, so that a run only multiplies.</summary>
/// <remarks>
/// The boil at this kit's height; the stand at its own temperature; then cooling, by the chiller or left alone, followed down to
/// 60 °C, below which a whole hour turns less than 2 % of the alpha acid. Warming up to the boil and the mash are not counted.
/// </remarks>
internal sealed class KettleHeat
{
    private const double FollowedTo = 60;

    /// <summary>Coolant when the kit does not say. Common practice, no source.</summary>
    private const double TapCelsius = 15;
    private const double MostMinutes = 500;

    /// <summary>Coolings reckoned before: the same kit cools the same at every keystroke.</summary>
    private static readonly ConcurrentDictionary<(double Start, double Towards, double Rate), IsomerisationStep> Cooled = new();

    private readonly double _boil;
    private readonly double _stand;

    /// <summary>The heat of a recipe on a kit.</summary>
    public KettleHeat(Recipe recipe, Kit kit)
    {
        _boil = BoilingPoint.CelsiusAt(kit.Altitude?.Value.Metres ?? 0);
        double last = recipe.Boil is not null ? _boil : recipe.Mash?.Rests.LastOrDefault()?.Temperature.Value.Celsius ?? TapCelsius;
        _stand = recipe.Stand?.Temperature.Value.Celsius ?? last;
        Chill = ChillFrom(_stand, kit.Chiller);
    }

    /// <summary>Cooling.</summary>
    public IsomerisationStep Chill { get; }

    /// <summary>Minutes of boil.</summary>
    public IsomerisationStep Boil(double minutes) => IsomerisationStep.At(minutes, _boil);

    /// <summary>Minutes of stand.</summary>
    public IsomerisationStep Stand(double minutes) => IsomerisationStep.At(minutes, _stand);

    private static IsomerisationStep ChillFrom(double start, Chiller? chiller)
    {
        if (start <= FollowedTo)
        {
            return IsomerisationStep.None;
        }

        double rate = StartingValues.Of(chiller is null ? "chill.alone" : "chill.rate").Value;
        double towards = chiller is null ? WortCooling.AloneEndsAtCelsius : chiller.Coolant?.Value.Celsius ?? TapCelsius;
        return Cooled.GetOrAdd((start, towards, rate), cooling => Along(cooling.Start, cooling.Towards, cooling.Rate));
    }

    private static IsomerisationStep Along(double start, double towards, double rate)
    {
        double minutes = towards < FollowedTo ? Math.Log((start - towards) / (FollowedTo - towards)) / rate : MostMinutes;
        return IsomerisationStep.Along(Math.Min(MostMinutes, minutes), t => WortCooling.TowardsCelsius(start, towards, rate, t));
    }
}
