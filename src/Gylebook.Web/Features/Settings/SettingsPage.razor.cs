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

    /// <summary>How the reader wants to see numbers; its change draws the page anew.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    private ReaderUnits Units => Shown.Units;

    private Wear Worn => Reader.Theme switch
    {
        Themes.Light => Wear.Light,
        Themes.Dark => Wear.Dark,
        _ => Wear.System,
    };

    private string Sample =>
        $"{Shown.Litres(20)} at {Shown.Gravity(1.050)}, {Shown.Srm(17)}, fermented at {Shown.Celsius(19)}, {Shown.Kilograms(4.2)} of malt";

    private Task ChooseThemeAsync(Wear wear) => Reader.ChooseThemeAsync(wear switch
    {
        Wear.Light => Themes.Light,
        Wear.Dark => Themes.Dark,
        _ => Themes.System,
    });
}
