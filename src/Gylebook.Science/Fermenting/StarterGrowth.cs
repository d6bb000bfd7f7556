using Gylebook.Science.Data;

namespace Gylebook.Science.Fermenting;

/// <summary>How many cells a starter ends with, by two published models.</summary>
/// <remarks>
/// <para>Symbols: L litres of starter; N0, N cells before and after, 10⁹. Still: N/N0 read from a table by N0/L, straight
/// between rows in the logarithm of N0/L. Stirred: x = N0/g, 10⁹ cells per gram of extract; new cells per gram 1.4 up to
/// x = 1.4, 2.33 − 0.67·x above, none from x = 3.48 on.</para>
/// <para>Source: White and Zainasheff 2010, Yeast (still: the row of 1 L read, the others from memory); stirred:
/// measured propagations of 2012 and 2013, hobby literature, constants from memory.</para>
/// <para>Valid for: still, 5 to 200 million cells per mL at the start and wort of about 9 °P; stirred, wort of 8 to 12 °P.</para>
/// <para>Accuracy: ±45 %: 19 aerated propagations of 7 strains ended at 252 ± 116 million per mL (hobby literature,
/// 2011). Pure sugar grows next to nothing.</para>
/// <para>Notes: the two describe different handling. Beyond either end of the table growth is held at the last row.</para>
/// </remarks>
public static class StarterGrowth
{
    /// <summary>Extract in a litre of 10 °P starter wort, g.</summary>
    public const double ExtractGramsPerLitre = 104;

    /// <summary>The largest starter that the table has, L.</summary>
    public const double MostLitres = 20;

    private static readonly double[] LogDensity =
        [.. CsvTable.Published("starter-growth.csv").Numbers("inoculation").Select(density => Math.Log(density)).Reverse()];

    private static readonly double[] Growth =
        [.. CsvTable.Published("starter-growth.csv").Numbers("final").Select(cells => cells / 100).Reverse()];

    /// <summary>Cells at the end of a still starter, 10⁹.</summary>
    /// <param name="billions">Living cells at the start, 10⁹.</param>
    /// <param name="litres">Starter, L.</param>
    public static double Still(double billions, double litres)
    {
        Argument.MustNotBeNegative(billions);
        Argument.MustBePositive(litres);
        return billions == 0 ? 0 : billions * GrowthAt(Math.Log(billions / litres));
    }

    /// <summary>Cells at the end of a stirred starter, 10⁹.</summary>
    /// <param name="billions">Living cells at the start, 10⁹.</param>
    /// <param name="extractGrams">Extract in the starter, g.</param>
    public static double Stirred(double billions, double extractGrams)
    {
        Argument.MustNotBeNegative(billions);
        Argument.MustBePositive(extractGrams);
        double perGram = billions / extractGrams;
        double grown = perGram < 1.4 ? 1.4 : Math.Max(0, 2.33 - (0.67 * perGram));
        return billions == 0 ? 0 : billions + (grown * extractGrams);
    }

    /// <summary>Whether the still table reaches this far.</summary>
    public static bool IsWithinPublishedRange(double billions, double litres) => (billions / litres) is >= 5 and <= 200;

    private static double GrowthAt(double logDensity)
    {
        int last = LogDensity.Length - 1;
        if (!(logDensity > LogDensity[0]) || logDensity >= LogDensity[last])
        {
            return logDensity >= LogDensity[last] ? Growth[last] : Growth[0];
        }

        int above = Array.FindIndex(LogDensity, row => row > logDensity);
        double along = (logDensity - LogDensity[above - 1]) / (LogDensity[above] - LogDensity[above - 1]);
        return Growth[above - 1] + (along * (Growth[above] - Growth[above - 1]));
    }
}
