namespace Gylebook.Science.Foods.Doses;

/// <summary>How much of a food's preservative reaches the beer, and how much of it hinders yeast.</summary>
/// <remarks>
/// <para>What: only the undissociated acid enters a cell: fraction = 1 / (1 + 10^(pH − pKa)); mg/L = kg × mg/kg / L.</para>
/// <para>Symbols: pH of the beer; pKa of the acid at 25 °C in water.</para>
/// <para>Source: Henderson–Hasselbalch; pKa of sorbic acid 4.76, benzoic 4.20, sulphurous 1.81 (handbook values).</para>
/// <para>Valid for: a dose spread evenly in the liquid; pH 2 to 7. Alcohol raises the pKa a little, which is neglected.</para>
/// <para>Accuracy: the fraction within 0.02 for the usual spread of ±0.03 in pKa. Thresholds depend on yeast, alcohol and
/// cell count: they say when to worry, not when growth stops.</para>
/// <para>Notes: sorbate stops growth, not an active fermentation. Lactic bacteria turn it into a geranium smell. Natamycin
/// and dimethyl dicarbonate have no figure here.</para>
/// </remarks>
public static class PreservativeDose
{
    /// <summary>pKa of sorbic acid.</summary>
    public const double SorbicPKa = 4.76;

    /// <summary>pKa of benzoic acid.</summary>
    public const double BenzoicPKa = 4.20;

    /// <summary>First pKa of sulphurous acid.</summary>
    public const double SulphurousPKa = 1.81;

    /// <summary>Sorbic acid in potassium sorbate, kg/kg: 112.13 over 150.22 g/mol.</summary>
    public const double SorbicPerPotassiumSorbate = 112.13 / 150.22;

    /// <summary>Benzoic acid in sodium benzoate, kg/kg: 122.12 over 144.11 g/mol.</summary>
    public const double BenzoicPerSodiumBenzoate = 122.12 / 144.11;

    /// <summary>Where sorbic acid keeps yeast from growing, with alcohol and sulphur dioxide beside it.</summary>
    public static PublishedLimit SorbicFungistatic { get; } = new(
        200, "mg/L sorbic acid", "Yeast no longer grows, with alcohol and sulphite beside it; a starter will not take off.",
        "university enology extension notes; OIV, International Code of Oenological Practices, limit 200 mg/L");

    /// <summary>What benzoate may be in food in the US.</summary>
    public static PublishedLimit BenzoateLegal { get; } = new(
        1000, "mg/kg", "The most sodium benzoate that food may have in the US.", "21 CFR 184.1733 (from memory)");

    /// <summary>Where benzoate held sugar-loving yeasts.</summary>
    public static PublishedLimit BenzoateHoldsYeast { get; } = new(
        1500, "mg/kg sodium benzoate", "Needed against yeasts of sweet foods below pH 4; some tolerate it.", "food microbiology reviews");

    /// <summary>Where free sulphur dioxide delays yeast at wine pH.</summary>
    public static PublishedLimit SulphurDioxideDelays { get; } = new(
        50, "mg/L free SO2", "From 50 to 100 mg/L it delays yeast at the pH of wine; at that of beer it does little.",
        "university enology extension notes");

    /// <summary>Above which sulphites are declared in the drink.</summary>
    public static PublishedLimit SulphiteDeclaration { get; } = new(
        10, "mg/L SO2", "Declare sulphites.", "Regulation (EU) 1169/2011, Annex II, point 12");

    /// <summary>Share of the acid that is undissociated, and works.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A pH outside 0 to 14 or a pKa that is not finite.</exception>
    public static double UndissociatedFraction(double pH, double pKa) =>
        1 / (1 + Math.Pow(10, Argument.MustBeWithin(pH, 0, 14) - Argument.MustBeWithin(pKa, double.MinValue, double.MaxValue)));

    /// <summary>Preservative in the liquid, mg/L.</summary>
    /// <param name="foodKilograms">Food added, kg.</param>
    /// <param name="milligramsPerKilogram">Preservative in the food, mg/kg.</param>
    /// <param name="litres">Liquid it ends up in, L.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, or no liquid.</exception>
    public static double MilligramsPerLitre(double foodKilograms, double milligramsPerKilogram, double litres) =>
        Argument.MustNotBeNegative(foodKilograms)
        * Argument.MustNotBeNegative(milligramsPerKilogram)
        / Argument.MustBePositive(litres);
}
