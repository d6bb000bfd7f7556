using System.Runtime.CompilerServices;

namespace Gylebook.Science.Numerics.Distributions;

/// <summary>The 5, 50 and 95 % points of numbers in no order.</summary>
/// <param name="Low">Below it 5 % lie.</param>
/// <param name="Middle">Half of them.</param>
/// <param name="High">95 %.</param>
/// <remarks>
/// <para>Source: definition 5 of Hyndman and Fan, The American Statistician 50:361 (1996): the kth of n in order stands at
/// (k − 1/2)/n, with straight lines between, so that draws at the middles of n strata give the points of their own distribution. Found
/// by selection, not by sorting: Hoare, Communications of the ACM 4:321 (1961). Both from memory.</para>
/// <para>Notes: what is not a finite number counts as not there. None at all gives not a number.</para>
/// </remarks>
public readonly record struct Quantiles(double Low, double Middle, double High)
{
    /// <summary>Share of the draws on either side of a band.</summary>
    public const double Tail = 0.05;

    /// <summary>How wide the band is.</summary>
    public double Width => High - Low;

    /// <summary>The three points; the numbers are left in another order.</summary>
    public static Quantiles Of(Span<double> numbers)
    {
        Span<double> there = numbers[..KeepFinite(numbers)];
        if (there.Length == 0)
        {
            return new(double.NaN, double.NaN, double.NaN);
        }

        // What stands left and right of the middle afterwards holds the other two.
        (int cut, _) = PlaceOf(0.5, there.Length);
        double middle = At(there, 0, 0.5);
        return new(At(there, 0, Tail, cut + 1), middle, At(there, cut, 1 - Tail));
    }

    /// <summary>The point of a share of numbers of which those before <paramref name="from"/> are the least, and those from <paramref name="to"/> the most.</summary>
    private static double At(Span<double> numbers, int from, double share, int? to = null)
    {
        (int place, double beyond) = PlaceOf(share, numbers.Length);
        int end = to ?? numbers.Length;
        Select(numbers[from..end], place - from);
        if (beyond == 0)
        {
            return numbers[place];
        }

        double next = double.PositiveInfinity;
        foreach (double number in numbers[(place + 1)..Math.Max(end, place + 2)])
        {
            next = number < next ? number : next;
        }

        return numbers[place] + (beyond * (next - numbers[place]));
    }

    private static (int Place, double Beyond) PlaceOf(double share, int count)
    {
        double place = Math.Clamp((share * count) - 0.5, 0, count - 1);
        int whole = (int)place;
        return (whole, place - whole);
    }

    /// <summary>Brings the number that would stand there in order to its place, smaller ones before it and larger ones behind.</summary>
    private static void Select(Span<double> numbers, int place)
    {
        int low = 0, high = numbers.Length;
        while (high - low > 1)
        {
            Span<double> left = numbers[low..high];
            double pivot = MiddleOf(left[0], left[left.Length / 2], left[^1]);
            int below = Below(left, pivot);
            if (place < low + below)
            {
                high = low + below;
            }
            else if (below > 0)
            {
                low += below;
            }
            else if ((low += Below(left, Math.BitIncrement(pivot))) > place)
            {
                // The pivot is the least of them, and one like it stands there.
                return;
            }
        }
    }

    /// <summary>Brings the numbers below the pivot to the front.</summary>
    /// <returns>How many.</returns>
    /// <remarks>Without a branch: which side a number is on cannot be foretold, and a wrong guess takes longer than moving it.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static int Below(Span<double> numbers, double pivot)
    {
        int below = 0;
        for (int i = 0; i < numbers.Length; i++)
        {
            double number = numbers[i];
            numbers[i] = numbers[below];
            numbers[below] = number;
            below += Unsafe.BitCast<bool, byte>(number < pivot);
        }

        return below;
    }

    private static double MiddleOf(double a, double b, double c) => Math.Max(Math.Min(a, b), Math.Min(Math.Max(a, b), c));

    private static int KeepFinite(Span<double> numbers)
    {
        int kept = 0;
        foreach (double number in numbers)
        {
            if (double.IsFinite(number))
            {
                numbers[kept++] = number;
            }
        }

        return kept;
    }
}
