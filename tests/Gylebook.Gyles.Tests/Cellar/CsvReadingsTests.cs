using Gylebook.Gyles.Cellar;
using Gylebook.Science.Liquids;

namespace Gylebook.Gyles.Tests.Cellar;

/// <summary>Tables of readings: columns by name, lines refused by number.</summary>
public sealed class CsvReadingsTests
{
    private static readonly DateTimeOffset Now = new(2026, 3, 10, 12, 0, 0, TimeSpan.Zero);
    private static readonly TimeZoneInfo TwoHoursEast = TimeZoneInfo.CreateCustomTimeZone("east", TimeSpan.FromHours(2), "east", "east");

    [Fact]
    public void Columns_are_found_by_name_with_their_units()
    {
        CsvReadings read = Read("time,Specific Gravity,Temp (°F),Battery,signal\n2026-03-01T18:00:00Z,1.048,68,3.9,-70\n2026-03-01T18:15:00+01:00,1048,68,,\n");
        Assert.Null(read.Fault);
        Assert.Empty(read.Refused);
        Assert.Equal(["signal"], read.PassedOver);
        Assert.Equal([new(2026, 3, 1, 18, 0, 0, TimeSpan.Zero), new DateTimeOffset(2026, 3, 1, 17, 15, 0, TimeSpan.Zero)], read.Taken.Select(reading => reading.At));
        Assert.All(read.Taken, reading => Assert.Equal((1.048, 20), (Math.Round(reading.Gravity!.Value.Ratio, 12), Math.Round(reading.Temperature!.Value.Celsius, 9))));
        Assert.Equal([3.9, null], read.Taken.Select(reading => reading.BatteryVolts));
        Assert.All(read.Taken, reading => Assert.Equal(Now, reading.Arrived));
    }

    [Fact]
    public void Semicolons_decimal_commas_a_date_and_a_time_and_Plato()
    {
        CsvReadings read = Read("# a logger\r\nDate;Time;Plato;temp_f\r\n1.3.2026;18:00;12,1;68,9\r\n");
        Assert.Null(read.Fault);
        SensorReading reading = Assert.Single(read.Taken);
        Assert.Equal(new DateTimeOffset(2026, 3, 1, 16, 0, 0, TimeSpan.Zero), reading.At);
        Assert.Equal(SucroseSolution.GravityAt(12.1), reading.Gravity!.Value.Ratio, 1e-9);
        Assert.Equal((68.9 - 32) / 1.8, reading.Temperature!.Value.Celsius, 1e-9);
    }

    [Fact]
    public void Lines_that_cannot_be_taken_are_named_and_cost_no_others()
    {
        CsvReadings read = Read("time\tgravity\ttemperature\n2026-03-01 18:00\t1.048\t20\nyesterday\t1.047\t20\n03/04/2026 10:00\t1.047\t20\n2026-03-01 19:00\t12.1\t20\n2026-03-01 20:00\t1.046\t212\n2026-03-01 21:00\t\t\n1772388000\t1.045\t20\n");
        Assert.Equal(2, read.Taken.Count);
        Assert.Equal(DateTimeOffset.FromUnixTimeSeconds(1772388000), read.Taken[1].At);
        Assert.Equal([3, 4, 5, 6, 7], read.Refused.Select(line => line.Line));
        Assert.Contains("time \"yesterday\"", read.Refused[0].Why, StringComparison.Ordinal);
        Assert.Contains("gravity 12.1", read.Refused[2].Why, StringComparison.Ordinal);
        Assert.Contains("temperature 212", read.Refused[3].Why, StringComparison.Ordinal);
        Assert.Contains("no value", read.Refused[4].Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("gravity,temperature\n1.048,20\n", "no column \"time\"")]
    [InlineData("time,colour\n", "no column \"gravity\"")]
    [InlineData("time,gravity,plato\n", "two columns are a gravity")]
    public void A_table_without_what_it_needs_is_refused_whole(string text, string why) =>
        Assert.Contains(why, Read(text).Fault, StringComparison.Ordinal);

    [Fact]
    public void Of_a_file_that_never_ends_the_beginning_is_told()
    {
        CsvReadings read = Read("time,gravity\n" + string.Concat(Enumerable.Repeat("1772388000,1.045\n", CsvReadings.MostLines)));
        Assert.Contains("200000 lines", read.Fault, StringComparison.Ordinal);
    }

    private static CsvReadings Read(string text) => CsvReadings.Read(text, Now, TwoHoursEast);
}
