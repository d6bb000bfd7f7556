using Gylebook.Science.Numerics;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Science.Senses;

/// <summary>What the answers of a tasting say: counts that show a difference, how sure, and how many tasters it would take.</summary>
/// <remarks>
/// <para>X right answers of n are binomial with p₀ when nobody tells the beers apart. Critical count: the least k with P(X ≥ k | p₀) ≤ α. Those who tell always
/// answer right and the others guess: p = p_d + (1 − p_d)·p₀.</para>
/// <para>Symbols: n answers, one a taster; α risk of seeing a difference that is none; β risk of missing one; p_d share of people who tell.</para>
/// <para>Source: ISO 4120, ISO 10399 and ISO 5495, from memory; the counts <c>fao-v7180e</c>; limits of a share Clopper and Pearson 1934.</para>
/// <para>Valid for: answers that know nothing of each other: one taster, one answer. Several rounds of few tasters are not so many tasters.</para>
/// <para>Accuracy: exact.</para>
/// <para>Notes: no difference shown is not no difference: a dozen tasters find only large ones. For <see cref="TasteTest.PairedEitherWay"/> a right answer is one for the
/// beer that got more.</para>
/// </remarks>
public static class TasteTests
{
    /// <summary>So many tasters in a row must have the power, since it goes up and down with whole counts.</summary>
    private const int InARow = 4;

    /// <summary>The largest panel that is looked at.</summary>
    private const int LargestPanel = 2000;

    /// <summary>Chance of a right answer by guessing.</summary>
    public static double Chance(TasteTest test) => test switch
    {
        TasteTest.Triangle or TasteTest.ThreeAlternatives => 1.0 / 3,
        TasteTest.DuoTrio or TasteTest.Paired or TasteTest.PairedEitherWay => 0.5,
        _ => throw new ArgumentOutOfRangeException(nameof(test), test, "test must be one of the named tests."),
    };

    /// <summary>Fewest right answers that show a difference; null where not even all of them would.</summary>
    /// <param name="test">How it is asked.</param>
    /// <param name="tasters">Answers, from 1 up.</param>
    /// <param name="risk">α, above 0 and below 1.</param>
    public static int? CriticalCount(TasteTest test, int tasters, double risk)
    {
        CheckTasters(tasters);
        CheckShare(risk, nameof(risk));
        for (int count = (int)(tasters * Chance(test)); count <= tasters; count++)
        {
            if (ByChance(test, count, tasters) <= risk)
            {
                return count;
            }
        }

        return null;
    }

    /// <summary>Chance of so many right answers or more when nobody tells the beers apart.</summary>
    /// <param name="test">How it is asked.</param>
    /// <param name="right">Right answers; for <see cref="TasteTest.PairedEitherWay"/> those for either beer.</param>
    /// <param name="tasters">Answers, from 1 up.</param>
    public static double ByChance(TasteTest test, int right, int tasters)
    {
        CheckTasters(tasters);
        Argument.MustBeWithin(right, 0, tasters);
        return test == TasteTest.PairedEitherWay
            ? Math.Min(1, 2 * Binomial.AtLeast(Math.Max(right, tasters - right), tasters, 0.5))
            : Binomial.AtLeast(right, tasters, Chance(test));
    }

    /// <summary>Share of people who tell the beers apart, with the limits that hold it; none below nought.</summary>
    /// <param name="test">How it was asked.</param>
    /// <param name="right">Right answers.</param>
    /// <param name="tasters">Answers, from 1 up.</param>
    /// <param name="confidence">Of the limits together, above 0 and below 1.</param>
    public static Quantiles WhoTell(TasteTest test, int right, int tasters, double confidence = 0.90)
    {
        CheckTasters(tasters);
        int counted = test == TasteTest.PairedEitherWay ? Math.Max(right, tasters - right) : right;
        (double low, double high) = Binomial.Limits(counted, tasters, confidence);
        double chance = Chance(test);
        double Share(double answers) => Math.Max(0, (answers - chance) / (1 - chance));
        return new(Share(low), Share((double)counted / tasters), Share(high));
    }

    /// <summary>Chance of a right answer when that share of people tell the beers apart and the others guess.</summary>
    /// <param name="test">How it is asked.</param>
    /// <param name="whoTell">p_d, 0 to 1.</param>
    public static double RightWhen(TasteTest test, double whoTell)
    {
        Argument.MustBeWithin(whoTell, 0, 1);
        return whoTell + ((1 - whoTell) * Chance(test));
    }

    /// <summary>Chance that a panel shows a difference.</summary>
    /// <param name="test">How it is asked.</param>
    /// <param name="tasters">Answers, from 1 up.</param>
    /// <param name="risk">α, above 0 and below 1.</param>
    /// <param name="right">Chance of a right answer, by <see cref="RightWhen"/> or <see cref="Thurstone.Right"/>.</param>
    public static double Power(TasteTest test, int tasters, double risk, double right)
    {
        Argument.MustBeWithin(right, 0, 1);
        return CriticalCount(test, tasters, risk) is { } critical ? Binomial.AtLeast(critical, tasters, right) : 0;
    }

    /// <summary>Fewest tasters from which on, four panels in a row, a difference is shown with that power; null where 2,000 are too few.</summary>
    /// <param name="test">How it is asked.</param>
    /// <param name="power">1 − β, above 0 and below 1.</param>
    /// <param name="risk">α, above 0 and below 1.</param>
    /// <param name="right">Chance of a right answer.</param>
    public static int? TastersFor(TasteTest test, double power, double risk, double right)
    {
        CheckShare(power, nameof(power));
        for (int tasters = 1, held = 0; tasters <= LargestPanel; tasters++)
        {
            held = Power(test, tasters, risk, right) >= power ? held + 1 : 0;
            if (held == InARow)
            {
                return tasters - InARow + 1;
            }
        }

        return null;
    }

    /// <summary>Most right answers that show the beers alike: that no more than a share of people tell them apart. Null where no count does.</summary>
    /// <param name="test">How it is asked.</param>
    /// <param name="tasters">Answers, from 1 up.</param>
    /// <param name="missed">β, the risk of calling them alike when that share tells, above 0 and below 1.</param>
    /// <param name="whoTell">p_d, above 0.</param>
    public static int? AlikeUpTo(TasteTest test, int tasters, double missed, double whoTell)
    {
        CheckTasters(tasters);
        CheckShare(missed, nameof(missed));
        double right = RightWhen(test, whoTell);
        int count = -1;
        while (count < tasters && Binomial.AtMost(count + 1, tasters, right) <= missed)
        {
            count++;
        }

        return count < 0 ? null : count;
    }

    private static void CheckTasters(int tasters) => Argument.MustBeWithin(tasters, 1, Binomial.MostTries);

    private static void CheckShare(double share, string name)
    {
        if (!(share > 0 && share < 1))
        {
            Argument.Refused(name, share, "must be above 0 and below 1");
        }
    }
}
