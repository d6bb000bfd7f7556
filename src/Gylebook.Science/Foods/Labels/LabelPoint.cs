namespace Gylebook.Science.Foods.Labels;

/// <summary>One composition that a panel allows, g per 100 g as is: its parts keep the mass balance.</summary>
/// <param name="Protein">Protein.</param>
/// <param name="Fat">Fat.</param>
/// <param name="Carbohydrate">Carbohydrate by difference, with fibre and sugar alcohols.</param>
/// <param name="Fibre">Dietary fibre.</param>
/// <param name="Sugars">Total sugars.</param>
/// <param name="Polyols">Declared sugar alcohols.</param>
/// <param name="StarchAndOther">Carbohydrate that is none of these.</param>
/// <param name="Remainder">Moisture, ash and alcohol.</param>
public readonly record struct LabelPoint(
    double Protein, double Fat, double Carbohydrate, double Fibre, double Sugars, double Polyols, double StarchAndOther, double Remainder)
{
    /// <summary>Reads a point off parts that have shrunk to one, but for the last bits of directed rounding.</summary>
    internal static LabelPoint Of(ReadOnlySpan<Interval> parts) => new(
        Middle(parts, MassPart.Protein), Middle(parts, MassPart.Fat), Middle(parts, MassPart.Carbohydrate),
        Middle(parts, MassPart.Fibre), Middle(parts, MassPart.Sugars), Middle(parts, MassPart.Polyols),
        Middle(parts, MassPart.StarchAndOther), Middle(parts, MassPart.Remainder));

    private static double Middle(ReadOnlySpan<Interval> parts, MassPart part) =>
        Math.Max(0, Math.Round((parts[(int)part].Low + parts[(int)part].High) / 2, 9));
}
