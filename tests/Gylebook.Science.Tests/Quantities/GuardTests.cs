using Gylebook.Science.Quantities;

namespace Gylebook.Science.Tests.Quantities;

/// <summary>Both guards refuse in one wording: what it is, what it must be, the limits, and the value beside.</summary>
public sealed class GuardTests
{
    [Fact]
    public void A_figure_with_a_name_and_a_unit_is_refused_with_both() =>
        Refuses("Mass", -3.0, "Mass must be from 0 kg to 1000000 kg.", value => Mass.Limits.Check(value));

    [Fact]
    public void An_argument_is_refused_by_the_name_its_formula_has_for_it()
    {
        Refuses("celsius", 500, "celsius must be from -20 to 200.", celsius => Argument.MustBeWithin(celsius, -20, 200));
        Refuses("days", -1, "days must be a number from 0 up.", days => Argument.MustNotBeNegative(days));
        Refuses("litres", 0, "litres must be a number above 0.", litres => Argument.MustBePositive(litres));
    }

    [Fact]
    public void What_is_no_number_is_outside_all_limits()
    {
        Refuses("Mass", double.NaN, "Mass must be from 0 kg to 1000000 kg.", value => Mass.Limits.Check(value));
        Refuses("celsius", double.NaN, "celsius must be from -20 to 200.", celsius => Argument.MustBeWithin(celsius, -20, 200));
        Refuses("litres", double.PositiveInfinity, "litres must be a number above 0.", litres => Argument.MustBePositive(litres));
    }

    private static void Refuses(string name, double value, string message, Func<double, double> guard)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => guard(value));
        Assert.Equal(name, refused.ParamName);
        Assert.Equal(value, refused.ActualValue);
        Assert.StartsWith(message, refused.Message, StringComparison.Ordinal);
    }
}
