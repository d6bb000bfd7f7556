using Gylebook.Recipes.Editing;

namespace Gylebook.Web.Reading;

/// <summary>Whether a text of the book is a file at all. Damage on the disk, or another program's hand, can make it less.</summary>
internal static class WholeText
{
    /// <summary>Whether it can be laid on a desk; what its fields say is another matter.</summary>
    public static bool Is(string document) => DamageOf(document) is null;

    /// <summary>What is wrong with it; null when nothing is.</summary>
    public static string? DamageOf(string document)
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
