using CsCheck;
using Gylebook.Science.Water;

namespace Gylebook.Science.Tests.Water;

public class SaltSolverTests
{
    private static readonly BrewingSalt[] Six =
    [
        BrewingSalts.Gypsum, BrewingSalts.CalciumChloride, BrewingSalts.Epsom,
        BrewingSalts.MagnesiumChloride, BrewingSalts.TableSalt, BrewingSalts.BakingSoda,
    ];

    private static readonly Ion[] Wanted =
        [Ion.Calcium, Ion.Magnesium, Ion.Sodium, Ion.Bicarbonate, Ion.Sulphate, Ion.Chloride];

    private static readonly Gen<(double[] Source, double[] Target, double[] Most, double Price)> Plans = Gen.Select(
        Gen.Double[0, 80].Array[6], Gen.Double[0, 300].Array[6], Gen.Double[0, 1.5].Array[6], Gen.Double[1e-4, 0.5]);

    [Fact]
    public void No_choice_of_bounds_over_six_salts_is_better() => Plans.Sample((source, target, most, price) =>
    {
        SaltPlan plan = Plan(source, target, most, price);
        double found = SaltSolver.Solve(plan).Objective;
        double best = BruteForce(plan);
        Assert.Equal(best, found, 1e-9 * (1 + best));
    }, iter: 300);

    [Fact]
    public void No_random_choice_is_better() =>
        Gen.Select(Plans, Gen.Double[0, 1].Array[6]).Sample((numbers, shares) =>
        {
            SaltPlan plan = Plan(numbers.Source, numbers.Target, numbers.Most, numbers.Price);
            SaltProblem problem = new(plan);
            double[] guess = [.. shares.Select((share, at) => share * numbers.Most[at])];
            return SaltSolver.Solve(plan).Objective <= problem.Objective(guess) + 1e-12;
        });

    [Fact]
    public void A_solve_never_leaves_its_bounds() =>
        Gen.Select(Gen.Double[0, 300].Array[6], Gen.Double[0, 400].Array[6], Gen.Double[0, 1].Array[15], Gen.Double[0, 1])
            .Sample((source, target, most, share) =>
            {
                SaltPlan plan = Everything(source, target, most, share);
                foreach (SaltSolution solution in (SaltSolution[])[SaltSolver.Solve(plan), SaltSolver.SolveWeighable(plan, 25)])
                {
                    Assert.All(solution.Salts, salt => Assert.InRange(
                        salt.GramsPerLitre, 0, plan.Salts.Single(offer => offer.Salt == salt.Salt).MostGramsPerLitre));
                    Assert.All(solution.Acids, acid => Assert.InRange(
                        acid.UnitsPerLitre, 0, plan.Acids!.Single(offer => offer.Acid == acid.Acid).MostUnitsPerLitre));
                    Assert.InRange(solution.ShareDiluted, 0, share);
                    Assert.All(Ions.All, ion => Assert.True(ion == Ion.Bicarbonate || solution.Ions[ion] >= 0));
                }
            });

    [Fact]
    public void All_offers_together_rest_at_an_optimum() =>
        Gen.Select(Gen.Double[0, 300].Array[6], Gen.Double[0, 400].Array[6], Gen.Double[0, 1].Array[15], Gen.Double[0, 1])
            .Sample((source, target, most, share) =>
            {
                SaltPlan plan = Everything(source, target, most, share);
                SaltProblem problem = new(plan);
                SaltSolution solution = SaltSolver.Solve(plan);
                double[] amounts = Amounts(plan, problem, solution);
                (double[,] hessian, double[] linear) = problem.Quadratic();
                for (int row = 0; row < amounts.Length; row++)
                {
                    double slope = linear[row] + amounts.Select((amount, at) => hessian[row, at] * amount).Sum();
                    double allowed = 1e-9 * (1 + Math.Sqrt(hessian[row, row]));
                    Assert.True(amounts[row] <= problem.Low[row] || slope <= allowed, $"{problem.Names[row]} should be less");
                    Assert.True(amounts[row] >= problem.High[row] || slope >= -allowed, $"{problem.Names[row]} should be more");
                }
            });

