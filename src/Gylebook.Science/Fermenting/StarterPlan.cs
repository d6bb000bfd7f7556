using Gylebook.Science.Numerics;

namespace Gylebook.Science.Fermenting;

/// <summary>How a starter is kept.</summary>
public enum StarterHandling
{
    /// <summary>Left to stand, shaken now and then.</summary>
    Still,

    /// <summary>On a stirrer all the time.</summary>
    Stirred,
}

/// <summary>One step of a starter.</summary>
/// <param name="Litres">Wort, L.</param>
/// <param name="ExtractGrams">Extract in it, g.</param>
/// <param name="StartBillions">Living cells that go in, 10⁹.</param>
/// <param name="EndBillions">Cells at the end, 10⁹.</param>
public readonly record struct StarterStep(double Litres, double ExtractGrams, double StartBillions, double EndBillions);

/// <summary>Steps that bring so many cells to so many.</summary>
/// <remarks>
/// <para>Symbols: as in <see cref="StarterGrowth"/>. A step is at most ten times thinner than 100 million cells per mL
/// (10 million per mL), and no larger than the vessel.</para>
/// <para>Source: growth <see cref="StarterGrowth"/>; the dilution of five to ten a step is common practice, no source.</para>
/// <para>Valid for: as the growth models.</para>
/// <para>Accuracy: as the growth models, ±45 %; count if it matters.</para>
/// <para>Notes: the smallest starter that reaches the wish, found by halving; more steps only when one is not enough.</para>
/// </remarks>
/// <param name="Handling">How it is kept.</param>
/// <param name="Steps">The steps, in order; none when there are cells enough already.</param>
/// <param name="Reaches">Whether the last step reaches the wish.</param>
public sealed record StarterPlan(StarterHandling Handling, IReadOnlyList<StarterStep> Steps, bool Reaches)
{
    /// <summary>No more steps than this: whoever needs more buys more yeast.</summary>
    public const int MostSteps = 3;

    private const double ThinnestMillionsPerMillilitre = 10;
    private const double LitresClose = 0.005;

    /// <summary>Plans the steps.</summary>
    /// <param name="billions">Living cells there are, 10⁹.</param>
    /// <param name="wishedBillions">Cells wanted, 10⁹.</param>
    /// <param name="handling">How it is kept.</param>
    /// <param name="mostLitres">What the vessel takes, L; above 0, at most 20.</param>
    public static StarterPlan For(double billions, double wishedBillions, StarterHandling handling, double mostLitres)
    {
        Argument.MustNotBeNegative(billions);
        Argument.MustNotBeNegative(wishedBillions);
        Argument.MustBeWithin(mostLitres, 0.1, StarterGrowth.MostLitres);
        List<StarterStep> steps = [];
        double now = billions;
        while (now > 0 && now < wishedBillions && steps.Count < MostSteps)
        {
            double most = Math.Min(mostLitres, now / ThinnestMillionsPerMillilitre);
            StarterStep largest = Step(now, most, handling);
            steps.Add(largest.EndBillions < wishedBillions ? largest : Smallest(now, wishedBillions, most, handling));
            if (steps[^1].EndBillions <= now * (1 + 1e-9))
            {
                break;
            }

            now = steps[^1].EndBillions;
        }

        return new StarterPlan(handling, steps, now >= wishedBillions);
    }

    private static StarterStep Smallest(double billions, double wished, double most, StarterHandling handling)
    {
        Bracket litres = new Bracket(0, most).Halved(each => wished - Step(billions, each, handling).EndBillions, close: LitresClose);
        return Step(billions, litres.High, handling);
    }

    private static StarterStep Step(double billions, double litres, StarterHandling handling)
    {
        double grams = litres * StarterGrowth.ExtractGramsPerLitre;
        double end = handling == StarterHandling.Still ? StarterGrowth.Still(billions, litres) : StarterGrowth.Stirred(billions, grams);
        return new StarterStep(litres, grams, billions, end);
    }
}
