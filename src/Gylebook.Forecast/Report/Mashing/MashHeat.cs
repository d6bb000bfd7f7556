using Gylebook.Engine.Readouts;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Cooling;
using Gylebook.Science.Mashing;

namespace Gylebook.Forecast.Report.Mashing;

/// <summary>The heat of the mash: strike, steps, and up to the boil. No temperature moves mass in this version.</summary>
internal sealed class MashHeat(BrewPlan brew, RunOutcome run)
{
    private readonly Kit _kit = brew.Kit;
    private readonly IReadOnlyList<Rest> _rests = brew.Recipe.Mash?.Rests ?? [];
    private readonly bool _inTun = RunParameters.UsesTun(brew.Recipe, brew.Kit);

    /// <summary>The boil at this kit's altitude.</summary>
    private double Boiling => run.Plan.Surroundings!.BoilCelsius;

    private double Liquor => run.Plan.Liquors[0];

    private double Grist => run.Plan.Surroundings!.Mash!.GristKilograms;

    private double Room => _kit.GrainTemperature.Value.Celsius;

    /// <summary>What grain and a vessel that is not warm already take up.</summary>
    private double GrainHeat => Heat.GristKilojoulesPerKelvin(run.View);

    /// <summary>The schedule; null without a mash.</summary>
    public MashSchedule? Schedule()
    {
        if (_rests.Count == 0 || Liquor <= 0 || Grist <= 0)
        {
            return null;
        }

        List<MashStepUp> steps = [.. Enumerable.Range(1, _rests.Count - 1).Select(i => new MashStepUp(EndOf(i - 1) ?? CelsiusOf(i - 1), CelsiusOf(i)))];
        bool allUp = steps.Count > 0 && steps.All(step => step.ToCelsius > step.FromCelsius && step.ToCelsius < Boiling);
        InfusionShares? shares = allUp ? InfusionSchedule.Of(GrainHeat, Liquor, steps, Boiling) : null;
        InfusionStrike? strike = shares is null ? null
            : new(shares.StrikeKilograms / Wort.WaterKilogramsPerLitre, Heat.StrikeCelsiusWith(run.View, shares.StrikeKilograms));
        IReadOnlyList<EnzymesLeft> left = run.Plan.Mash.Rests.LeftAfter();
        return new MashSchedule(
            [.. _rests.Select((_, i) => (i == 0 ? First() : Later(i, steps[i - 1], shares)) with { AlphaLeft = left[i].Alpha, BetaLeft = left[i].Beta })],
            strike, Known(Heat.StrikeMinutes), Known(Heat.BoilMinutes))
        {
            StrikeLitres = Liquor / Wort.WaterKilogramsPerLitre,
            StrikeCelsius = run[Heat.StrikeCelsius],
            HasBoil = brew.Recipe.Boil is not null,
            CopperUpLitres = run[BeerReadouts.CopperUpLitres],
            BoilCelsius = Boiling,
            Rinse = brew.Recipe.Mash!.Sparge is { Volume: { } litres } sparge
                ? new MashRinse(sparge.Method, litres.Value.Litres, sparge.Temperature?.Value.Celsius)
                : null,
        };
    }

    private double CelsiusOf(int rest) => _rests[rest].Temperature.Value.Celsius;

    /// <summary>What a rest has fallen to by its end: the room is as warm as the grain.</summary>
    private double? EndOf(int rest) => _kit.MashCooling is { } cooling
        ? NewtonCooling.Celsius(CelsiusOf(rest), Room, _rests[rest].Time.Value.Hours, cooling.Value.Hours)
        : null;

    private MashRest First() => new(CelsiusOf(0), _rests[0].Time.Value.Minutes, EndOf(0), null, null, null, null, null);

    private MashRest Later(int rest, MashStepUp step, InfusionShares? shares)
    {
        bool up = step.ToCelsius > step.FromCelsius && step.ToCelsius < Boiling;
        double? share = up ? Decoction.Share(step.FromCelsius, step.ToCelsius, Boiling) : null;
        double mash = GrainHeat + (Liquor * WortHeat.Water);
        return new MashRest(
            step.ToCelsius, _rests[rest].Time.Value.Minutes, EndOf(rest),
            shares?.InfusionKilograms[rest - 1] / Wort.WaterKilogramsPerLitre, shares is null ? null : Boiling,
            up && !_inTun ? Known(Heat.MinutesFor(run.View, mash, step.FromCelsius, step.ToCelsius)) : null,
            share, share * (Grist + Liquor));
    }

    private double? Known(Readout readout) => Known(run[readout]);

    private static double? Known(double value) => double.IsNaN(value) ? null : value;
}