    [Fact]
    public void Known_additions_are_found_again()
    {
        IonProfile added = (BrewingSalts.Gypsum.PerGramInALitre * 0.3) + (BrewingSalts.CalciumChloride.PerGramInALitre * 0.2)
            + (BrewingSalts.Epsom.PerGramInALitre * 0.1);
        SaltSolution solution = SaltSolver.Solve(new SaltPlan(
            IonProfile.Distilled,
            [.. Wanted.Select(ion => new IonTarget(ion, added[ion]))],
            [.. Six.Where(NotMagnesiumChloride).Select(salt => SaltSolver.UsualOffer(salt, IonProfile.Distilled))]));
        Assert.Empty(solution.Misses);
        // The price shifts each amount a little: below 0.2 % at the usual price.
        Assert.Equal(0.3, Grams(solution, BrewingSalts.Gypsum), 0.001);
        Assert.Equal(0.2, Grams(solution, BrewingSalts.CalciumChloride), 0.001);
        Assert.Equal(0.1, Grams(solution, BrewingSalts.Epsom), 0.001);
        Assert.Equal(3, solution.Salts.Count);
    }

    [Fact]
    public void Magnesium_that_nothing_brings_is_said()
    {
        SaltSolution solution = SaltSolver.Solve(new SaltPlan(
            IonProfile.Distilled, [new(Ion.Magnesium, 20), new(Ion.Calcium, 50)], [new(BrewingSalts.Gypsum, 2)]));
        TargetMiss miss = Assert.Single(solution.Misses);
        Assert.Equal((Ion.Magnesium, MissReason.NothingBringsIt), (miss.Ion, miss.Reason));
    }

    [Fact]
    public void Calcium_that_nothing_takes_away_is_said()
    {
        SaltSolution solution = SaltSolver.Solve(new SaltPlan(
            new IonProfile(calcium: 120), [new(Ion.Calcium, 50)], [new(BrewingSalts.Gypsum, 2)]));
        Assert.Equal(MissReason.NothingRemovesIt, Assert.Single(solution.Misses).Reason);
    }

    [Fact]
    public void A_limit_that_binds_is_named()
    {
        SaltSolution solution = SaltSolver.Solve(new SaltPlan(
            IonProfile.Distilled, [new(Ion.Calcium, 100)], [new(BrewingSalts.Gypsum, 0.1)]));
        TargetMiss miss = Assert.Single(solution.Misses);
        Assert.Equal((MissReason.OfferAtLimit, "gypsum"), (miss.Reason, miss.Limit));
        Assert.Equal(23.279, miss.Reached, 0.001);
    }

    [Fact]
    public void Dilution_at_its_limit_is_named()
    {
        SaltSolution solution = SaltSolver.Solve(new SaltPlan(
            new IonProfile(sodium: 100, chloride: 154), [new(Ion.Sodium, 20), new(Ion.Chloride, 30)], [],
            Dilution: new DilutionOffer(IonProfile.Distilled, MostShare: 0.5)));
        Assert.Equal(0.5, solution.ShareDiluted);
        Assert.All(solution.Misses, miss => Assert.Equal("dilution", miss.Limit));
        Assert.Equal(2, solution.Misses.Count);
    }

    [Fact]
    public void A_quarrel_between_targets_is_named()
    {
        SaltSolution solution = SaltSolver.Solve(new SaltPlan(
            IonProfile.Distilled, [new(Ion.Calcium, 150), new(Ion.Sulphate, 50)], [new(BrewingSalts.Gypsum, 2)]));
        Assert.Contains(solution.Misses, miss => miss is
        { Ion: Ion.Calcium, Reason: MissReason.OtherTargets, Limit: "Sulphate" });
    }

