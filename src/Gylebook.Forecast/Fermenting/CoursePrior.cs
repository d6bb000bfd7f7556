using Gylebook.Science.Fermenting.Kinetics;

namespace Gylebook.Forecast.Fermenting;

/// <summary>What is known of a fermentation before it is read.</summary>
public sealed record CoursePrior
{
    /// <summary>Gravity with all that goes in, SG, draw by draw: at pitching, where nothing goes in later.</summary>
    public required IReadOnlyList<double> StartGravities { get; init; }

    /// <summary>Gravity at the end, SG, for the same draws.</summary>
    public required IReadOnlyList<double> EndGravities { get; init; }

    /// <summary>By how much what goes in on the way raises the gravity, SG, from 0 up: at pitching it is lower by that.</summary>
    public double Added { get; init; }

    /// <summary>When it goes in, hours since pitching; nothing is said of it where nothing does.</summary>
    public double AddedHours { get; init; }

    /// <summary>Temperature of the beer, read or planned.</summary>
    public required TemperatureCourse Temperature { get; init; }

    /// <summary>Cells pitched, million a mL.</summary>
    public double MillionCells { get; init; } = FermentationCurve.UsualMillionCells;

    /// <summary>By how much one instrument shows too much or too little in all its readings, standard deviation, SG.</summary>
    public double InstrumentOffset { get; init; }

    /// <summary>How near the end counts as done, SG. Two points, 0.5 °P: the trade's rule for a beer at its limit (common practice).</summary>
    public double Within { get; init; } = 0.002;
}
