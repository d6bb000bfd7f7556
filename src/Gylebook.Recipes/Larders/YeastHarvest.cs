using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Larders;

/// <summary>Where a lot of yeast comes from that was taken out of a fermenter.</summary>
public sealed record YeastHarvest
{
    /// <summary>The day it was taken out: its age counts from here, unless a recipe's line says one.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>What the gyle is called that it comes from; null when unsaid.</summary>
    public string? From { get; init; }

    /// <summary>How many beers it has fermented, 1 after the first; null when nobody has counted.</summary>
    public double? Generation { get; init; }

    /// <summary>Allergens of that beer, traces of which may be in it; null when none is known.</summary>
    public string? MayContain { get; init; }

    /// <summary>Its age on a day; null where it is not older than that day.</summary>
    internal Entered<Duration>? AgeOn(DateOnly day) => day.DayNumber - Day.DayNumber is > 0 and var days
        ? new Entered<Duration>(Duration.FromDays(days), Invariant($"{days} d"))
        : null;
}
