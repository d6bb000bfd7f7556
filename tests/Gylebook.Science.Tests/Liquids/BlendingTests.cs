using CsCheck;
using Gylebook.Science.Liquids;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Liquids;

// The worked cases were calculated beforehand with the ASBC cubic and the densities of nbs-c440; our curve differs from
// those by up to 0.003 °P, which is 0.0002 of a wort's strength: 0.005 kg of 20 kg, 0.003 °P, 0.00001 of gravity.
public class BlendingTests
{
    [Fact]
    public void Twenty_litres_of_1_060_are_thinned_to_1_050()
    {
        double strong = SucroseSolution.PlatoAt(1.060);
        double weak = SucroseSolution.PlatoAt(1.050);
        double water = Blending.WaterKilogramsToReach(20, strong, weak);
        Near.Equal(4.021, water, 0.005);
        Near.Equal(4.028, water / WaterDensity.KilogramsPerLitreAt20C, 0.005);
        (double litres, double plato) = Blending.AddWater(20, strong, water);
        Near.Equal(24.027, litres, 0.005);
        Near.Equal(weak, plato, 1e-12);

        // By the rule of points times litres it would be 4.000 L.
        Assert.True(water / WaterDensity.KilogramsPerLitreAt20C > 4.02);

        VolumeAt20C volume = VolumeAt20C.FromLitres(20);
        ApparentExtract extract = ApparentExtract.FromPlato(strong);
        Mass typed = Blending.WaterToReach(volume, extract, ApparentExtract.FromPlato(weak));
        Assert.Equal(water, typed.Kilograms, 12);
        Assert.Equal(litres, Blending.AddWater(volume, extract, typed).Volume.Litres, 12);
    }

    [Fact]
    public void Twenty_five_litres_of_1_040_are_boiled_down_to_twenty()
    {
        double plato = SucroseSolution.PlatoAt(1.040);
        double extract = Blending.ExtractKilograms(25, plato);
        double found = Blending.PlatoOfExtractIn(extract, 20);
        Near.Equal(12.374, found, 0.003);
        Near.Equal(1.04994, SucroseSolution.GravityAt(found), 0.000015);
        ApparentExtract typed = Blending.PlatoOfExtractIn(
            Blending.ExtractKilograms(VolumeAt20C.FromLitres(25), ApparentExtract.FromPlato(plato)),
            VolumeAt20C.FromLitres(20));
        Assert.Equal(found, typed.Plato, 12);
    }

    [Fact]
    public void Two_worts_are_mixed()
    {
        double first = SucroseSolution.PlatoAt(1.050);
        double second = SucroseSolution.PlatoAt(1.070);
        (double litres, double plato) = Blending.Mix(10, first, 10, second);
        Near.Equal(14.744, plato, 0.003);
        Near.Equal(1.06001, SucroseSolution.GravityAt(plato), 0.000015);
        Near.Equal(20.000, litres, 0.0005);
        VolumeAt20C ten = VolumeAt20C.FromLitres(10);
        BlendedWort typed = Blending.Mix(ten, ApparentExtract.FromPlato(first), ten, ApparentExtract.FromPlato(second));
        Assert.Equal(new BlendedWort(VolumeAt20C.FromLitres(litres), ApparentExtract.FromPlato(plato)), typed);
    }

    [Fact]
    public void Half_a_kilogram_of_sugar_takes_a_third_of_a_litre()
    {
        double wort = SucroseSolution.PlatoAt(1.050);
        (double litres, double plato) = Blending.Sweeten(20, wort, 0.5);
        Near.Equal(14.429, plato, 0.003);
        Near.Equal(1.05866, SucroseSolution.GravityAt(plato), 0.000015);
        Near.Equal(20.31, litres, 0.005);
        BlendedWort typed = Blending.Sweeten(
            VolumeAt20C.FromLitres(20), ApparentExtract.FromPlato(wort), Mass.FromGrams(500));
        Assert.Equal(new BlendedWort(VolumeAt20C.FromLitres(litres), ApparentExtract.FromPlato(plato)), typed);
    }

    // nbs-c440 densities: g/L = 10 P ρ; torun-sucrose prints the same to 0.03 kg/m³ of density.
    [Theory]
    [InlineData(10, 103.813)]
    [InlineData(12, 125.575)]
    [InlineData(15, 158.874)]
    [InlineData(20, 216.188)]
    public void A_litre_holds_what_the_table_says(double plato, double grams)
    {
        double tolerance = 0.0005 + (0.035 * plato / 100);
        Near.Equal(grams, 1000 * Blending.ExtractKilograms(1, plato), tolerance);
        Near.Equal(plato, Blending.PlatoOfExtractIn(grams / 1000, 1), tolerance / 10);
    }

    [Fact]
    public void Extract_is_kept_by_mixing_and_by_thinning() =>
        Gen.Select(Gen.Double[1, 50], Gen.Double[0, 30], Gen.Double[1, 50], Gen.Double[0, 30]).Sample((v1, p1, v2, p2) =>
        {
            double before = Blending.ExtractKilograms(v1, p1) + Blending.ExtractKilograms(v2, p2);
            (double litres, double plato) = Blending.Mix(v1, p1, v2, p2);
            (double moreLitres, double weaker) = Blending.AddWater(litres, plato, 3);
            return Math.Abs(Blending.ExtractKilograms(litres, plato) - before) <= 1e-12 * (1 + before)
                && Math.Abs(Blending.ExtractKilograms(moreLitres, weaker) - before) <= 1e-12 * (1 + before);
        });

    [Fact]
    public void Strength_of_an_extract_in_a_volume_is_the_way_back() =>
        Gen.Select(Gen.Double[1, 50], Gen.Double[0, 60]).Sample((litres, plato) =>
            Math.Abs(Blending.PlatoOfExtractIn(Blending.ExtractKilograms(litres, plato), litres) - plato) < 1e-10);

    [Fact]
    public void Nothing_added_changes_nothing() =>
        Gen.Select(Gen.Double[1, 50], Gen.Double[0, 30]).Sample((litres, plato) =>
            Math.Abs(Blending.Sweeten(litres, plato, 0).Plato - plato) < 1e-12
            && Math.Abs(Blending.AddWater(litres, plato, 0).Litres - litres) < 1e-12);

    [Fact]
    public void Water_cannot_make_a_wort_stronger() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Blending.WaterToReach(
            VolumeAt20C.FromLitres(20), ApparentExtract.FromPlato(10), ApparentExtract.FromPlato(12)));
}
