namespace Gylebook.Gyles.Cellar;

/// <summary>Something to do while the beer stands in the fermenter.</summary>
/// <param name="At">When; null for now.</param>
/// <param name="What">What, in a sentence.</param>
public sealed record CellarTask(DateTimeOffset? At, string What)
{
    /// <summary>By when it may be, at the latest; null for a day.</summary>
    public DateTimeOffset? Until { get; init; }

    /// <summary>Why, or how; null when that is plain.</summary>
    public string? Why { get; init; }

    /// <summary>Key of the planned day that is done with it; null where nothing is ticked.</summary>
    public string? Day { get; init; }

    /// <summary>What can hurt, in full.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];
}
