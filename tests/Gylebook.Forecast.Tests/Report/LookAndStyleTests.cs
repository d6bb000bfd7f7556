using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Beer;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Boiling;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Report;

public sealed class LookAndStyleTests
{
    private static readonly Recipe Amber = Bitters.With(Typed.Malt("caramel malt", 0.4), Bitters.Hop(30, AdditionPoint.Boil, 60));

    [Fact]
    public void The_glass_shows_the_colour_as_served()
    {
        BrewForecast told = Amber.Forecast();
        Appearance seen = told.Appearance!;
        Assert.Equal(WortAppearance.In(told.Number("colourSrm"), 5).Hex, seen.Hex);
        Near.Equal(5, seen.PathLengthCm, 1e-12);
        Assert.False(seen.IsLowerBound);
        Assert.Equal(("D65", "CIE 1931 2°"), (Appearance.Illuminant, Appearance.Observer));

        Appearance thin = Amber.Forecast(new ForecastRequest { Glass = Length.FromMetres(0.01) }).Appearance!;
        Assert.True(thin.InGamut);
        Assert.NotEqual(seen.Hex, thin.Hex);
    }

    // At knock-out the whole grist's colour over its litres; then both laws dilute alike.
    [Fact]
    public void Both_laws_of_colour_are_told()
    {
        BrewForecast told = Amber.Forecast();
        double promised = (4 * MaltColourOf("pale ale malt")) + (0.4 * MaltColourOf("caramel malt"));
        double units = promised / 0.45359237 / (told.Stages.First(s => s.Stage == Stage.KnockOut).LitresAt20C / 3.785411784);
        Assert.Equal(["powerLaw", "straightLines"], told.ColourBy.Select(c => c.Law));
        double ratio = StraightLineColour.SrmOfMaltColourUnits(units) / WortColour.SrmOfMaltColourUnits(units);
        Near.Equal(ratio, told.ColourBy[1].Srm / told.ColourBy[0].Srm, 1e-9);
        Assert.Equal(told.Number("colourSrm"), told.ColourBy[0].Srm);
        Assert.All(told.ColourBy, c => Assert.True(c.WithinRange));
    }

    [Fact]
    public void A_food_of_unknown_colour_makes_a_lower_bound_and_the_band_still_holds_numbers()
    {
        BrewForecast told = Bitters.With(Typed.Line(IngredientKind.Food, "raspberries-raw", 2, AdditionPoint.Ferment, 3)).Forecast();
        Assert.True(told.Appearance!.IsLowerBound);
        Assert.Contains(told.Cautions, c => c.Code == "colour.lowerBound");
        Band band = told.Headline.Single(h => h.Name == "colourSrm").Band!;
        Assert.True(band.Low <= band.Likely && band.Likely <= band.High);
    }

    [Fact]
    public void A_beer_that_fits_says_so_in_one_sentence()
    {
        StyleStatistics made = new("made", "Made Up", "a test's own edition 2026", new("made up for the test", "invented"))
        {
            OriginalGravity = new(1.030, 1.080),
            FinalGravity = new(1.000, 1.030),
            Bitterness = new(0, 100),
            Colour = new(0, 50),
            Alcohol = new(1, 12),
        };
        StyleFit fit = Amber.Forecast(new ForecastRequest { Style = made }).StyleFit!;
        Assert.Equal("All five numbers lie within those of Made Up (a test's own edition 2026).", fit.Sentence);
        Assert.All(fit.Rows, r => Assert.Equal(StylePlace.Within, r.Place));
        Assert.Null(Amber.Forecast().StyleFit);
    }

    [Fact]
    public void What_lies_outside_is_named_with_how_far()
    {
        BrewForecast plain = Amber.Forecast();
        double gravity = Math.Round(plain.Number("originalGravity"), 3);
        StyleStatistics made = new("made", "Made Up", "edition 2026", new("made up for the test", "invented"))
        {
            OriginalGravity = new(gravity + 0.004, gravity + 0.010),
            FinalGravity = new(1.000, 1.030),
            Bitterness = new(0, Math.Round(plain.Number("bitterness")) - 3),
            Colour = new(0, 50),

            // An end that the beer's own number rounds onto lies within.
            Alcohol = new(Math.Round(plain.Number("alcoholByVolume"), 1), 12),
        };
        StyleFit fit = Amber.Forecast(new ForecastRequest { Style = made }).StyleFit!;
        Assert.Equal("Against Made Up (edition 2026): original gravity 0.004 below, bitterness 3 IBU above; the others lie within.", fit.Sentence);
        Assert.Equal(
            [StylePlace.Below, StylePlace.Within, StylePlace.Above, StylePlace.Within, StylePlace.Within], fit.Rows.Select(r => r.Place));
    }

    private static double MaltColourOf(string name) => Malts.Find(name).Match!.Colour.Lovibond;
}
