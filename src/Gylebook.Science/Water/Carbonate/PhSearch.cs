
namespace Gylebook.Science.Water;

/// <summary>Finds the pH at which a balance that falls with pH is zero.</summary>
internal static class PhSearch
{
    private const double Lowest = 0;
    private const double Highest = 14;

    /// <summary>Halves the range from pH 0 to 14 until it can be halved no more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The balance has one sign from 0 to 14: no such liquid can be.</exception>
    internal static double WhereZero(Func<double, double> falling)
    {
        double low = Lowest, high = Highest;
        double atLow = falling(low), atHigh = falling(high);
        if (!(atLow >= 0 && atHigh <= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(falling), Invariant($"No pH from 0 to 14 balances: {atLow:g4} mEq left at 0 and {atHigh:g4} at 14."));
        }

        while (true)
        {
            double middle = (low + high) / 2;
            if (middle <= low || middle >= high)
            {
                return middle;
            }

            if (falling(middle) > 0)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }
    }
}
