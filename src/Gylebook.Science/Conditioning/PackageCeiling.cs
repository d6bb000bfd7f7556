using Gylebook.Science.Data;

namespace Gylebook.Science.Conditioning;

/// <summary>How much gas a kind of package is commonly trusted with.</summary>
/// <remarks>
/// <para>Source: <c>data/conditioning/package-ceilings.csv</c>: common practice, no source. Ratings of glass are for new bottles; stay at a third of them.</para>
/// <para>Notes: custom, not a rating. What is written on the package, or its maker says, goes first; scratches and heat are behind most accidents.</para>
/// </remarks>
/// <param name="Id">Its row.</param>
/// <param name="Name">Its name.</param>
/// <param name="LowVolumes">What careful opinion allows, volumes: to be planned for.</param>
/// <param name="HighVolumes">What bold opinion allows; null where none names an end.</param>
public sealed record PackageCeiling(string Id, string Name, double LowVolumes, double? HighVolumes)
{
    /// <summary>The kinds.</summary>
    public static IReadOnlyList<PackageCeiling> All { get; } =
    [
        .. CsvTable.Published("package-ceilings.csv").Rows.Select(row => new PackageCeiling(
            row.Required("id"), row.Required("name"), row.Number("low"), row.NumberOrNull("high"))),
    ];

    /// <summary>Whether a beer is within what careful opinion allows.</summary>
    public bool Holds(double volumes) => Argument.MustNotBeNegative(volumes) <= LowVolumes;
}

/// <summary>What a vessel or a part of it is usually rated for.</summary>
/// <remarks>
/// <para>Source: <c>data/conditioning/vessel-ratings.csv</c>, a source and a status in each row.</para>
/// <para>Notes: the lowest rating of all parts under gas is the limit, and yours is stamped on it.</para>
/// </remarks>
/// <param name="Id">Its row.</param>
/// <param name="Name">Its name.</param>
/// <param name="GaugeBar">Rating, bar above the air.</param>
public sealed record VesselRating(string Id, string Name, double GaugeBar)
{
    /// <summary>The parts.</summary>
    public static IReadOnlyList<VesselRating> All { get; } =
    [
        .. CsvTable.Published("vessel-ratings.csv").Rows.Select(row => new VesselRating(
            row.Required("id"), row.Required("name"), row.Number("psi") * KegPressure.BarPerPsi)),
    ];
}
