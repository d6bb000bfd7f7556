using Gylebook.Science.Numerics;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Science.Tests.Numerics;

/// <summary>Scores of forecasts, by the closed form: Gneiting and Raftery, JASA 102:359 (2007).</summary>
public sealed class ScoresTests
{
    // Printed to six digits.
    [Theory]
    [InlineData(0, 0.233695)]
    [InlineData(0.5, 0.331404)]
    [InlineData(1, 0.602441)]
    [InlineData(2, 1.452792)]
    [InlineData(3, 2.436575)]
    public void A_normal_forecast(double z, double score)
    {
        Assert.Equal(score, Scores.OfNormal(0, 1, z), 5e-7);
        Assert.Equal(2 * score, Scores.OfNormal(5, 2, 5 - (2 * z)), 1e-6);
    }

    // √(2/π) √(1 + s²) − s/√π, printed to five digits: the honest width is the best.
    [Theory]
    [InlineData(0.5, 0.60997, 0.589)]
    [InlineData(0.7, 0.57901, 0.750)]
    [InlineData(1, 0.56419, 0.900)]
    [InlineData(1.5, 0.59212, 0.986)]
    [InlineData(2, 0.65574, 0.999)]
    public void Over_many_truths_the_honest_width_scores_best(double width, double score, double coverage)
    {
        const int Many = 20_000;
        double[] truths = [.. Enumerable.Range(0, Many).Select(i => StandardNormal.Quantile((i + 0.5) / Many))];
        Assert.Equal(score, truths.Average(truth => Scores.OfNormal(0, width, truth)), 2e-4);
        Assert.Equal(coverage, truths.Count(truth => Math.Abs(truth) < 1.644854 * width) / (double)Many, 6e-4);
    }

    [Fact]
    public void Draws_and_bands()
    {
        Assert.Equal(2.0 / 3, Scores.OfDraws([1, 4, 2, double.NaN], 3), 1e-12);
        Assert.Equal(1.0 / 3, Scores.OfDraws([1, 4, 2, double.NaN], 3, isFair: true), 1e-12);
        Assert.Equal(0.050, Scores.OfBand(1.050, 1.060, 1.062), 1e-12);
        Assert.Equal(0.010, Scores.OfBand(1.050, 1.060, 1.055), 1e-12);
    }
}
