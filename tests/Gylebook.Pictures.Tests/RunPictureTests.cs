using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Stages;
using Gylebook.Pictures.Drawing;
using Gylebook.Science.Liquids;
using Gylebook.Tests.Shared;

namespace Gylebook.Pictures.Tests;

/// <summary>The picture says what the forecast says, of every sample this kit can brew.</summary>
public sealed class RunPictureTests
{
    public static TheoryData<string> Brewable() => SampleForecasts.Brewable();

    [Fact]
    public void Most_samples_can_be_brewed_and_so_are_drawn() => Assert.True(Brewable().Count >= 15, $"only {Brewable().Count}");

    [Theory]
    [MemberData(nameof(Brewable))]
    public void Litres_drawn_are_the_forecast_s(string recipe)
    {
        BrewForecast forecast = SampleForecasts.Of(recipe);
        RunPicture picture = RunPicture.Of(forecast);
        Assert.NotEmpty(picture.Steps);
        Assert.All(picture.Steps, step => Assert.Equal(
            forecast.Stages.Last(s => s.Stage == step.Stage && s.Portion == step.Portion).LitresAt20C, step.Litres.Likely));
    }

    [Theory]
    [MemberData(nameof(Brewable))]
    public void Nothing_that_enters_or_leaves_is_left_out_or_drawn_twice(string recipe)
    {
        BrewForecast forecast = SampleForecasts.Of(recipe);
        RunPicture picture = RunPicture.Of(forecast);
        Assert.Equal(forecast.Additions.Select(a => (a.What, a.Kilograms)).Order(), picture.Steps.SelectMany(s => s.Additions).Select(a => (a.Name, a.Kilograms)).Order());
        Assert.Equal(
            forecast.Losses.Select(l => (l.LitresAt20C, l.Kilograms)).Order(),
            picture.Steps.SelectMany(s => s.Losses).Select(l => (l.Litres, l.Kilograms)).Order());
    }

    [Theory]
    [MemberData(nameof(Brewable))]
    public void Additions_weigh_what_the_ledger_says_went_in(string recipe)
    {
        BrewForecast forecast = SampleForecasts.Of(recipe);

        // Two sums of the same numbers in another order: rounding alone, about 1e-15 of the sum.
        Assert.Equal(forecast.Balance!.MassIn, forecast.Additions.Sum(a => a.Kilograms), forecast.Balance.MassIn * 1e-12);
    }

    [Theory]
    [MemberData(nameof(Brewable))]
    public void Every_caution_is_pinned_once_but_what_is_so_on_every_brew_day(string recipe)
    {
        BrewForecast forecast = SampleForecasts.Of(recipe);
        RunCaution[] pinned = [.. RunPicture.Of(forecast).Steps.SelectMany(s => s.Cautions)];
        Assert.All(forecast.Cautions, c => Assert.Equal(
            c.Kind.Weight == CautionWeight.Reminder ? 0 : 1, pinned.Count(p => p.Message.Split('\n').Contains(c.Message))));
    }

    [Theory]
    [MemberData(nameof(Brewable))]
    public void Cooling_loses_nothing(string recipe)
    {
        BrewForecast forecast = SampleForecasts.Of(recipe);
        StageRow chilled = forecast.Stages.Single(s => s.Stage == Stage.Chill);
        StageRow before = forecast.Stages[forecast.Stages.ToList().IndexOf(chilled) - 1];
        if (before.Stage == Stage.Stand || forecast.Additions.All(a => a.Place.Stage != Stage.KnockOut))
        {
            Assert.Equal(before.LitresAt20C, chilled.LitresAt20C);
        }

        Assert.DoesNotContain(forecast.Losses, l => l.Place.Stage == Stage.Chill);
        Assert.DoesNotContain(RunPicture.Of(forecast).Steps, s => s.Stage == Stage.Chill);
    }

    /// <summary>
    /// Where liquid alone moves, litres before, plus what joins, less what leaves, are litres after. Volumes do not quite add
    /// up when a solution is thinned or thickened: a kilogram of dissolved sucrose takes 0.618 L in thin and 0.630 L in strong
    /// wort (the density table of sugar solutions), so litres may be off by 0.015 for each kilogram of extract there. What
    /// goes in dry may take up to a litre a kilogram, or none. Copper-up is the next test's.
    /// </summary>
    [Theory]
    [MemberData(nameof(Brewable))]
    public void Where_only_liquid_moves_litres_add_up(string recipe)
    {
        RunPicture picture = RunPicture.Of(SampleForecasts.Of(recipe));
        int moves = 0;
        IEnumerable<IReadOnlyList<RunStep>> ways = picture.Branches.Select(b => b.Steps).Prepend(picture.Trunk);
        foreach (IReadOnlyList<RunStep> way in ways)
        {
            for (int i = 1; i < way.Count; i++)
            {
                RunStep step = way[i];
                if (step.Stage is Stage.KnockOut or Stage.Cast or Stage.Rack)
                {
                    double expected = way[i - 1].Litres.Likely + step.Additions.Sum(a => a.Litres) - step.Losses.Sum(l => l.Litres);
                    double extract = Math.Max(ExtractKilograms(way[i - 1]), ExtractKilograms(step));
                    Near.Equal(expected, step.Litres.Likely, (0.015 * extract) + step.Additions.Sum(a => a.Kilograms));
                    moves++;
                }
            }
        }

        Assert.True(moves >= 3, "No stage moved liquid alone.");
    }

