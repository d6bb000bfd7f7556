using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>A time of addition in two parts, as the page asks for it: the place, and the minutes or the day.</summary>
public static class WhenText
{
    /// <summary>Places in the order of the run, as recipes write them.</summary>
    public static IReadOnlyList<(AdditionPoint Point, string Word)> Places { get; } =
    [
        (AdditionPoint.Mash, "mash"), (AdditionPoint.CopperUp, "copper-up"), (AdditionPoint.Boil, "boil"),
        (AdditionPoint.KnockOut, "knock-out"), (AdditionPoint.Stand, "stand"), (AdditionPoint.Pitch, "pitch"),
        (AdditionPoint.Ferment, "ferment"), (AdditionPoint.Rack, "rack"), (AdditionPoint.Package, "package"),
    ];

    /// <summary>The text for a place and what was typed beside it.</summary>
    public static string Of(AdditionPoint point, string count) => point switch
    {
        AdditionPoint.Boil => $"boil {count.Trim()} min",
        AdditionPoint.Stand => $"stand {count.Trim()} min",
        AdditionPoint.Ferment => $"ferment day {count.Trim()}",
        _ => AdditionTimeText.Write(new AdditionTime(point)),
    };

    /// <summary>Whether a place asks for minutes or a day.</summary>
    public static bool IsCounted(AdditionPoint point) => point is AdditionPoint.Boil or AdditionPoint.Stand or AdditionPoint.Ferment;

    /// <summary>Where a line goes that is moved to another place: as long as the boil, ten minutes of a stand, the third day.</summary>
    public static string UsualCount(AdditionPoint point) => point switch
    {
        AdditionPoint.Boil => "60",
        AdditionPoint.Stand => "10",
        _ => "3",
    };
}
