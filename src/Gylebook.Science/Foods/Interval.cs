
namespace Gylebook.Science.Foods;

/// <summary>All values between two ends: guaranteed bounds, not a distribution.</summary>
/// <remarks>
/// <para>An end is closed (the value itself is possible) or open (it is not): "2 g" on a US panel means [1.5, 2.5),
/// since 2.5 would have been printed as 3. An open end stays open through every operation; where two intervals meet at
/// the same end, the open one wins; a sum's end is open when either of its terms' ends is.</para>
/// <para>Arithmetic rounds outwards: when the last bit of an end had to be rounded, it is rounded away from the
/// interval, so that a true value is never lost to floating point (directed rounding, as IEEE Std 1788-2015 asks of
/// interval arithmetic). Results that are exact stay exact.</para>
/// <para><c>default</c> is exactly zero. An interval whose ends have crossed is empty; that is a legal value, and means
/// that nothing fits.</para>
/// </remarks>
public readonly record struct Interval
{
    /// <summary>All values between the two ends.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An end is not a number.</exception>
    public Interval(double low, double high, bool lowIsOpen = false, bool highIsOpen = false)
    {
        if (double.IsNaN(low))
        {
            throw new ArgumentOutOfRangeException(nameof(low), low, "The lower end of an interval is not a number.");
        }

        if (double.IsNaN(high))
        {
            throw new ArgumentOutOfRangeException(nameof(high), high, "The upper end of an interval is not a number.");
        }

        (Low, High, LowIsOpen, HighIsOpen) = (low, high, lowIsOpen, highIsOpen);
    }

    /// <summary>The lower end.</summary>
    public double Low { get; }

    /// <summary>The upper end; may be positive infinity.</summary>
    public double High { get; }

    /// <summary>Whether the lower end itself is impossible.</summary>
    public bool LowIsOpen { get; }

    /// <summary>Whether the upper end itself is impossible.</summary>
    public bool HighIsOpen { get; }

    /// <summary>Zero or more: nothing is known but that it is not negative.</summary>
    public static Interval NotNegative { get; } = new(0, double.PositiveInfinity);

    /// <summary>One value, exactly.</summary>
    public static Interval Exactly(double value) => new(value, value);

    /// <summary>From the low end, itself included, up to but not including the high end.</summary>
    public static Interval HalfOpen(double low, double high) => new(low, high, highIsOpen: true);

    /// <summary>Whether no value fits.</summary>
    public bool IsEmpty => Low > High || (Low == High && (LowIsOpen || HighIsOpen));

    /// <summary>Distance between the ends; zero when empty.</summary>
    public double Width => IsEmpty ? 0 : High - Low;

    /// <summary>Whether that value is possible.</summary>
    public bool Contains(double value) =>
        (LowIsOpen ? value > Low : value >= Low) && (HighIsOpen ? value < High : value <= High);

    /// <summary>Whether every value of the other is possible here too.</summary>
    public bool Contains(Interval other) => other.IsEmpty || Intersect(other) == other;

    /// <summary>The value nearest to the given one, for a point estimate; an open end counts as reachable.</summary>
    /// <exception cref="InvalidOperationException">The interval is empty.</exception>
    public double Clip(double value) => IsEmpty
        ? throw new InvalidOperationException("No value lies in an empty interval.")
        : Math.Clamp(value, Low, High);

    /// <summary>What is possible in both.</summary>
    public Interval Intersect(Interval other)
    {
        bool lowIsOpen = Low == other.Low ? LowIsOpen || other.LowIsOpen : Low > other.Low ? LowIsOpen : other.LowIsOpen;
        bool highIsOpen = High == other.High
            ? HighIsOpen || other.HighIsOpen
            : High < other.High ? HighIsOpen : other.HighIsOpen;
        return new(Math.Max(Low, other.Low), Math.Min(High, other.High), lowIsOpen, highIsOpen);
    }

    /// <summary>Every sum of a value of each.</summary>
    public static Interval operator +(Interval left, Interval right) => new(
        Outwards.SumDown(left.Low, right.Low),
        Outwards.SumUp(left.High, right.High),
        left.LowIsOpen || right.LowIsOpen,
        left.HighIsOpen || right.HighIsOpen);

    /// <summary>Every difference of a value of each.</summary>
    public static Interval operator -(Interval left, Interval right) => new(
        Outwards.SumDown(left.Low, -right.High),
        Outwards.SumUp(left.High, -right.Low),
        left.LowIsOpen || right.HighIsOpen,
        left.HighIsOpen || right.LowIsOpen);

    /// <summary>Every value times a factor that is not negative.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The factor is negative, infinite or not a number.</exception>
    public Interval Scale(double factor)
    {
        Argument.MustNotBeNegative(factor);
        return factor == 0
            ? default
            : new(Outwards.ProductDown(Low, factor), Outwards.ProductUp(High, factor), LowIsOpen, HighIsOpen);
    }

    /// <summary>Every value over a positive divisor.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The divisor is not positive and finite.</exception>
    public Interval DivideBy(double divisor)
    {
        Argument.MustBePositive(divisor);
        return new(Outwards.QuotientDown(Low, divisor), Outwards.QuotientUp(High, divisor), LowIsOpen, HighIsOpen);
    }

    /// <summary>As written in mathematics: <c>[1.5, 2.5)</c>.</summary>
    public override string ToString() => IsEmpty
        ? "nothing"
        : Invariant($"{(LowIsOpen ? '(' : '[')}{Low:0.###}, {High:0.###}{(HighIsOpen ? ')' : ']')}");
}
