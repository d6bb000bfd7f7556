using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;

namespace Gylebook.Recipes.Editing;

/// <summary>Sheets of the larder on the desk, each by its own form.</summary>
public static class LarderDraft
{
    /// <summary>The draft of a sheet's text, by the form it names.</summary>
    /// <exception cref="ArgumentException">Not a JSON object, or of no form of the larder: the caller's bug.</exception>
    public static FileDraft Of(string text) => FormatOf(text) switch
    {
        LarderFile.MaltFormat => FileDraft.Of(LarderFile.Malt, text),
        LarderFile.HopFormat => FileDraft.Of(LarderFile.Hop, text),
        LarderFile.YeastFormat => FileDraft.Of(LarderFile.Yeast, text),
        LarderFile.ShelfFormat => FileDraft.Of(LarderFile.Shelf, text),
        FoodFile.Format => FileDraft.Of(FoodFile.Form, text),
        var format => throw new ArgumentException($"\"{format}\" is no form of the larder.", nameof(text)),
    };

    /// <summary>What a draft means; null while some field cannot be read.</summary>
    public static LarderSheet? SheetOf(FileDraft draft) => draft switch
    {
        FileDraft<MaltSheet> malt => malt.Value,
        FileDraft<HopSheet> hop => hop.Value,
        FileDraft<YeastSheet> yeast => yeast.Value,
        FileDraft<ShelfSheet> shelf => shelf.Value,
        FileDraft<FoodSheet> food => food.Value,
        _ => null,
    };

    private static string? FormatOf(string text) => (NodeText.Read(text, new FindingList()) as ObjectNode)?["format"] is TextNode { Text: var format } ? format : null;
}
