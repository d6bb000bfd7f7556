using Gylebook.Science.Foods.Labels;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Foods;

/// <summary>A nutrition panel as typed; null where it prints nothing.</summary>
public sealed record LabelPanel
{
    private const double MilligramsPerGram = 1000;

    /// <summary>Whose law it follows.</summary>
    public required PanelStyle Style { get; init; }

    /// <summary>What the figures are for; null for 100 g.</summary>
    public Entered<Mass>? Serving { get; init; }

    /// <summary>Energy, kcal.</summary>
    public double? EnergyKilocalories { get; init; }

    /// <summary>Fat.</summary>
    public PrintedMass? Fat { get; init; }

    /// <summary>Saturated fat; part of the fat.</summary>
    public PrintedMass? Saturated { get; init; }

    /// <summary>Carbohydrate, in the style's own sense.</summary>
    public PrintedMass? Carbohydrate { get; init; }

    /// <summary>Fibre.</summary>
    public PrintedMass? Fibre { get; init; }

    /// <summary>Sugars, all of them.</summary>
    public PrintedMass? Sugars { get; init; }

    /// <summary>Added sugars; part of the sugars.</summary>
    public PrintedMass? AddedSugars { get; init; }

    /// <summary>Sugar alcohols, polyols in Europe.</summary>
    public PrintedMass? SugarAlcohols { get; init; }

    /// <summary>Starch; European panels may print it.</summary>
    public PrintedMass? Starch { get; init; }

    /// <summary>Protein.</summary>
    public PrintedMass? Protein { get; init; }

    /// <summary>Sodium, as American panels print it.</summary>
    public PrintedMass? Sodium { get; init; }

    /// <summary>Salt, as European panels print it: 2.5 times all the sodium.</summary>
    public PrintedMass? Salt { get; init; }

    /// <summary>Potassium, as American panels print it.</summary>
    public PrintedMass? Potassium { get; init; }

    /// <summary>What the figures are for, in grams.</summary>
    internal double ServingGrams => Serving is { } serving ? serving.Value.Grams : 100;

    /// <summary>The panel in the units of its lines, ready to be read as bounds.</summary>
    public PrintedPanel AsPrinted() => new()
    {
        Style = Style,
        ServingGrams = ServingGrams,
        EnergyKilocalories = EnergyKilocalories is { } energy ? PrintedValue.Of(energy) : PrintedValue.Absent,
        FatGrams = Grams(Fat),
        SaturatedFatGrams = Grams(Saturated),
        CarbohydrateGrams = Grams(Carbohydrate),
        FibreGrams = Grams(Fibre),
        SugarsGrams = Grams(Sugars),
        AddedSugarsGrams = Grams(AddedSugars),
        PolyolsGrams = Grams(SugarAlcohols),
        StarchGrams = Grams(Starch),
        ProteinGrams = Grams(Protein),
        SodiumMilligrams = Sodium?.Value(MilligramsPerGram) ?? PrintedValue.Absent,
        SaltGrams = Grams(Salt),
        PotassiumMilligrams = Potassium?.Value(MilligramsPerGram) ?? PrintedValue.Absent,
    };

    private static PrintedValue Grams(PrintedMass? figure) => figure?.Value() ?? PrintedValue.Absent;
}
