using Gylebook.Engine.Parameters;

namespace Gylebook.Pictures.Tests;

/// <summary>Figures of a brew as readers are told them, by the units' own definitions.</summary>
public sealed class FigureTextTests
{
    private static readonly Shown Metric = new(ReaderUnits.Metric);
    private static readonly Shown American = new(ReaderUnits.UnitedStates);

    private static Parameter Of(string id, string unit) => new(id, 1, Prior.Point, unit, "test", "entered");

    // US gallon 3.785411784 L, a quart a quarter of it, pound 0.45359237 kg, a kelvin 1.8 degrees of Fahrenheit: as in ShownTests.
    [Theory]
    [InlineData("kit.conversion", "kg/kg", 0.8812, "88.1 %", "88.1 %")]
    [InlineData("hop.golding.alpha", "kg/kg", 0.052, "5.20 %", "5.20 %")]
    [InlineData("malt.pale-ale-malt.extract.2", "kg/kg dry", 0.81, "81.0 %", "81.0 %")]
    [InlineData("kit.wortHeld", "kg/kg", 0.957, "0.957 kg/kg", "0.957 lb/lb")]
    [InlineData("bitterness.utilisation", "1", 1.0834, "× 1.08", "× 1.08")]
    [InlineData("kit.kettle.evaporation", "L/h", 3.785411784, "3.8 L/h", "1.00 US gal/h")]
    [InlineData("kit.kettle.leftBehind", "L", 0.946352946, "0.95 L", "1.00 US qt")]
    [InlineData("kit.kettle.heldBySpentHops", "L/kg", 6, "6.0 L/kg", "2.88 US qt/lb")]
    [InlineData("mash.warmer", "K", -1.5, "−1.5 °C", "−2.7 °F")]
    [InlineData("mash.warmer", "K", 0, "±0.0 °C", "±0.0 °F")]
    [InlineData("mash.limitOfAttenuation", "%", 78.34, "78.3 %", "78.3 %")]
    [InlineData("ph.buffer.wort", "mEq/(kg·pH)", 21.04, "21.0 mEq/(kg·pH)", "21.0 mEq/(kg·pH)")]
    [InlineData("mash.ph", "pH", 5.412, "5.41", "5.41")]
    public void Each_unit(string id, string unit, double value, string metric, string american)
    {
        Assert.Equal(metric, FigureText.Of(Metric, Of(id, unit), value).Replace(Shown.Space, " ", StringComparison.Ordinal));
        Assert.Equal(american, FigureText.Of(American, Of(id, unit), value).Replace(Shown.Space, " ", StringComparison.Ordinal));
    }
}
