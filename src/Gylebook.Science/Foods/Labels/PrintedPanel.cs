namespace Gylebook.Science.Foods.Labels;

/// <summary>Whose rules a panel follows.</summary>
public enum PanelStyle
{
    /// <summary>United States, 21 CFR 101.9: per serving, carbohydrate with fibre, sodium in mg.</summary>
    Us,

    /// <summary>European Union and United Kingdom, Regulation (EU) 1169/2011: per 100 g, carbohydrate without fibre, salt in g.</summary>
    Eu,
}

/// <summary>How far the printed numbers are trusted.</summary>
public enum LabelMode
{
    /// <summary>The maker knew the composition and rounded it as the rules say.</summary>
    Rounding,

    /// <summary>The packet in hand may differ from the panel as far as an inspector would let it.</summary>
    Legal,
}

/// <summary>A nutrition panel as printed: the numbers for one serving (or 100 g), in the units of their lines.</summary>
/// <remarks>
/// Whoever reads the packet sees to the units; a panel per 100 mL gives the grams of those 100 mL as its serving.
/// Take the largest basis that is printed: the same rounding on a smaller serving says less.
/// </remarks>
public sealed record PrintedPanel
{
    /// <summary>Whose rules it follows.</summary>
    public required PanelStyle Style { get; init; }

    /// <summary>Grams that the numbers are for: the weight in brackets, or 100.</summary>
    public required double ServingGrams { get; init; }

    /// <summary>Energy, kcal.</summary>
    public PrintedValue EnergyKilocalories { get; init; }

    /// <summary>Energy, kJ.</summary>
    public PrintedValue EnergyKilojoules { get; init; }

    /// <summary>Total fat, g.</summary>
    public PrintedValue FatGrams { get; init; }

    /// <summary>Saturated fat, g.</summary>
    public PrintedValue SaturatedFatGrams { get; init; }

    /// <summary>Carbohydrate, g: with fibre in the US, without in the EU.</summary>
    public PrintedValue CarbohydrateGrams { get; init; }

    /// <summary>Dietary fibre, g.</summary>
    public PrintedValue FibreGrams { get; init; }

    /// <summary>Total sugars, g.</summary>
    public PrintedValue SugarsGrams { get; init; }

    /// <summary>Added sugars, g.</summary>
    public PrintedValue AddedSugarsGrams { get; init; }

    /// <summary>Sugar alcohols, g.</summary>
    public PrintedValue PolyolsGrams { get; init; }

    /// <summary>Starch, g; optional, EU.</summary>
    public PrintedValue StarchGrams { get; init; }

    /// <summary>Protein, g.</summary>
    public PrintedValue ProteinGrams { get; init; }

    /// <summary>Sodium, mg; US.</summary>
    public PrintedValue SodiumMilligrams { get; init; }

    /// <summary>Potassium, mg; US.</summary>
    public PrintedValue PotassiumMilligrams { get; init; }

    /// <summary>Salt, g; EU.</summary>
    public PrintedValue SaltGrams { get; init; }

    /// <summary>What that line says.</summary>
    public PrintedValue this[LabelLine line] => line switch
    {
        LabelLine.EnergyKilocalories => EnergyKilocalories,
        LabelLine.EnergyKilojoules => EnergyKilojoules,
        LabelLine.Fat => FatGrams,
        LabelLine.SaturatedFat => SaturatedFatGrams,
        LabelLine.Carbohydrate => CarbohydrateGrams,
        LabelLine.Fibre => FibreGrams,
        LabelLine.Sugars => SugarsGrams,
        LabelLine.AddedSugars => AddedSugarsGrams,
        LabelLine.Polyols => PolyolsGrams,
        LabelLine.Starch => StarchGrams,
        LabelLine.Protein => ProteinGrams,
        LabelLine.Sodium => SodiumMilligrams,
        LabelLine.Potassium => PotassiumMilligrams,
        LabelLine.Salt => SaltGrams,
        _ => PrintedValue.Absent,
    };
}
