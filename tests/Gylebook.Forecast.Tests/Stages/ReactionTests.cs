using Gylebook.Engine.State;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Stages;

/// <summary>The reactions against figures worked from molar masses and from Balling's.</summary>
public sealed class ReactionTests
{
    // 162.141 g/mol a unit of starch, 18.015 g/mol of water: (162.141 n + 18.015)/(162.141 n), to four decimals.
    [Theory]
    [InlineData(Component.Glucose, 1, 1.1111)]
    [InlineData(Component.Maltose, 2, 1.0556)]
    [InlineData(Component.Maltotriose, 3, 1.0370)]
    [InlineData(Component.Dextrin, 10, 1.0111)]
    public void Starch_takes_up_water_by_stoichiometry(Component product, int units, double figure)
    {
        Near.Equal(1 + (18.015 / (162.141 * units)), figure, 0.00005);
        Near.Equal(figure, Reactions.Published.Conversion.Single(row => row.Makes(product) > 0).Makes(product), 0.00005);
    }

    // Balling: 2.0665 g of extract give 1 g of ethanol, 0.9565 g of carbon dioxide and 0.11 g of yeast; to seven decimals.
    [Fact]
    public void Yeast_grows_by_Ballings_share()
    {
        Near.Equal(0.11 / 2.0665, 0.0532301, 0.5e-7);
        Near.Equal(0.0532301, Reactions.Published.Fermentation.Single(row => row.Reactant == Component.Maltose).Makes(Component.Yeast), 0.5e-7);
    }
}
