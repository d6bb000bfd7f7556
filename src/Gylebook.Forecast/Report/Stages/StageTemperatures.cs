using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report.Mashing;
using Gylebook.Science.Boiling;

namespace Gylebook.Forecast.Report.Stages;

/// <summary>How warm each stage is. No temperature moves mass in this version, so they are told beside the run, not in it.</summary>
internal sealed class StageTemperatures(BrewPlan brew)
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
        Stage.Boil or Stage.KnockOut => brew.Recipe.Boil is null ? Souring ?? LastRest : Boiling,
        Stage.Stand => brew.Recipe.Stand?.Temperature.Value.Celsius,
        Stage.Chill or Stage.Cast or Stage.Split => Pitching,
        Stage.Ferment => LastWarm,
        Stage.Crash => brew.Recipe.Ferment[^1].Temperature.Value.Celsius,
        Stage.Rack or Stage.Package => brew.Recipe.Ferment.Count > 0 ? brew.Recipe.Ferment[^1].Temperature.Value.Celsius : null,
        _ => null,
    };

    /// <summary>The boil at this kit's altitude.</summary>
    private double Boiling => BoilingPoint.CelsiusAt(brew.Kit.MetresAboveSea);

    private double? FirstRest => brew.Recipe.Mash?.Rests.FirstOrDefault()?.Temperature.Value.Celsius;

    private double? Souring => brew.Recipe.Souring?.Temperature.Value.Celsius;

    private double? LastRest => brew.Recipe.Mash?.Rests.LastOrDefault()?.Temperature.Value.Celsius;

    private double? Pitching => brew.Recipe.Ferment.FirstOrDefault()?.Temperature.Value.Celsius;

    private double? LastWarm => CellarSteps.Crashes(brew.Recipe)
        ? brew.Recipe.Ferment[^2].Temperature.Value.Celsius
        : brew.Recipe.Ferment.LastOrDefault()?.Temperature.Value.Celsius;

    private double? Strike => brew.Plan is { } plan ? new MashHeat(brew).StrikeCelsius(plan.Liquors[0]) : null;
}
