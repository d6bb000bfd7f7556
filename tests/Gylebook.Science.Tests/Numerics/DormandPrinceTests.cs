using Gylebook.Science.Numerics;

namespace Gylebook.Science.Tests.Numerics;

public class DormandPrinceTests
{
    // Known: a turn of the circle, y″ = −y, and growth, y′ = y. Each step may err by 1e-11 and there are some hundreds.
    [Fact]
    public void Known_a_turn_comes_back_and_growth_is_the_exponential()
    {
        double[] turned = Reached(new Turning(), [1, 0], 2 * Math.PI, 1e-11);
        Assert.Equal(1, turned[0], 1e-8);
        Assert.Equal(0, turned[1], 1e-8);
        Assert.Equal(Math.E, Reached(new Growing(), [1], 1, 1e-12)[0], 1e-10);
    }

    /// <summary>An error a step of a given share: a hundredth of it leaves a hundredth of the error, as it must if the estimate tells of the step.</summary>
    [Fact]
    public void Convergence_the_error_follows_the_tolerance()
    {
        double rough = Math.Abs(Reached(new Turning(), [1, 0], 20, 1e-5)[0] - Math.Cos(20));
        double fine = Math.Abs(Reached(new Turning(), [1, 0], 20, 1e-9)[0] - Math.Cos(20));
        Assert.InRange(rough / fine, 1e3, 1e5);
    }

    /// <summary>Steps of one length: halved, the error falls by 2⁵, and inside the step by 2⁵ too, h⁵ being the error of a curve of fourth order.</summary>
    [Fact]
    public void Convergence_the_fifth_order_at_the_end_of_a_step_and_the_fourth_inside()
    {
        (double end, double inside) = OneStep(0.2);
        (double endOfHalf, double insideOfHalf) = OneStep(0.1);

        // One step's error goes with h⁶ and h⁵; the next term is within a fifth of it here.
        Assert.InRange(end / endOfHalf, 64 / 1.2, 64 * 1.2);
        Assert.InRange(inside / insideOfHalf, 32 / 1.2, 32 * 1.2);
    }

    [Fact]
    public void Known_the_curve_inside_meets_both_ends()
    {
        Span<double> room = new double[DormandPrince.RoomFor(2)];
        DormandPrince<Turning> along = new(new(), 0, [1, 0], room, 1e-6, 1);
        while (along.At < 3)
        {
            double before = along.State[0];
            Assert.True(along.TryStep(3));
            Assert.Equal(before, along.Inside(0, along.Before), 1e-15);
            Assert.Equal(along.State[0], along.Inside(0, along.At), 1e-15);
        }

        Assert.Equal(3, along.At);
    }

    [Fact]
    public void Range_what_is_no_number_or_runs_away_is_told()
    {
        Assert.False(Reaches(new Blunder(), 1));

        // y′ = y² from 1 has no value at 1.
        Assert.False(Reaches(new RunningAway(), 2));
    }

    [Fact]
    public void Limits_what_stands_still_takes_few_steps()
    {
        Span<double> room = new double[DormandPrince.RoomFor(1)];
        DormandPrince<Still> along = new(new(), 0, [5], room, 1e-9, 1);
        int steps = 0;
        for (; along.At < 1e6; steps++)
        {
            Assert.True(along.TryStep(1e6));
        }

        Assert.Equal(5, along.State[0]);
        Assert.InRange(steps, 1, 20);
    }

    [Fact]
    public void What_has_no_meaning_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Reached(new Growing(), [1], 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Reached(new Growing(), [1], 1, double.NaN));
    }

    private static (double End, double Inside) OneStep(double length)
    {
        Span<double> room = new double[DormandPrince.RoomFor(1)];

        // So lax that the step is taken whole: its first guess is a hundredth, so the tolerance must let it grow before.
        DormandPrince<Growing> along = new(new(), 0, [1], room, 1e9, 1);
        while (along.At < 10)
        {
            double from = along.At, start = along.State[0];
            along.TryStep(from + length);
            if (Math.Abs(along.At - from - length) < 1e-12)
            {
                double there = length / 4;
                return (Math.Abs((along.State[0] / start) - Math.Exp(length)), Math.Abs((along.Inside(0, from + there) / start) - Math.Exp(there)));
            }
        }

        return (double.NaN, double.NaN);
    }

    private static double[] Reached<T>(T rates, double[] start, double until, double tolerance)
        where T : struct, IRates
    {
        DormandPrince<T> along = new(rates, 0, start, new double[DormandPrince.RoomFor(start.Length)], tolerance, 1);
        Assert.True(along.TryReach(until));
        return along.State.ToArray();
    }

    private static bool Reaches<T>(T rates, double until)
        where T : struct, IRates =>
        new DormandPrince<T>(rates, 0, [1], new double[DormandPrince.RoomFor(1)], 1e-6, 1).TryReach(until);

    private struct Turning : IRates
    {
        public readonly void Change(double at, ReadOnlySpan<double> state, Span<double> change) => (change[0], change[1]) = (-state[1], state[0]);
    }

    private struct Growing : IRates
    {
        public readonly void Change(double at, ReadOnlySpan<double> state, Span<double> change) => change[0] = state[0];
    }

    private struct Still : IRates
    {
        public readonly void Change(double at, ReadOnlySpan<double> state, Span<double> change) => change[0] = 0;
    }

    private struct RunningAway : IRates
    {
        public readonly void Change(double at, ReadOnlySpan<double> state, Span<double> change) => change[0] = state[0] * state[0];
    }

    private struct Blunder : IRates
    {
        public readonly void Change(double at, ReadOnlySpan<double> state, Span<double> change) => change[0] = double.NaN;
    }
}
