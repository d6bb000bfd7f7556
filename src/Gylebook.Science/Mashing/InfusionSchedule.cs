namespace Gylebook.Science.Mashing;

/// <summary>One step of a mash from a temperature to another, °C.</summary>
/// <param name="FromCelsius">Where the mash stands.</param>
/// <param name="ToCelsius">The next rest.</param>
public readonly record struct MashStepUp(double FromCelsius, double ToCelsius);

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
    /// <summary>Liquor the mash starts in, kg, so that strike and infusions are all of it; null when the infusions alone want more.</summary>
    /// <param name="grainKilojoulesPerKelvin">What grain and vessel take up.</param>
    /// <param name="liquorKilograms">All the liquor.</param>
    /// <param name="steps">In order.</param>
    /// <param name="waterCelsius">Of the infusions.</param>
    /// <exception cref="ArgumentOutOfRangeException">Liquor below 0, or water not hotter than a rest.</exception>
    public static double? StrikeKilograms(
        double grainKilojoulesPerKelvin, double liquorKilograms, ReadOnlySpan<MashStepUp> steps, double waterCelsius)
    {
        Argument.MustNotBeNegative(liquorKilograms);
        double withNone = All(grainKilojoulesPerKelvin, 0, steps, waterCelsius);
        double eachKilogram = 1 + All(grainKilojoulesPerKelvin, 1, steps, waterCelsius) - withNone;
        double strike = (liquorKilograms - withNone) / eachKilogram;
        return strike > 0 ? strike : null;
    }

    /// <summary>Hot water of the last of some steps, kg.</summary>
    /// <param name="grainKilojoulesPerKelvin">What grain and vessel take up.</param>
    /// <param name="strikeKilograms">Liquor the mash starts in.</param>
    /// <param name="steps">Up to the one that is asked for.</param>
    /// <param name="waterCelsius">Of the infusions.</param>
    /// <exception cref="ArgumentOutOfRangeException">Water not hotter than a rest.</exception>
    public static double InfusionKilograms(
        double grainKilojoulesPerKelvin, double strikeKilograms, ReadOnlySpan<MashStepUp> steps, double waterCelsius) =>
        Infuse(grainKilojoulesPerKelvin, strikeKilograms, steps, waterCelsius).Last;

    private static double All(double grain, double strike, ReadOnlySpan<MashStepUp> steps, double water) => Infuse(grain, strike, steps, water).Sum;

    private static (double Sum, double Last) Infuse(double grain, double strike, ReadOnlySpan<MashStepUp> steps, double water)
    {
        double heat = grain + (strike * WortHeat.Water), sum = 0, last = 0;
        foreach (MashStepUp step in steps)
        {
            last = Infusion.WaterKilograms(heat, step.FromCelsius, step.ToCelsius, water);
            heat += last * WortHeat.Water;
            sum += last;
        }

        return (sum, last);
    }
}
