namespace Gylebook.Science.Fermenting.Kinetics;

/// <summary>Temperature of a fermenting beer by the hour: straight lines between what was set or read, and level beyond both ends.</summary>
public sealed class TemperatureCourse
{
    /// <summary>Coldest and warmest that a course may name, °C.</summary>
    public const double LeastCelsius = -5, MostCelsius = 50;

    private readonly double[] _hours;
    private readonly double[] _celsius;

    private TemperatureCourse(double[] hours, double[] celsius) => (_hours, _celsius) = (hours, celsius);

    /// <summary>Whether it is one temperature throughout.</summary>
    public bool IsConstant => _hours.Length == 1;

    /// <summary>The coldest it gets, °C.</summary>
    public double Coldest => _celsius.Min();

    /// <summary>The warmest it gets, °C.</summary>
    public double Warmest => _celsius.Max();

    /// <summary>One temperature throughout.</summary>
    /// <param name="celsius">From <see cref="LeastCelsius"/> to <see cref="MostCelsius"/>.</param>
    public static TemperatureCourse Constant(double celsius) => new([0], [Argument.MustBeWithin(celsius, LeastCelsius, MostCelsius)]);

    /// <summary>Temperatures by the hour since pitching.</summary>
    /// <param name="points">At least one, hours rising.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is none, the hours do not rise, or a temperature is out of its limits.</exception>
    public static TemperatureCourse Of(IReadOnlyList<(double Hours, double Celsius)> points)
    {
        ArgumentOutOfRangeException.ThrowIfZero(points.Count, nameof(points));
        for (int i = 0; i < points.Count; i++)
        {
            Argument.MustBeWithin(points[i].Hours, i == 0 ? double.MinValue : double.BitIncrement(points[i - 1].Hours), double.MaxValue, "hours");
            Argument.MustBeWithin(points[i].Celsius, LeastCelsius, MostCelsius, "celsius");
        }

        return new([.. points.Select(point => point.Hours)], [.. points.Select(point => point.Celsius)]);
    }

    /// <summary>The temperature at an hour, °C.</summary>
    public double CelsiusAt(double hours)
    {
        int after = Array.BinarySearch(_hours, hours);
        if (after >= 0)
        {
            return _celsius[after];
        }

        after = ~after;
        if (after == 0 || after == _hours.Length)
        {
            return _celsius[after == 0 ? 0 : ^1];
        }

        double along = (hours - _hours[after - 1]) / (_hours[after] - _hours[after - 1]);
        return _celsius[after - 1] + (along * (_celsius[after] - _celsius[after - 1]));
    }
}
