using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Tests;

/// <summary>Whether the random recipes are any good as a test of the engine.</summary>
public sealed class RandomBrewsTests(ITestOutputHelper output)
{
    private const int Fewest = 50;

    [Fact]
    public void Every_stratum_is_drawn_often_enough()
    {
        string[] wanted =
        [
            "bag poured", "bag dunked", "bag unrinsed", "tun unrinsed", "tun batch", "tun continuous", "part", "extract",
            "boil", "no boil", "hops", "no hops", "food", "no food", "split", "whole", "keg", "bottle", "crash", "no crash",
            .. Enum.GetNames<AdditionPoint>().Select(point => "at " + point),
            .. FoodFamilies.All.Select(family => "family " + family.Id),
        ];
        Dictionary<string, int> drawn = RandomBrews.All
            .SelectMany(one => one.Strata).GroupBy(s => s).ToDictionary(g => g.Key, g => g.Count());
        foreach (string stratum in wanted)
        {
            output.WriteLine($"{drawn.GetValueOrDefault(stratum),5}  {stratum}");
        }

        Assert.All(wanted, stratum => Assert.True(drawn.GetValueOrDefault(stratum) >= Fewest, $"{stratum}: {drawn.GetValueOrDefault(stratum)}"));
    }

    [Fact]
    public void The_strata_of_food_are_brewed_and_not_only_written()
    {
        BrewPlan[] brewed = [.. RandomBrews.All.Select(b => b.Recipe.PlanOn(b.Kit)).Where(l => l.Plan is not null)];
        foreach (FoodFamily family in FoodFamilies.All)
        {
            int count = brewed.Count(l => l.Lines.Any(line => line.Food?.Family == family.Name));
            Assert.True(count >= Fewest, $"{family.Name}: {count}");
        }
    }

    [Fact]
    public void Nearly_all_resolve_and_can_be_planned()
    {
        var failed = RandomBrews.All.Select(b => (b.Name, BrewPlan: b.Recipe.PlanOn(b.Kit))).Where(b => b.BrewPlan.Plan is null).ToList();
        foreach (var (name, brew) in failed.Take(20))
        {
            output.WriteLine($"{name}: {string.Join("; ", brew.Findings.Where(f => f.Severity == Recipes.Severity.Error).Select(f => f.Message))}");
        }

        output.WriteLine($"{failed.Count} of {RandomBrews.Count} have no plan");
        Assert.All(failed, f => Assert.Equal(
            ["volumes.noSolution"], f.BrewPlan.Findings.Where(x => x.Severity == Recipes.Severity.Error).Select(x => x.Code)));
        Assert.True(failed.Count <= RandomBrews.Count / 20);
    }
}
