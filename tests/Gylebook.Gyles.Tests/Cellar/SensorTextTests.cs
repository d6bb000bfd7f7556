using Gylebook.Gyles.Cellar;
using Gylebook.Science.Liquids;
using Gylebook.Science.Quantities;

namespace Gylebook.Gyles.Tests.Cellar;

/// <summary>Numbers and texts of devices.</summary>
public sealed class SensorTextTests
{
    [Theory]
    [InlineData(1.048, 1.048)]
    [InlineData(1048, 1.048)]
    [InlineData(998.5, 0.9985)]
    [InlineData(0.9, 0.9)]
    [InlineData(1.2, 1.2)]
    public void A_gravity_is_SG_or_a_thousand_times_that(double number, double ratio)
    {
        Assert.Null(SensorText.Gravity(number, out SpecificGravity? gravity));
        Assert.Equal(ratio, gravity!.Value.Ratio, 1e-12);
    }

    [Theory]
    [InlineData(12.1)]
    [InlineData(0.89)]
    [InlineData(1.21)]
    [InlineData(1201)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void Another_number_is_refused_with_field_value_and_limit(double number)
    {
        string? why = SensorText.Gravity(number, out SpecificGravity? gravity);
        Assert.Null(gravity);
        Assert.StartsWith(FormattableString.Invariant($"gravity {number}: an SG is from 0.9 to 1.2, or 900 to 1200"), why, StringComparison.Ordinal);
    }

    /// <remarks>°P by the engine's own polynomial, whose printed rows the science tests hold; °F and psi by their definitions (1.8 × °C + 32; 6894.757 Pa).</remarks>
    [Fact]
    public void A_text_may_name_its_unit()
    {
        Assert.Null(SensorText.Gravity("12.1 °P", out SpecificGravity? gravity));
        Assert.Equal(SucroseSolution.GravityAt(12.1), gravity!.Value.Ratio, 1e-9);
        Assert.Null(SensorText.Gravity("1,048", out gravity));
        Assert.Equal(1.048, gravity!.Value.Ratio, 1e-12);
        Assert.Null(SensorText.Temperature("68 °F", out Temperature? temperature));
        Assert.Equal(20, temperature!.Value.Celsius, 1e-9);
        Assert.Null(SensorText.Temperature("20.5", out temperature));
        Assert.Equal(20.5, temperature!.Value.Celsius, 1e-12);
        Assert.Null(SensorText.Pressure("12 psi", out GaugePressure? pressure));
        Assert.Equal(12 * 0.06894757, pressure!.Value.Bar, 1e-7);
        Assert.Null(SensorText.Battery("3.9 V", out double? volts));
        Assert.Equal(3.9, volts);
    }

    [Fact]
    public void What_is_out_of_reach_or_no_value_is_refused_by_name()
    {
        Assert.Contains("temperature 212: must be a number from -30 °C to 110 °C", SensorText.Temperature(212, out _), StringComparison.Ordinal);
        Assert.Contains("temperature 300 °F: must be", SensorText.Temperature("300 °F", out _), StringComparison.Ordinal);
        Assert.StartsWith("temperature warm", SensorText.Temperature("warm", out _), StringComparison.Ordinal);
        Assert.Contains("pressure 11: must be a number from -1 bar to 10 bar", SensorText.Pressure(11, out _), StringComparison.Ordinal);
        Assert.Contains("battery 61: must be a number from 0 V to 60 V", SensorText.Battery(61, out _), StringComparison.Ordinal);
        Assert.StartsWith("gravity ", SensorText.Gravity("45 °P", out _), StringComparison.Ordinal);
    }
}
