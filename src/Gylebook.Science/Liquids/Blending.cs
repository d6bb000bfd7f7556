using Gylebook.Science.Quantities;

namespace Gylebook.Science.Liquids;

/// <summary>What a wort became after mixing, diluting or sweetening.</summary>
/// <param name="Volume">Its litres at 20 °C.</param>
/// <param name="Extract">Its strength.</param>
public readonly record struct BlendedWort(VolumeAt20C Volume, ApparentExtract Extract);

/// <summary>Diluting, boiling down, mixing and sweetening wort: mass is kept, litres are not.</summary>
/// <remarks>
/// <para>mE = V·ρ(P)·P/100 stays; P = 100·ΣmE/Σm; V = Σm/ρ(P).</para>
/// <para>Symbols: mE extract and m liquid, kg; V litres at 20 °C; P strength, °P; ρ density, kg/L.</para>
/// <para>Source: conservation of mass, with <see cref="SucroseSolution"/> for ρ.</para>
/// <para>Valid for: unfermented wort within the range of that table.</para>
/// <para>Accuracy: that of the density. The trade's rule that points times litres stay the same is off by less than
/// 0.1 point in ordinary work, if the new litres are used: half a kilogram of sugar in 20 L adds 0.31 L.</para>
/// <para>Notes: a strength of zero cannot be diluted to anything else; raw doors then give no number.</para>
/// </remarks>
public static class Blending
{
    // From 0 to 65 °P the fifth step no longer moves the last digits.
    private const int NewtonSteps = 6;

    /// <summary>Extract in kg within that many litres at that strength in °P.</summary>
    public static double ExtractKilograms(double litres, double plato) =>
        litres * SucroseSolution.KilogramsPerLitreAt20C(plato) * plato / 100;

    /// <summary>Strength in °P of a wort that holds so many kg of extract in so many litres at 20 °C.</summary>
    public static double PlatoOfExtractIn(double extractKilograms, double litres)
    {
        double target = 100 * extractKilograms / litres;
        double plato = target / (1 + (0.0035 * target));
        for (int step = 0; step < NewtonSteps; step++)
        {
            double density = SucroseSolution.KilogramsPerLitreAt20C(plato);
            double slope = density + (plato * SucroseSolution.KilogramsPerLitrePerPlato(plato));
            plato -= ((plato * density) - target) / slope;
        }

        return plato;
    }

    /// <summary>Water in kg that brings a wort down to a target strength in °P; less than none if it is above.</summary>
    public static double WaterKilogramsToReach(double litres, double plato, double targetPlato) =>
        litres * SucroseSolution.KilogramsPerLitreAt20C(plato) * ((plato / targetPlato) - 1);

    /// <summary>Two worts mixed: litres at 20 °C and strength in °P.</summary>
    public static (double Litres, double Plato) Mix(
        double firstLitres, double firstPlato, double secondLitres, double secondPlato)
    {
        double first = firstLitres * SucroseSolution.KilogramsPerLitreAt20C(firstPlato);
        double second = secondLitres * SucroseSolution.KilogramsPerLitreAt20C(secondPlato);
        return OfMass(first + second, ((first * firstPlato) + (second * secondPlato)) / 100);
    }

    /// <summary>A wort with dry sucrose dissolved in it: litres at 20 °C and strength in °P.</summary>
    public static (double Litres, double Plato) Sweeten(double litres, double plato, double sucroseKilograms)
    {
        double mass = litres * SucroseSolution.KilogramsPerLitreAt20C(plato);
        return OfMass(mass + sucroseKilograms, (mass * plato / 100) + sucroseKilograms);
    }

    /// <summary>A wort with water added or, if less than none, boiled off: litres at 20 °C and strength in °P.</summary>
    public static (double Litres, double Plato) AddWater(double litres, double plato, double waterKilograms)
    {
        double mass = litres * SucroseSolution.KilogramsPerLitreAt20C(plato);
        return OfMass(mass + waterKilograms, mass * plato / 100);
    }

    /// <summary>Extract within that volume at that strength.</summary>
    public static Mass ExtractKilograms(VolumeAt20C volume, ApparentExtract extract) =>
        Mass.FromKilograms(ExtractKilograms(volume.Litres, extract.Plato));

    /// <summary>Strength of a wort that holds that extract in that volume.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no volume, or more sugar than fits.</exception>
    public static ApparentExtract PlatoOfExtractIn(Mass extract, VolumeAt20C volume) =>
        ApparentExtract.FromPlato(PlatoOfExtractIn(extract.Kilograms, volume.Litres));

    /// <summary>Water that brings a wort down to a target strength.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The target is above the wort, or is zero.</exception>
    public static Mass WaterToReach(VolumeAt20C volume, ApparentExtract extract, ApparentExtract target) =>
        Mass.FromKilograms(WaterKilogramsToReach(volume.Litres, extract.Plato, target.Plato));

    /// <summary>Two worts mixed.</summary>
    public static BlendedWort Mix(
        VolumeAt20C first, ApparentExtract firstExtract, VolumeAt20C second, ApparentExtract secondExtract) =>
        Typed(Mix(first.Litres, firstExtract.Plato, second.Litres, secondExtract.Plato));

    /// <summary>A wort with dry sucrose dissolved in it.</summary>
    public static BlendedWort Sweeten(VolumeAt20C volume, ApparentExtract extract, Mass sucrose) =>
        Typed(Sweeten(volume.Litres, extract.Plato, sucrose.Kilograms));

    /// <summary>A wort with water added.</summary>
    public static BlendedWort AddWater(VolumeAt20C volume, ApparentExtract extract, Mass water) =>
        Typed(AddWater(volume.Litres, extract.Plato, water.Kilograms));

    private static (double Litres, double Plato) OfMass(double kilograms, double extractKilograms)
    {
        double plato = 100 * extractKilograms / kilograms;
        return (kilograms / SucroseSolution.KilogramsPerLitreAt20C(plato), plato);
    }

    private static BlendedWort Typed((double Litres, double Plato) wort) =>
        new(VolumeAt20C.FromLitres(wort.Litres), ApparentExtract.FromPlato(wort.Plato));
}
