using Gylebook.Pictures;
using Gylebook.Store;
using Gylebook.Web.Layout;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Settings;

/// <summary>Units, decimal sign, theme, and where the book lies.</summary>
public sealed partial class SettingsPage
{
    private static readonly (GravityUnit Value, string Text)[] Gravities = [(GravityUnit.SpecificGravity, "1.050"), (GravityUnit.Plato, "°P")];

    private static readonly (VolumeUnit Value, string Text)[] Volumes =
        [(VolumeUnit.Litre, "litre"), (VolumeUnit.UsGallon, "US gallon"), (VolumeUnit.ImperialGallon, "imperial gallon")];

    private static readonly (MassUnit Value, string Text)[] Masses = [(MassUnit.Kilogram, "kilogram, gram"), (MassUnit.Pound, "pound, ounce")];

    private static readonly (TemperatureUnit Value, string Text)[] Temperatures = [(TemperatureUnit.Celsius, "°C"), (TemperatureUnit.Fahrenheit, "°F")];

    private static readonly (ColourUnit Value, string Text)[] Colours = [(ColourUnit.Srm, "SRM"), (ColourUnit.Ebc, "EBC")];

    private static readonly (DecimalSign Value, string Text)[] Signs = [(DecimalSign.Point, "point, 4.2"), (DecimalSign.Comma, "comma, 4,2")];

    private static readonly (Wear Value, string Text)[] Wears = [(Wear.System, "as this device"), (Wear.Light, "light"), (Wear.Dark, "dark")];

    private string? _unsaved;

    private enum Wear
    {
        System,
        Light,
        Dark,
    }

    /// <summary>Whose settings they are.</summary>
    [Inject]
    public required Reader Reader { get; init; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>What this page has yet to save.</summary>
    [CascadingParameter]
    public PageSaves? Saves { get; set; }

    /// <summary>How the reader wants to see numbers; its change draws the page anew.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    // Not those the page was drawn with last: two choices may come before it is drawn again.
    private ReaderUnits Units => Reader.Choice.Units;

    private Wear Worn => Reader.Theme switch
    {
        Themes.Light => Wear.Light,
        Themes.Dark => Wear.Dark,
        _ => Wear.System,
    };

    private string Sample =>
        $"{Shown.Litres(20)} at {Shown.Gravity(1.050)}, {Shown.Srm(17)}, fermented at {Shown.Celsius(19)}, {Shown.Kilograms(4.2)} of malt";

    private Task ChooseAsync(ReaderUnits units) => ChooseAsync(Reader.Choice with { Units = units });

    private Task ChooseThemeAsync(Wear wear) => ChooseAsync(Reader.Choice with
    {
        Theme = wear switch
        {
            Wear.Light => Themes.Light,
            Wear.Dark => Themes.Dark,
            _ => Themes.System,
        },
    });

    private Task KeepAsync() => ChooseAsync(Reader.Choice);

    /// <summary>A choice that the browser does not keep holds for this page, and can be kept again.</summary>
    private async Task ChooseAsync(ReaderChoice choice)
    {
        using PageSaves.Run? run = Saves?.Begin();
        _unsaved = await Reader.ChooseAsync(choice) ? null : "Not kept: this browser takes no cookie. The choice holds until the page is loaded again.";
        run?.Ends(_unsaved);
    }
}
