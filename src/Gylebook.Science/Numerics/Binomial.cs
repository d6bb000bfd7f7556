namespace Gylebook.Science.Numerics;

/// <summary>How often something happens in so many tries that each have the same chance.</summary>
/// <remarks>
/// <para>P(X = k) = C(n, k)·pᵏ·(1 − p)ⁿ⁻ᵏ.</para>
/// <para>Source: the distribution itself; limits of a share: Clopper and Pearson, Biometrika 26:404 (1934), from memory.</para>
/// <para>Valid for: up to <see cref="MostTries"/> tries.</para>
/// <para>Accuracy: 1e-12 of the tail; the limits 1e-12.</para>
/// </remarks>
public static class Binomial
{
    /// <summary>Most tries.</summary>
    public const int MostTries = 100_000;

    /// <summary>Chance of that many or more.</summary>
    /// <param name="count">At least so many; at nought or below it is certain.</param>
    /// <param name="tries">Tries, from 0 up.</param>
    /// <param name="chance">Of each, 0 to 1.</param>
    public static double AtLeast(int count, int tries, double chance)
    {
        Check(tries, chance);
        return count <= 0 ? 1 : count > tries ? 0 : count > tries * chance ? Tail(count, tries, chance) : 1 - Tail(tries - count + 1, tries, 1 - chance);
    }

    /// <summary>Chance of that many or fewer.</summary>
    /// <param name="count">At most so many.</param>
    /// <param name="tries">Tries, from 0 up.</param>
    /// <param name="chance">Of each, 0 to 1.</param>
    public static double AtMost(int count, int tries, double chance) => AtLeast(tries - count, tries, 1 - chance);

    /// <summary>The chances between which the true one lies with a given confidence, whatever it is: exact, and so rather too wide than too narrow.</summary>
    /// <param name="count">How often it happened.</param>
    /// <param name="tries">In how many.</param>
    /// <param name="confidence">Above 0 and below 1; 0.90 leaves 5 % on either side.</param>
    public static (double Low, double High) Limits(int count, int tries, double confidence)
    {
        Argument.MustBeWithin(tries, 1, MostTries);
        Argument.MustBeWithin(count, 0, tries);
        Argument.MustBeWithin(confidence, double.Epsilon, double.BitDecrement(1));
        double side = (1 - confidence) / 2;
        Bracket whole = new(0, 1);
        double low = count == 0 ? 0 : whole.Halved(chance => side - AtLeast(count, tries, chance)).Middle;
        double high = count == tries ? 1 : whole.Halved(chance => AtMost(count, tries, chance) - side).Middle;
        return (low, high);
    }

    /// <summary>Sum from a count above the mean upwards, where each term is less than the one before.</summary>
    private static double Tail(int count, int tries, double chance)
    {
        if (chance <= 0 || chance >= 1)
        {
            return chance >= 1 ? 1 : 0;
        }

        double logarithm = (count * Math.Log(chance)) + ((tries - count) * Math.Log(1 - chance));
        for (int i = 1; i <= tries - count; i++)
        {
            logarithm += Math.Log((double)(count + i) / i);
        }

        double term = Math.Exp(logarithm), sum = 0, odds = chance / (1 - chance);
        for (int k = count; k <= tries && term > 0; k++)
        {
            sum += term;
            term *= (double)(tries - k) / (k + 1) * odds;
        }

        return Math.Min(1, sum);
    }

    private static void Check(int tries, double chance)
    {
        Argument.MustBeWithin(tries, 0, MostTries);
        Argument.MustBeWithin(chance, 0, 1);
    }
}