    [Fact]
    public void Acid_takes_alkalinity_to_its_target()
    {
        IonProfile hard = new(calcium: 100, bicarbonate: 305);
        SaltSolution solution = SaltSolver.Solve(new SaltPlan(
            hard, [new(Ion.Bicarbonate, 61.017)], [], [new(AcidAsSold.Find("lactic-88"), 2)]));
        // 4.00 mEq of 5.00 at 11.452 mEq/mL; the price moves it by 1e-4 mL.
        Assert.Equal(3.9987 / 11.452, Assert.Single(solution.Acids).UnitsPerLitre, 0.001);
        Assert.Empty(solution.Diagnoses);
    }

    [Fact]
    public void Acid_is_left_alone_when_alkalinity_has_no_target()
    {
        SaltSolution solution = SaltSolver.Solve(new SaltPlan(
            new IonProfile(calcium: 20, bicarbonate: 61), [new(Ion.Chloride, 150)], [],
            [new(AcidAsSold.Find("hydrochloric-10"), 5)]));
        Assert.Empty(solution.Acids);
        Assert.Equal(MissReason.NothingBringsIt, Assert.Single(solution.Misses).Reason);
    }

    [Fact]
    public void Chalk_is_offered_only_as_far_as_it_dissolves()
    {
        Assert.Equal(0.055, SaltSolver.UsualOffer(BrewingSalts.Chalk, IonProfile.Distilled).MostGramsPerLitre, 0.055 * 0.02);
        SaltSolution forced = SaltSolver.Solve(new SaltPlan(
            IonProfile.Distilled, [new(Ion.Bicarbonate, 300)], [new(BrewingSalts.Chalk, 1)]));
        Assert.Contains(forced.Diagnoses, each => each.Code == "liquor.chalkUndissolved");
    }

    [Fact]
    public void Weighable_amounts_are_multiples_of_the_step() => Plans.Sample((source, target, most, price) =>
    {
        SaltPlan plan = Plan(source, target, most, price);
        SaltSolution weighed = SaltSolver.SolveWeighable(plan, litres: 23, gramStep: 0.1);
        Assert.All(weighed.Salts, salt =>
        {
            double steps = salt.GramsPerLitre * 23 / 0.1;
            Assert.Equal(Math.Round(steps), steps, 1e-6);
        });
        Assert.True(weighed.Objective >= SaltSolver.Solve(plan).Objective - 1e-12);
    });

    [Fact]
    public void A_heavier_weight_never_leaves_its_ion_further_off() => Plans.Sample((source, target, most, price) =>
    {
        SaltPlan plan = Plan(source, target, most, price);
        SaltPlan heavier = plan with { Targets = [.. plan.Targets.Select((each, at) => at == 0 ? each with { Weight = 5 } : each)] };
        double Off(SaltPlan any) => Math.Abs(SaltSolver.Solve(any).Ions.Calcium - target[0]);
        return Off(heavier) <= Off(plan) + 1e-6;
    });

