using Gylebook.Science.Fermenting;
using Gylebook.Science.Liquids;

namespace Gylebook.Science.Tests.Liquids;

public class HotLoopTests
{
    // The forecast calls these for every draw; one allocated object would be a million.
    [Fact]
    public void The_raw_doors_allocate_nothing()
    {
        double warm = Once(12);
        long before = GC.GetAllocatedBytesForCurrentThread();
        double sum = 0;
        for (int draw = 0; draw < 1000; draw++)
        {
            sum += Once(draw / 100.0);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(double.IsFinite(sum + warm));
    }

    private static double Once(double plato)
    {
        double real = Balling.RealExtractOf(plato, plato / 4);
        double alcohol = Balling.AlcoholOf(plato, real);
        double gravity = Tabarie.GravityOf(real, alcohol);
        return SucroseSolution.PlatoAt(gravity)
            + SucroseSolution.KilogramsPerLitreOfGravity(gravity)
            + WaterDensity.KilogramsPerLitreAt(plato)
            + EthanolWater.PercentByMassOf(EthanolWater.PercentByVolumeOf(alcohol))
            + EthanolWater.KilogramsPerLitreAt(alcohol, plato)
            + Tabarie.RealExtractOf(gravity, alcohol)
            + Blending.PlatoOfExtractIn(Blending.ExtractKilograms(20, plato), 21)
            + Balling.ExtractFermented(0.6, real);
    }
}
