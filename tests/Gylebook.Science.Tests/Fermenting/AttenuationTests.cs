using Gylebook.Science.Fermenting;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Fermenting;

public class AttenuationTests
{
    public static IEnumerable<object[]> Pairs => RepositoryFile.Numbers(
        "data/fermenting/gravity-pairs.csv", "original_plato", "apparent_plato", "real", "adf", "rdf");

    // asbc-beer-6, evaluated: two decimals of per cent; three decimals of extract reach them with 0.01.
    [Theory, MemberData(nameof(Pairs))]
    public void Pairs_of_gravities_are_met(double original, double apparent, double real, double adf, double rdf)
    {
        Near.Equal(adf, 100 * Attenuation.Apparent(original, apparent), 0.015);
        Near.Equal(rdf, 100 * Attenuation.Real(original, real), 0.015);
    }

    [Fact]
    public void A_dry_beer_is_attenuated_by_more_than_all() =>
        Assert.True(Attenuation.Apparent(12, -0.4) > 1);

    [Fact]
    public void Water_has_no_attenuation()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Attenuation.Apparent(0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Attenuation.Real(0, 0));
    }
}