    [Theory]
    [InlineData(double.NaN, 1, 1)]
    [InlineData(-5, 1, 1)]
    [InlineData(50, -1, 1)]
    [InlineData(50, 1, double.NaN)]
    [InlineData(50, 1, double.PositiveInfinity)]
    public void Nonsense_is_refused(double target, double weight, double most) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SaltSolver.Solve(new SaltPlan(
            IonProfile.Distilled, [new(Ion.Calcium, target, weight)], [new(BrewingSalts.Gypsum, most)])));

    // Gypsum with magnesium chloride is calcium chloride with Epsom salt, ion for ion, and lighter: leave it out.
    private static bool NotMagnesiumChloride(BrewingSalt salt) => salt != BrewingSalts.MagnesiumChloride;

    private static double Grams(SaltSolution solution, BrewingSalt salt) =>
        solution.Salts.Single(found => found.Salt == salt).GramsPerLitre;

    private static SaltPlan Plan(double[] source, double[] target, double[] most, double price) => new(
        new IonProfile(source[0], source[1], source[2], 0, source[3], source[4], source[5]),
        [.. Wanted.Select((ion, at) => new IonTarget(ion, target[at]))],
        [.. Six.Select((salt, at) => new SaltOffer(salt, most[at], 0, price))]);

    private static SaltPlan Everything(double[] source, double[] target, double[] most, double share) => new(
        new IonProfile(source[0], source[1], source[2], 0, source[3], source[4], source[5]),
        [.. Wanted.Select((ion, at) => new IonTarget(ion, target[at]))],
        [.. BrewingSalts.All.Select((salt, at) => new SaltOffer(salt, most[at]))],
        [new(AcidAsSold.Find("lactic-88"), most[0]), new(AcidAsSold.Find("hydrochloric-10"), most[1]), new(AcidAsSold.Find("sulphuric-10"), most[2])],
        new DilutionOffer(IonProfile.Distilled, share));

    private static double[] Amounts(SaltPlan plan, SaltProblem problem, SaltSolution solution) =>
    [
        .. plan.Salts.Select(offer => solution.Salts.SingleOrDefault(found => found.Salt == offer.Salt)?.GramsPerLitre ?? 0),
        .. problem.Acids.Select(offer => solution.Acids.SingleOrDefault(found => found.Acid == offer.Acid)?.UnitsPerLitre ?? 0),
        solution.ShareDiluted,
    ];

    // Every salt either at its least, at its most or free: 3^6 cases, the free ones by elimination with pivots.
    private static double BruteForce(SaltPlan plan)
    {
        SaltProblem problem = new(plan);
        (double[,] hessian, double[] linear) = problem.Quadratic();
        double best = double.PositiveInfinity;
        for (int choice = 0; choice < 729; choice++)
        {
            double[] amounts = new double[6];
            List<int> free = [];
            for (int column = 0, rest = choice; column < 6; column++, rest /= 3)
            {
                amounts[column] = rest % 3 == 1 ? problem.High[column] : problem.Low[column];
                if (rest % 3 == 2)
                {
                    free.Add(column);
                }
            }

            if (Eliminate(hessian, linear, amounts, free)
                && Enumerable.Range(0, 6).All(at => amounts[at] >= problem.Low[at] - 1e-12 && amounts[at] <= problem.High[at] + 1e-12))
            {
                best = Math.Min(best, problem.Objective(amounts));
            }
        }

        return best;
    }

    private static bool Eliminate(double[,] hessian, double[] linear, double[] amounts, List<int> free)
    {
        int count = free.Count;
        double[][] rows = [.. free.Select(row => (double[])
        [
            .. free.Select(column => hessian[row, column]),
            -linear[row] - Enumerable.Range(0, 6).Where(at => !free.Contains(at)).Sum(at => hessian[row, at] * amounts[at]),
        ])];
        for (int pivot = 0; pivot < count; pivot++)
        {
            int largest = Enumerable.Range(pivot, count - pivot).MaxBy(row => Math.Abs(rows[row][pivot]));
            (rows[pivot], rows[largest]) = (rows[largest], rows[pivot]);
            if (Math.Abs(rows[pivot][pivot]) < 1e-9 * Math.Abs(hessian[free[pivot], free[pivot]]))
            {
                return false;
            }

            for (int row = 0; row < count; row++)
            {
                double factor = rows[row][pivot] / rows[pivot][pivot];
                for (int column = pivot; row != pivot && column <= count; column++)
                {
                    rows[row][column] -= factor * rows[pivot][column];
                }
            }
        }

        for (int at = 0; at < count; at++)
        {
            amounts[free[at]] = rows[at][count] / rows[at][at];
        }

        return true;
    }
}
