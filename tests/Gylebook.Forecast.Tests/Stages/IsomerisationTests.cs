using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Science.Boiling;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Stages;

public sealed class IsomerisationTests
{
    private static readonly ParameterList Slots = new();
    private static readonly Slot Alpha = Slots.Of(new Parameter("alpha", 0.08, Prior.Point, "kg/kg", "test", "test"));
    private static readonly Slot Reaches = Slots.Of(new Parameter("reaches", 0.2, Prior.Point, "1", "test", "test"));
    private static readonly Slot Form = Slots.Of(new Parameter("form", 1.1, Prior.Point, "1", "test", "test"));
    private static readonly double[] Drawn = [.. new double[ParameterList.KnownCount], 0.08, 0.2, 1.1];

    private static Wort Litres(double litres)
    {
        Wort wort = default;
        wort[Component.Water] = litres * Wort.WaterKilogramsPerLitre;
        return wort;
    }

    // 50 g of 8 % in 20 L: 4000 mg, 200 mg/L, all of it in solution.
    [Fact]
    public void A_dose_is_grams_times_alpha()
    {
        Wort wort = Litres(20);
        Isomerisation.Dose(ref wort, new HopDose(50, Alpha, null, null, null, true), Drawn);
        Near.Equal(4000, wort[Component.AlphaAcid], 1e-9);
    }

    // The rule's printed values: 300 mg/L added, 278.5 dissolved; 1000 added, 460.2 (hobby literature), to 0.1 mg/L of 20 L.
    [Theory]
    [InlineData(75, 278.5)]
    [InlineData(250, 460.2)]
    public void Beyond_what_dissolves_the_rest_stays_out(double grams, double dissolved)
    {
        Wort wort = Litres(20);
        Isomerisation.Dose(ref wort, new HopDose(grams, Alpha, null, null, null, true), Drawn);
        Near.Equal(dissolved * 20, wort[Component.AlphaAcid], 0.05 * 20);
    }

    [Fact]
    public void A_share_that_reaches_and_a_forms_gain_are_counted()
    {
        Wort wort = Litres(20);
        Isomerisation.Dose(ref wort, new HopDose(50, Alpha, null, Reaches, Form, true), Drawn);
        Near.Equal(4000 * 0.2 * 1.1, wort[Component.AlphaAcid], 1e-9);
    }

    // Malowicki and Shellhammer 2005, an hour at 100 °C: 0.4726 still alpha acid, 0.4759 iso-alpha acid; four decimals of 4000 mg.
    [Fact]
    public void Heat_turns_alpha_acid_into_iso_alpha_acid()
    {
        Wort wort = Litres(20);
        wort[Component.AlphaAcid] = 4000;
        Isomerisation.Heat(ref wort, IsomerisationStep.At(60, 100));
        Near.Equal(0.4726 * 4000, wort[Component.AlphaAcid], 0.00005 * 4000);
        Near.Equal(0.4759 * 4000, wort[Component.IsoAlphaAcid], 0.00005 * 4000);
    }

    [Fact]
    public void Nothing_dosed_is_nothing_changed()
    {
        Wort wort = Litres(20);
        Isomerisation.Dose(ref wort, default, Drawn);
        Isomerisation.Heat(ref wort, IsomerisationStep.At(60, 100));
        Isomerisation.Keep(ref wort, 0.5);
        Assert.Equal((0.0, 0.0), (wort[Component.AlphaAcid], wort[Component.IsoAlphaAcid]));
    }

    [Fact]
    public void On_random_recipes_no_more_comes_out_than_went_in_and_the_model_only_swaps_the_two()
    {
        int bitter = 0;
        foreach (Brew drawn in RandomBrews.All.Where((_, i) => i % 6 == 0))
        {
            if (drawn.Recipe.PlanOn(drawn.Kit).Plan is not { } plan)
            {
                continue;
            }

            OneRun byTable = new(plan);
            OneRun byKinetics = new(plan with { Bitterness = BitternessModel.Isomerisation });
            double dosed = plan.Additions.Sum(a => a.Hop.Grams <= 0 ? 0 : Isomerisation.Offered(a.Hop with { Reaches = null }, plan.Medians));
            Wort cast = byTable.At(Stage.Cast);
            Assert.InRange(cast[Component.AlphaAcid] + cast[Component.IsoAlphaAcid], 0, dosed * (1 + 1e-12));
            Assert.Equal(byTable[BeerReadouts.Bitterness], byKinetics[BeerReadouts.OtherBitterness]);
            Assert.Equal(byTable[BeerReadouts.OtherBitterness], byKinetics[BeerReadouts.Bitterness]);
            Assert.Equal(byTable[BeerReadouts.PackagedLitres], byKinetics[BeerReadouts.PackagedLitres]);
            bitter += byKinetics[BeerReadouts.Bitterness] > 0 ? 1 : 0;
        }

        Assert.True(bitter > 100);
    }
}
