namespace Gylebook.Science.Foods.Doses;

/// <summary>Nutmeg in a drink.</summary>
/// <remarks>
/// <para>What: litres of drink that bring the toxic dose together, and the cap we advise.</para>
/// <para>Source: a review of nutmeg poisoning: 5 g of ground nutmeg and more is toxic, from 3 to 6 h on, for up to 72 h.</para>
/// <para>Valid for: ground nutmeg, all of it taken as extracted.</para>
/// <para>Accuracy: cases vary; the cap keeps 20 L, or 40 servings of half a litre, at the toxic dose.</para>
/// </remarks>
public static class NutmegDose
{
    /// <summary>Where poisoning was seen.</summary>
    public static PublishedLimit Toxic { get; } = new(
        5, "g ground nutmeg", "Poisoning: nausea, racing heart, confusion.", "review of nutmeg toxicity in the medical literature");

    /// <summary>The most we advise.</summary>
    public static PublishedLimit AdvisedCap { get; } = new(
        0.25, "g/L", "Twenty litres hold the toxic dose.", "computed from the toxic dose");

    /// <summary>Litres that hold the toxic dose; infinite without nutmeg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public static double LitresForToxicDose(double gramsPerLitre) =>
        Toxic.Value / Argument.MustNotBeNegative(gramsPerLitre);
}
