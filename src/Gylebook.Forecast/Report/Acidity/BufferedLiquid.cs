using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Science.Acidity;

namespace Gylebook.Forecast.Report.Acidity;

/// <summary>Wort or beer as the acid science sees it: what it carries, and the malt that buffers it.</summary>
internal readonly record struct BufferedLiquid(AcidLoad Load, double MaltKilograms)
{
    /// <summary>Less malt than this in a litre buffers nothing that any figure in print speaks of.</summary>
    private const double LeastKilogramsPerLitre = 1e-3;

    /// <summary>Reads it off a wort.</summary>
    public BufferedLiquid(in Wort wort)
        : this(AcidsCarried.Of(wort), wort[Component.MaltBuffer])
    {
    }

    /// <summary>Whether there is malt in it to buffer.</summary>
    public bool IsBuffered => Load.Litres > 0 && MaltKilograms / Load.Litres > LeastKilogramsPerLitre;

    /// <summary>pH from a pH of the mash's wort, or of the beer it makes, with what the mash's load counts for in it.</summary>
    /// <param name="bufferingPerKilogram">mEq/(kg·pH).</param>
    /// <param name="anchor">That pH.</param>
    /// <param name="mash">The mash.</param>
    /// <param name="drop">By how much pH falls besides.</param>
    public double Ph(double bufferingPerKilogram, double anchor, MaltWort mash, double drop = 0) => IsPh(anchor)
        ? Balanced(bufferingPerKilogram, anchor, (drop * bufferingPerKilogram * MaltKilograms) - mash.Counted(anchor, MaltKilograms))
        : double.NaN;

    /// <summary>pH from a pH it had with an earlier load, and protons set free since.</summary>
    /// <param name="bufferingPerKilogram">mEq/(kg·pH).</param>
    /// <param name="anchor">That pH.</param>
    /// <param name="before">The liquid at that pH; only its share of malt still here counts.</param>
    /// <param name="released">Protons set free since, mEq.</param>
    public double PhSince(double bufferingPerKilogram, double anchor, in BufferedLiquid before, double released) => IsPh(anchor)
        ? Balanced(bufferingPerKilogram, anchor, released - (before.Load.Given(anchor) * MaltKilograms / before.MaltKilograms))
        : double.NaN;

    /// <summary>So much acid or alkali in the mash that its pH lies beyond the scale leaves nothing to count from.</summary>
    private static bool IsPh(double anchor) => anchor is >= 0 and <= 14;

    /// <summary>Not a number where so much acid or alkali went in that no pH balances it.</summary>
    private double Balanced(double bufferingPerKilogram, double anchor, double released) =>
        WortAcidity.TryPhOf(Load, bufferingPerKilogram * MaltKilograms, anchor, released, out double ph)
            ? ph : double.NaN;
}
