using Gylebook.Science.Conditioning;

namespace Gylebook.Science.Tests.Conditioning;

public class PackageCeilingTests
{
    [Fact]
    public void Known_a_careful_end_is_no_higher_than_a_bold_one()
    {
        Assert.Equal(8, PackageCeiling.All.Count);
        Assert.All(PackageCeiling.All, kind => Assert.True(kind.HighVolumes is null || kind.LowVolumes <= kind.HighVolumes));
        PackageCeiling swing = PackageCeiling.All.Single(kind => kind.Id == "swing-top-bottle");
        Assert.True(swing.Holds(3.5));
        Assert.False(swing.Holds(3.6));
        Assert.False(PackageCeiling.All.Single(kind => kind.Id == "wine").Holds(0.8));
    }

    /// <summary>The parts of a keg differ: what is drawn through is weaker than the keg.</summary>
    [Fact]
    public void Known_the_weakest_part_is_not_the_keg()
    {
        Assert.Equal(5, VesselRating.All.Count);
        Assert.Equal(35 * KegPressure.BarPerPsi, VesselRating.All.Min(part => part.GaugeBar), 1e-12);
        Assert.Equal(130 * KegPressure.BarPerPsi, VesselRating.All.Max(part => part.GaugeBar), 1e-12);
    }
}
