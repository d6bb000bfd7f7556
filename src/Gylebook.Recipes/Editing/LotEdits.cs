using Gylebook.Recipes.Forms;

namespace Gylebook.Recipes.Editing;

/// <summary>Edits of the lots of a sheet.</summary>
public static class LotEdits
{
    private const string Lots = "lots";

    /// <summary>The number of the lot of that name, from 0; null when there is none.</summary>
    public static int? NumberOfLot(this FileDraft sheet, string name)
    {
        int number = Enumerable.Range(0, sheet.CountOf(Lots)).FirstOrDefault(i => string.Equals(sheet[Invariant($"{Lots}[{i}].lot")], name, StringComparison.OrdinalIgnoreCase), -1);
        return number < 0 ? null : number;
    }

    /// <summary>Puts the first lot of another sheet of the same form behind the lots of this one, as it is written there; null where this one has a lot of that name.</summary>
    public static DraftEdit<TDraft>? TakeLot<TDraft>(this TDraft sheet, FileDraft from)
        where TDraft : FileDraft
    {
        ArgumentNullException.ThrowIfNull(from);
        string name = from[$"{Lots}[0].lot"] ?? "";
        return sheet.NumberOfLot(name) is null && NodePath.Find(from.File, $"{Lots}[0]") is { } lot
            ? new DraftEdit<TDraft>(sheet.WithItems(Lots, lots => lots.Add(lot)), $"lot {FindingList.Shorten(name)}: added")
            : null;
    }

    /// <summary>Takes the lot of that name out; null where there is none.</summary>
    public static DraftEdit<TDraft>? RemoveLot<TDraft>(this TDraft sheet, string name)
        where TDraft : FileDraft => sheet.NumberOfLot(name) is { } number
        ? sheet.RemoveItem(Lots, number) with { Label = $"lot {FindingList.Shorten(name)}: taken out" }
        : null;
}
