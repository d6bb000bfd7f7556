using Gylebook.Engine.Parameters;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Mashing;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Stages;

/// <summary>Malt, liquor and the grain that keeps some of it.</summary>
public sealed class MashTests
{
    public static TheoryData<string> EveryMalt => [.. Malts.All.Select(m => m.Id)];

    // The Congress mash of the certificate (EBC 4.5.1: 50 g malt, wort made up with water to 450 g): the engine's own
    // conversion must read what the certificate says. 1e-6 in extract: it is solved in closed form, so only rounding is left.
    [Theory, MemberData(nameof(EveryMalt))]
    public void A_Congress_mash_reads_its_certificate(string id)
    {
        Malt malt = Malts.Find(id).Match!;
        Wort mash = Draws.Mashed(malt, 0.05, 0.4, Draws.Of(limit: 100 * StartingValues.All.Single(row => row.Id == "mash.limit.congress").Value));
        double moisture = malt.Moisture.Ratio;

        // Extract per cent of the malt as is, by the balance of the method: E = P·(800 + M)/(100 − P).
        double plato = mash.RealExtractPlato;
        double extract = plato * (800 + (100 * moisture)) / (100 - plato) / 100;
        Near.Equal(malt.ExtractFineDry.Ratio * (1 - moisture), extract, 1e-6);
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(0.6)]
    [InlineData(1.0)]
    [InlineData(1.3)]
    public void The_trade_figure_for_kept_liquor_comes_back_exactly(double litresPerKilogram) =>
        Near.Equal(litresPerKilogram, WortHeld.ToLiquorKept(WortHeld.FromLiquorKept(litresPerKilogram)), 1e-12);

    /// <summary>
    /// A worked batch: 5.0 kg grist of 80 % dry extract and 4 % moisture, conversion 95 %, 17 L strike and 13 L rinse, the
    /// grain keeping 5.0 L of wort: first wort 17.52 °P; kettle 27.45 L of 11.80 °P with 3.388 kg; after 3.494 kg of steam
    /// 13.44 °P and 23.95 L. Our own working by a simpler model, without stages: mass of wort = water + extract.
    /// Tolerances: that model lets extract dissolve without taking water up. Starch takes up 5 % of its mass, 0.17 kg of the
    /// 20.8 kg of first wort: 0.17 L; and as the scaling to the thinner Congress mash gives most of it back in strength, 0.1 °P
    /// of 17.5, and as much of the extract, 0.6 %. And it lets the grain hold 5.0 L before and after the rinse, where ours holds
    /// the same kilograms: 5.35 kg are 5.0 L of 17.5 °P and 5.25 L of 5.1 °P, so 0.25 L and 0.013 kg of extract (0.4 %) fewer
    /// come into the kettle.
    /// </summary>
    [Fact]
    public void A_batch_rinsed_once_comes_out_as_worked_without_stages()
    {
        double[] draw = Draws.Of(conversion: 0.95);
        Wort mash = Draws.Mashed(Draws.Malt(80, 4), 5, 17 * Wort.WaterKilogramsPerLitre, draw);
        Near.Equal(17.52, mash.RealExtractPlato, 0.1);

        draw[(int)Known.WortHeld] = 5.0 * mash.LiquidMass / mash.Litres / mash[Component.Grain];
        draw[(int)Known.RinsingShare] = 1;
        Wort bed = default;
        NoLog log = default;
        Lift.Part(ref mash, ref bed, draw);
        Near.Equal(14.45, mash.Litres, 0.17);
        Rinse.Through(ref mash, ref bed, 0, new RinseStep(13 * Wort.WaterKilogramsPerLitre, false), default, draw, ref log);
        Near.Equal(27.45, mash.Litres, 0.17 + 0.25);
        Near.Equal(11.80, mash.RealExtractPlato, 0.1);
        Near.Equal(3.388, mash.ExtractMass, (0.006 + 0.004) * 3.388);
        Near.Equal(5.12, bed.RealExtractPlato, 0.1);

        mash[Component.Water] -= 3.494;
        Near.Equal(13.44, mash.RealExtractPlato, 0.1 * 13.44 / 11.80); // the boil concentrates the difference too
        Near.Equal(23.95, mash.Litres, 0.17 + 0.25);
    }

    // Common practice, no source: 5.5 kg of grist at 20 °C in 22.7 L of liquor at 71.7 °C rests near 67.8 °C.
    // Assumed: the kettle is as hot as its liquor; grain of 4 % moisture.
    [Fact]
    public void Strike_liquor_brings_the_grain_to_the_rest_the_trade_expects() => Near.Equal(
        67.8,
        StrikeHeat.RestCelsius(
            new MashIn
            {
                GrainKilograms = 5.5,
                GrainMoisture = 0.04,
                GrainCelsius = 20,
                LiquorKilograms = 22.7 * Wort.WaterKilogramsPerLitre,
                VesselKilojoulesPerKelvin = 0,
                VesselCelsius = 20,
                SlakingKelvins = StartingValues.All.Single(row => row.Id == "mash.slakingKelvins").Value,
            },
            71.7),
        1);
}
