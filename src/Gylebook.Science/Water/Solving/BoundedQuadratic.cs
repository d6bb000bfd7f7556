namespace Gylebook.Science.Water;

/// <summary>The least value of a convex quadratic within a box, exactly.</summary>
/// <remarks>
/// <para>Symbols: minimise ½ xᵀHx + cᵀx with low ≤ x ≤ high; H positive semidefinite; g = Hx + c.</para>
/// <para>Source: primal active set after Lawson, C. L. and Hanson, R. J. (1974) Solving Least Squares Problems,
/// ch. 23, with the singular step of inertia-controlling methods (Gill, Murray, Saunders and Wright (1991)
/// SIAM Review 33, 1).</para>
/// <para>Valid for: finite boxes. Where several x are best, one of them is found.</para>
/// <para>Notes: the free set always has a positive definite H. Where a variable would make it singular, the objective
/// falls in a straight line, so one steps along it to the first bound. Every step is exact; a finite number ends it.</para>
/// </remarks>
internal sealed class BoundedQuadratic
{
    private const double SingularBelow = 1e-10;
    private const double Tolerance = 1e-12;
    private const int MostSteps = 2000;
    private readonly double[,] _hessian;
    private readonly double[] _linear;
    private readonly double[] _low;
    private readonly double[] _high;
    private readonly double[] _x;
    private readonly List<int> _free = [];

    private BoundedQuadratic(double[,] hessian, double[] linear, double[] low, double[] high)
    {
        (_hessian, _linear, _low, _high) = (hessian, linear, low, high);
        _x = [.. low];
    }

    /// <summary>The best x; true once no bound and no free variable can better it.</summary>
    internal static bool TryMinimise(
        double[,] hessian, double[] linear, double[] low, double[] high, out double[] x)
    {
        BoundedQuadratic problem = new(hessian, linear, low, high);
        bool done = problem.Run();
        x = problem._x;
        return done;
    }

    private bool Run()
    {
        for (int step = 0; step < MostSteps; step++)
        {
            if (_free.Count > 0 && !TakeNewtonStep())
            {
                continue;
            }

            int entering = MostImproving(firstOnly: step > MostSteps / 2);
            if (entering < 0)
            {
                return true;
            }

            Enter(entering);
        }

        return false;
    }

    /// <summary>Gradient of one variable.</summary>
    private double Gradient(int variable)
    {
        double sum = _linear[variable];
        for (int other = 0; other < _x.Length; other++)
        {
            sum += _hessian[variable, other] * _x[other];
        }

        return sum;
    }

    private int MostImproving(bool firstOnly)
    {
        int best = -1;
        double most = 0;
        for (int variable = 0; variable < _x.Length; variable++)
        {
            if (_high[variable] <= _low[variable] || _free.Contains(variable))
            {
                continue;
            }

            double gradient = Gradient(variable);
            double gain = _x[variable] <= _low[variable] ? -gradient : gradient;
            if (gain > most && gain > Tolerance * (1 + Math.Abs(_linear[variable])))
            {
                (best, most) = (variable, gain);
                if (firstOnly)
                {
                    break;
                }
            }
        }

        return best;
    }

    /// <summary>Goes to the minimum over the free variables, or to the first bound on the way; true if unhindered.</summary>
    private bool TakeNewtonStep()
    {
        double[] direction = Solve([.. _free.Select(variable => -Gradient(variable))]);
        return !MoveAlong(direction, length: 1);
    }

    /// <summary>Moves the free variables; the first to reach a bound is held there. True if one was.</summary>
    private bool MoveAlong(double[] direction, double length)
    {
        int blocking = -1;
        for (int place = 0; place < direction.Length; place++)
        {
            if (direction[place] == 0)
            {
                continue;
            }

            int variable = _free[place];
            double bound = direction[place] > 0 ? _high[variable] : _low[variable];
            double reach = (bound - _x[variable]) / direction[place];
            if (reach < length)
            {
                (blocking, length) = (place, Math.Max(0, reach));
            }
        }

        for (int place = 0; place < direction.Length; place++)
        {
            int variable = _free[place];
            _x[variable] = Math.Clamp(_x[variable] + (length * direction[place]), _low[variable], _high[variable]);
        }

        if (blocking < 0)
        {
            return false;
        }

        int held = _free[blocking];
        _x[held] = direction[blocking] > 0 ? _high[held] : _low[held];
        _free.RemoveAt(blocking);
        return true;
    }

    private void Enter(int entering)
    {
        double sign = _x[entering] <= _low[entering] ? 1 : -1;
        double[] coupling = [.. _free.Select(variable => _hessian[variable, entering])];
        double[] answer = Solve(coupling);
        double curvature = _hessian[entering, entering];
        for (int place = 0; place < coupling.Length; place++)
        {
            curvature -= coupling[place] * answer[place];
        }

        _free.Add(entering);
        if (curvature > SingularBelow * Math.Max(1e-300, _hessian[entering, entering]))
        {
            return;
        }

        // No curvature this way: the objective falls straight, so go on until something stops it; the box will.
        double[] direction = new double[_free.Count];
        for (int place = 0; place < answer.Length; place++)
        {
            direction[place] = -sign * answer[place];
        }

        direction[^1] = sign;
        _ = MoveAlong(direction, length: double.PositiveInfinity);
    }

    /// <summary>Solves H y = b over the free variables; H is positive definite there.</summary>
    private double[] Solve(double[] right) =>
        Cholesky.Solve(right, (row, column) => _hessian[_free[row], _free[column]]);
}
