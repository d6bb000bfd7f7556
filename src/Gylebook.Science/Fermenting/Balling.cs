namespace Gylebook.Science.Fermenting;

/// <summary>How extract becomes alcohol: the relations between original, real and apparent extract.</summary>
/// <remarks>
/// <para>2.0665 g extract → 1 g ethanol + 0.9565 g carbon dioxide + 0.11 g yeast. From it
/// OE = 100(2.0665·A + RE)/(100 + 1.0665·A), A = (OE − RE)/(2.0665 − 0.010665·OE), and, measured beside it,
/// q = (OE − AE)/(OE − RE) = 1.220 + 0.001·OE.</para>
/// <para>Symbols: OE original, RE real, AE apparent extract, °P; A alcohol, per cent by mass;
/// a = A/(OE − AE), b = A/(OE − RE), c = A/(RE − AE).</para>
/// <para>Source: <c>balling-bierprobe</c>; the second equation also <c>asbc-beer-6</c>, EBC 9.4 and MEBAK (method
/// numbers from memory). The closed form of q is derived from Balling's tables, which it gives to the last digit.</para>
/// <para>Valid for: malt wort of 6 to 30 °P (his tables). His yeast share is that of malt wort: pure sugars give up
/// to 5 or 6 % more alcohol.</para>
/// <para>Accuracy: a within 0.00011 of 31 table rows, c within 0.001; alcohol within
/// 0.12 % by mass of the means of 532 brews (<c>cutaia-2009</c>).</para>
/// <para>Notes: the textbook's fixed factors 0.1808 and 0.8192 are 1/q near 0.7 °P, not at brewing strength: at
/// 12 °P they give 0.9 % more alcohol than Balling's own tables. Both are here; the forecast and our estimates use q.</para>
/// </remarks>
public static class Balling
{
    /// <summary>Grams of extract fermented for each gram of ethanol.</summary>
    public const double ExtractPerAlcohol = 2.0665;

    /// <summary>Grams of carbon dioxide for each gram of ethanol.</summary>
    public const double CarbonDioxidePerAlcohol = 0.9565;

    /// <summary>Grams of dry yeast grown for each gram of ethanol.</summary>
    public const double YeastPerAlcohol = 0.11;

    /// <summary>Grams that leave the liquid, as gas and as yeast, for each gram of ethanol.</summary>
    public const double LostPerAlcohol = CarbonDioxidePerAlcohol + YeastPerAlcohol;

    /// <summary>Kilograms of ethanol from each kilogram of maltose-equivalent extract fermented: 0.48391.</summary>
    public const double AlcoholYield = 1 / ExtractPerAlcohol;

    /// <summary>Kilograms of carbon dioxide from each kilogram of extract fermented: 0.46286.</summary>
    public const double CarbonDioxideYield = CarbonDioxidePerAlcohol / ExtractPerAlcohol;

    /// <summary>Kilograms of dry yeast from each kilogram of extract fermented: 0.05323.</summary>
    public const double YeastYield = YeastPerAlcohol / ExtractPerAlcohol;

    /// <summary>q, the apparent over the real drop of extract, from the original extract in °P.</summary>
    public static double ApparentOverRealDrop(double originalPlato) => 1.220 + (0.001 * originalPlato);

    /// <summary>b, alcohol by mass for each °P of real drop.</summary>
    public static double AlcoholPerRealDrop(double originalPlato) =>
        1 / (ExtractPerAlcohol - (LostPerAlcohol / 100 * originalPlato));

    /// <summary>a, alcohol by mass for each °P of apparent drop.</summary>
    public static double AlcoholPerApparentDrop(double originalPlato) =>
        AlcoholPerRealDrop(originalPlato) / ApparentOverRealDrop(originalPlato);

    /// <summary>c, alcohol by mass for each °P that the real lies above the apparent extract.</summary>
    public static double AlcoholPerGap(double originalPlato) =>
        AlcoholPerRealDrop(originalPlato) / (ApparentOverRealDrop(originalPlato) - 1);

    /// <summary>Original extract in °P, from real extract in °P and alcohol by mass.</summary>
    public static double OriginalExtractOf(double realPlato, double alcoholPercentByMass) =>
        100 * ((ExtractPerAlcohol * alcoholPercentByMass) + realPlato) / (100 + (LostPerAlcohol * alcoholPercentByMass));

    /// <summary>Alcohol by mass, from original and real extract in °P.</summary>
    public static double AlcoholOf(double originalPlato, double realPlato) =>
        (originalPlato - realPlato) * AlcoholPerRealDrop(originalPlato);

    /// <summary>Real extract in °P, from original and apparent extract in °P.</summary>
    public static double RealExtractOf(double originalPlato, double apparentPlato) =>
        originalPlato - ((originalPlato - apparentPlato) / ApparentOverRealDrop(originalPlato));

    /// <summary>Apparent extract in °P, from original and real extract in °P.</summary>
    public static double ApparentExtractOf(double originalPlato, double realPlato) =>
        originalPlato - ((originalPlato - realPlato) * ApparentOverRealDrop(originalPlato));

    /// <summary>Real extract in °P by the textbook's fixed factors: 0.1808·OE + 0.8192·AE.</summary>
    public static double TextbookRealExtractOf(double originalPlato, double apparentPlato) =>
        (0.1808 * originalPlato) + (0.8192 * apparentPlato);

    /// <summary>Share of the extract's mass that has fermented, from real attenuation (0 to 1) and real extract in °P.</summary>
    /// <remarks>
    /// 100 g of beer with A g alcohol came from 100 + 1.0665·A g of wort, which held 2.0665·A + RE g of extract; the
    /// share fermented is x = 2.0665·A/(2.0665·A + RE). With A from OE and RE this is
    /// x = (1 − RE/OE)/(1 − (1.0665/206.65)·RE), and 1.0665/206.65 = 0.0051609: the correction of
    /// <c>asbc-beer-6</c>. It is larger than attenuation because the beer weighs less than its wort did.
    /// </remarks>
    public static double ExtractFermented(double realAttenuation, double realPlato) =>
        realAttenuation / (1 - (LostPerAlcohol / (100 * ExtractPerAlcohol) * realPlato));
}
