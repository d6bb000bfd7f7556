using System.Globalization;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook convert, run as a person runs it.</summary>
public sealed class ConvertTests
{
    // Definitions: pound 0.45359237 kg (1959), US gallon 3.785411784 L, imperial gallon 4.54609 L, inch 0.0254 m,
    // atmosphere 101325 Pa, all exact; EBC = 25/12.7 SRM (ASBC and EBC methods); one volume of CO2 1.9635 g/L;
    // CaCO3 50.043 g and CaO 28.0385 g an equivalent (IUPAC atomic weights).
    [Theory]
    [InlineData("1 lb", "kg", "0.453592 kg")]
    [InlineData("1 kg", "oz", "35.274 oz")]
    [InlineData("5 US gal", "L", "18.9271 L")]
    [InlineData("5 imp gal", "L", "22.7305 L")]
    [InlineData("1 US bbl", "L", "117.348 L")]
    [InlineData("212 F", "C", "100 °C")]
    [InlineData("-40 °C", "°F", "-40 °F")]
    [InlineData("1 atm", "psi", "14.6959 psi")]
    [InlineData("12.7 SRM", "EBC", "25 EBC")]
    [InlineData("25 EBC", "srm", "12.7 SRM")]
    [InlineData("2 volumes", "g/L", "3.927 g/L")]
    [InlineData("17.848 mg/L CaCO3", "dH", "1 dH")]
    [InlineData("4,5 kg", "g", "4500 g")]
    public void Prints_number_and_unit_and_nothing_else(string value, string unit, string expected)
    {
        Ran ran = WarmProgram.Run(["convert", value, "--to", unit]);
        Assert.Equal(new Ran(expected + "\n", "", 0), ran);
    }

    // ASBC Table 1: 10 °P is 1.04003, 12 °P 1.04837, 20 °P 1.08297; printed to 0.00001, the curve good to 0.0042 kg/m³
    // (0.000004, 0.001 °P). OIML R 22, from its printed formula: 5 % vol is 3.982 % by mass, 10 % by mass is 12.440 % vol.
    [Theory]
    [InlineData("10 P", "SG", 1.04003, 0.00001)]
    [InlineData("12 Plato", "SG", 1.04837, 0.00001)]
    [InlineData("20 Brix", "SG", 1.08297, 0.00001)]
    [InlineData("1.04837", "P", 12, 0.003)]
    [InlineData("1.04837", "Brix", 12, 0.003)]
    [InlineData("5 % ABV", "% ABW", 3.982, 0.0005)]
    [InlineData("10 % ABW", "% ABV", 12.440, 0.0005)]
    public void Follows_the_printed_tables_where_no_factor_will_do(string value, string unit, double expected, double tolerance)
    {
        Ran ran = WarmProgram.Run(["convert", value, "--to", unit]);
        Assert.Equal(("", 0), (ran.Errors, ran.ExitCode));
        Assert.Equal(expected, double.Parse(ran.Output.Split(' ')[0], CultureInfo.InvariantCulture), tolerance);
    }

    [Fact]
    public void Is_the_same_in_every_country() =>
        Assert.Equal("18.9271 L\n", GylebookProgram.Run(["convert", "5 US gal", "--to", "L"], "de_DE.UTF-8").Output);

    [Theory]
    [InlineData("12 bananas", "kg", "12 bananas: a mass is written with kg, g, mg, lb, oz, t.")]
    [InlineData("12 kg", "SG", "12 kg: kg measures a mass; a gravity is written with SG, °P, Brix.")]
    [InlineData("5 gal", "L", "5 gal: gal could be US gal or imp gal; write 5 US gal or 5 imp gal.")]
    [InlineData("5 L", "gal", "gal: gal could be US gal or imp gal; write US gal or imp gal.")]
    [InlineData("-5 kg", "g", "-5 kg: a mass is from 0 kg to 1000000 kg.")]
    [InlineData("NaN kg", "g", "NaN kg: this does not start with a number; write a number and a unit; a mass is written with kg, g, mg, lb, oz, t.")]
    [InlineData("1e999 kg", "g", "1e999 kg: that number is too large to work with; a mass is written with kg, g, mg, lb, oz, t.")]
    [InlineData("1,068 kg", "g", "1,068 kg: the comma could be a decimal comma or group thousands; write 1.068 or 1068.")]
    [InlineData("[red]12[/]", "kg", "[red]12[/]: this does not start with a number; write a number and a unit; a mass is written with kg, g, mg, lb, oz, t.")]
    [InlineData("", "kg", "Nothing entered: a mass is a number with kg, g, mg, lb, oz, t.")]
    public void Invalid_values_get_one_line_and_exit_code_1(string value, string unit, string expected)
    {
        Ran ran = WarmProgram.Run(["convert", value, "--to", unit]);
        // The minus sign may come back as the typographic one.
        Assert.Equal(new Ran("", expected + "\n", 1), ran with { Errors = ran.Errors.Replace('\u2212', '-') });
    }

    [Theory]
    [InlineData("convert")]
    [InlineData("convert", "12 kg")]
    [InlineData("convert", "12 kg", "--to")]
    [InlineData("convert", "12 kg", "--into", "g")]
    [InlineData("convert", "12", "kg", "--to", "g")]
    [InlineData("bananas")]
    [InlineData("--bananas")]
    public void Invalid_usage_gets_one_line_and_exit_code_2(params string[] arguments)
    {
        Ran ran = GylebookProgram.Run(arguments);
        Assert.Equal(("", 2), (ran.Output, ran.ExitCode));
        Assert.Single(ran.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.DoesNotContain("   at ", ran.Errors, StringComparison.Ordinal);
    }
}
