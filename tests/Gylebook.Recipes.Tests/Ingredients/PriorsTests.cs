using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Recipes.Tests.Ingredients;

public sealed class PriorsTests
{
    [Fact]
    public void Every_starting_value_has_a_prior_and_its_median_stays_itself_to_the_last_bit() => Assert.All(StartingValues.All, value =>
    {
        PriorWidth? prior = Priors.Find(value.Id) ?? Priors.Find(value.Id, kind: Priors.All.FirstOrDefault(row => row.Id == value.Id)?.Kind ?? "");
        Assert.True(prior is not null, $"{value.Id} has no prior.");
        Assert.Equal(value.Unit, prior.Unit);
        Assert.Equal(BitConverter.DoubleToInt64Bits(value.Value), BitConverter.DoubleToInt64Bits(prior.About(value.Value).Quantile(0.5)));
    });

    [Fact]
    public void A_family_that_wants_a_spread_has_one_and_one_that_wants_ends_has_two() => Assert.All(Priors.All, prior =>
    {
        bool spreads = prior.Width.Family is Family.Normal or Family.LogNormal or Family.LogitNormal;
        bool ends = prior.Width.Family is Family.LogitNormal or Family.Triangular or Family.Uniform or Family.LogUniform;
        Assert.Equal(spreads, prior.Width.Spread > 0);
        Assert.True(!ends || prior.Width.Low < prior.Width.High, $"{prior.Id} has no two ends.");
    });

    [Fact]
    public void No_two_rows_say_the_same_thing() =>
        Assert.Equal(Priors.All.Count, Priors.All.Select(row => (row.Id, row.Kind, row.Level)).Distinct().Count());

    [Theory]
    [InlineData("hop.fuggle.alpha", "sealed", 0.08)]
    [InlineData("hop.fuggle.alpha", "unknownStorage", 0.15)]
    [InlineData("malt.pale.extract", "base", 0.012)]
    [InlineData("kit.kettle.evaporation", "", 0.25)]
    public void A_pattern_answers_for_every_ingredient_of_its_sort(string id, string kind, double spread) =>
        Assert.Equal(spread, Priors.Find(id, PriorLevel.Between, kind)!.Width.Spread);

    [Fact]
    public void What_nobody_has_a_prior_for_is_said_to_have_none() => Assert.Null(Priors.Find("hop.fuggle.colour"));

    [Fact]
    public void Ends_may_be_added_to_the_median_or_multiply_it()
    {
        Assert.Equal(0.065, Priors.Find("malt.pale.moisture")!.About(0.04).High, 1e-12);
        Assert.Equal(0.88 * 0.85, Priors.Find("ferment.residualGas")!.About(0.85).Low, 1e-12);
    }
}
