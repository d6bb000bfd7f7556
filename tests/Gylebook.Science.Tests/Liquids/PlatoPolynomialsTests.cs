using Gylebook.Science.Liquids;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Liquids;

public class PlatoPolynomialsTests
{
    private const string Checks = "data/liquids/gravity-to-plato.csv";

    public static IEnumerable<object[]> Published => RepositoryFile.Numbers(Checks, "gravity", "asbc", "nbs", "times250");

    public static IEnumerable<object[]> Table =>
        RepositoryFile.Numbers("data/liquids/sucrose-density-20c.csv", "plato", "gravity_air");

    // asbc-cubic, nbs-cubic: half a unit of the last digit given.
    [Theory, MemberData(nameof(Published))]
    public void Both_give_their_printed_values(double gravity, double asbc, double nbs, double times250)
    {
        Near.Equal(asbc, PlatoPolynomials.AsbcPlatoAt(gravity), 0.0005);
        Near.Equal(nbs, PlatoPolynomials.NbsBrixAt(gravity), 0.0005);
        Near.Equal(times250, 250 * (gravity - 1), 0.0005);
    }

    // The stated worst error against the table, and 0.0013 °P that its fifth decimal leaves open.
    [Theory, MemberData(nameof(Table))]
    public void Both_meet_the_table_as_well_as_they_say(double plato, double gravity)
    {
        double asbcError = plato switch { <= 1 => 0.003, <= 20 => 0.001, 25 => 0.007, _ => 0.025 };
        double nbsError = plato == 0 ? 0.005 : 0.001;
        Near.Equal(plato, PlatoPolynomials.AsbcPlatoAt(gravity), asbcError + 0.0013);
        Near.Equal(plato, PlatoPolynomials.NbsBrixAt(gravity), nbsError + 0.0013);
    }

    // Our curve against both: its own misfit at 1 °P (0.0029 °P) and theirs.
    [Theory, MemberData(nameof(Published))]
    public void Our_curve_lies_with_them(double gravity, double asbc, double nbs, double times250)
    {
        Assert.True(times250 > 0 && asbc > 0);
        Near.Equal(nbs, SucroseSolution.PlatoAt(gravity), 0.001 + 0.0029);
    }
}
