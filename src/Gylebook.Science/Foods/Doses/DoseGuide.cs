namespace Gylebook.Science.Foods.Doses;

/// <summary>How a dose compares with what brewers usually take.</summary>
public enum DoseVerdict
{
    /// <summary>Nobody has told a range.</summary>
    Unknown,

    /// <summary>Less than the low end: it may not be tasted.</summary>
    Below,

    /// <summary>Within the range.</summary>
    Usual,

    /// <summary>More than the high end.</summary>
    Above,
}

/// <summary>The usual range of a food family, grams per litre of finished beer, and a dose against it.</summary>
/// <remarks>
/// <para>What: grams per litre against low, typical and high.</para>
/// <para>Source: common practice, no source; the ranges are in <c>data/food-families.csv</c>.</para>
/// <para>Valid for: the family as a whole: a strong kind of it wants less.</para>
/// <para>Accuracy: taste. A bench trial says more.</para>
/// </remarks>
/// <param name="GramsPerLitre">The brewer's amount.</param>
/// <param name="Low">A small dose; null when unknown.</param>
/// <param name="Typical">A usual dose; null when unknown.</param>
/// <param name="High">A large dose; null when unknown.</param>
public sealed record DoseGuide(double GramsPerLitre, double? Low, double? Typical, double? High)
{
    /// <summary>Who says so.</summary>
    public const string Source = "common practice, no source";

    /// <summary>Where the dose lies.</summary>
    public DoseVerdict Verdict =>
        GramsPerLitre < Low ? DoseVerdict.Below
        : GramsPerLitre > High ? DoseVerdict.Above
        : Low is null || High is null ? DoseVerdict.Unknown
        : DoseVerdict.Usual;
}
