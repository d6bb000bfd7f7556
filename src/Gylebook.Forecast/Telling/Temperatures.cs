using Gylebook.Engine.State;
using Gylebook.Forecast.LayingOut;
using Gylebook.Science.Boiling;

namespace Gylebook.Forecast.Telling;

/// <summary>How warm each stage is. No temperature moves mass in this version, so they are told beside the run, not in it.</summary>
internal sealed class Temperatures(LaidOut laidOut)
{
    /// <summary>Temperature of a stage in °C; null when nobody knows.</summary>
    public double? At(Stage stage) => stage switch
    {
        Stage.Strike => Strike,
        Stage.Mash => FirstRest,
        Stage.Lift or Stage.RunOff or Stage.CopperUp => LastRest ?? Boiling,
        Stage.Rinse => LastRest,
        Stage.TopUp => null,
        Stage.Sour => Souring,
        Stage.Boil or Stage.KnockOut => laidOut.Recipe.Boil is null ? Souring ?? LastRest : Boiling,
        Stage.Stand => laidOut.Recipe.Stand?.Temperature.Value.Celsius,
        Stage.Chill or Stage.Cast or Stage.Split => Pitching,
        Stage.Ferment => LastWarm,
        Stage.Crash => laidOut.Recipe.Ferment[^1].Temperature.Value.Celsius,
        Stage.Rack or Stage.Package => laidOut.Recipe.Ferment.Count > 0 ? laidOut.Recipe.Ferment[^1].Temperature.Value.Celsius : null,
        _ => null,
    };

    /// <summary>The boil at this kit's altitude.</summary>
    private double Boiling => BoilingPoint.CelsiusAt(laidOut.Kit.MetresAboveSea);

    private double? FirstRest => laidOut.Recipe.Mash?.Rests.FirstOrDefault()?.Temperature.Value.Celsius;

    private double? Souring => laidOut.Recipe.Souring?.Temperature.Value.Celsius;

    private double? LastRest => laidOut.Recipe.Mash?.Rests.LastOrDefault()?.Temperature.Value.Celsius;

    private double? Pitching => laidOut.Recipe.Ferment.FirstOrDefault()?.Temperature.Value.Celsius;

    private double? LastWarm => CellarSteps.Crashes(laidOut.Recipe)
        ? laidOut.Recipe.Ferment[^2].Temperature.Value.Celsius
        : laidOut.Recipe.Ferment.LastOrDefault()?.Temperature.Value.Celsius;

    private double? Strike => laidOut.Plan is { } plan ? new MashHeat(laidOut).StrikeCelsius(plan.Liquors[0]) : null;
}
