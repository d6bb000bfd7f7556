using Gylebook.Gyles.Packaging;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;

namespace Gylebook.Gyles.Tests.Packaging;

/// <summary>Oxygen that a package is closed with, against headspaces reckoned elsewhere (home-draught literature, 2015).</summary>
public sealed class PackageOxygenTests
{
    /// <summary>20 mL of air above 355 mL: 15,700 µg/L, and what the beer took up on its way.</summary>
    [Fact]
    public void A_bottle_with_air_above_the_beer()
    {
        PackageOxygen oxygen = PackageOxygen.Of(Fill(0.375, 0.355), 0.355, null);
        Assert.Equal(65, oxygen.Low, 1e-9);
        Assert.Equal(15_700 + 183, oxygen.High, 50.0);
    }

    /// <summary>A purged keg of 19.6 L: 100 ppm in a litre above 18.6 L is 7 µg/L.</summary>
    [Fact]
    public void A_purged_keg_has_little_more_than_its_beer_took_up()
    {
        PackageOxygen oxygen = PackageOxygen.Of(Fill(19.6, 18.6), 18.6, 1e-4);
        Assert.Equal(65 + (1000 * 1e-4 * 1.330 * 1000 / 18.6), oxygen.Low, 1e-9);
        Assert.True(oxygen.High < PackageOxygen.Aim);
    }

    private static PackageFill Fill(double brim, double fill) => new(new PackageKind("bottle", Litres(brim), Litres(fill), null, null), null);

    private static Entered<VolumeAt20C> Litres(double litres) => new(VolumeAt20C.FromLitres(litres), Invariant($"{litres} L"));
}
