namespace Gylebook.Science.Numerics;

/// <summary>Two ends with a root of a falling function between them.</summary>
/// <remarks>
/// <para>Source: bisection, from memory: the half that the sign points to holds the root; each halving gives one binary digit. A root of a
/// continuous function is found by interpolation inside the bracket.</para>
/// <para>Valid for: a function above nought below its root and not above nought beyond it, continuous or not. Whoever has one that
/// rises hands in its negative.</para>
/// <para>Accuracy: the bracket's own width; halved until it can be halved no more, one step of a double.</para>
/// <para>Notes: which end the caller takes is the caller's meaning: <see cref="Low"/> does not reach the wish yet,
/// <see cref="High"/> does, <see cref="Middle"/> is nearest to both.</para>
/// </remarks>
public readonly record struct Bracket
{
    /// <summary>The bracket between two ends.</summary>
    /// <param name="low">The lower end, finite.</param>
    /// <param name="high">The upper end, finite; at least <paramref name="low"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An end is no finite number, or they are the wrong way round.</exception>
    public Bracket(double low, double high)
    {
        Low = Argument.MustBeWithin(low, double.MinValue, double.MaxValue);
        High = Argument.MustBeWithin(high, low, double.MaxValue);
    }

    /// <summary>The lower end: the root does not lie below it.</summary>
    public double Low { get; private init; }

    /// <summary>The upper end: the root does not lie above it.</summary>
    public double High { get; private init; }

    /// <summary>Halfway between.</summary>
    public double Middle => (Low + High) / 2;

    /// <summary>The bracket after so many halvings; sooner when it is narrow enough, or when no double lies between its ends.</summary>
    /// <param name="falling">The function. Its sign at the two ends is not asked: where it has one sign, an end is closed in on.</param>
    /// <param name="times">The most halvings.</param>
    /// <param name="close">A width that is narrow enough.</param>
    public Bracket Halved(Func<double, double> falling, int times = int.MaxValue, double close = 0)
    {
        ArgumentNullException.ThrowIfNull(falling);
        return Halved(new Told(falling), times, close);
    }

    /// <summary>The same for a function that is a value.</summary>
    public Bracket Halved<TFalling>(TFalling falling, int times = int.MaxValue, double close = 0)
        where TFalling : struct, IFalling
    {
        (double low, double high) = (Low, High);
        for (int halving = 0; halving < times && high - low > close; halving++)
        {
            double middle = (low + high) / 2;
            if (middle <= low || middle >= high)
            {
                break;
            }

            (low, high) = falling.At(middle) > 0 ? (middle, high) : (low, middle);
        }

        return new Bracket { Low = low, High = high };
    }

    /// <summary>The root of a continuous function to the last digit or two; false, and not a number, when it has one sign from end to end.</summary>
    /// <remarks>
    /// Inverse quadratic interpolation where the last three points allow it, else a halving: Chandrupatla 1997, Adv. Eng. Softw.
    /// 28:145-149, from memory. About ten looks at the function where halvings alone take fifty.
    /// </remarks>
    public bool TryRoot(Func<double, double> falling, out double root)
    {
        ArgumentNullException.ThrowIfNull(falling);
        (double newest, double other) = (Low, High);
        double atNewest = falling(newest), atOther = falling(other);
        if (!(atNewest >= 0 && atOther <= 0))
        {
            root = double.NaN;
            return false;
        }

        if (atNewest == 0 || atOther == 0)
        {
            root = atNewest == 0 ? newest : other;
            return true;
        }

        root = newest;
        for (double along = 0.5; newest + (along * (other - newest)) is var at && at != newest && at != other;)
        {
            double value = falling(at);
            (double before, double atBefore) = (newest, atNewest);
            if (value > 0 != atNewest > 0)
            {
                (before, atBefore, other, atOther) = (other, atOther, newest, atNewest);
            }

            (newest, atNewest) = (at, value);
            (root, double least) = Math.Abs(atOther) < Math.Abs(atNewest) ? (other, atOther) : (newest, atNewest);
            double closest = LastDigits * Math.Abs(root) / Math.Abs(other - newest);
            if (!(closest <= 0.5) || least == 0)
            {
                break;
            }

            along = Math.Clamp(Interpolated(newest, other, before, atNewest, atOther, atBefore), closest, 1 - closest);
        }

        return true;
    }

    /// <summary>The root of a smooth function; false, and not a number, when it has one sign from end to end.</summary>
    /// <param name="falling">The function.</param>
    /// <param name="start">Where the root is likely: inside, or it is moved there.</param>
    /// <param name="root">To the last digits.</param>
    /// <remarks>
    /// Newton's steps, and a halving wherever one leads out of the bracket or is not half of the step before: from memory. A step of
    /// 10⁻⁸ is the last, since what is left is of the order of its square. About four looks where interpolation takes twelve.
    /// </remarks>
    public bool TryRoot<TSlope>(TSlope falling, double start, out double root)
        where TSlope : struct, ISlope
    {
        (double low, double high) = (Low, High);
        root = Math.Clamp(start, low, high);
        for (double most = high - low; ;)
        {
            double value = falling.At(root, out double slope);
            (low, high) = value > 0 ? (root, high) : (low, root);
            double step = -value / slope;
            if (Math.Abs(step) <= most && root + step >= low && root + step <= high)
            {
                root += step;
                most = Math.Abs(step) / 2;
                if (most <= LastStep)
                {
                    return true;
                }
            }
            else
            {
                root = (low + high) / 2;
                most = (high - low) / 2;
                if (most <= LastStep)
                {
                    root = double.NaN;
                    return false;
                }
            }
        }
    }

    /// <summary>A step after which Newton's next would be rounding.</summary>
    private const double LastStep = 5e-9;

    /// <summary>A function told as a delegate.</summary>
    private readonly struct Told(Func<double, double> falling) : IFalling
    {
        public double At(double at) => falling(at);
    }

    /// <summary>Two steps of a double, relative to it.</summary>
    private const double LastDigits = 4.5e-16;

    /// <summary>How far from the newest point towards the other one a parabola through all three crosses nought; halfway where it cannot be trusted.</summary>
    private static double Interpolated(double newest, double other, double before, double atNewest, double atOther, double atBefore)
    {
        double x = (newest - other) / (before - other), f = (atNewest - atOther) / (atBefore - atOther);
        return f * f < x && (1 - f) * (1 - f) < 1 - x && atBefore != atNewest
            ? (atNewest / (atOther - atNewest) * (atBefore / (atOther - atBefore)))
                + ((before - newest) / (other - newest) * (atNewest / (atBefore - atNewest)) * (atOther / (atBefore - atOther)))
            : 0.5;
    }

    /// <summary>The root to the last digit.</summary>
    /// <param name="falling">The function.</param>
    /// <param name="sought">What is looked for, as it stands in the message: <c>"pH of the mash"</c>.</param>
    /// <exception cref="DidNotConvergeException">The function has one sign from end to end, or is no number there.</exception>
    public double Root(Func<double, double> falling, string sought) => TryRoot(falling, out double root)
        ? root
        : throw new DidNotConvergeException(sought, this, (falling(Low), falling(High)));

    /// <inheritdoc/>
    public override string ToString() => Invariant($"{Low:g6} to {High:g6}");
}
