using Gylebook.Science.Quantities;

namespace Gylebook.Science.Liquids;

/// <summary>What two spirits, or spirit and water, became when mixed.</summary>
/// <param name="Volume">The litres at 20 °C, fewer than went in.</param>
/// <param name="Alcohol">The strength.</param>
public readonly record struct BlendedSpirit(VolumeAt20C Volume, AlcoholByVolume Alcohol);

/// <summary>Spirit with water, and spirit in beer.</summary>
/// <remarks>
/// <para>Exact: p = Σmᵢpᵢ/Σmᵢ, V = Σmᵢ/ρ(p), ABV = 100·p·ρ(p)/ρ(1). By litres: ABV = ΣVᵢABVᵢ/ΣVᵢ.</para>
/// <para>Symbols: m mass, kg; p ethanol by mass, 0 to 1; V litres at 20 °C; ρ density, kg/L; ABV per cent by volume.</para>
/// <para>Source: conservation of mass with <see cref="EthanolWater"/>. By litres: the trade's rule, also known as
/// Pearson's square when solved for the spirit; <c>common practice, no source</c>.</para>
/// <para>Valid for: exact, spirit and water. By litres, spirit in beer up to about 5 % of the volume.</para>
/// <para>Accuracy: by litres, under 0.01 % vol for such additions; diluting strong spirit by litres is off by 5 % of
/// the water, for the mixture shrinks (1 L of 96 % to 40 % needs 1.47 L of water, not 1.40).</para>
/// <para>Notes: once spirit is in, alcohol from two gravities is wrong: carry the fermented alcohol and add.
/// Strong spirit burns: no flame near it. Making or selling such drinks is a matter of local law.</para>
/// </remarks>
public static class SpiritBlending
{
    /// <summary>Two mixtures of ethanol and water put together: litres at 20 °C and per cent by volume.</summary>
    public static (double Litres, double PercentByVolume) Mix(
        double firstLitres, double firstPercent, double secondLitres, double secondPercent)
    {
        double firstByMass = EthanolWater.PercentByMassOf(firstPercent);
        double secondByMass = EthanolWater.PercentByMassOf(secondPercent);
        double first = firstLitres * EthanolWater.KilogramsPerLitreAt20C(firstByMass);
        double second = secondLitres * EthanolWater.KilogramsPerLitreAt20C(secondByMass);
        double byMass = ((first * firstByMass) + (second * secondByMass)) / (first + second);
        double litres = (first + second) / EthanolWater.KilogramsPerLitreAt20C(byMass);
        return (litres, EthanolWater.PercentByVolumeOf(byMass));
    }

    /// <summary>Water in kg that brings a spirit down to a target strength, both in per cent by volume.</summary>
    public static double WaterKilogramsToReach(double litres, double percent, double targetPercent)
    {
        double byMass = EthanolWater.PercentByMassOf(percent);
        double kilograms = litres * EthanolWater.KilogramsPerLitreAt20C(byMass);
        return kilograms * ((byMass / EthanolWater.PercentByMassOf(targetPercent)) - 1);
    }

    /// <summary>Per cent by volume of two liquids if litres simply added: for a little spirit in beer.</summary>
    public static double PercentByLitres(
        double firstLitres, double firstPercent, double secondLitres, double secondPercent) =>
        ((firstLitres * firstPercent) + (secondLitres * secondPercent)) / (firstLitres + secondLitres);

    /// <summary>Litres of spirit that bring a beer up to a target strength, if litres simply added.</summary>
    public static double SpiritLitresToReach(
        double beerLitres, double beerPercent, double spiritPercent, double targetPercent) =>
        beerLitres * (targetPercent - beerPercent) / (spiritPercent - targetPercent);

    /// <summary>Two mixtures of ethanol and water put together.</summary>
    public static BlendedSpirit Mix(
        VolumeAt20C first, AlcoholByVolume firstAlcohol, VolumeAt20C second, AlcoholByVolume secondAlcohol)
    {
        (double litres, double percent) = Mix(first.Litres, firstAlcohol.Percent, second.Litres, secondAlcohol.Percent);
        return new(VolumeAt20C.FromLitres(litres), AlcoholByVolume.FromPercent(percent));
    }

    /// <summary>Water that brings a spirit down to a target strength.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The target is above the spirit, or is zero.</exception>
    public static Mass WaterToReach(VolumeAt20C spirit, AlcoholByVolume alcohol, AlcoholByVolume target) =>
        Mass.FromKilograms(WaterKilogramsToReach(spirit.Litres, alcohol.Percent, target.Percent));

    /// <summary>Spirit that brings a beer up to a target strength, if litres simply added.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The target does not lie between beer and spirit.</exception>
    public static VolumeAt20C SpiritToReach(
        VolumeAt20C beer, AlcoholByVolume beerAlcohol, AlcoholByVolume spiritAlcohol, AlcoholByVolume target) =>
        VolumeAt20C.FromLitres(
            SpiritLitresToReach(beer.Litres, beerAlcohol.Percent, spiritAlcohol.Percent, target.Percent));
}
