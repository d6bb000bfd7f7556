namespace Gylebook.Gyles.Packaging;

/// <summary>Why beer is not to be packaged so.</summary>
/// <param name="Code">Stable name: <c>package.moving</c>.</param>
/// <param name="Why">Why, in a sentence.</param>
/// <param name="Instead">What would do.</param>
public sealed record PackageRefusal(string Code, string Why, string Instead);

/// <summary>What stands in one kind of package.</summary>
/// <param name="Kind">Which, by the kit.</param>
/// <param name="Count">How many are filled.</param>
/// <param name="Litres">In all of them.</param>
/// <param name="PressureStored">Above the air at the warmest they may come to, bar, without help of the headspace.</param>
public sealed record FilledPackages(string Kind, int Count, double Litres, double PressureStored)
{
    /// <summary>Oxygen they are closed with; null where nobody reckoned it.</summary>
    public PackageOxygen? Oxygen { get; init; }
}

/// <summary>How a beer is packaged; where it is refused, nothing to weigh and nothing to set is told.</summary>
public sealed record PackagePlan
{
    /// <summary>Why it is refused; empty where it is not.</summary>
    public required IReadOnlyList<PackageRefusal> Refusals { get; init; }

    /// <summary>Whether it is refused.</summary>
    public bool IsRefused => Refusals.Count > 0;

    /// <summary>What is filled; empty where it is refused.</summary>
    public IReadOnlyList<FilledPackages> Filled { get; init; } = [];

    /// <summary>What is left over when all are full, L.</summary>
    public double LeftOver { get; init; }

    /// <summary>What is weighed to prime it, g; null where nothing is.</summary>
    public double? PrimingGrams { get; init; }

    /// <summary>Gas in the beer before it is primed, volumes.</summary>
    public double Residual { get; init; }

    /// <summary>Gas in the glass, volumes; null where it is refused.</summary>
    public double? Volumes { get; init; }

    /// <summary>The same if as much beer comes out as may (95 %), and if as little: one weight of sugar in more beer or less.</summary>
    public (double Low, double High)? VolumesBand { get; init; }

    /// <summary>How a keg is carbonated and served; null where none is filled.</summary>
    public KegOnTap? Keg { get; init; }

    /// <summary>What can hurt, in full.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];
}
