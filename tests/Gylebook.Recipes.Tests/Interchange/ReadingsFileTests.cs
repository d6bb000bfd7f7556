using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Readings;
using Gylebook.Tests.Shared;

namespace Gylebook.Recipes.Tests.Interchange;

/// <summary>Files of readings: what they may say, and what is said of one that is wrong.</summary>
public sealed class ReadingsFileTests
{
    private static readonly string Sample = File.ReadAllText(RepositoryFile.PathOf("samples/readings/plain-bitter-brew-day.json"));

    [Fact]
    public void The_sample_is_read_valid_and_written_as_it_was_meant()
    {
        Reading<BrewReadings> reading = ReadingsFile.Read(Sample);
        Assert.Empty(reading.Findings);
        Assert.Empty(PublishedSchema.Objections("readings", Sample));
        string written = ReadingsFile.Form.Write(reading.Value!);
        Assert.Empty(PublishedSchema.Objections("readings", written));
        Assert.Equal(reading.Value!.Readings, ReadingsFile.Read(written).Value!.Readings);
    }

    [Theory]
    [InlineData("1.048", 1.048, false)]
    [InlineData("12 °P", 1.0484, false)]
    [InlineData("12.4", 1.0500, true)]
    [InlineData("12.4 SG", 1.0500, true)]
    [InlineData("12,4", 1.0500, true)]
    public void A_gravity_that_can_only_be_extract_is_read_as_that(string typed, double gravity, bool isPlato)
    {
        TakenReading taken = Read($$"""{ "at": "cast", "gravity": "{{typed}}" }""").Value!.Readings[0];

        // The fourth digit after the point: °P to SG by the table of sucrose.
        Assert.Equal(gravity, taken.Gravity!.Value.Value.Ratio, 0.0001);
        Assert.Equal(isPlato, taken.IsPlatoWithoutUnit);
        Assert.Equal(typed, taken.Gravity.Value.Text);
    }

    [Theory]
    [InlineData("""{ "at": "cast" }""", "reading.one")]
    [InlineData("""{ "at": "cast", "gravity": "1.048", "volume": "20 L" }""", "reading.one")]
    [InlineData("""{ "at": "casting", "gravity": "1.048" }""", "word.unknown")]
    [InlineData("""{ "at": "cast", "gravity": "1048" }""", "gravity.wrong")]
    [InlineData("""{ "at": "cast", "gravity": "heavy" }""", "gravity.wrong")]
    [InlineData("""{ "at": "cast", "gravity": "1.048", "instrument": "hydrometre" }""", "instrument.unknown")]
    [InlineData("""{ "at": "cast", "gravity": "1.048", "sampel": "settled" }""", "key.unknown")]
    public void A_wrong_one_is_refused_with_what_is_wrong(string reading, string code) =>
        Assert.Contains(Read(reading).Findings, finding => finding.Code == code && finding.Where.StartsWith("readings[0]", StringComparison.Ordinal));

    private static Reading<BrewReadings> Read(string reading) =>
        ReadingsFile.Read($$"""{ "format": "gylebook-readings/1", "name": "test", "readings": [ {{reading}} ] }""");
}
