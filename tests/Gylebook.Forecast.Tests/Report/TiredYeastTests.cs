using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Report;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Fermenting;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Report;

/// <summary>Alcohol that a yeast does not bear, and sugar that it leaves.</summary>
public sealed class TiredYeastTests
{
    private static Recipe Strong(string yeast, double sugar, string package = "keg") => Bitters.With(
        Typed.Line(IngredientKind.Sugar, "white sugar", sugar, AdditionPoint.Boil, 10), Typed.Yeast(yeast)) with
    {
        Package = new PackageWish(Typed.Litres(20), package, package == "keg" ? Typed.Volumes(2) : Typed.Volumes(2.2)),
    };

    private static Band Of(BrewForecast told, string headline) => told.Headline.Single(h => h.Name == headline).Band!;

    /// <summary>The row of American ale says 10 to 12 %, from memory; 4 kg of malt and 4 kg of sugar in 22 L would make far more.</summary>
    [Fact]
    public void Alcohol_ends_in_the_middle_of_where_the_yeast_tires_and_is_told_as_bounds()
    {
        BrewForecast told = Strong("American ale", 4).Forecast();
        Band alcohol = Of(told, "alcoholAtRacking"), gravity = Of(told, "finalGravity");
        Assert.Equal(BandKind.Bounds, alcohol.Kind);
        // Gas leaves after it has stopped, and its volume with it.
        Near.Equal(10, alcohol.Low, 0.005);
        Near.Equal(11, alcohol.Likely, 0.005);
        Assert.True(alcohol.High > 13, $"{alcohol.High}");
        Assert.True(gravity.Low < gravity.Likely && gravity.Likely < gravity.High);
        Assert.Equal(BandKind.Point, Of(told, "originalGravity").Kind);
        Assert.InRange(told.Balance!.RelativeError, 0, 1e-12);
        Caution caution = Assert.Single(told.Cautions, c => c.Code == "yeast.tolerance");
        Assert.Equal(Severity.Warning, caution.Severity);
    }

    /// <summary>
    /// Where it stops, gravity and alcohol must still be Balling's: his chain from the two gravities alone, within what it is off measured
    /// ales (rms 0.13 % vol). Below 20 °P, where the published ways to a beer's gravity agree.
    /// </summary>
    [Fact]
    public void Where_it_stops_the_two_gravities_still_tell_the_alcohol()
    {
        BrewForecast told = Strong("lager", 1.65).Forecast();
        Assert.InRange(Of(told, "originalGravity").Likely, 1.070, 1.083);
        double alcohol = AlcoholEstimate.PercentByVolume(Of(told, "originalGravity").Likely, Of(told, "finalGravity").Likely);
        Near.Equal(9, Of(told, "alcoholAtRacking").Likely, 0.005);
        Near.Equal(9, alcohol, 0.13);
    }

    [Fact]
    public void A_beer_below_what_its_yeast_bears_has_no_bounds_and_no_caution()
    {
        BrewForecast told = Strong("American ale", 1).Forecast();
        Assert.Equal(BandKind.Point, Of(told, "finalGravity").Kind);
        Assert.DoesNotContain(told.Cautions, c => c.Code is "yeast.tolerance" or "bottle.strayYeast");
    }

    [Fact]
    public void What_the_brewer_told_of_the_yeast_goes_before_its_row()
    {
        Recipe strong = Strong("American ale", 4);
        BrewForecast told = (strong with { Ingredients = [.. strong.Ingredients.Select(l => l.Kind == IngredientKind.Yeast ? l with { Attenuation = Typed.Share(1) } : l)] }).Forecast();
        Assert.True(Of(told, "alcoholAtRacking") is { Kind: BandKind.Point, Likely: > 13 });
    }

    /// <summary>All maltose left: by stoichiometry 0.5143 kg of gas a kilogram, so that even a weak wort's would make bombs of bottles made for 3.5 volumes.</summary>
    [Fact]
    public void A_yeast_that_leaves_maltose_is_an_alarm_in_bottles_and_none_in_kegs()
    {
        Recipe weak = Bitters.With(Typed.Yeast("low-alcohol")) with { Package = new PackageWish(Typed.Litres(20), "bottle", Typed.Volumes(2.2)) };
        Caution caution = Assert.Single(weak.Forecast().Cautions, c => c.Code == "bottle.strayYeast");
        Assert.Equal((Severity.Error, "package"), (caution.Severity, caution.Where));
        Assert.DoesNotContain((weak with { Package = weak.Package with { In = "keg" } }).Forecast().Cautions, c => c.Code == "bottle.strayYeast");
        Assert.DoesNotContain(Strong("English ale", 0.5, "bottle").Forecast().Cautions, c => c.Code == "bottle.strayYeast");
    }
}
