namespace Gylebook.Science.Foods.Doses;

/// <summary>Caffeine (or theobromine) that a food brings into a drink.</summary>
/// <remarks>
/// <para>What: mg/L = (g food per L) × (mg per 100 g) / 100 × share extracted.</para>
/// <para>Source: mass balance; contents in <c>data/foods-stimulants.csv</c> (USDA Standard Reference 26).</para>
/// <para>Valid for: any food whose content is known.</para>
/// <para>Accuracy: that of the content and of the share extracted; coffee beans vary twofold.</para>
/// <para>Notes: caffeine added as such to malt beverages is an unsafe food additive in the US (FDA letters of 17 November
/// 2010); coffee, tea and cocoa as foods are a different case. Methylxanthines, hops, raisins and xylitol can kill dogs:
/// spent grain with any of them is no feed.</para>
/// </remarks>
public static class CaffeineDose
{
    /// <summary>A day's caffeine that most healthy adults bear.</summary>
    public static PublishedLimit AdultsADay { get; } = new(
        400, "mg a day", "Not generally linked to harm in healthy adults; less in pregnancy, none for children.",
        "US Food and Drug Administration, consumer advice (from memory)");

    /// <summary>Stimulant in the drink, mg/L.</summary>
    /// <param name="gramsPerLitre">Food, g per litre of drink.</param>
    /// <param name="milligramsPer100Grams">Stimulant in the food, mg per 100 g.</param>
    /// <param name="extractedShare">Share that dissolves, 0 to 1; 1 is the safe assumption.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, or a share above 1.</exception>
    public static double MilligramsPerLitre(double gramsPerLitre, double milligramsPer100Grams, double extractedShare = 1) =>
        Argument.MustNotBeNegative(gramsPerLitre)
        * Argument.MustNotBeNegative(milligramsPer100Grams) / 100
        * Argument.MustBeWithin(extractedShare, 0, 1);

    /// <summary>Litres of the drink that hold a day's limit; infinite without caffeine.</summary>
    public static double LitresForADay(double milligramsPerLitre) =>
        AdultsADay.Value / Argument.MustNotBeNegative(milligramsPerLitre);
}
