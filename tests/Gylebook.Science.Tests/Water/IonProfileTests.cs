using CsCheck;
using Gylebook.Science.Water;

namespace Gylebook.Science.Tests.Water;

public class IonProfileTests
{
    private static readonly Gen<IonProfile> Waters = Gen.Double[0, 400].Array[8].Select(
        mg => new IonProfile(mg[0], mg[1], mg[2], mg[3], mg[4], mg[5], mg[6], mg[7]));

    [Fact]
    public void A_blend_lies_between_its_parts() =>
        Gen.Select(Waters, Waters, Gen.Double[0, 50], Gen.Double[0.1, 50]).Sample((one, other, litres, more) =>
        {
            IonProfile blend = one.BlendedWith(other, litres, more);
            Assert.All(Ions.All, ion => Assert.InRange(
                blend[ion], Math.Min(one[ion], other[ion]) - 1e-9, Math.Max(one[ion], other[ion]) + 1e-9));
        });

    [Fact]
    public void A_blend_keeps_every_milligram() =>
        Gen.Select(Waters, Waters, Gen.Double[0, 50], Gen.Double[0.1, 50]).Sample((one, other, litres, more) =>
        {
            IonProfile blend = one.BlendedWith(other, litres, more);
            Assert.All(Ions.All, ion => Assert.Equal(
                (one[ion] * litres) + (other[ion] * more), blend[ion] * (litres + more), 1e-8));
        });

    [Fact]
    public void Half_distilled_water_halves_all()
    {
        IonProfile water = new(80, 10, 20, 2, 240, 60, 30, 5);
        Assert.Equal(water * 0.5, water.Diluted(0.5));
        Assert.Equal(IonProfile.Distilled, water.Diluted(1));
    }

    [Fact] // sodium chloride, 1 mmol/L: 0.001; calcium chloride, 1 mmol/L: 0.003, by definition
    public void Ionic_strength_counts_charge_squared()
    {
        Assert.Equal(0.001, new IonProfile(sodium: 22.98976928, chloride: 35.45).IonicStrength, 1e-12);
        Assert.Equal(0.003, new IonProfile(calcium: 40.078, chloride: 70.9).IonicStrength, 1e-12);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(2e6)]
    public void An_ion_that_cannot_be_is_refused(double milligrams)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new IonProfile(calcium: milligrams));
        Assert.Throws<ArgumentOutOfRangeException>(() => IonProfile.Distilled.With(Ion.Sulphate, milligrams));
    }

    [Fact]
    public void A_blend_of_nothing_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(
        () => IonProfile.Distilled.BlendedWith(IonProfile.Distilled, 0, 0));
}
