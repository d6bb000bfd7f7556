using Gylebook.Science.Liquids;

namespace Gylebook.Science.Quantities;

/// <summary>The two pairs of scales that no factor joins: gravity with extract, alcohol by mass with alcohol by volume.</summary>
/// <remarks>
/// <para>The curves themselves are <see cref="SucroseSolution"/> and <see cref="EthanolWater"/>, with their sources; here is only
/// how far a typed value may go.</para>
/// <para>Valid for: gravity from 0.95 to 1.18; the sucrose table is fitted from 0 to 30 °P (1.129), and an apparent extract below
/// zero is the same curve carried on. Alcohol from 0 to 100 %.</para>
/// </remarks>
internal static class NonLinearUnits
{
    private const double LeastGravity = 0.95;
    private const double LargestGravity = 1.18;

    // A gravity that came from its own extract may be a rounding error outside.
    private const double Rounding = 1e-9;

    /// <summary>SG on a base of °P.</summary>
    public static CurvedScale GravityOverPlato { get; } = new(TryPlato, TryGravity, "0.95 to 1.18 SG (-13.4 to 40.3 °P)");

    /// <summary>% ABW on a base of % ABV.</summary>
    public static CurvedScale MassOverVolumeAlcohol { get; } = new(TryAlcoholByVolume, TryAlcoholByMass, "0 to 100 %");

    private static bool TryPlato(double gravity, out double plato)
    {
        bool isThere = gravity is >= LeastGravity and <= LargestGravity;
        plato = isThere ? SucroseSolution.PlatoAt(gravity) : double.NaN;
        return isThere;
    }

    private static bool TryGravity(double plato, out double gravity)
    {
        gravity = SucroseSolution.GravityAt(plato);
        return gravity is >= LeastGravity - Rounding and <= LargestGravity + Rounding;
    }

    private static bool TryAlcoholByVolume(double byMass, out double byVolume)
    {
        bool isThere = byMass is >= 0 and <= 100;
        // Pure ethanol may come out a rounding error above 100.
        byVolume = isThere ? Math.Min(100, EthanolWater.PercentByVolumeOf(byMass)) : double.NaN;
        return isThere;
    }

    private static bool TryAlcoholByMass(double byVolume, out double byMass)
    {
        bool isThere = byVolume is >= 0 and <= 100;
        byMass = isThere ? Math.Min(100, EthanolWater.PercentByMassOf(byVolume)) : double.NaN;
        return isThere;
    }
}
