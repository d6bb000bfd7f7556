using Gylebook.Pictures;
using Gylebook.Web.Layout;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Tests.Reading;

/// <summary>What the book remembers of its reader.</summary>
public sealed class ReaderTests : GylebookTestContext
{
    [Fact]
    public async Task Units_and_theme_come_back_from_the_book()
    {
        ReaderUnits wanted = new(
            GravityUnit.Plato, VolumeUnit.ImperialGallon, MassUnit.Pound, TemperatureUnit.Fahrenheit, ColourUnit.Ebc, DecimalSign.Comma);
        int told = 0;
        Reader.Changed += () => told++;
        await Reader.ChooseAsync(wanted);
        await Reader.ChooseThemeAsync(Themes.Dark);
        Reader again = await Reader.OfAsync(Book, Cancellation);
        Assert.Equal(wanted, again.Shown.Units);
        Assert.Equal(Themes.Dark, again.Theme);
        Assert.Equal(2, told);
    }

    [Fact]
    public async Task A_setting_nobody_knows_is_passed_over()
    {
        await Book.Settings.SetAsync("units.volume", "firkin", Cancellation);
        await Book.Settings.SetAsync(Themes.Key, "plaid", Cancellation);
        Reader reader = await Reader.OfAsync(Book, Cancellation);
        Assert.Equal(ReaderUnits.Metric, reader.Shown.Units);
        Assert.Equal(Themes.System, reader.Theme);
    }
}
