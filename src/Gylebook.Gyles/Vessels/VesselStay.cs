using Gylebook.Recipes.Kits;

namespace Gylebook.Gyles.Vessels;

/// <summary>Days for which a gyle has a vessel.</summary>
/// <param name="Kind">What the vessel is.</param>
/// <param name="Vessel">Its name.</param>
/// <param name="From">The first day.</param>
/// <param name="Until">The day it is emptied; null while nobody knows.</param>
public sealed record VesselStay(VesselKind Kind, string Vessel, DateOnly From, DateOnly? Until)
{
    /// <summary>Whether both want one vessel at once. It may be filled again on the day on which it is emptied, and is held for a day at least.</summary>
    public bool Clashes(VesselStay other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Kind == other.Kind && string.Equals(Vessel, other.Vessel, StringComparison.OrdinalIgnoreCase) && From < other.End && other.From < End;
    }

    private DateOnly End => Until is not { } until ? DateOnly.MaxValue : until > From ? until : From.AddDays(1);
}

/// <summary>A vessel that a gyle has, or will have.</summary>
/// <param name="GyleId">Which gyle.</param>
/// <param name="Gyle">Its name.</param>
/// <param name="Status">How far that is.</param>
/// <param name="Stay">Which vessel, and for which days, as planned.</param>
public sealed record VesselHold(Guid GyleId, string Gyle, GyleStatus Status, VesselStay Stay)
{
    /// <summary>The days as they look on some day: what ferments stands where it is, however long ago it should have been packaged.</summary>
    public VesselStay On(DateOnly today) =>
        Stay is { Kind: VesselKind.Fermenter, Until: { } until } && until < today && Status is GyleStatus.Brewing or GyleStatus.Fermenting ? Stay with { Until = today.AddDays(1) } : Stay;

    /// <summary>Whether it is, or will be, in the vessel on that day or later.</summary>
    public bool IsAhead(DateOnly today) => On(today).Until is not { } until || until >= today;
}

/// <summary>A vessel that somebody else has on days on which it is wanted.</summary>
/// <param name="Wanted">What is wanted.</param>
/// <param name="By">Who has it, on the days as they look today.</param>
public sealed record VesselClash(VesselStay Wanted, VesselHold By)
{
    /// <summary>All clashes of what is wanted with what others have.</summary>
    public static IReadOnlyList<VesselClash> Of(IEnumerable<VesselStay> wanted, IReadOnlyList<VesselHold> held, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(wanted);
        ArgumentNullException.ThrowIfNull(held);
        return
        [
            .. from stay in wanted
               from hold in held
               let now = hold with { Stay = hold.On(today) }
               where now.Stay.Clashes(stay)
               orderby now.Stay.From
               select new VesselClash(stay, now),
        ];
    }

    /// <summary>It in a sentence: which vessel, whose, and for which days.</summary>
    public string Sentence => $"{By.Stay.Vessel} holds {By.Gyle} {VesselDays.Words(By.Stay)}, and is wanted {VesselDays.Words(Wanted)}";
}

/// <summary>Days of a vessel in words.</summary>
public static class VesselDays
{
    /// <summary>From when until when: "from 4 December 2026 to 18 December 2026".</summary>
    public static string Words(VesselStay stay)
    {
        ArgumentNullException.ThrowIfNull(stay);
        return $"from {Day(stay.From)} {(stay.Until is { } until ? $"to {Day(until)}" : stay.Kind == VesselKind.Keg ? "until it is empty" : "until it is packaged")}";
    }

    /// <summary>A day: "4 December 2026".</summary>
    public static string Day(DateOnly day) => day.ToString("d MMMM yyyy", System.Globalization.CultureInfo.InvariantCulture);
}
