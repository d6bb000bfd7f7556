using Gylebook.Engine.State;
using Gylebook.Science.Fermenting;
using Gylebook.Science.Liquids;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Stages;

/// <summary>The reaction table, sugar by sugar, against Balling's own equations for the wort as a whole.</summary>
public sealed class FermentTests
{
    public static TheoryData<double, double, double> Worts
    {
        get
        {
            TheoryData<double, double, double> data = [];
            foreach (double plato in new[] { 8.0, 10, 12, 14, 16, 18, 20 })
            {
                foreach ((double maltose, double maltotriose) in new[] { (0.5, 0.0), (0.9, 0.0), (1.0, 0.0), (1.0, 0.4), (1.0, 0.85), (1.0, 1.0) })
                {
                    data.Add(plato, maltose, maltotriose);
                }
            }

            return data;
        }
    }

    public static IEnumerable<ITheoryDataRow> FullyFermented => Worts.Where(row => row.Data.Item2 == 1);

    // Balling 1865, by the equations of his tables (balling-bierprobe). 0.5 %: the share of glucose, whose water of
    // hydrolysis weighs 5 % of a tenth of the fermentable part, is all that sets our table apart from his maltose. Held for a
    // yeast that takes all the maltose; stopped half way glucose weighs double.
    [Theory, MemberData(nameof(FullyFermented))]
    public void An_all_malt_wort_makes_the_alcohol_of_Balling(double plato, double maltose, double maltotriose)
    {
        Wort wort = Draws.AllMalt(plato);
        Wort beer = Draws.Fermented(wort, Draws.Of(maltose: maltose, maltotriose: maltotriose));
        double expected = Balling.AlcoholOf(plato, beer.RealExtractPlato);
        Near.Equal(expected, beer.AlcoholByMassPercent, 0.005 * expected);
    }

    // Balling's q = 1.220 + 0.001·OE beside Tabarié: they agree within 0.0004 up to 16 °P and 0.0006 up to 20 °P. That width
    // was found by comparing the two published ways with each other, without this engine.
    [Theory, MemberData(nameof(Worts))]
    public void Its_beer_reads_on_a_hydrometer_as_in_the_tables_of_Balling(double plato, double maltose, double maltotriose)
    {
        Wort beer = Draws.Fermented(Draws.AllMalt(plato), Draws.Of(maltose: maltose, maltotriose: maltotriose));
        double expected = SucroseSolution.GravityAt(Balling.ApparentExtractOf(plato, beer.RealExtractPlato));
        Near.Equal(expected, beer.Gravity, plato <= 16 ? 0.0004 : 0.0006);
    }

    // Pairs of gravities as printed; real extract and alcohol by Balling's q and 2.0665, read back by Tabarié. Printed to 0.0001.
    // The second by hand: 16.60 and 4.08 °P, real 6.474, alcohol 5.358 %: 1.02555 - 0.00937.
    [Theory]
    [InlineData(1.050, 1.012, 1.0119)]
    [InlineData(1.068, 1.016, 1.0162)]
    [InlineData(1.080, 1.016, 1.0164)]
    public void A_pair_of_gravities_comes_back_through_extract_and_alcohol(double original, double final, double read)
    {
        double plato = Draws.Plato(original);
        double real = Balling.RealExtractOf(plato, Draws.Plato(final));
        double alcohol = Balling.AlcoholOf(plato, real);
        Wort beer = default;
        beer[Component.Sucrose] = real;
        beer[Component.Ethanol] = alcohol;
        beer[Component.Water] = 100 - real - alcohol;
        Near.Equal(read, beer.Gravity, 0.00005);
    }

    [Fact]
    public void What_a_yeast_refuses_is_set_aside_once_and_to_the_last_bit()
    {
        Wort once = Draws.Fermented(Draws.AllMalt(12), Draws.Of(maltose: 0.7, maltotriose: 0.3, dextrin: 0.1));
        Assert.Equal(0, once[Component.Maltose]);
        Assert.Equal(0, once[Component.Maltotriose]);
        Assert.Equal(0, once[Component.Dextrin]);
        Assert.True(once[Component.UnusedSugar] > 0);
        Wort twice = Draws.Fermented(once, Draws.Of(maltose: 0.7, maltotriose: 0.3, dextrin: 0.1));
        Assert.All(Components.Table, row => Assert.Equal(once[row.Component], twice[row.Component]));
    }

    [Fact]
    public void A_sugar_a_yeast_cannot_take_stays_for_another_yeast()
    {
        Wort wort = Draws.AllMalt(12);
        Wort beer = Draws.Fermented(wort, Draws.Of(maltose: 0, maltotriose: 0));
        Assert.Equal(wort[Component.Maltose], beer[Component.Maltose]);
        Assert.Equal(0, beer[Component.UnusedSugar]);
    }

    // The trade's example, common practice, no source: OG 1.069 and FG 1.015 make about 7.2 % by volume.
    [Fact]
    public void A_strong_ale_has_the_strength_the_trade_expects()
    {
        Near.Equal(7.2, AlcoholEstimate.PercentByVolume(1.069, 1.015), 0.2);
        double low = 0.3;
        double high = 1;
        Wort wort = Draws.AllMalt(Draws.Plato(1.069));
        for (int i = 0; i < 60; i++)
        {
            double share = (low + high) / 2;
            bool tooDry = Draws.Fermented(wort, Draws.Of(maltose: share, maltotriose: share)).Gravity < 1.015;
            (low, high) = tooDry ? (low, share) : (share, high);
        }

        Wort beer = Draws.Fermented(wort, Draws.Of(maltose: low, maltotriose: low));
        Near.Equal(1.015, beer.Gravity, 1e-9);
        Near.Equal(7.2, beer.AlcoholByVolumePercent, 0.2);
    }
}
