using CsCheck;

namespace Gylebook.Forecast.Tests.Running;

/// <summary>What goes in comes out: mass, and every component that nothing makes or unmakes, to 1e-12.</summary>
public sealed class BalanceTests(ITestOutputHelper output)
{
    private const int DrawsPerBrew = 3;

    [Fact]
    public void Mass_and_conserved_components_close_on_random_recipes()
    {
        double worst = 0;
        foreach (Brew drawn in RandomBrews.All)
        {
            if (drawn.Recipe.PlanOn(drawn.Kit).Plan is not { } plan)
            {
                continue;
            }

            OneRun run = new(plan);
            Assert.True(run.IsSound, drawn.Name);
            Assert.True(run.Ledger.Closes, $"{drawn.Name}: {run.Ledger}");
            worst = Math.Max(worst, run.Ledger.RelativeError);
        }

        output.WriteLine($"worst relative error {worst:G3}");
    }

    [Fact]
    public void They_close_at_random_parameters_too()
    {
        double worst = 0;
        int sound = 0;
        int runs = 0;
        foreach (Brew drawn in RandomBrews.All)
        {
            if (drawn.Recipe.PlanOn(drawn.Kit).Plan is not { } plan)
            {
                continue;
            }

            PCG stream = RandomBrews.StreamOf("parameters of " + drawn.Name);
            for (int i = 0; i < DrawsPerBrew; i++)
            {
                OneRun run = new(plan, RandomDraws.Around(plan, stream));
                Assert.True(run.Ledger.Closes, $"{drawn.Name}: {run.Ledger}");
                worst = Math.Max(worst, run.Ledger.RelativeError);
                runs++;
                sound += run.IsSound ? 1 : 0;
            }
        }

        output.WriteLine($"{runs} runs, worst relative error {worst:G3}");
        Assert.Equal(runs, sound);
    }
}
