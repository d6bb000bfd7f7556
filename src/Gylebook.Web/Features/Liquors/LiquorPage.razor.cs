using Gylebook.Forecast.Liquors;
using Gylebook.Recipes.Editing;
using Gylebook.Store;
using Gylebook.Store.Rows;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Features.Larders;
using Gylebook.Web.Features.Liquors.Showing;
using Gylebook.Web.Drafting;
using Gylebook.Web.Reading;

namespace Gylebook.Web.Features.Liquors;

/// <summary>A water plan: the report, the wishes, the shelf, and always in view what to weigh out.</summary>
public sealed partial class LiquorPage
{
    private List<WaterOf> _others = [];
    private string _said = "";

    /// <inheritdoc/>
    protected override BookSheets<WaterRow> Sheets => Book.Waters;

    /// <inheritdoc/>
    protected override string Address(string? panel) => PageUrls.Liquor(Which, panel);

    /// <inheritdoc/>
    protected override WaterDraft Read(string text) => WaterDraft.Of(text);

    /// <inheritdoc/>
    protected override async Task<LiquorDesk> LayOutAsync(OpenDraft<WaterDraft> draft)
    {
        await ListOthersAsync();
        return new LiquorDesk(draft, await BrewedAsync(), Shown, new ReckoningDoor(Log));
    }

    /// <inheritdoc/>
    protected override bool IsNews(BookChange change) =>
        base.IsNews(change) || (Desk?.Brewed is { } brewed && (change.Id == brewed.Id || OwnLarder.MayHaveChanged(change) || KitInUse.MayHaveChanged(change)));

    /// <inheritdoc/>
    protected override async Task TakeChangeAsync(BookChange change)
    {
        await base.TakeChangeAsync(change);
        Desk!.Brew(await BrewedAsync());
    }

    private static string Things(WaterOutcome outcome)
    {
        int count = new[] { outcome.Mash, outcome.Sparge, outcome.Kettle, outcome.Package }.Sum(place => place.Salts.Count + place.Acids.Count);
        return count == 1 ? "1 thing to weigh out" : Invariant($"{count} things to weigh out");
    }

    private async Task<RecipeToBrew?> BrewedAsync() =>
        await Book.Waters.FindWithRecipeAsync(Which) is { } water ? await RecipeToBrew.OfAsync(Book, water) : null;

    private async Task KeepAsync()
    {
        WaterDraft kept = WaterDraft.New(Desk!.TextAt("sources[0].name") ?? Desk.Now.Name).TakeSources(Desk.Now).After.TakeShelf(Desk.Now).After;
        await Book.Waters.CreateAsync(kept.Text);
        await ListOthersAsync();
        _said = $"Kept as {kept.Name}. The plan of another recipe can start from it.";
    }

    private async Task ListOthersAsync() => _others = [.. (await Book.Waters.ListWithRecipesAsync()).Where(water => water.Sheet.Id != Which && WholeText.Is(water.Sheet))];

    private async Task DeleteAsync()
    {
        await Book.Waters.DeleteAsync(Which);
        Navigation.NavigateTo(PageUrls.Liquors);
    }
}
