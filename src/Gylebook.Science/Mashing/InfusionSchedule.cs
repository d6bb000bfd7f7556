namespace Gylebook.Science.Mashing;

/// <summary>One step of a mash from a temperature to another, °C.</summary>
/// <param name="FromCelsius">Where the mash stands.</param>
/// <param name="ToCelsius">The next rest.</param>
public readonly record struct MashStepUp(double FromCelsius, double ToCelsius);

/// <summary>How a given amount of liquor is shared out when a mash is stepped up with hot water.</summary>
/// <param name="StrikeKilograms">Liquor the mash starts in.</param>
/// <param name="InfusionKilograms">Hot water, one amount a step.</param>
public sealed record InfusionShares(double StrikeKilograms, IReadOnlyList<double> InfusionKilograms);

/// <summary>Strike and infusions that together are the liquor one has planned.</summary>
/// <remarks>
/// <para>Symbols: each infusion by <see cref="Infusion"/>; all of them are linear in the strike, so the strike follows from the
/// sum at two of its values.</para>
/// <para>Source: heat balance.</para>
/// <para>Valid for: water hotter than every rest.</para>
/// <para>Accuracy: that of <see cref="Infusion"/>: the water arrives a degree or two cooler in practice.</para>
/// </remarks>
public static class InfusionSchedule
{
    /// <summary>The shares; null when the steps want more than all the liquor.</summary>
    /// <param name="grainKilojoulesPerKelvin">Heat that grain and vessel take up per degree, without liquor, kJ/K.</param>
    /// <param name="liquorKilograms">All the liquor, kg.</param>
    /// <param name="steps">Steps in order, each up.</param>
    /// <param name="waterCelsius">The hot water, °C.</param>
    public static InfusionShares? Of(
        double grainKilojoulesPerKelvin, double liquorKilograms, IReadOnlyList<MashStepUp> steps, double waterCelsius)
    {
        Argument.MustNotBeNegative(liquorKilograms);
        double withNone = Total(Infusions(grainKilojoulesPerKelvin, 0, steps, waterCelsius));
        double eachKilogram = 1 + Total(Infusions(grainKilojoulesPerKelvin, 1, steps, waterCelsius)) - withNone;
        double strike = (liquorKilograms - withNone) / eachKilogram;
        return strike > 0 ? new InfusionShares(strike, Infusions(grainKilojoulesPerKelvin, strike, steps, waterCelsius)) : null;
    }

    private static double[] Infusions(double grain, double strike, IReadOnlyList<MashStepUp> steps, double water)
    {
        double[] infusions = new double[steps.Count];
        double heat = grain + (strike * WortHeat.Water);
        for (int i = 0; i < infusions.Length; i++)
        {
            infusions[i] = Infusion.WaterKilograms(heat, steps[i].FromCelsius, steps[i].ToCelsius, water);
            heat += infusions[i] * WortHeat.Water;
        }

        return infusions;
    }

    private static double Total(double[] infusions) => infusions.Sum();
}
