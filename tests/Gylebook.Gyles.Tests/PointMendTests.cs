using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Readings;
using Gylebook.Gyles.Plans;
using Gylebook.Recipes.Readings;

namespace Gylebook.Gyles.Tests;

/// <summary>What to do for a point off, worked out before the day.</summary>
public sealed class PointMendTests
{
    [Theory]
    [InlineData("plain-bitter")]
    [InlineData("hedgerow-brown")]
    [InlineData("chestnut-mild")]
    [InlineData("apricot-cardamom-wheat")]
    public void Each_way_lands_nearer_to_the_plan_than_letting_it_be_and_strengthens_what_is_weak(string recipe)
    {
        (GyleInputs inputs, GylePlan? plan) = BrewStepsTests.Frozen(recipe, "lantern-shed");
        IReadOnlyList<PointMend> mends = PointMend.Of(plan!);
        Assert.Equal(
            [(ReadingPoint.CopperUp, true), (ReadingPoint.CopperUp, false), (ReadingPoint.KnockOut, true), (ReadingPoint.KnockOut, false)],
            mends.Select(mend => (mend.At, mend.IsLow)));
        BrewForecast planned = inputs.Forecast(plan!.Seed, []);
        foreach (PointMend mend in mends)
        {
            double aim = plan.Steps.First(step => step.Stage == (mend.At == ReadingPoint.CopperUp ? "copperUp" : "knockOut") && step.Aims.Count > 0).Aims.First(aim => aim.Unit == "SG").Likely;
            Assert.Equal(mend.IsLow ? -0.001 : 0.001, mend.Gravity - aim, 1e-12);
            Assert.All(mend.Ways, way => Assert.True(way.IsChange));
            Assert.Equal(mend.Ways.OrderBy(way => way.Off), mend.Ways);

            // Weak wort is never watered, strong wort never given sugar.
            Assert.All(mend.Ways, way => Assert.DoesNotContain(mend.IsLow ? "water" : "extract", way.Words, StringComparison.Ordinal));
            Assert.All(mend.Ways.SelectMany(way => way.Lands).Where(landing => landing.Readout.Id == "originalGravity"), landing =>
                Assert.Equal(planned.Headline.First(headline => headline.Name == "originalGravity").Band!.Likely, landing.Planned, 1e-5));
        }

        Assert.NotEmpty(mends.SelectMany(mend => mend.Ways));
    }

    [Fact]
    public void A_plan_whose_files_no_program_can_read_has_none() =>
        Assert.Empty(PointMend.Of(BrewStepsTests.Frozen("plain-bitter", "lantern-shed").Plan! with { Kit = "{}" }));

    [Fact]
    public void Letting_it_be_is_no_change() => Assert.False(new Mend(Mend.LetBe, 0, [], 0).IsChange);
}
