using Gylebook.Science.Conditioning;

namespace Gylebook.Gyles.Packaging;

/// <summary>Oxygen that a package is closed with: what the beer takes up on its way, and what lies above it.</summary>
/// <remarks>
/// <para>Source: headspace by <see cref="Purging"/>; dissolved on the day of packaging 65 to 183 µg/L, one small brewery's report, unshaken and shaken (trade
/// forum); breweries aim below 200 µg/L in all (brewers' conference, 2015, quoted). Beer that is splashed takes up far more: no figure.</para>
/// <para>Notes: a bottle capped on its foam has less than all of its headspace in air, one capped flat has all of it; yeast that is primed takes part.</para>
/// </remarks>
/// <param name="Low">With the headspace driven out by foam or gas, µg a litre.</param>
/// <param name="High">With air above the beer, or in a keg with what a purge left, µg a litre.</param>
public sealed record PackageOxygen(double Low, double High)
{
    /// <summary>What breweries aim below, µg a litre.</summary>
    public const double Aim = 200;

    private const double DissolvedAtLeast = 65, DissolvedAtMost = 183, MillilitresInALitre = 1000;

    /// <summary>Of one package.</summary>
    /// <param name="fill">The package.</param>
    /// <param name="litres">Beer in it, L; above 0.</param>
    /// <param name="purged">Share of oxygen left in a keg that was purged; null for a bottle, which stands open.</param>
    public static PackageOxygen Of(PackageFill fill, double litres, double? purged)
    {
        ArgumentNullException.ThrowIfNull(fill);
        double headspace = MillilitresInALitre * Math.Max(0, fill.Kind.Brim.Value.Litres - litres);
        return new(
            Purging.TotalMicrogramsPerLitre(DissolvedAtLeast, headspace, purged ?? 0, litres),
            Purging.TotalMicrogramsPerLitre(DissolvedAtMost, headspace, purged ?? Purging.OxygenInAir, litres));
    }
}
