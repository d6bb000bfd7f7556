using Gylebook.Science.Data;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Science.Fermenting.Kinetics;

/// <summary>How far a brewer's fermentation may be from the published one, before any reading.</summary>
/// <remarks>
/// <para>Median of the lag (h) = 1/μ_L, ln μ_L = 30.72 − 9501.54/T, T in K: the mean time in which cells wake.</para>
/// <para>Source: <c>data/fermenting/course-priors.csv</c>, each row with its own; the lag <c>andres-toro-1998</c>.</para>
/// <para>Valid for: the lag 8 to 24 °C, that paper's isotherms.</para>
/// <para>Accuracy: no home brewer's series of fermentations was found to measure these widths against.</para>
/// </remarks>
public static class CourseWidths
{
    private static readonly CsvTable Table = CsvTable.Published("course-priors.csv");

    /// <summary>Of the pace, about the papers' yeast.</summary>
    public static Distribution Pace { get; } = Read("pace");

    /// <summary>Of the tail.</summary>
    public static Distribution Tail { get; } = Read("tail");

    /// <summary>Of the pace on maltotriose, besides.</summary>
    public static Distribution MaltotriosePace { get; } = Read("maltotriosePace");

    /// <summary>Of the yeast that works, as a factor of the cells pitched.</summary>
    public static Distribution Pitched { get; } = Read("pitched");

    /// <summary>Of the beer's own temperature above the one told, K.</summary>
    public static Distribution Warmer { get; } = Read("warmer");

    /// <summary>Of the glucose over the maltose, as a factor of the usual ratio.</summary>
    public static Distribution Glucose { get; } = Read("glucose");

    /// <summary>Of the maltotriose over the maltose, as a factor of the usual ratio.</summary>
    public static Distribution Maltotriose { get; } = Read("maltotriose");

    /// <summary>What the best curve of the family still is off from another course, standard deviation, SG.</summary>
    public static double Misfit { get; } = Read("misfit").Spread;

    /// <summary>Of the lag at a temperature, h.</summary>
    /// <param name="celsius">Of the beer when it is pitched.</param>
    public static Distribution Lag(double celsius)
    {
        double kelvins = Argument.MustBeWithin(celsius, TemperatureCourse.LeastCelsius, TemperatureCourse.MostCelsius) + 273.15;
        return Read("lag", Math.Exp((9501.54 / kelvins) - 30.72));
    }

    private static Distribution Read(string id, double? median = null)
    {
        CsvRow row = Table.Rows.Single(row => row.Text("id") == id);
        return new(
            Enum.Parse<Family>(row.Text("family"), ignoreCase: true), median ?? row.Number("median"), row.NumberOrNull("spread") ?? 0,
            row.NumberOrNull("low") ?? double.NegativeInfinity, row.NumberOrNull("high") ?? double.PositiveInfinity);
    }
}
