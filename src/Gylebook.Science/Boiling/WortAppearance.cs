using Gylebook.Science.Data;

namespace Gylebook.Science.Boiling;

/// <summary>What a glass of beer looks like in daylight.</summary>
/// <remarks>
/// <para>Symbols: λ wavelength (nm); A absorbance of 1 cm, A = SRM/12.7·[0.02465·e^(−(λ−430)/17.591) +
/// 0.97535·e^(−(λ−430)/82.122)]; transmittance 10^(−A·cm); X, Y, Z summed over λ in steps of 5 nm with D65, Y = 100 for
/// clear water.</para>
/// <para>Source: deLange in Bamforth (ed.) 2016, Brewing Materials and Processes (mean spectrum; coefficients from
/// memory); ISO/CIE 11664-1, -2 and -3 (observer, illuminant, sum); IEC 61966-2-1 (screen colours).</para>
/// <para>Valid for: clear beer coloured by malt. Fruit, beetroot, butterfly pea and haze fall outside.</para>
/// <para>Accuracy: one number for the colour is good to about 4 CIELAB units on malt beers.</para>
/// <para>Notes: only SRM × thickness matters. From about 6 SRM in a 5 cm glass a screen cannot show the colour: the
/// channel is clipped and <see cref="SeenColour.InGamut"/> says so.</para>
/// </remarks>
public static class WortAppearance
{
    private static readonly double[] Wavelengths = CsvTable.Published("cie-1931-2deg-5nm.csv").Numbers("wavelength");
    private static readonly double[] XBar = CsvTable.Published("cie-1931-2deg-5nm.csv").Numbers("xBar");
    private static readonly double[] YBar = CsvTable.Published("cie-1931-2deg-5nm.csv").Numbers("yBar");
    private static readonly double[] ZBar = CsvTable.Published("cie-1931-2deg-5nm.csv").Numbers("zBar");
    private static readonly double[] Daylight = CsvTable.Published("cie-d65-5nm.csv").Numbers("power");

    /// <summary>The colour of daylight itself: what clear water shows.</summary>
    public static Tristimulus White { get; } = Sum(0);

    /// <summary>Absorbance at a wavelength over that at 430 nm, for the mean beer.</summary>
    public static double RelativeAbsorbance(double nanometres)
    {
        Argument.MustBeWithin(nanometres, 380, 780);
        double fromBlue = nanometres - 430;
        return (0.02465 * Math.Exp(-fromBlue / 17.591)) + (0.97535 * Math.Exp(-fromBlue / 82.122));
    }

    /// <summary>The colour of a glass of beer held against daylight.</summary>
    /// <param name="srm">Colour, SRM.</param>
    /// <param name="glassCentimetres">How much beer the light goes through, cm.</param>
    public static SeenColour In(double srm, double glassCentimetres)
    {
        Argument.MustNotBeNegative(srm);
        Argument.MustNotBeNegative(glassCentimetres);
        return SeenColour.FromTristimulus(Sum(WortColour.AbsorbanceOfSrm(srm) * glassCentimetres));
    }

    private static Tristimulus Sum(double absorbanceAt430)
    {
        double x = 0, y = 0, z = 0, white = 0;
        for (int i = 0; i < Wavelengths.Length; i++)
        {
            double light = Daylight[i] * Math.Pow(10, -absorbanceAt430 * RelativeAbsorbance(Wavelengths[i]));
            x += light * XBar[i];
            y += light * YBar[i];
            z += light * ZBar[i];
            white += Daylight[i] * YBar[i];
        }

        return new Tristimulus(100 * x / white, 100 * y / white, 100 * z / white);
    }
}
