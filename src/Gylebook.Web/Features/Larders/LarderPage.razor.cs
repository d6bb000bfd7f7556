using Gylebook.Pictures;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;
using Gylebook.Store;
using Gylebook.Web.Features.Recipes.Showing;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Larders;

/// <summary>What is at hand, what is ageing, and what it cost.</summary>
public sealed partial class LarderPage : IDisposable
{
    private readonly CancellationTokenSource _leaving = new();
    private readonly IngredientSearch _tables = new(Larder.Empty);
    private IReadOnlyList<LarderGroup> _groups = [];
    private IReadOnlyList<LotLine> _ageing = [];
    private List<Sheet> _bin = [];
    private HashSet<Guid> _binnedFoods = [];
    private string _said = "";

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>Leads to a new sheet.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    /// <summary>Today.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    private string Cost
    {
        get
        {
            List<LotLine> lots = [.. _groups.SelectMany(group => group.Sheets).SelectMany(sheet => sheet.Lots)];
            string sum = string.Join(" and ", LotAges.Costs(lots.Select(line => line.Lot)).Select(cost => $"{Shown.Number((double)cost.Value, 2)} {cost.Currency}"));
            int unpriced = lots.Count(line => line.Lot.Price is null);
            string all = sum.Length == 0 ? "No lot has a price yet." : $"All lots here cost {sum} when they were bought.";
            return unpriced == 0 || sum.Length == 0 ? all : Invariant($"{all} {unpriced} of {lots.Count} lots have no price.");
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _leaving.Cancel();
        _leaving.Dispose();
    }

    /// <inheritdoc/>
    protected override void OnAfterRender(bool firstRender)
    {
        if (firstRender)
        {
            _ = Book.Changes.WatchAllAsync(_leaving.Token).HearAsync(change => OwnLarder.MayHaveChanged(change) || change.Noun == BookNoun.Gyle, _ => InvokeAsync(async () =>
            {
                await LoadAsync();
                StateHasChanged();
            }));
        }
    }

    /// <inheritdoc/>
    protected override Task OnParametersSetAsync() => LoadAsync();

    private async Task LoadAsync()
    {
        DateOnly today = DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);
        Dictionary<string, double> used = await Book.Readings.UsedOfLotsAsync();
        List<SheetLine> sheets =
        [
            .. (await Book.Larder.ListAsync()).Select(sheet => SheetLine.Of(sheet, isFood: false, Shown, today, used)),
            .. (await Book.Foods.ListAsync()).Select(sheet => SheetLine.Of(sheet, isFood: true, Shown, today, used)),
        ];
        _groups = LarderGroup.Of(sheets);
        _ageing = [.. sheets.SelectMany(sheet => sheet.Lots).Where(lot => lot.Age != LotAge.Good).OrderBy(lot => lot.Lot.BestBefore)];
        List<Sheet> foods = await Book.Foods.DeletedAsync();
        _binnedFoods = [.. foods.Select(food => food.Id)];
        _bin = [.. (await Book.Larder.DeletedAsync()).Concat(foods).OrderByDescending(sheet => sheet.Deleted)];
    }

    private IReadOnlyList<IngredientChoice> Find(string typed) =>
        [.. _tables.Find(typed).Where(choice => choice.Kind is not (IngredientKind.Food or IngredientKind.Water))];

    private async Task NewAsync(IngredientChoice choice)
    {
        List<Sheet> others = await Book.Larder.ListAsync();
        LarderSheet made = NewSheet.Like(choice, FreeName.Of(choice.Name, others), others);
        Navigation.NavigateTo(PageUrls.LarderSheet(await Book.Larder.CreateAsync(LarderFile.Write(made))));
    }

    private async Task DeleteAsync(SheetLine sheet)
    {
        await (sheet.IsFood ? Book.Foods.DeleteAsync(sheet.Id) : Book.Larder.DeleteAsync(sheet.Id));
        _said = $"{sheet.Name} is in the bin.";
        await LoadAsync();
    }

    private async Task RestoreAsync(Sheet sheet)
    {
        await (_binnedFoods.Contains(sheet.Id) ? Book.Foods.RestoreAsync(sheet.Id) : Book.Larder.RestoreAsync(sheet.Id));
        _said = $"{sheet.Name} is back.";
        await LoadAsync();
    }
}
