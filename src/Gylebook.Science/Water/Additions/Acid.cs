namespace Gylebook.Science.Water;

/// <summary>An acid and how many protons it gives up at a pH.</summary>
/// <remarks>
/// <para>Symbols: z(pH), mean protons given up, relative to the fully protonated acid; pKj, stepwise constants;
/// z = Σ i·Πj≤i 10^(pH−pKj) / (1 + Σ Π).</para>
/// <para>Source: stepwise dissociation; constants at 25 °C and zero ionic strength from handbook tables of organic and
/// mineral acids, beside each acid in <see cref="Acids"/>.</para>
/// <para>Valid for: pH 3 to 9.</para>
/// <para>Accuracy: at ionic strength 0.05 lactic acid's apparent pKa is 0.08 lower: below 1 % of a dose at pH 5.2 and up.</para>
/// </remarks>
/// <param name="Id">Stable name.</param>
/// <param name="Name">As a brewer says it.</param>
/// <param name="MolarMass">g/mol, without water of crystallisation.</param>
/// <param name="StrongProtons">Protons given up at any pH.</param>
/// <param name="Pka">Constants of the further protons, in order.</param>
/// <param name="Anion">The ion it leaves behind, if liquor reports count it.</param>
/// <param name="Caution">What can hurt.</param>
public sealed record Acid(
    string Id, string Name, double MolarMass, int StrongProtons, IReadOnlyList<double> Pka, Ion? Anion, string Caution)
{
    private readonly double[] _constants = [.. Pka.Select(pka => Math.Pow(10, -pka))];

    /// <summary>z: mEq of protons given up by each mmol at a pH.</summary>
    public double ProtonsGivenUp(double ph) => ProtonsGivenUpAt(Math.Pow(10, -Allowed.Ph.Check(ph)), out _);

    /// <summary>The same at an activity of protons, 10^−pH, for whoever asks several acids at one pH; and dz/dpH = ln 10·(Σ i²·Π/Σ − (Σ i·Π/Σ)²).</summary>
    internal double ProtonsGivenUpAt(double protons, out double perPh)
    {
        double product = 1, sum = 1, weighted = 0, squared = 0;
        for (int step = 1; step <= _constants.Length; step++)
        {
            product *= _constants[step - 1] / protons;
            sum += product;
            weighted += step * product;
            squared += step * step * product;
        }

        double mean = weighted / sum;
        perPh = Ln10 * ((squared / sum) - (mean * mean));
        return StrongProtons + mean;
    }

    internal const double Ln10 = 2.302585092994046;
}

/// <summary>The acids of the brewhouse and of fruit.</summary>
public static class Acids
{
    private const string Irritant = "Concentrated acid burns eyes and skin: goggles and gloves; acid into water.";
    private const string Corrosive =
        "Severe burns; the concentrate fumes or boils on water. Goggles, gloves, acid into water, never water into acid.";

    private const string Mild = "The powder and strong solutions irritate eyes.";

    /// <summary>Lactic, pKa 3.86.</summary>
    public static Acid Lactic { get; } = new("lactic", "lactic acid", 90.078, 0, [3.86], null, Irritant);

    /// <summary>Phosphoric, pKa 2.148, 7.198, 12.35.</summary>
    public static Acid Phosphoric { get; } =
        new("phosphoric", "phosphoric acid", 97.994, 0, [2.148, 7.198, 12.35], null, Corrosive);

    /// <summary>Hydrochloric, strong.</summary>
    public static Acid Hydrochloric { get; } =
        new("hydrochloric", "hydrochloric acid", 36.458, 1, [], Ion.Chloride, Corrosive);

    /// <summary>Sulphuric, strong, then pKa 1.99.</summary>
    public static Acid Sulphuric { get; } =
        new("sulphuric", "sulphuric acid", 98.072, 1, [1.99], Ion.Sulphate, Corrosive);

    /// <summary>Citric, pKa 3.128, 4.761, 6.396 (handbook; two-digit tables round to 3.13, 4.76, 6.40).</summary>
    /// <remarks>One table in print gives 5.602 for the third, against its own K: misprint.</remarks>
    public static Acid Citric { get; } = new("citric", "citric acid", 192.123, 0, [3.128, 4.761, 6.396], null, Mild);

    /// <summary>Acetic, pKa 4.756.</summary>
    public static Acid Acetic { get; } = new("acetic", "acetic acid", 60.052, 0, [4.756], null, Irritant);

    /// <summary>Malic, pKa 3.40, 5.11 (tables run to 5.20).</summary>
    public static Acid Malic { get; } = new("malic", "malic acid", 134.087, 0, [3.40, 5.11], null, Mild);

    /// <summary>Tartaric (L), pKa 2.98, 4.34.</summary>
    public static Acid Tartaric { get; } = new("tartaric", "tartaric acid", 150.086, 0, [2.98, 4.34], null, Mild);

    /// <summary>Quinic, pKa 3.46, from memory (3.4 to 3.6): of plums, kiwi fruit and coffee. Gluconic acid, 3.7, is counted with it. Nobody brews with the pure acid.</summary>
    public static Acid Quinic { get; } = new("quinic", "quinic acid", 192.17, 0, [3.46], null, Mild);

    /// <summary>Those that are sold to brewers.</summary>
    public static IReadOnlyList<Acid> All { get; } =
        [Lactic, Phosphoric, Hydrochloric, Sulphuric, Citric, Acetic, Malic, Tartaric];
}
