using Gylebook.Engine.State;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Stages;

/// <summary>Gas that sugar makes in the package, by molar masses.</summary>
public sealed class PackageTests
{
    // C12H22O11 + H2O → 4 CO2 + 4 C2H5OH: 176.04/342.30; C6H12O6 → 2 CO2 + 2 C2H5OH: 88.02/180.16. Printed to four digits.
    [Theory]
    [InlineData(Component.Sucrose, 0.5143)]
    [InlineData(Component.Maltose, 0.5143)]
    [InlineData(Component.Glucose, 0.4886)]
    [InlineData(Component.Fructose, 0.4886)]
    public void A_kilogram_of_sugar_makes_its_stoichiometric_gas(Component sugar, double gas)
    {
        Reaction row = Assert.Single(Reactions.Published.Conditioning, r => r.Reactant == sugar);
        Near.Equal(gas, row.Terms.Single(t => t.Component == Component.CarbonDioxide).PerKilogram, 0.00005);
    }

    [Fact]
    public void Every_row_of_every_table_sums_to_zero()
    {
        Reactions all = Reactions.Published;
        Reaction[] rows = [.. all.Conversion, all.Coagulation, .. all.Fermentation, .. all.Conditioning, .. all.Refusal];
        Assert.All(rows, row => Assert.Equal(0, row.Terms.Sum(t => t.PerKilogram), 1e-15));
        Assert.All(rows, row => Assert.DoesNotContain(row.Terms, t => t.PerKilogram == 0));
    }
}
