using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Fermenting;

/// <summary>How a fermentation may go on.</summary>
public sealed record CourseFan
{
    /// <summary>Hours since pitching at which it is told.</summary>
    public required IReadOnlyList<double> Hours { get; init; }

    /// <summary>Gravity at each, SG: 5, 50 and 95 % points.</summary>
    public required IReadOnlyList<Quantiles> Gravities { get; init; }

    /// <summary>Gravity at the end, SG.</summary>
    public required Quantiles End { get; init; }

    /// <summary>Hours since pitching until it is done and stays so; infinity where a draw is not done in sixty days.</summary>
    public required Quantiles DoneHours { get; init; }

    /// <summary>Share of the draws that are done in sixty days.</summary>
    public required double DoneShare { get; init; }

    /// <summary>How far each reading lies from the middle of the fan, in its own standard deviations, the curves' misfit counted.</summary>
    public required IReadOnlyList<double> Off { get; init; }

    /// <summary>Whether the published course would not follow the readings, and a plain S-shaped curve was laid through them.</summary>
    public required bool IsLogistic { get; init; }

    /// <summary>Whether the temperatures lie where the published course was fitted, 8 to 16 °C.</summary>
    public required bool IsWithinPublishedRange { get; init; }
}
