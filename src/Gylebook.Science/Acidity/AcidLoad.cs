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
    public double Given(double ph) => GivenAt(Math.Pow(10, -Allowed.Ph.Check(ph)), out _);

    /// <summary>The same at an activity of protons, 10^−pH, and how it rises with pH.</summary>
    internal double GivenAt(double protons, out double perPh)
    {
        perPh = 0;
        return Strong - Alkalinity - PairedBase
            + Of(Lactic, Acids.Lactic, protons, ref perPh) + Of(Acetic, Acids.Acetic, protons, ref perPh)
            + Of(Citric, Acids.Citric, protons, ref perPh) + Of(Malic, Acids.Malic, protons, ref perPh)
            + Of(Tartaric, Acids.Tartaric, protons, ref perPh) + Of(Phosphoric, Acids.Phosphoric, protons, ref perPh)
            + Of(Quinic, Acids.Quinic, protons, ref perPh);
    }

    /// <summary>The load as a food carries it whose own pH that is: acid and its salt together, so that at its own pH it neither gives nor takes.</summary>
    /// <param name="ownPh">pH of the food itself.</param>
    public AcidLoad AnchoredAt(double ownPh) => this with { PairedBase = PairedBase + Given(ownPh) };

    /// <summary>mEq of protons that are free in the liquid at a pH, less hydroxide: activity 1, pKw 14.</summary>
    public double Free(double ph) => FreeAt(Math.Pow(10, -ph), out _);

    /// <summary>The same at an activity of protons, 10^−pH, and how it changes with pH: it falls.</summary>
    internal double FreeAt(double protons, out double perPh)
    {
        double hydroxide = 1e-14 / protons, each = 1000 * Litres;
        perPh = -Acid.Ln10 * each * (protons + hydroxide);
        return each * (protons - hydroxide);
    }

    private static double Of(double millimoles, Acid acid, double protons, ref double perPh)
    {
        if (millimoles == 0)
        {
            return 0;
        }

        double given = millimoles * acid.ProtonsGivenUpAt(protons, out double rises);
        perPh += millimoles * rises;
        return given;
    }
}
