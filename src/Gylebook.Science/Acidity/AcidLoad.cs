using Gylebook.Science.Water;

namespace Gylebook.Science.Acidity;

/// <summary>Acids and alkalinity that a wort or a beer carries on top of what its malt is itself.</summary>
/// <param name="Lactic">mmol of lactic acid, free and as lactate.</param>
/// <param name="Acetic">mmol of acetic acid.</param>
/// <param name="Citric">mmol of citric acid.</param>
/// <param name="Malic">mmol of malic acid.</param>
/// <param name="Tartaric">mmol of tartaric acid.</param>
/// <param name="Phosphoric">mmol of phosphoric acid that was added; not the malt's own phosphate.</param>
/// <param name="Quinic">mmol of quinic acid and its like.</param>
/// <param name="Strong">mEq of protons that strong acids brought.</param>
/// <param name="Alkalinity">mEq of residual alkalinity that liquor and salts brought: all of it is used up once CO2 is driven off, and
/// calcium and magnesium set protons free against it.</param>
/// <param name="PairedBase">mEq of base that came with the acids as their salt: what of their protons a food's own potassium has taken.</param>
/// <param name="Litres">Litres of liquid they lie in.</param>
public readonly record struct AcidLoad(
    double Lactic, double Acetic, double Citric, double Malic, double Tartaric, double Phosphoric, double Quinic,
    double Strong, double Alkalinity, double PairedBase, double Litres)
{
    /// <summary>Whether nothing is carried that moves a pH.</summary>
    public bool IsNothing => this == default(AcidLoad) with { Litres = Litres };

    /// <summary>mEq of protons that the load has given to the wort at a pH, less its alkalinity and paired base: rises with pH, and with every acid.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A pH outside 0 to 14.</exception>
    public double Given(double ph) => GivenAt(Math.Pow(10, -Allowed.Ph.Check(ph)));

    /// <summary>The same at an activity of protons, 10^−pH.</summary>
    internal double GivenAt(double protons) =>
        Strong - Alkalinity - PairedBase
        + Of(Lactic, Acids.Lactic, protons) + Of(Acetic, Acids.Acetic, protons) + Of(Citric, Acids.Citric, protons)
        + Of(Malic, Acids.Malic, protons) + Of(Tartaric, Acids.Tartaric, protons) + Of(Phosphoric, Acids.Phosphoric, protons)
        + Of(Quinic, Acids.Quinic, protons);

    /// <summary>The load as a food carries it whose own pH that is: acid and its salt together, so that at its own pH it neither gives nor takes.</summary>
    /// <param name="ownPh">pH of the food itself.</param>
    public AcidLoad AnchoredAt(double ownPh) => this with { PairedBase = PairedBase + Given(ownPh) };

    /// <summary>mEq of protons that are free in the liquid at a pH, less hydroxide: activity 1, pKw 14.</summary>
    public double Free(double ph) => FreeAt(Math.Pow(10, -ph));

    /// <summary>The same at an activity of protons, 10^−pH.</summary>
    internal double FreeAt(double protons) => 1000 * Litres * (protons - (1e-14 / protons));

    private static double Of(double millimoles, Acid acid, double protons) => millimoles == 0 ? 0 : millimoles * acid.ProtonsGivenUpAt(protons);
}
