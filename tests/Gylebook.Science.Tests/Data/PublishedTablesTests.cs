using Gylebook.Science.Data;

namespace Gylebook.Science.Tests.Data;

public class PublishedTablesTests
{
    // ISO/CIE 11664: 380 to 780 nm in steps of 5 is 81 rows.
    [Theory]
    [InlineData("cie-1931-2deg-5nm.csv")]
    [InlineData("cie-d65-5nm.csv")]
    public void Colour_tables_are_whole_and_in_even_steps(string file)
    {
        double[] wavelengths = CsvTable.Published(file).Numbers("wavelength");
        Assert.Equal(81, wavelengths.Length);
        Assert.All(wavelengths, (nanometres, i) => Assert.Equal(380 + (5 * i), nanometres));
    }

    [Theory]
    [InlineData("limit-of-attenuation.csv")]
    [InlineData("limit-of-attenuation-plateau.csv")]
    [InlineData("residual-carbon-dioxide.csv")]
    public void Tables_read_between_rows_climb_in_temperature(string file)
    {
        double[] celsius = CsvTable.Published(file).Numbers("celsius");
        Assert.True(celsius.Zip(celsius.Skip(1)).All(pair => pair.First < pair.Second));
    }

    [Fact]
    public void A_missing_table_or_column_is_named()
    {
        Assert.Contains("nowhere.csv", Assert.Throws<InvalidDataException>(() => CsvTable.Published("nowhere.csv")).Message);
        Assert.Contains("taste", Assert.Throws<InvalidDataException>(() => CsvTable.Published("cie-d65-5nm.csv").Texts("taste")).Message);
    }
}
