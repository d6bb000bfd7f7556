using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Foods;

/// <summary>Whose law a nutrition panel follows.</summary>
public enum LabelStyle
{
    /// <summary>United States, 21 CFR 101.9: per serving, carbohydrate includes fibre, sodium.</summary>
    Us,

    /// <summary>European Union, Regulation 1169/2011: per 100 g, carbohydrate without fibre, salt.</summary>
    Eu,
}

/// <summary>A nutrition panel as printed; null where it prints nothing.</summary>
/// <remarks>A printed "less than 1 g" keeps that text, with half a gram as its value.</remarks>
public sealed record LabelPanel
{
    /// <summary>Whose law it follows.</summary>
    public required LabelStyle Style { get; init; }

    /// <summary>What the figures are for; null for 100 g.</summary>
    public Entered<Mass>? Serving { get; init; }

    /// <summary>Energy, kcal.</summary>
    public double? EnergyKilocalories { get; init; }

    /// <summary>Fat.</summary>
    public Entered<Mass>? Fat { get; init; }

    /// <summary>Saturated fat; part of the fat.</summary>
    public Entered<Mass>? Saturated { get; init; }

    /// <summary>Carbohydrate, in the style's own sense.</summary>
    public Entered<Mass>? Carbohydrate { get; init; }

    /// <summary>Fibre.</summary>
    public Entered<Mass>? Fibre { get; init; }

    /// <summary>Sugars, all of them.</summary>
    public Entered<Mass>? Sugars { get; init; }

    /// <summary>Added sugars; part of the sugars.</summary>
    public Entered<Mass>? AddedSugars { get; init; }

    /// <summary>Sugar alcohols, polyols in Europe.</summary>
    public Entered<Mass>? SugarAlcohols { get; init; }

    /// <summary>Starch; European panels may print it.</summary>
    public Entered<Mass>? Starch { get; init; }

    /// <summary>Protein.</summary>
    public Entered<Mass>? Protein { get; init; }

    /// <summary>Sodium, as American panels print it.</summary>
    public Entered<Mass>? Sodium { get; init; }

    /// <summary>Salt, as European panels print it: 2.5 times all the sodium.</summary>
    public Entered<Mass>? Salt { get; init; }
}
