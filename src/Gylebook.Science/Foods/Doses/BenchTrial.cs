namespace Gylebook.Science.Foods.Doses;

/// <summary>From a dosed glass to the batch, and back.</summary>
/// <remarks>
/// <para>What: a dose in a glass of 100 mL scales with the litres: batch mL = µL · L / 100; batch g = mg · L / 100.</para>
/// <para>Symbols: µL or mg in 100 mL of beer; L of beer in the batch; alcohol in per cent by volume.</para>
/// <para>Source: dilution, computed; volumes taken as adding, which strong spirit in beer breaks by less than 0.01 % vol.</para>
/// <para>Valid for: a glass at serving temperature and carbonation.</para>
/// <para>Accuracy: of the pipette; drops differ twofold, so weigh or pipette. Start the batch at 85 to 90 % of it, taste,
/// and top up: common practice, no source.</para>
/// </remarks>
public static class BenchTrial
{
    /// <summary>Millilitres in the glass.</summary>
    public const double GlassMillilitres = 100;

    /// <summary>Share of the scaled dose to begin the batch with. Common practice, no source.</summary>
    public const double FirstShare = 0.85;

    /// <summary>Millilitres for the batch, of microlitres in the glass.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public static double BatchMillilitres(double microlitresInGlass, double batchLitres) =>
        Argument.MustNotBeNegative(microlitresInGlass) * Argument.MustNotBeNegative(batchLitres) / GlassMillilitres;

    /// <summary>Microlitres in the glass, of millilitres for the batch.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, or no batch.</exception>
    public static double GlassMicrolitres(double batchMillilitres, double batchLitres) =>
        Argument.MustNotBeNegative(batchMillilitres) * GlassMillilitres / Argument.MustBePositive(batchLitres);

    /// <summary>Grams for the batch, of milligrams in the glass.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public static double BatchGrams(double milligramsInGlass, double batchLitres) => BatchMillilitres(milligramsInGlass, batchLitres);

    /// <summary>Milligrams in the glass, of grams for the batch.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, or no batch.</exception>
    public static double GlassMilligrams(double batchGrams, double batchLitres) => GlassMicrolitres(batchGrams, batchLitres);

    /// <summary>Glasses to pour side by side, each twice the one before: 50, 100, 200, 400.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A first dose of nothing, or no glasses.</exception>
    public static IReadOnlyList<double> Ladder(double first, int glasses)
    {
        Argument.MustBePositive(first);
        Argument.MustBePositive(glasses);
        return [.. Enumerable.Range(0, glasses).Select(step => first * Math.Pow(2, step))];
    }

    /// <summary>A ladder of four whose third glass holds the dose: two below it, one above.</summary>
    public static IReadOnlyList<double> LadderAround(double dose) => Ladder(Argument.MustBePositive(dose) / 4, 4);

    /// <summary>Per cent by volume that a spirited addition adds: d·(A_t − A_b)/(V + d).</summary>
    /// <param name="addedLitres">The addition, L.</param>
    /// <param name="itsAlcohol">Its alcohol, per cent by volume.</param>
    /// <param name="beerLitres">The beer, L.</param>
    /// <param name="beerAlcohol">The beer's alcohol, per cent by volume.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative, nothing at all, or above 100 %.</exception>
    public static double AlcoholAdded(double addedLitres, double itsAlcohol, double beerLitres, double beerAlcohol) =>
        Argument.MustNotBeNegative(addedLitres)
        * (100 * ((Argument.MustBeWithin(itsAlcohol, 0, 100) / 100) - (Argument.MustBeWithin(beerAlcohol, 0, 100) / 100)))
        / (Argument.MustBePositive(beerLitres) + addedLitres);
}
