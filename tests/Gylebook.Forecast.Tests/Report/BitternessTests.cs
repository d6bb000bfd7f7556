using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Bitterness;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Boiling;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Report;

public sealed class BitternessTests
{
    private static readonly ForecastRequest Kinetics = new() { Bitterness = BitternessModel.Isomerisation };

    private static double Ibu(Recipe recipe, double metres = 0) =>
        recipe.Forecast(Kinetics, Bitters.AtTheSea with { Altitude = Bitters.Metres(metres) }).Number("bitterness");

    // Both bitternesses leave with the liquid alike, so their ratio is that of the two yields: 0.4759 after an hour at 100 °C
    // (Malowicki and Shellhammer 2005), of which trub leaves 92.5 % and the cellar 66.3 % (Justus 2018), against the table's own
    // utilisation at the mean gravity of the boil. Cooling under a chiller from 100 to 60 °C may add up to 5 minutes' worth.
    [Fact]
    public void An_hours_hops_by_kinetics_and_by_the_table()
    {
        BrewForecast told = Bitters.With(Bitters.Hop(40, AdditionPoint.Boil, 60)).Forecast();
        HopBitterness hop = Assert.Single(told.BitternessBy);
        double meanGravity = (told.Stages.First(s => s.Stage == Stage.CopperUp).Gravity + told.Stages.First(s => s.Stage == Stage.KnockOut).Gravity) / 2;
        double table = TimeAndGravityBitterness.Utilisation(60, meanGravity);
        double kept = 0.925 * 0.663;
        double least = 0.4759 * kept / table;
        double most = IsomerisationKinetics.IsoAlphaAcid(65, 100) * kept / table;
        Assert.InRange(hop.OtherIbu / hop.Ibu, least, most);
        Assert.Equal(("timeGravity", "isomerisation"), (hop.Model, hop.OtherModel));
    }

    [Fact]
    public void Rows_add_up_to_the_headline_by_either_model()
    {
        Recipe recipe = Bitters.With(
            Bitters.Hop(20, AdditionPoint.CopperUp), Bitters.Hop(20, AdditionPoint.Boil, 15), Bitters.Hop(30, AdditionPoint.KnockOut),
            Bitters.Hop(25, AdditionPoint.Stand, 10), Bitters.Hop(40, AdditionPoint.Mash), Bitters.Hop(40, AdditionPoint.Ferment, 4)) with
        { Stand = Typed.Rest(85, 20) };
        BrewForecast byTable = recipe.Forecast();
        BrewForecast byKinetics = recipe.Forecast(Kinetics);
        Near.Equal(byTable.Number("bitterness"), byTable.BitternessBy.Sum(h => h.Ibu), 1e-9);
        Near.Equal(byKinetics.Number("bitterness"), byTable.BitternessBy.Sum(h => h.OtherIbu), 1e-9);
        Near.Equal(byKinetics.Number("bitterness"), byKinetics.BitternessBy.Sum(h => h.Ibu), 1e-9);
        Near.Equal(byTable.Number("bitterness"), byKinetics.BitternessBy.Sum(h => h.OtherIbu), 1e-9);
        Assert.Equal([1, 2, 3, 4, 5, 6], byTable.BitternessBy.Select(h => h.Line).Order());

        // The table knows only the boil.
        Assert.Equal(4, byTable.BitternessBy.Count(h => h.Ibu == 0));
        Assert.Equal(1, byKinetics.BitternessBy.Count(h => h.Ibu == 0));
        Assert.Contains(byTable.Cautions, c => c.Code == "bitterness.lowerBound");
        Assert.Contains(byKinetics.Cautions, c => c.Code == "bitterness.cool");
        Assert.All([byTable, byKinetics], f => Assert.Contains(f.Cautions, c => c.Code == "bitterness.dryHops"));
    }

    [Fact]
    public void Hops_do_not_disturb_each_other()
    {
        Recipe both = Bitters.With(Bitters.Hop(20, AdditionPoint.Boil, 60), Bitters.Hop(30, AdditionPoint.Boil, 10));
        HopBitterness[] rows = [.. both.Forecast(Kinetics).BitternessBy];

        // A single hop leaves the kettle's hops lighter, which hold wort: the bitterness moves with that share of litres.
        Recipe first = Bitters.With(Bitters.Hop(20, AdditionPoint.Boil, 60), Bitters.Hop(30, AdditionPoint.Boil, 10) with { Alpha = Typed.Share(1e-9) });
        Near.Equal(Ibu(first), rows[0].Ibu, 1e-5);
    }

    // Ratios at height of an hour's yield (ISO 2533 and Antoine, worked out beforehand): 0.841 at 1000 m, 0.686 at 2000 m. Cooling
    // under a chiller adds to either what two minutes of boil do, 2 % of the yield: the ratio may move by that share and no more.
    [Theory]
    [InlineData(1000, .841)]
    [InlineData(2000, .686)]
    public void Height_takes_bitterness(double metres, double ratio)
    {
        Recipe recipe = Bitters.With(Bitters.Hop(40, AdditionPoint.Boil, 60));
        Assert.InRange(Ibu(recipe, metres) / Ibu(recipe), ratio * 0.98, ratio * 1.02);
    }

