namespace Gylebook.Pictures.Courses;

/// <summary>A fermentation to be drawn: what was read, and where it goes. Days count from the pitch.</summary>
public sealed record CoursePicture
{
    /// <summary>What it is of, for those who hear it.</summary>
    public required string Title { get; init; }

    /// <summary>How the reader wants to see numbers.</summary>
    public required Shown Shown { get; init; }

    /// <summary>The last day that is drawn.</summary>
    public required double Days { get; init; }

    /// <summary>The day it is; null once the beer has left the fermenter.</summary>
    public double? Today { get; init; }

    /// <summary>Where it may go: 5, 50 and 95 % of the draws, SG.</summary>
    public IReadOnlyList<CourseSpan> Fan { get; init; } = [];

    /// <summary>How it was to go before it was read.</summary>
    public IReadOnlyList<(double Day, double Gravity)> Planned { get; init; } = [];

    /// <summary>What hands read.</summary>
    public IReadOnlyList<CourseMark> Read { get; init; } = [];

    /// <summary>What devices sent, a line each.</summary>
    public IReadOnlyList<IReadOnlyList<CourseMark>> Sent { get; init; } = [];

    /// <summary>How warm it was, °C.</summary>
    public IReadOnlyList<(double Day, double Celsius)> Warmth { get; init; } = [];

    /// <summary>When it is done; null where nobody can tell.</summary>
    public (CourseSpan Day, string Likely, string Between)? Done { get; init; }

    /// <summary>What happened, by day.</summary>
    public IReadOnlyList<(double Day, string Words)> Notes { get; init; } = [];
}

/// <summary>A band.</summary>
/// <param name="Day">When; unused where the day is itself the band.</param>
/// <param name="Low">5 %.</param>
/// <param name="Middle">50 %.</param>
/// <param name="High">95 %.</param>
public readonly record struct CourseSpan(double Day, double Low, double Middle, double High);

/// <summary>A gravity that was read.</summary>
/// <param name="Day">When.</param>
/// <param name="Gravity">SG.</param>
/// <param name="Doubt">Standard deviation, SG.</param>
/// <param name="IsOdd">Whether nobody should trust it.</param>
public readonly record struct CourseMark(double Day, double Gravity, double Doubt, bool IsOdd);
