namespace Gylebook.Science.Foods.Doses;

/// <summary>Coumarin that cinnamon brings into a drink.</summary>
/// <remarks>
/// <para>What: mg/L = (g cinnamon per L) × (g coumarin per kg cinnamon) × share extracted.</para>
/// <para>Source: mass balance; EFSA, coumarin in flavourings, 2004 and 2008.</para>
/// <para>Valid for: cassia and Ceylon cinnamon.</para>
/// <para>Accuracy: cassia varies from 2.1 to 4.4 g/kg; all of it is taken as extracted unless stated.</para>
/// <para>Notes: tonka bean and added coumarin make food adulterated in the US (21 CFR 189.130); so do calamus (189.110) and
/// safrole (189.180). No limit for beer is in the sources at hand; EU limits for desserts and bakery are 5 to 50 mg/kg
/// (Regulation (EC) 1334/2008).</para>
/// </remarks>
public static class CoumarinDose
{
    /// <summary>What a body bears daily for life.</summary>
    public static PublishedLimit TolerableDailyIntake { get; } = new(
        0.1, "mg per kg body mass a day", "Tolerable daily intake, for life.", "EFSA 2004, confirmed 2008");

    /// <summary>Coumarin in cassia, g/kg, lowest and highest.</summary>
    public static Interval CassiaGramsPerKilogram { get; } = new(2.1, 4.4);

    /// <summary>Coumarin in Ceylon cinnamon, g/kg: typically below this.</summary>
    public static Interval CeylonGramsPerKilogram { get; } = Interval.HalfOpen(0, 0.015);

    /// <summary>Coumarin in the drink, mg/L.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, or a share above 1.</exception>
    public static double MilligramsPerLitre(double cinnamonGramsPerLitre, double coumarinGramsPerKilogram, double extractedShare = 1) =>
        Argument.MustNotBeNegative(cinnamonGramsPerLitre)
        * Argument.MustNotBeNegative(coumarinGramsPerKilogram)
        * Argument.MustBeWithin(extractedShare, 0, 1);

    /// <summary>Litres a day that hold the tolerable intake of that body; infinite without coumarin.</summary>
    public static double LitresForADay(double milligramsPerLitre, double bodyKilograms) =>
        TolerableDailyIntake.Value * Argument.MustBePositive(bodyKilograms)
        / Argument.MustNotBeNegative(milligramsPerLitre);
}
