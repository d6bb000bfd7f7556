using Gylebook.Science.Quantities;

namespace Gylebook.Science.Conditioning;

/// <summary>Gas from sugar that ferments in the closed package.</summary>
/// <remarks>
/// <para>Symbols: g CO2 per g sugar = n·44.0095/M, n molecules of gas from one of sugar (2 a hexose unit), M its molar
/// mass; one volume is 1.9635 g/L.</para>
/// <para>Source: stoichiometry of alcoholic fermentation; IUPAC abridged atomic masses.</para>
/// <para>Valid for: sugar that ferments fully.</para>
/// <para>Accuracy: an upper bound. Balling's yields, which feed the yeast's growth, give 5 % less; refermentation in
/// the bottle lies near the bound.</para>
/// <para>Notes: one point of gravity (0.001) that is still fermentable makes about 0.48 volumes. Never package a beer
/// that is not finished: bottles burst.</para>
/// </remarks>
public static class PackageCarbonation
{
    /// <summary>Grams of gas from a gram of sucrose or maltose.</summary>
    public const double FromDisaccharide = 4 * CarbonDioxideInWater.GramsPerMole / 342.297;

    /// <summary>Grams of gas from a gram of glucose or fructose without water.</summary>
    public const double FromHexose = 2 * CarbonDioxideInWater.GramsPerMole / 180.156;

    /// <summary>Grams of gas from a gram of maltotriose.</summary>
    public const double FromMaltotriose = 6 * CarbonDioxideInWater.GramsPerMole / 504.438;

    /// <summary>Grams of gas from a gram of glucose monohydrate.</summary>
    public const double FromGlucoseMonohydrate = 2 * CarbonDioxideInWater.GramsPerMole / 198.171;

    /// <summary>Grams of gas from a gram of that sugar.</summary>
    public static double GramsPerGram(PrimingSugar sugar) => sugar switch
    {
        PrimingSugar.Sucrose or PrimingSugar.Maltose => FromDisaccharide,
        PrimingSugar.Glucose or PrimingSugar.Fructose => FromHexose,
        PrimingSugar.GlucoseMonohydrate => FromGlucoseMonohydrate,
        PrimingSugar.Maltotriose => FromMaltotriose,
        _ => throw new ArgumentOutOfRangeException(nameof(sugar), sugar, "sugar must be one of the named sugars."),
    };

    /// <summary>Sugar that brings beer to the volumes wanted, g. Below nought where the beer holds more already.</summary>
    /// <param name="sugar">The sugar.</param>
    /// <param name="beerLitres">Beer, L.</param>
    /// <param name="wantedVolumes">Volumes wanted in the glass.</param>
    /// <param name="residualVolumes">Volumes in the beer now.</param>
    public static double PrimingGrams(
        PrimingSugar sugar, double beerLitres, double wantedVolumes, double residualVolumes)
    {
        Argument.MustNotBeNegative(beerLitres);
        Argument.MustNotBeNegative(wantedVolumes);
        Argument.MustNotBeNegative(residualVolumes);
        double gas = (wantedVolumes - residualVolumes) * Carbonation.GramsPerLitreInOneVolume * beerLitres;
        return gas / GramsPerGram(sugar);
    }

    /// <summary>Food or syrup that brings beer to the volumes wanted, g, by the sugars that ferment in it. Below nought where the beer holds more already.</summary>
    /// <param name="sugars">Its sugars, each as a share of its mass; their sum above 0 and at most 1.</param>
    /// <param name="beerLitres">Beer, L.</param>
    /// <param name="wantedVolumes">Volumes wanted in the glass.</param>
    /// <param name="residualVolumes">Volumes in the beer now.</param>
    public static double FoodGrams(
        IReadOnlyList<(PrimingSugar Sugar, double Share)> sugars, double beerLitres, double wantedVolumes, double residualVolumes)
    {
        double whole = 0, gas = 0;
        foreach ((PrimingSugar sugar, double share) in sugars)
        {
            whole += Argument.MustBeWithin(share, 0, 1);
            gas += share * GramsPerGram(sugar);
        }

        Argument.MustBeWithin(whole, double.Epsilon, 1, nameof(sugars));
        return PrimingGrams(PrimingSugar.Sucrose, beerLitres, wantedVolumes, residualVolumes) * FromDisaccharide / gas;
    }

    /// <summary>Volumes that sugar adds.</summary>
    public static double VolumesFrom(PrimingSugar sugar, double sugarGrams, double beerLitres)
    {
        Argument.MustNotBeNegative(sugarGrams);
        Argument.MustBePositive(beerLitres);
        return sugarGrams * GramsPerGram(sugar) / beerLitres / Carbonation.GramsPerLitreInOneVolume;
    }
}
