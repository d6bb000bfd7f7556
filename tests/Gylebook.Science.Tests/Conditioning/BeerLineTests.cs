using Gylebook.Science.Conditioning;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Conditioning;

public class BeerLineTests
{
    private const double Foot = 0.3048;

    // Worked examples of the home-draught trade, lengths in feet as computed anew to two decimals: 4, 14, 10.5, 5, 2 ft 4 in, 10.5 and 4.7 in print.
    [Theory]
    [InlineData("vinyl-3-16", 12, 0, 0, 4.00)]
    [InlineData("vinyl-1-4", 12, 0, 0, 14.12)]
    [InlineData("vinyl-1-4", 12, 6, 0, 10.59)]
    [InlineData("vinyl-3-16", 12, -6, 0, 5.00)]
    [InlineData("vinyl-3-16", 12, 4, 3, 2.33)]
    [InlineData("vinyl-1-4", 10, 0, 1, 10.59)]
    [InlineData("vinyl-1-4", 5, 0, 1, 4.71)]
    public void Known_lengths(string tube, double psi, double liftFeet, double partsPsi, double feet) => Near.Equal(
        feet,
        BeerLine.Metres(psi * KegPressure.BarPerPsi, liftFeet * Foot, partsPsi * KegPressure.BarPerPsi, BeerLine.Tubes.Single(row => row.Id == tube).BarPerMetre) / Foot,
        0.005);

    // Computed elsewhere: psi a foot by the flow, two decimals.
    [Theory]
    [InlineData(4.76, 59, 1.81)]
    [InlineData(4.76, 30, 0.55)]
    [InlineData(4.76, 20, 0.17)]
    [InlineData(6.35, 59, 0.46)]
    [InlineData(6.35, 30, 0.14)]
    [InlineData(6.35, 20, 0.05)]
    [InlineData(4.0, 59, 4.14)]
    public void Known_losses_by_the_flow(double bore, double flow, double psiPerFoot) =>
        Near.Equal(psiPerFoot, BeerLine.BarPerMetre(bore, flow) * Foot / KegPressure.BarPerPsi, 0.005);

    [Fact]
    public void Known_the_flow_of_a_pour_is_rough() => Near.Equal(6590, BeerLine.ReynoldsOf(4.76, BeerLine.TradeFlow), 5);

    [Fact]
    public void Limits_height_may_take_it_all()
    {
        Assert.True(BeerLine.Metres(0.5, 5, 0, 0.1) < 0);
        Assert.Throws<ArgumentOutOfRangeException>(() => BeerLine.Metres(-1, 0, 0, 0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => BeerLine.Metres(1, 0, 0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => BeerLine.BarPerMetre(0, 59));
    }
}
