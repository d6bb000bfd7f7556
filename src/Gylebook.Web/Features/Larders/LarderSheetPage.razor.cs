using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;
using Gylebook.Store;
using Gylebook.Store.Rows;
using Gylebook.Web.Drafting;

namespace Gylebook.Web.Features.Larders;

/// <summary>One sheet of the larder with its lots, edited in place and saved as one goes.</summary>
public sealed partial class LarderSheetPage
{
    private static readonly string[] Above = ["format", "name", "pack"];

    /// <inheritdoc/>
    protected override BookSheets<LarderSheetRow> Sheets => Book.Larder;

    private string Kind => Desk!.TextAt("kind") ?? Desk.Now.Form.Noun;

    /// <summary>What can hurt of a salt or an acid; null for what is harmless, as far as we know.</summary>
    private Caution? Hurts => (LarderDraft.SheetOf(Desk!.Now) as ShelfSheet) switch
    {
        { Kind: IngredientKind.Acid } acid => CautionOf(ShelfWords.Acid(acid.Like)?.Caution),
        { Kind: IngredientKind.Salt } salt => CautionOf(ShelfWords.Salt(salt.Like)?.Caution),
        _ => null,
    };

    private IReadOnlyList<Finding> Elsewhere => Desk!.Beside([.. Desk.Now.Form.FieldsAt("").Select(known => known.Key)]);

    /// <inheritdoc/>
    protected override string Address(string? panel) => PageUrls.LarderSheet(Which, panel);

    /// <inheritdoc/>
    protected override FileDraft Read(string text) => LarderDraft.Of(text);

    /// <inheritdoc/>
    protected override Task<LarderDesk> LayOutAsync(OpenDraft<FileDraft> draft) => Task.FromResult(new LarderDesk(draft, Shown));

    private static Caution? CautionOf(string? words) =>
        string.IsNullOrEmpty(words) ? null : new("shelf.hurts", Stage.Strike, words, "common practice, no source");
}
