using Gylebook.Science.Numerics;

namespace Gylebook.Science.Fermenting.Kinetics;

/// <summary>The equations of <see cref="GrowthModel"/>: glucose, maltose, maltotriose and yeast, mol/m³, by the hour.</summary>
/// <remarks>
/// Ethanol follows from the sugars and is not carried. Beyond the papers there are two things, both nothing unless set: yeast that wakes,
/// and a tail that is shortened; <see cref="FermentationCurve"/> says what for.
/// </remarks>
internal struct GrowthRates : IRates
{
    /// <summary>Sugars and yeast.</summary>
    public const int Figures = 4;

    private readonly TemperatureCourse? _course;
    private readonly double _pitched;
    private readonly double _crowding;
    private UptakeConstants _constants;

    /// <summary>At one temperature.</summary>
    public GrowthRates(in UptakeConstants constants, double pitched, bool isCrowded)
    {
        _constants = constants;
        _pitched = pitched;
        _crowding = isCrowded ? GrowthModel.Crowding : double.PositiveInfinity;
    }

    /// <summary>Along a course of temperature.</summary>
    public GrowthRates(TemperatureCourse course, double pitched, bool isCrowded)
        : this(UptakeConstants.At(course.CelsiusAt(0)), pitched, isCrowded) => _course = course.IsConstant ? null : course;

    /// <summary>A factor of all V.</summary>
    public double Pace { get; init; } = 1;

    /// <summary>Hours in which the yeast wakes, on average; 0 for at once.</summary>
    public double LagHours { get; init; }

    /// <summary>Kelvins that the beer is warmer than the course says.</summary>
    public double WarmerBy { get; init; }

    /// <summary>A factor of V_N alone.</summary>
    public double MaltotriosePace { get; init; } = 1;

    /// <summary>What is left of K_M and K_N, the pace at the start kept; 1 for all.</summary>
    public double Tail { get; init; } = 1;

    /// <summary>Maltose and maltotriose at pitching, mol/m³, which the tail is shortened for.</summary>
    public (double Maltose, double Maltotriose) Offered { get; init; }

    /// <summary>Takes the constants of the temperature and what was set.</summary>
    public GrowthRates Ready()
    {
        if (_course is null)
        {
            _constants = Shortened(_constants);
        }

        return this;
    }

    /// <inheritdoc/>
    public readonly void Change(double at, ReadOnlySpan<double> state, Span<double> change)
    {
        UptakeConstants c = _course is null ? _constants : Shortened(UptakeConstants.At(Celsius(_course.CelsiusAt(at))));
        double g = Math.Max(0, state[0]), m = Math.Max(0, state[1]), n = Math.Max(0, state[2]), x = state[3];
        double freeOfGlucose = c.GlucoseRepresses / (c.GlucoseRepresses + g);
        double first = c.Glucose * g / (c.HalfGlucose + g);
        double second = c.Maltose * m / (c.HalfMaltose + m) * freeOfGlucose;
        double third = c.Maltotriose * n / (c.HalfMaltotriose + n) * freeOfGlucose * c.MaltoseRepresses / (c.MaltoseRepresses + m);
        double active = Pace * x * (LagHours > 0 ? 1 - Math.Exp(-at / LagHours) : 1);
        double grown = x - _pitched;
        change[0] = -first * active;
        change[1] = -second * active;
        change[2] = -third * active;
        change[3] = GrowthModel.YeastYield * (first + (2 * second) + (3 * third)) * active / (1 + (grown * grown / _crowding));
    }

    private readonly double Celsius(double planned) =>
        Math.Clamp(planned + WarmerBy, TemperatureCourse.LeastCelsius, TemperatureCourse.MostCelsius);

    private readonly UptakeConstants Shortened(in UptakeConstants c) => c with
    {
        Maltose = c.Maltose * ((Tail * c.HalfMaltose) + Offered.Maltose) / (c.HalfMaltose + Offered.Maltose),
        HalfMaltose = Tail * c.HalfMaltose,
        Maltotriose = MaltotriosePace * c.Maltotriose * ((Tail * c.HalfMaltotriose) + Offered.Maltotriose) / (c.HalfMaltotriose + Offered.Maltotriose),
        HalfMaltotriose = Tail * c.HalfMaltotriose,
    };
}
