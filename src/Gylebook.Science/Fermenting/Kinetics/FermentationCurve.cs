using Gylebook.Science.Liquids;
using Gylebook.Science.Numerics;

namespace Gylebook.Science.Fermenting.Kinetics;

/// <summary>Gravity of a fermenting beer from pitching to its end. The end is given; <see cref="GrowthModel"/> gives the way there.</summary>
/// <remarks>
/// <para>SG(t) = SGₑ + (SG₀ − SGₑ)·m(t)/m(0), m the mass of glucose, maltose and maltotriose left.</para>
/// <para>Symbols: SG₀, SGₑ gravity at pitching and at the end. The sugar that must ferment between the two is Balling's, split by shares; the yeast takes it
/// up as in <see cref="GrowthModel"/>, crowding counted, with five things of our own. <em>Pace</em> k multiplies every V; the <em>pace on maltotriose</em> q
/// multiplies V_N besides; <em>lag</em> L (h): of the yeast 1 − e^(−t/L) is awake, as the lag of <c>andres-toro-1998</c> and the delay of 1994 have it;
/// <em>tail</em> s multiplies K_M and K_N, V made smaller so that the pace at the start is kept: 1 is the papers' curve, which slows as sugar gets
/// scarce, towards 0 it is a straight fall to the end, as in <c>andres-toro-1998</c>; and pitched cells stand for the model's moles in proportion:
/// fewer cells at a higher pace make the curve steeper later on.</para>
/// <para>Source: <c>growth-model</c>; the five are ours (judged), so that one family of curves holds published models that contradict each other.</para>
/// <para>Valid for: 8 to 16 °C; beyond, the papers' constants are carried on and <see cref="IsWithinPublishedRange"/> says so. Worts of 1.020 to 1.120.</para>
/// <para>Accuracy: as a forecast, poor: nobody's yeast is the papers'. It is a shape to be fitted to readings; how far that goes is in
/// <c>docs/science/fermentation-course.md</c>. A straight line between sugar and gravity is within 0.3 points of Balling's. Steps are kept to
/// 0.01 % of the sugar.</para>
/// <para>Notes: sugar below 10⁻³ mol/m³ counts as gone, or a fermentation at 30 °C would take a hundred thousand steps.</para>
/// </remarks>
public readonly record struct FermentationCurve
{
    /// <summary>Where the search for the end gives up: 60 days.</summary>
    public const double LatestHours = 1440;

    /// <summary>Yeast of the papers' examples, mol/m³, and the cells we take for it, million/mL: a lager pitched at 1.5 a °P into 12 °P (judged, the papers count none).</summary>
    public const double UsualYeast = 125, UsualMillionCells = 18;

    private const double Tolerance = 1e-4, Scale = 1, Gone = 1e-3;
    private const int Halvings = 30;

    /// <summary>Gravity at pitching, SG, without what goes in later.</summary>
    public required double StartGravity { get; init; }

    /// <summary>Gravity that it comes to in the end, SG.</summary>
    public required double EndGravity { get; init; }

    /// <summary>k, a factor of every V; 1 is the papers' yeast.</summary>
    public double Pace { get; init; } = 1;

    /// <summary>L, hours until the yeast is awake, on average; 0 for at once.</summary>
    public double LagHours { get; init; }

    /// <summary>s, above 0 and up to 1: how much of the papers' slow end there is.</summary>
    public double Tail { get; init; } = 1;

    /// <summary>q, a factor of V_N alone; 1 is the papers' yeast, which is slow with maltotriose.</summary>
    public double MaltotriosePace { get; init; } = 1;

    /// <summary>Kelvins that the beer is warmer than its course says.</summary>
    public double WarmerBy { get; init; }

    /// <summary>Cells pitched, million a mL.</summary>
    public double MillionCells { get; init; } = UsualMillionCells;

    /// <summary>By how much sugar that goes in on the way raises the gravity, SG, from 0 up. It counts as glucose: yeast splits sucrose before it takes it.</summary>
    public double AddedGravity { get; init; }

    /// <summary>When it goes in, hours after the pitch: the yeast is as many by then as it has grown to.</summary>
    public double AddedHours { get; init; }

    /// <summary>What the sugar is made of.</summary>
    public SugarShares Sugars { get; init; } = SugarShares.OfMaltWort;

    /// <summary>A curve whose ends are to be named.</summary>
    public FermentationCurve()
    {
    }

    /// <summary>Whether the papers' fit reaches all temperatures of a course: 8 to 16 °C.</summary>
    public static bool IsWithinPublishedRange(TemperatureCourse temperature) =>
        UptakeConstants.IsWithinPublishedRange(temperature.Coldest) && UptakeConstants.IsWithinPublishedRange(temperature.Warmest);

    /// <summary>Gravity at a few hours, and when it is nearly at its end. Allocates nothing.</summary>
    /// <param name="temperature">Of the beer.</param>
    /// <param name="hours">When, rising, from 0 up to <see cref="LatestHours"/>.</param>
    /// <param name="gravities">Written over, SG, one for each hour.</param>
    /// <param name="within">How near the end counts as there, in SG (0.001 is a point); above 0.</param>
    /// <returns>The first hour from which on it is that near; infinity when that is later than <see cref="LatestHours"/>.</returns>
    public double Follow(TemperatureCourse temperature, ReadOnlySpan<double> hours, Span<double> gravities, double within)
    {
        Argument.MustBePositive(within);
        double fall = StartGravity - EndGravity, enough = within / fall;
        SugarsAndYeast start = Sugars.Of(FermentableGramsPerLitre(), UsualYeast * MillionCells / UsualMillionCells);
        if (!(fall > 0))
        {
            gravities[..hours.Length].Fill(StartGravity);
            return fall <= 0 ? 0 : double.NaN;
        }

        double all = SugarShares.Grams(start.Glucose, start.Maltose, start.Maltotriose), there = fall <= within && AddedGravity <= 0 ? 0 : double.PositiveInfinity;
        Span<double> room = stackalloc double[DormandPrince.RoomFor(GrowthRates.Figures)];
        DormandPrince<GrowthRates> along = new(
            Rates(temperature, start), 0, [start.Glucose, start.Maltose, start.Maltotriose, start.Yeast], room, Tolerance, Scale);
        int next = 0;
        for (; next < hours.Length && hours[next] <= 0; next++)
        {
            gravities[next] = StartGravity;
        }

        bool isAdded = AddedGravity <= 0;
        while ((next < hours.Length || double.IsInfinity(there)) && along.At < LatestHours)
        {
            if (!isAdded && along.At >= AddedHours)
            {
                isAdded = true;
                along.State[0] += SugarShares.MolesOfGlucose(all * AddedGravity / fall);
                along.Restart();
            }

            if (!along.TryStep(isAdded ? LatestHours : Math.Min(AddedHours, LatestHours)))
            {
                break;
            }

            for (; next < hours.Length && hours[next] <= along.At; next++)
            {
                gravities[next] = EndGravity + (fall * Math.Max(0, Left(along, hours[next]) / all));
            }

            if (isAdded && double.IsInfinity(there) && Left(along, along.At) <= enough * all)
            {
                there = Crossing(along, enough * all);
            }

            DropWhatIsGone(ref along);
        }

        gravities[next..hours.Length].Fill(double.NaN);
        return there;
    }

    /// <summary>Sugar that ferments between the two gravities, by Balling, g/L.</summary>
    private double FermentableGramsPerLitre()
    {
        double original = SucroseSolution.PlatoAt(StartGravity), real = Balling.RealExtractOf(original, SucroseSolution.PlatoAt(EndGravity));
        double share = original > 0 ? Balling.ExtractFermented((original - real) / original, real) : 0;
        return Math.Max(0, share) * original * 10 * SucroseSolution.KilogramsPerLitreOfGravity(StartGravity);
    }

    private GrowthRates Rates(TemperatureCourse temperature, in SugarsAndYeast start)
    {
        double constant = Math.Clamp(temperature.CelsiusAt(0) + WarmerBy, TemperatureCourse.LeastCelsius, TemperatureCourse.MostCelsius);
        GrowthRates rates = temperature.IsConstant
            ? new(UptakeConstants.At(constant), start.Yeast, isCrowded: true)
            : new(temperature, start.Yeast, isCrowded: true);
        return (rates with
        {
            Pace = Pace,
            LagHours = LagHours,
            WarmerBy = WarmerBy,
            Tail = Tail,
            MaltotriosePace = MaltotriosePace,
            Offered = (start.Maltose, start.Maltotriose),
        }).Ready();
    }

    /// <summary>Sugar left at a time inside the last step, g/L.</summary>
    private static double Left(in DormandPrince<GrowthRates> along, double at) =>
        SugarShares.Grams(Math.Max(0, along.Inside(0, at)), Math.Max(0, along.Inside(1, at)), Math.Max(0, along.Inside(2, at)));

    private static double Crossing(in DormandPrince<GrowthRates> along, double enough)
    {
        (double low, double high) = (along.Before, along.At);
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Left(along, middle) > enough ? (middle, high) : (low, middle);
        }

        return high;
    }

    private static void DropWhatIsGone(ref DormandPrince<GrowthRates> along)
    {
        bool dropped = false;
        foreach (ref double sugar in along.State[..(GrowthRates.Figures - 1)])
        {
            if (sugar != 0 && sugar < Gone)
            {
                sugar = 0;
                dropped = true;
            }
        }

        if (dropped)
        {
            along.Restart();
        }
    }
}
