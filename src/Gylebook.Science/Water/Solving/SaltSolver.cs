namespace Gylebook.Science.Water;

/// <summary>Finds salts, acids and dilution for wanted ions: found, not guessed.</summary>
/// <remarks>
/// <para>Symbols: minimise Σ w ((reached − wanted)/max(wanted, 10 mg/L))² + Σ price × amount, each amount within its
/// limits.</para>
/// <para>Source: bounded least squares with a linear price; the exact optimum by an active set, after Lawson and Hanson
/// (1974) Solving Least Squares Problems, ch. 23. The form of the objective is our choice.</para>
/// <para>Valid for: any set of offers with finite limits.</para>
/// <para>Accuracy: no other choice within the limits is better by more than 1e-9 of the objective (tested against all
/// subsets of six salts). The usual price costs less than 0.1 % of a target.</para>
/// </remarks>
public static class SaltSolver
{
    /// <summary>A price so small that it only breaks ties: for 1 g/L as much as a miss of 3 % of one target.</summary>
    public const double UsualPrice = 1e-3;

    private const double WeakestShare = 1e-12;
    private const double MissTolerance = 0.02;
    private const double SmallestMiss = 1;

    /// <summary>The best there is within the limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A limit, weight, price or target is not a number or below zero.</exception>
    public static SaltSolution Solve(SaltPlan plan)
    {
        Check(plan);
        SaltProblem problem = new(plan);
        double[] amounts = Minimise(problem);
        return Solution(plan, problem, amounts);
    }

    /// <summary>The same solution in amounts a balance can weigh: the best multiples of a step near the optimum.</summary>
    /// <param name="plan">What was solved.</param>
    /// <param name="litres">Litres of liquor.</param>
    /// <param name="gramStep">Step of the balance, g.</param>
    /// <param name="millilitreStep">Step of the measure for acids, mL (g for a powder).</param>
    public static SaltSolution SolveWeighable(
        SaltPlan plan, double litres, double gramStep = 0.1, double millilitreStep = 0.1)
    {
        Check(plan);
        Argument.MustBeWithin(litres, 1e-12, 1e6);
        SaltProblem problem = new(plan);
        double[] amounts = Minimise(problem);
        double[] steps = new double[amounts.Length];
        for (int column = 0; column < steps.Length; column++)
        {
            bool acid = column >= plan.Salts.Count && column < plan.Salts.Count + problem.Acids.Count;
            steps[column] = column < plan.Salts.Count ? Argument.MustBeWithin(gramStep, 1e-12, 1e6) / litres
                : acid ? Argument.MustBeWithin(millilitreStep, 1e-12, 1e6) / litres
                : 0;
        }

        SaltRounding.Round(problem, amounts, steps);
        return Solution(plan, problem, amounts);
    }

    /// <summary>Usual limits: what dissolves readily and is not absurd, in g/L.</summary>
    /// <remarks>
    /// Gypsum 2 (it holds about 2.4 g/L at 20 °C, from memory); chalk only what water and air can hold; the rest 3.
    /// </remarks>
    public static SaltOffer UsualOffer(BrewingSalt salt, IonProfile source) => new(salt, salt.Id switch
    {
        "gypsum" or "gypsum-anhydrous" => 2,
        "chalk" => Math.Max(0, CalciteEquilibrium.WithChalk(source).ChalkGramsPerLitre),
        _ => 3,
    });

    private static double[] Minimise(SaltProblem problem)
    {
        (double[,] hessian, double[] linear) = problem.Quadratic();
        int count = linear.Length;
        double[] size = new double[count];
        double[] low = new double[count], high = new double[count];
        double strongest = Enumerable.Range(0, count).Select(row => hessian[row, row]).DefaultIfEmpty(0).Max();
        for (int row = 0; row < count; row++)
        {
            // An offer that moves next to nothing is not blown up to the size of the others.
            double strength = Math.Max(hessian[row, row], WeakestShare * strongest);
            size[row] = strength > 0 ? 1 / Math.Sqrt(strength) : 1;
        }

        for (int row = 0; row < count; row++)
        {
            linear[row] *= size[row];
            (low[row], high[row]) = (problem.Low[row] / size[row], problem.High[row] / size[row]);
            for (int column = 0; column < count; column++)
            {
                hessian[row, column] *= size[row] * size[column];
            }
        }

        if (!BoundedQuadratic.TryMinimise(hessian, linear, low, high, out double[] scaled))
        {
            throw new ArithmeticException("The salts did not converge; please report this plan.");
        }

        // Multiplying back may miss a bound by one rounding.
        return [.. scaled.Select((value, row) =>
            value >= high[row] ? problem.High[row]
            : value <= low[row] ? problem.Low[row]
            : Math.Clamp(value * size[row], problem.Low[row], problem.High[row]))];
    }

    private static SaltSolution Solution(SaltPlan plan, SaltProblem problem, double[] amounts)
    {
        IonProfile ions = IonProfile.FromFunction(ion =>
            ion == Ion.Bicarbonate ? problem.Reached(ion, amounts) : Math.Max(0, problem.Reached(ion, amounts)));
        int acidsAt = plan.Salts.Count;
        SaltFound[] salts = [.. plan.Salts.Select((offer, at) => new SaltFound(offer.Salt, amounts[at]))];
        AcidFound[] acids = [.. problem.Acids.Select((offer, at) => new AcidFound(offer.Acid, amounts[acidsAt + at]))];
        return new SaltSolution(
            [.. salts.Where(salt => salt.GramsPerLitre > 0)],
            [.. acids.Where(acid => acid.UnitsPerLitre > 0)],
            plan.Dilution is null ? 0 : amounts[^1],
            ions,
            [.. plan.Targets.Where(target => IsMissed(target, ions)).Select(target => SaltMiss.Explain(plan, problem, amounts, target))],
            problem.Objective(amounts),
            SaltMiss.Diagnose(plan, salts, ions));
    }

    private static bool IsMissed(IonTarget target, IonProfile ions) =>
        Math.Abs(ions[target.Ion] - target.MilligramsPerLitre)
            > Math.Max(SmallestMiss, MissTolerance * Math.Abs(target.MilligramsPerLitre));

    private static void Check(SaltPlan plan)
    {
        _ = Allowed.Ph.Check(plan.AcidPh);
        foreach (IonTarget target in plan.Targets)
        {
            _ = Allowed.MilligramsPerLitre.Check(target.MilligramsPerLitre);
            Argument.MustBeWithin(target.Weight, 0, 1e6);
        }
    }
}