    [Fact]
    public void More_heat_is_more_bitterness_up_to_the_published_maximum()
    {
        double hour = Ibu(Bitters.With(Bitters.Hop(40, AdditionPoint.Boil, 60)));
        double half = Ibu(Bitters.With(Bitters.Hop(40, AdditionPoint.Boil, 30)));
        double out0 = Ibu(Bitters.With(Bitters.Hop(40, AdditionPoint.KnockOut)));
        Assert.True(hour > half && half > out0 && out0 > 0);

        double warm = Ibu(Bitters.With(Bitters.Hop(40, AdditionPoint.Stand, 20)) with { Stand = Typed.Rest(95, 20) });
        double cool = Ibu(Bitters.With(Bitters.Hop(40, AdditionPoint.Stand, 20)) with { Stand = Typed.Rest(75, 20) });
        double late = Ibu(Bitters.With(Bitters.Hop(40, AdditionPoint.Stand, 5)) with { Stand = Typed.Rest(95, 20) });
        Assert.True(warm > cool && warm > late);
    }

    [Fact]
    public void Pellets_gain_their_tenth_and_mash_hops_bring_a_fifth()
    {
        double whole = Ibu(Bitters.With(Bitters.Hop(40, AdditionPoint.CopperUp)));
        BrewForecast pellets = Bitters.With(Bitters.Hop(40, AdditionPoint.CopperUp) with { Form = IngredientForm.Pellet }).Forecast(Kinetics);
        double kettle = pellets.Stages.First(s => s.Stage == Stage.Cast).LitresAt20C;
        double withWhole = Bitters.With(Bitters.Hop(40, AdditionPoint.CopperUp)).Forecast(Kinetics).Stages.First(s => s.Stage == Stage.Cast).LitresAt20C;
        Assert.True(withWhole < kettle);
        Near.Equal(1.10, pellets.Number("bitterness") / whole, 1e-6);

        // 9.1 over 44.0 of an hour's utilisation (Justus 2018), less what the wort in the grain keeps.
        double mash = Ibu(Bitters.With(Bitters.Hop(40, AdditionPoint.Mash)));
        Assert.InRange(mash / whole, 0.207 * 0.75, 0.207);
    }

    [Fact]
    public void Old_hops_are_counted_as_they_are_now()
    {
        // 10 %, a 20 % class, 180 days at 20 °C in the open: 8.00 (worked out beforehand, two decimals).
        IngredientLine old = Bitters.Hop(40, AdditionPoint.Boil, 60) with
        {
            Alpha = Typed.Share(0.10),
            Age = new(Science.Quantities.Duration.FromDays(180), "180 d"),
            Storage = new HopStorage(new(Science.Quantities.Temperature.FromCelsius(20), "20 °C"), HopPack.Open, Typed.Share(0.20)),
        };
        HopBitterness hop = Assert.Single(Bitters.With(old).Forecast().BitternessBy);
        Near.Equal(8.00, hop.AlphaPercent, 0.005);
        Near.Equal(Bitters.With(Bitters.Hop(40, AdditionPoint.Boil, 60)).Forecast().Number("bitterness"), hop.Ibu, 0.03);
    }

    [Fact]
    public void A_great_deal_of_hops_does_not_all_dissolve()
    {
        double some = Ibu(Bitters.With(Bitters.Hop(50, AdditionPoint.Boil, 60)));
        BrewForecast many = Bitters.With(Bitters.Hop(200, AdditionPoint.Boil, 60)).Forecast(Kinetics);
        Assert.True(many.Number("bitterness") < 3.5 * some);
        Assert.Contains(many.Cautions, c => c.Code == "bitterness.solubility");
    }

    /// <summary>More than 240 mg/L of alpha acid do not all dissolve, whichever model is shown; the table of time and gravity counts them all, and warns.</summary>
    [Theory]
    [InlineData(200, BitternessModel.TimeGravity, Severity.Warning)]
    [InlineData(200, BitternessModel.Isomerisation, Severity.Note)]
    [InlineData(50, BitternessModel.TimeGravity, null)]
    [InlineData(50, BitternessModel.Isomerisation, null)]
    public void More_alpha_acid_than_dissolves_is_told_by_either_model(double grams, BitternessModel model, Severity? severity)
    {
        BrewForecast told = Bitters.With(Bitters.Hop(grams, AdditionPoint.Boil, 60)).Forecast(new ForecastRequest { Bitterness = model });
        Assert.Equal(severity, told.Cautions.SingleOrDefault(c => c.Code == "bitterness.solubility")?.Severity);
    }
}
