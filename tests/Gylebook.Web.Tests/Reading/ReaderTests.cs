using Gylebook.Pictures;
using Gylebook.Web.Layout;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Tests.Reading;

/// <summary>What a browser keeps of its reader's choice.</summary>
public sealed class ReaderTests : GylebookTestContext
{
    private static readonly ReaderChoice Imperial = new(
        new ReaderUnits(GravityUnit.Plato, VolumeUnit.ImperialGallon, MassUnit.Pound, TemperatureUnit.Fahrenheit, ColourUnit.Ebc, DecimalSign.Comma),
        Themes.Dark);

    [Fact]
    public void Units_and_theme_come_back_from_the_browser()
    {
        int told = 0;
        Reader.Changed += () => told++;
        Reader.Recall(Imperial.Words);
        Reader.Recall(Imperial.Words);
        Assert.Equal(Imperial, Reader.Choice);
        Assert.Equal((Imperial.Units, Themes.Dark, 1), (Reader.Shown.Units, Reader.Theme, told));
    }

    [Fact]
    public void A_browser_that_has_nothing_has_what_the_book_says()
    {
        var usual = ReaderChoice.Of(new Dictionary<string, string> { ["units.volume"] = "imp gal", [Themes.Key] = "dark" });
        Assert.Equal((VolumeUnit.ImperialGallon, GravityUnit.SpecificGravity, Themes.Dark), (usual.Units.Volume, usual.Units.Gravity, usual.Theme));
        Assert.Equal(usual, ReaderChoice.Read(null, usual));
        Assert.Equal(usual with { Theme = Themes.Light }, ReaderChoice.Read("theme=light", usual));
    }

    [Theory]
    [InlineData("units.volume=firkin&theme=plaid")]
    [InlineData("=&&==&theme&units.volume=")]
    [InlineData("constructor=<script>&units.volume=L\n")]
    public void What_nobody_knows_is_passed_over(string words)
    {
        ReaderChoice usual = new(ReaderUnits.Metric, Themes.System);
        Assert.Equal(usual, ReaderChoice.Read(words, usual));
    }
}
