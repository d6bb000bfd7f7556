using Gylebook.Science.Numerics.Distributions;
using Gylebook.Science.Senses;
using Gylebook.Tests.Shared;

namespace Gylebook.Science.Tests.Senses;

public class ThurstoneTests
{
    // Computed elsewhere from the equations, four decimals: typing and quadrature.
    [Theory]
    [InlineData(0, 0.3333, 0.5000, 0.5000, 0.3333)]
    [InlineData(0.5, 0.3558, 0.5223, 0.6382, 0.4826)]
    [InlineData(1.0, 0.4180, 0.5825, 0.7602, 0.6337)]
    [InlineData(1.5, 0.5065, 0.6635, 0.8556, 0.7658)]
    [InlineData(2.0, 0.6048, 0.7468, 0.9214, 0.8658)]
    [InlineData(2.5, 0.6993, 0.8196, 0.9615, 0.9314)]
    [InlineData(3.0, 0.7814, 0.8765, 0.9831, 0.9688)]
    [InlineData(4.0, 0.8977, 0.9467, 0.9977, 0.9955)]
    public void Known_right_answers(double difference, double triangle, double duoTrio, double paired, double three)
    {
        Near.Equal(triangle, Thurstone.Right(TasteTest.Triangle, difference), 0.00005);
        Near.Equal(duoTrio, Thurstone.Right(TasteTest.DuoTrio, difference), 0.00005);
        Near.Equal(paired, Thurstone.Right(TasteTest.Paired, difference), 0.00005);
        Near.Equal(three, Thurstone.Right(TasteTest.ThreeAlternatives, difference), 0.00005);
    }

    // The same row as the share who tell in a triangle, three decimals.
    [Theory]
    [InlineData(0.5, 0.034)]
    [InlineData(1.0, 0.127)]
    [InlineData(1.5, 0.260)]
    [InlineData(2.0, 0.407)]
    [InlineData(2.5, 0.549)]
    [InlineData(3.0, 0.672)]
    [InlineData(4.0, 0.846)]
    public void Known_share_who_tell(double difference, double share) =>
        Near.Equal(share, (Thurstone.Right(TasteTest.Triangle, difference) - (1.0 / 3)) / (2.0 / 3), 0.0005);

    [Theory]
    [InlineData(TasteTest.Triangle)]
    [InlineData(TasteTest.DuoTrio)]
    [InlineData(TasteTest.Paired)]
    [InlineData(TasteTest.ThreeAlternatives)]
    public void Roundtrip_and_monotone(TasteTest test)
    {
        double before = 0;
        for (double difference = 0.25; difference <= 5; difference += 0.25)
        {
            double right = Thurstone.Right(test, difference);
            Assert.True(right > before);
            Assert.Equal(difference, Thurstone.Difference(test, right), 1e-6);
            before = right;
        }

        Assert.Equal(0, Thurstone.Difference(test, 0.2));
        Assert.Equal(Thurstone.Largest, Thurstone.Difference(test, 1));
    }

    /// <summary>A triangle's integral against another rule with another step: the trapezoid's error falls with the square of it, so two steps give it away.</summary>
    [Theory]
    [InlineData(0.7)]
    [InlineData(3.3)]
    public void Convergence_another_rule_agrees(double difference)
    {
        double Trapezoid(int pieces)
        {
            double step = 9.0 / pieces, sum = 0;
            for (int i = 0; i <= pieces; i++)
            {
                double x = i * step, d = difference * Math.Sqrt(2.0 / 3);
                double f = StandardNormal.ShareBelow(d - (x * Math.Sqrt(3)))
                    + StandardNormal.ShareBelow(-d - (x * Math.Sqrt(3)));
                sum += (i == 0 || i == pieces ? 0.5 : 1) * 2 * f * Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI);
            }

            return sum * step;
        }

        double fine = Trapezoid(4001), finer = Trapezoid(8002);
        Assert.Equal(finer + ((finer - fine) / 3), Thurstone.Right(TasteTest.Triangle, difference), 1e-8);
    }

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Thurstone.Right(TasteTest.Triangle, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Thurstone.Difference(TasteTest.Triangle, double.NaN));
    }
}
