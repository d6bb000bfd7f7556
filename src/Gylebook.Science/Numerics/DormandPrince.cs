namespace Gylebook.Science.Numerics;

/// <summary>Follows ordinary differential equations in steps as long as the error wished for allows, without allocating.</summary>
/// <remarks>
/// <para>Symbols: y the state, h the step; seven slopes a step, the last of which is the first of the next.</para>
/// <para>Source: Dormand and Prince, J. Comput. Appl. Math. 6:19 (1980), RK5(4)7M; the curve inside a step after Hairer, Nørsett and
/// Wanner, Solving Ordinary Differential Equations I, §II.6 (1993). Coefficients from memory; the tests measure the orders 5 and 4.</para>
/// <para>Valid for: smooth, not stiff equations; on stiff ones it stays right and gets slow.</para>
/// <para>Accuracy: each step is kept within <c>tolerance</c> · (scale + |y|); what adds up is of the same order.</para>
/// </remarks>
/// <typeparam name="TRates">The equations.</typeparam>
public ref struct DormandPrince<TRates>
    where TRates : struct, IRates
{
    private const double Safety = 0.9, LeastGrowth = 0.2, MostGrowth = 5, Order = 5;

    private readonly Span<double> _room;
    private readonly int _count;
    private readonly double _tolerance, _scale;
    private TRates _rates;
    private double _step, _taken;
    private int _steps;

    /// <summary>Starts at a state.</summary>
    /// <param name="rates">The equations.</param>
    /// <param name="at">When.</param>
    /// <param name="state">The figures then.</param>
    /// <param name="room">At least <see cref="DormandPrince.RoomFor"/> numbers to work in.</param>
    /// <param name="tolerance">Error allowed in a step, as a share; above 0.</param>
    /// <param name="scale">What counts as nothing in the figures' own unit: added to each before the share is taken; above 0.</param>
    public DormandPrince(TRates rates, double at, ReadOnlySpan<double> state, Span<double> room, double tolerance, double scale)
    {
        _tolerance = Argument.MustBePositive(tolerance);
        _scale = Argument.MustBePositive(scale);
        _rates = rates;
        _count = state.Length;
        _room = room[..DormandPrince.RoomFor(_count)];
        (At, Before) = (at, at);
        state.CopyTo(Row(Place.Now));
        Restart();
        _step = FirstStep();
    }

    private enum Place
    {
        Now,
        Was,
        Stage,
        First,
        Second,
        Third,
        Fourth,
        Fifth,
        Sixth,
        Seventh,
    }

    /// <summary>The time reached.</summary>
    public double At { get; private set; }

    /// <summary>The time that the last step started from.</summary>
    public double Before { get; private set; }

    /// <summary>The figures at <see cref="At"/>. Whoever writes here says so by <see cref="Restart"/>.</summary>
    public readonly Span<double> State => Row(Place.Now);

    /// <summary>Takes the slopes at the state anew, after it was written to.</summary>
    public void Restart() => _rates.Change(At, Row(Place.Now), Row(Place.First));

    /// <summary>One step on, not beyond a time; false when the steps are used up or a figure is no number.</summary>
    public bool TryStep(double until)
    {
        while (_steps++ < DormandPrince.MostSteps)
        {
            double step = Math.Min(_step, until - At);
            Try(step);
            double error = Error(step);
            double growth = error > 0 ? Math.Clamp(Safety * Math.Pow(error, -1 / Order), LeastGrowth, MostGrowth) : MostGrowth;
            if (!(error <= 1))
            {
                _step = step * (double.IsNaN(error) ? LeastGrowth : Math.Min(growth, Safety));
                if (At + _step <= At)
                {
                    return false;
                }

                continue;
            }

            // A step cut short by the end says nothing against a longer one.
            _step = Math.Max(step * growth, step < _step ? _step : 0);
            Accept(step);
            return true;
        }

        return false;
    }

    /// <summary>Steps until a time is reached; false as <see cref="TryStep"/>.</summary>
    public bool TryReach(double until)
    {
        while (At < until)
        {
            if (!TryStep(until))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>A figure at a time inside the last step, to the fourth order.</summary>
    /// <param name="figure">Which.</param>
    /// <param name="at">From <see cref="Before"/> to <see cref="At"/>.</param>
    public readonly double Inside(int figure, double at)
    {
        double h = _taken, along = h > 0 ? (at - Before) / h : 0, rest = 1 - along;
        double was = Row(Place.Was)[figure], moved = Row(Place.Now)[figure] - was;
        double start = (h * Row(Place.Second)[figure]) - moved;
        double end = moved - (h * Row(Place.First)[figure]) - start;
        return was + (along * (moved + (rest * (start + (along * (end + (rest * Row(Place.Stage)[figure])))))));
    }

    private readonly Span<double> Row(Place place) => _room.Slice((int)place * _count, _count);

    /// <summary>A hundredth of the time in which the figures would change by themselves.</summary>
    private readonly double FirstStep()
    {
        double size = 0, change = 0;
        for (int i = 0; i < _count; i++)
        {
            double weight = 1 / (_scale + Math.Abs(Row(Place.Now)[i]));
            size = Math.Max(size, weight * Math.Abs(Row(Place.Now)[i]));
            change = Math.Max(change, weight * Math.Abs(Row(Place.First)[i]));
        }

        return change > 0 && size > 0 ? 0.01 * size / change : 1e-3;
    }

    /// <summary>The six slopes after the first, and the state they lead to, which lies in <see cref="Place.Was"/> until it is accepted.</summary>
    private void Try(double h)
    {
        Slope(h, 0.2, Place.Second, [1.0 / 5]);
        Slope(h, 0.3, Place.Third, [3.0 / 40, 9.0 / 40]);
        Slope(h, 0.8, Place.Fourth, [44.0 / 45, -56.0 / 15, 32.0 / 9]);
        Slope(h, 8.0 / 9, Place.Fifth, [19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729]);
        Slope(h, 1, Place.Sixth, [9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656]);
        Slope(h, 1, Place.Seventh, [35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84]);
    }

    private void Slope(double h, double along, Place slope, ReadOnlySpan<double> weights)
    {
        Span<double> stage = Row(slope == Place.Seventh ? Place.Was : Place.Stage);
        ReadOnlySpan<double> now = Row(Place.Now), slopes = _room[((int)Place.First * _count)..];
        for (int i = 0; i < stage.Length; i++)
        {
            double sum = 0;
            for (int k = 0; k < weights.Length; k++)
            {
                sum += weights[k] * slopes[(k * _count) + i];
            }

            stage[i] = now[i] + (h * sum);
        }

        _rates.Change(At + (along * h), stage, Row(slope));
    }

    /// <summary>The largest error of the fourth order's answer against the fifth's, in what is allowed.</summary>
    private readonly double Error(double h)
    {
        double worst = 0;
        for (int i = 0; i < _count; i++)
        {
            double off = h * ((71.0 / 57600 * Row(Place.First)[i]) - (71.0 / 16695 * Row(Place.Third)[i]) + (71.0 / 1920 * Row(Place.Fourth)[i])
                - (17253.0 / 339200 * Row(Place.Fifth)[i]) + (22.0 / 525 * Row(Place.Sixth)[i]) - (1.0 / 40 * Row(Place.Seventh)[i]));
            double allowed = _tolerance * (_scale + Math.Max(Math.Abs(Row(Place.Now)[i]), Math.Abs(Row(Place.Was)[i])));
            double error = Math.Abs(off) / allowed;
            if (!double.IsFinite(error))
            {
                return double.NaN;
            }

            worst = Math.Max(worst, error);
        }

        return worst;
    }

    /// <summary>Moves on; what the curve inside the step hangs on is kept in the rows of the stage and the second slope.</summary>
    private void Accept(double h)
    {
        Span<double> now = Row(Place.Now), was = Row(Place.Was), stage = Row(Place.Stage);
        Span<double> first = Row(Place.First), second = Row(Place.Second), seventh = Row(Place.Seventh);
        for (int i = 0; i < _count; i++)
        {
            stage[i] = h * ((-12715105075.0 / 11282082432 * first[i]) + (87487479700.0 / 32700410799 * Row(Place.Third)[i])
                - (10690763975.0 / 1880347072 * Row(Place.Fourth)[i]) + (701980252875.0 / 199316789632 * Row(Place.Fifth)[i])
                - (1453857185.0 / 822651844 * Row(Place.Sixth)[i]) + (69997945.0 / 29380423 * seventh[i]));
            (now[i], was[i]) = (was[i], now[i]);
            second[i] = first[i];
            first[i] = seventh[i];
        }

        (Before, At, _taken) = (At, At + h, h);
    }
}

/// <summary>What a course takes.</summary>
public static class DormandPrince
{
    /// <summary>More steps than any course of ours takes: beyond it the equations are no numbers, or far too stiff.</summary>
    public const int MostSteps = 200_000;

    private const int Rows = 10;

    /// <summary>Numbers to work in for so many figures.</summary>
    public static int RoomFor(int figures) => Rows * figures;
}
