using Gylebook.Science.Data;

namespace Gylebook.Science.Mashing;

/// <summary>At what temperature a starch swells, and opens to the enzymes of the mash.</summary>
/// <remarks>
/// <para>Symbols: a range of temperatures (°C): at its low end the first granules open, at its high end the last.</para>
/// <para>Source: <c>data/mashing/gelatinisation.csv</c>: Institute of Brewing, Malting, Wort Production and
/// Fermentation, pp. 50–51; wider handbook ranges from memory (Briggs et al. 2004; Kunze).</para>
/// <para>Valid for: ground or flaked grain in plenty of water. Harvest and variety move it by several degrees.</para>
/// <para>Accuracy: the sources differ by up to 10 °C (wheat).</para>
/// <para>Notes: where sources differ we take the widest span, so that "open" is the careful answer. Enzymes fade from
/// 70 °C up: what opens hotter is cooked first, and cooled.</para>
/// </remarks>
public static class Gelatinisation
{
    private static readonly (double Low, double High)[] Spans = ReadSpans();

    /// <summary>From the first granules to the last, °C.</summary>
    public static (double Low, double High) SpanCelsius(Cereal cereal)
    {
        Argument.MustBeWithin((int)cereal, 0, Spans.Length - 1, nameof(cereal));
        return Spans[(int)cereal];
    }

    /// <summary>Whether all the starch is open at that temperature, by every source we have.</summary>
    public static bool IsOpenAt(Cereal cereal, double celsius)
    {
        Argument.MustBeWithin(celsius, -20, 200);
        return celsius >= SpanCelsius(cereal).High;
    }

    /// <summary>Whether some of the starch is open at that temperature, by any source we have.</summary>
    public static bool BeginsToOpenAt(Cereal cereal, double celsius)
    {
        Argument.MustBeWithin(celsius, -20, 200);
        return celsius >= SpanCelsius(cereal).Low;
    }

    private static (double Low, double High)[] ReadSpans()
    {
        var table = CsvTable.Published("gelatinisation.csv");
        string[] cereals = [.. table.Texts("cereal")];
        double[] lows = table.Numbers("low");
        double[] highs = table.Numbers("high");
        var spans = new (double Low, double High)[Enum.GetValues<Cereal>().Length];
        Array.Fill(spans, (double.PositiveInfinity, double.NegativeInfinity));
        for (int row = 0; row < table.Rows.Count; row++)
        {
            int at = (int)Enum.Parse<Cereal>(cereals[row]);
            spans[at] = (Math.Min(spans[at].Low, lows[row]), Math.Max(spans[at].High, highs[row]));
        }

        return spans;
    }
}
