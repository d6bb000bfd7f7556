using Gylebook.Gyles.Vessels;
using Gylebook.Recipes.Kits;

namespace Gylebook.Web.Features.Gyles;

/// <summary>A vessel in the calendar, and who has it from today on.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Holds">Who has it, the first first.</param>
/// <param name="Bars">Where they stand in the picture.</param>
/// <param name="Clashes">Those of them that have it at once: a gyle that goes on moves its days.</param>
internal sealed record VesselRow(string Name, VesselKind Kind, IReadOnlyList<VesselHold> Holds, IReadOnlyList<VesselBar> Bars, IReadOnlyList<VesselClash> Clashes)
{
    /// <summary>Days that the picture shows, and how many of them are past.</summary>
    public const int Days = 42, DaysBefore = 7;

    /// <summary>The kit's vessels in its order, then those that somebody still has.</summary>
    public static IReadOnlyList<VesselRow> Of(IReadOnlyList<Vessel> vessels, IReadOnlyList<VesselHold> held, DateOnly today)
    {
        IEnumerable<(string Name, VesselKind Kind)> all = vessels.Select(vessel => (vessel.Name, vessel.Kind)).Concat(held.Select(hold => (hold.Stay.Vessel, hold.Stay.Kind)));
        return [.. all.DistinctBy(vessel => (vessel.Name.ToLowerInvariant(), vessel.Kind)).OrderBy(vessel => vessel.Kind).Select(vessel => Of(vessel.Name, vessel.Kind, held, today))];
    }

    private static VesselRow Of(string name, VesselKind kind, IReadOnlyList<VesselHold> held, DateOnly today)
    {
        VesselHold[] its = [.. held.Where(hold => hold.Stay.Kind == kind && string.Equals(hold.Stay.Vessel, name, StringComparison.OrdinalIgnoreCase))];
        return new(name, kind, its, [.. its.Select(hold => VesselBar.Of(hold, today)).OfType<VesselBar>()],
            [.. its.Index().SelectMany(later => VesselClash.Of([later.Item.Stay], its[..later.Index], today))]);
    }
}

/// <summary>A stay in the picture, in days from its left edge.</summary>
/// <param name="Hold">Whose.</param>
/// <param name="From">Where it begins.</param>
/// <param name="Days">How long it is.</param>
internal sealed record VesselBar(VesselHold Hold, int From, int Days)
{
    /// <summary>The bar of a stay; null where the picture does not reach it.</summary>
    public static VesselBar? Of(VesselHold hold, DateOnly today)
    {
        VesselStay stay = hold.On(today);
        int left = today.DayNumber - VesselRow.DaysBefore;
        int from = Math.Clamp(stay.From.DayNumber - left, 0, VesselRow.Days), until = stay.Until is { } end ? Math.Clamp(end.DayNumber - left, 0, VesselRow.Days) : VesselRow.Days;
        return until > from ? new(hold, from, until - from) : null;
    }
}