    /// <summary>From mash to copper-up the grain leaves with its wort, and is rinsed meanwhile; the same law.</summary>
    [Theory]
    [MemberData(nameof(Brewable))]
    public void What_the_mash_does_not_give_the_kettle_the_grain_keeps(string recipe)
    {
        RunPicture picture = RunPicture.Of(SampleForecasts.Of(recipe));
        RunStep? mash = picture.Trunk.FirstOrDefault(s => s.Stage == Stage.Mash);
        RunStep[] after = [.. picture.Trunk.Where(s => s.Stage is Stage.Lift or Stage.CopperUp)];
        RunAddition[] joins = [.. after.SelectMany(s => s.Additions)];
        if (mash is null || joins.Any(a => !a.IsLiquor))
        {
            Assert.True(recipe.Contains("extract", StringComparison.Ordinal) || recipe.Contains("all-honey", StringComparison.Ordinal) || joins.Length > 0, "no mash in a grain recipe");
            return;
        }

        double left = mash.Litres.Likely + joins.Sum(a => a.Litres) - after.SelectMany(s => s.Losses).Sum(l => l.Litres);
        Near.Equal(left, after[^1].Litres.Likely, 0.015 * ExtractKilograms(mash));
    }

    [Fact]
    public void A_parted_cast_has_two_ribbons_each_with_its_own_losses_and_package()
    {
        RunPicture picture = RunPicture.Of(SampleForecasts.Of(SampleForecasts.Parted));
        Assert.Equal(["fruit", "plain"], picture.Branches.Select(b => b.Name));
        Near.Equal(picture.Trunk[^1].Litres.Likely, picture.Branches.Sum(b => b.Steps[0].Litres.Likely), 1e-9);
        Assert.All(picture.Branches, branch =>
        {
            Assert.Contains(branch.Steps.SelectMany(s => s.Losses), l => l.Name == "held in the sludge");
            Assert.Contains(branch.Steps, s => s.Stage == Stage.Package && s.Says.Contains("volumes", StringComparison.Ordinal));
        });
        Assert.Contains(picture.Branches[0].Steps.SelectMany(s => s.Additions), a => a.Name == "Apricot purée");
        Assert.DoesNotContain(picture.Branches[1].Steps.SelectMany(s => s.Additions), a => a.Name == "Apricot purée");
    }

    [Fact]
    public void A_recipe_that_cannot_be_brewed_has_no_run()
    {
        RunPicture picture = RunPicture.Of(SampleForecasts.Of("edges/tun-batch.json"));
        Assert.Empty(picture.Steps);
        Assert.Contains("cannot be brewed", RunSvg.Wide(picture), StringComparison.Ordinal);
        Assert.Empty(RunTable.Of(picture).Rows);
    }

    [Fact]
    public void Colour_is_computed_from_knock_out_on_and_water_is_water()
    {
        RunPicture picture = RunPicture.Of(SampleForecasts.Of("hedgerow-brown.json"));
        Assert.Equal(TintOf.Water, picture.Trunk[0].Tint.Is);
        Assert.All(picture.Trunk.Where(s => s.Stage is Stage.Mash or Stage.Lift or Stage.CopperUp), s => Assert.Equal(TintOf.Drawn, s.Tint.Is));
        Assert.All(picture.Trunk.SkipWhile(s => s.Stage != Stage.KnockOut), s => Assert.Equal(TintOf.Computed, s.Tint.Is));
    }

    [Fact]
    public void A_band_shows_only_where_the_headline_has_one()
    {
        BrewForecast forecast = SampleForecasts.Of("plain-bitter.json");
        Assert.All(RunPicture.Of(forecast).Steps, s => Assert.Equal(BandKind.Point, s.Litres.Kind));
        Assert.DoesNotContain("class=\"band\"", RunSvg.Wide(RunPicture.Of(forecast)), StringComparison.Ordinal);

        Band cast = new(18, 20, 23, "L at 20 °C", BandKind.Quantiles);
        BrewForecast unsure = forecast with { Headline = [.. forecast.Headline.Select(h => h.Name == "castLitres" ? h with { Band = cast } : h)] };
        RunStep step = Assert.Single(RunPicture.Of(unsure).Steps, s => s.Litres.Kind != BandKind.Point);
        Assert.Equal((Stage.Cast, 18.0, 23.0), (step.Stage, step.Litres.Low, step.Litres.High));
        Assert.Contains("class=\"band\"", RunSvg.Wide(RunPicture.Of(unsure)), StringComparison.Ordinal);
    }

    private static double ExtractKilograms(RunStep step)
    {
        double plato = SucroseSolution.PlatoAt(step.Gravity);
        return step.Litres.Likely * SucroseSolution.KilogramsPerLitreOfGravity(step.Gravity) * Math.Max(0, plato) / 100;
    }
}
