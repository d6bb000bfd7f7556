using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Ingredients;

/// <summary>What a certificate says of a malt; null for what it does not say.</summary>
public sealed record MaltFigures
{
    /// <summary>Extract, fine grind, on dry matter.</summary>
    public Entered<Fraction>? Extract { get; init; }

    /// <summary>Extract, fine grind, of the malt as it is; it goes with a moisture.</summary>
    public Entered<Fraction>? ExtractAsIs { get; init; }

    /// <summary>Water.</summary>
    public Entered<Fraction>? Moisture { get; init; }

    /// <summary>Certificate colour.</summary>
    public Entered<MaltColour>? Colour { get; init; }

    /// <summary>Diastatic power.</summary>
    public DiastaticPower? DiastaticPower { get; init; }

    /// <summary>Acid and buffer in the mash, as measured.</summary>
    public MaltTitration? Acidity { get; init; }

    /// <summary>Extract on dry matter, however it was stated; null when it was not.</summary>
    public Fraction? ExtractDry => Extract?.Value
        ?? (ExtractAsIs is { } asIs && Moisture is { } water && asIs.Value.Ratio + water.Value.Ratio <= 1 && water.Value.Ratio < 1
            ? Fraction.FromRatio(asIs.Value.Ratio / (1 - water.Value.Ratio))
            : null);

    /// <summary>These figures, and the other's where these say nothing; the extract on dry matter.</summary>
    public MaltFigures OrElse(MaltFigures? other) => new()
    {
        Extract = (ExtractDry ?? other?.ExtractDry) is { } dry ? new Entered<Fraction>(dry, Invariant($"{dry.Percent:0.##} %")) : null,
        Moisture = Moisture ?? other?.Moisture,
        Colour = Colour ?? other?.Colour,
        DiastaticPower = DiastaticPower ?? other?.DiastaticPower,
        Acidity = Acidity ?? other?.Acidity,
    };
}

/// <summary>Diastatic power, and the text it was typed as: "60 Lintner", "194 WK".</summary>
/// <param name="Lintner">Degrees Lintner.</param>
/// <param name="Text">As typed.</param>
public readonly record struct DiastaticPower(double Lintner, string Text)
{
    /// <summary>Degrees Lintner of Windisch-Kolbach units: °WK = 3.5·°L − 16.</summary>
    /// <remarks>From memory; a maltster's sheet prints 124 and 212 °WK beside 40 and 65 °L, which fits.</remarks>
    public static double LintnerOf(double windischKolbach) => (windischKolbach + 16) / 3.5;
}

/// <summary>A malt of the brewer's own: of which sheet and lot, and what is known of it.</summary>
/// <param name="Key">What draws call it by: sheet, and lot where the lot was assayed.</param>
/// <param name="Figures">What sheet and assay say together.</param>
/// <param name="From">Where they come from.</param>
public sealed record OwnMalt(string Key, MaltFigures Figures, Provenance From);
