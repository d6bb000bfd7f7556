using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;

namespace Gylebook.Forecast.Report.Mashing;

/// <summary>The heat of the mash: strike, steps, and up to the boil. No temperature moves mass in this version.</summary>
internal static class MashHeat
{
    /// <summary>The schedule; null without a mash.</summary>
    public static MashSchedule? ScheduleOf(BrewPlan brew, RunOutcome run)
    {
        if (brew.Recipe.Mash is not { Rests.Count: > 0 } mash || run.Plan.Surroundings!.Mash is not { GristKilograms: > 0 } || run.Plan.Liquors[0] <= 0)
        {
            return null;
        }

        double boiling = run.Plan.Surroundings.BoilCelsius;
        InfusionStrike? strike = run.Known(RestReadouts.InfusionStrikeLitres) is { } litres ? new(litres, run[RestReadouts.InfusionStrikeCelsius]) : null;
        return new MashSchedule(
            [.. brew.Readouts!.Rests.Select(rest => RestOf(mash.Rests[rest.Rest], rest, run, strike is null ? null : boiling))],
            strike, run.Known(Heat.StrikeMinutes), run.Known(Heat.BoilMinutes))
        {
            StrikeLitres = run.Plan.Liquors[0] / Wort.WaterKilogramsPerLitre,
            StrikeCelsius = run[Heat.StrikeCelsius],
            HasBoil = brew.Recipe.Boil is not null,
            CopperUpLitres = run[BeerReadouts.CopperUpLitres],
            BoilCelsius = boiling,
            Rinse = mash.Sparge is { Volume: { } volume } sparge
                ? new MashRinse(sparge.Method, volume.Value.Litres, sparge.Temperature?.Value.Celsius)
                : null,
        };
    }

    private static MashRest RestOf(Rest planned, RestReadouts rest, RunOutcome run, double? infusionCelsius) => new(
        planned.Temperature.Value.Celsius, planned.Time.Value.Minutes, run.Known(rest.EndCelsius),
        run.Known(rest.InfusionLitres), rest.Rest == 0 ? null : infusionCelsius, run.Known(rest.HeatMinutes),
        run.Known(rest.DecoctionShare) / 100, run.Known(rest.DecoctionKilograms))
    {
        AlphaLeft = run[rest.AlphaLeft] / 100,
        BetaLeft = run[rest.BetaLeft] / 100,
    };
}
