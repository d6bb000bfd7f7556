using Gylebook.Recipes.Editing;
using Gylebook.Store;

namespace Gylebook.Web.Reading;

/// <summary>Whether a text of the book is a file at all. Damage on the disk, or another program's hand, can make it less.</summary>
internal static class WholeText
{
    /// <summary>Whether it can be laid on a desk; what its fields say is another matter.</summary>
    public static bool Is(string document) => DamageOf(document) is null;

    /// <summary>Whether a sheet is as it was written, and a file.</summary>
    public static bool Is(Sheet sheet) => DamageOf(sheet) is null;

    /// <summary>What is wrong with a sheet; null when nothing is.</summary>
    public static string? DamageOf(Sheet sheet) => DamageOf(sheet.Document) ?? (sheet.IsDamaged ? Changed : null);

    /// <summary>What is wrong with a draft; null when nothing is.</summary>
    public static string? DamageOf(Draft draft) => DamageOf(draft.Document) ?? (draft.IsDamaged ? Changed : null);

    private const string Changed = "the disk no longer gives back what was written, though it can still be read.";

    /// <summary>What is wrong with it; null when nothing is.</summary>
    private static string? DamageOf(string document)
    {
        try
        {
            // Every file of ours is one JSON object: what holds for a water plan holds for all.
            WaterDraft.Of(document);
            return null;
        }
        catch (ArgumentException damage)
        {
            return damage.Message;
        }
    }
}
