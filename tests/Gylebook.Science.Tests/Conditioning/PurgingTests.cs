using Gylebook.Science.Conditioning;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Conditioning;

public class PurgingTests
{
    // Air as the two sources have it: 14.7 psi in print, 14.696 in the sums.
    private const double Printed = 14.7 * KegPressure.BarPerPsi, SeaLevel = 14.696 * KegPressure.BarPerPsi;

    // Home-draught literature, 2015: cycles at 30 psi from 0.21, three decimals.
    [Theory]
    [InlineData(1e-3, 4.808)]
    [InlineData(1e-4, 6.878)]
    [InlineData(1e-5, 8.949)]
    [InlineData(1e-6, 11.019)]
    public void Known_cycles_as_published(double share, double cycles) =>
        Near.Equal(cycles, Purging.Cycles(0.21, share, 30 * KegPressure.BarPerPsi, Printed), 0.0005);

    // Computed elsewhere, parts per million, whole.
    [Theory]
    [InlineData(10, 1, 124668)]
    [InlineData(10, 3, 44147)]
    [InlineData(10, 5, 15633)]
    [InlineData(10, 8, 3294)]
    [InlineData(10, 10, 1167)]
    [InlineData(15, 1, 103678)]
    [InlineData(15, 3, 25391)]
    [InlineData(15, 5, 6219)]
    [InlineData(15, 8, 754)]
    [InlineData(15, 10, 185)]
    [InlineData(20, 1, 88737)]
    [InlineData(20, 3, 15920)]
    [InlineData(20, 5, 2856)]
    [InlineData(20, 8, 217)]
    [InlineData(20, 10, 39)]
    [InlineData(30, 1, 68883)]
    [InlineData(30, 3, 7447)]
    [InlineData(30, 5, 805)]
    [InlineData(30, 8, 29)]
    [InlineData(30, 10, 3)]
    public void Known_oxygen_left(double psi, int cycles, double partsPerMillion) =>
        Near.Equal(partsPerMillion, 1e6 * Purging.OxygenLeft(cycles, psi * KegPressure.BarPerPsi, SeaLevel), 0.5);

    // Whole cycles to 1000, 100, 10 and 1 ppm, computed elsewhere.
    [Theory]
    [InlineData(10, 11, 15, 20, 24)]
    [InlineData(15, 8, 11, 15, 18)]
    [InlineData(20, 7, 9, 12, 15)]
    [InlineData(30, 5, 7, 9, 12)]
    public void Known_whole_cycles(double psi, int thousand, int hundred, int ten, int one)
    {
        double Whole(double share) => Math.Ceiling(Purging.Cycles(Purging.OxygenInAir, share, psi * KegPressure.BarPerPsi, SeaLevel));
        Assert.Equal([thousand, hundred, ten, one], [Whole(1e-3), Whole(1e-4), Whole(1e-5), Whole(1e-6)]);
    }

    // Computed elsewhere: 137 µg/L whole; 56 whole; the third and fourth to three figures.
    [Theory]
    [InlineData(19600, 100e-6, 19, 137, 0.5)]
    [InlineData(1000, 806e-6, 19, 56, 0.5)]
    [InlineData(500, 0.2095, 19, 7330, 5)]
    [InlineData(20, 0.2095, 0.355, 15700, 50)]
    public void Known_oxygen_for_the_beer(double millilitres, double share, double litres, double micrograms, double half) =>
        Near.Equal(micrograms, Purging.MicrogramsPerLitre(millilitres, share, litres), half);

    /// <summary>Total package oxygen is what is dissolved and what lies above it: TPO = (V_hs·O₂ + V_beer·O₂)/V, brewers' conference, 2015.</summary>
    [Fact]
    public void In_all_of_a_package() => Near.Equal(183 + 137, Purging.TotalMicrogramsPerLitre(183, 19600, 100e-6, 19), 0.5);

    [Fact]
    public void Limits_and_nonsense()
    {
        Assert.Equal(Purging.OxygenInAir, Purging.OxygenLeft(0, 2, SeaLevel));
        Assert.Equal(Purging.OxygenInAir, Purging.OxygenLeft(9, 0, SeaLevel));
        Assert.Equal(0, Purging.Cycles(1e-4, 1e-3, 2, SeaLevel));
        Assert.Throws<ArgumentOutOfRangeException>(() => Purging.OxygenLeft(-1, 2, SeaLevel));
        Assert.Throws<ArgumentOutOfRangeException>(() => Purging.Cycles(0.2, 0, 2, SeaLevel));
        Assert.Throws<ArgumentOutOfRangeException>(() => Purging.Cycles(0.2, 0.1, 0, SeaLevel));
    }
}
