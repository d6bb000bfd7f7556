using Gylebook.Forecast.Liquors;
using Gylebook.Pictures;
using Gylebook.Recipes.Editing;
using Gylebook.Science.Water;
using Gylebook.Store;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Logging;

namespace Gylebook.Web.Features.Liquors;

/// <summary>The brewer's waters: those kept for any recipe, those planned for one, the bin.</summary>
public sealed partial class LiquorsPage
{
    private List<WaterOf> _waters = [];
    private List<Sheet> _bin = [];
    private string _said = "";
    private ReckoningDoor _door = new();

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>What the terminal is told.</summary>
    [Inject]
    public required ILogger<LiquorsPage> Log { get; init; }

    /// <summary>Leads to a new plan.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    private IEnumerable<Sheet> Sheets => _waters.Select(water => water.Sheet);

    /// <inheritdoc/>
    protected override Task OnInitializedAsync()
    {
        _door = new ReckoningDoor(Log);
        return LoadAsync();
    }

    private async Task LoadAsync()
    {
        _waters = await Book.Waters.ListWithRecipesAsync();
        _bin = await Book.Waters.DeletedAsync();
    }

    private string About(WaterOf water)
    {
        string what = water.Recipe is { } recipe ? $"for {recipe}" : "kept for any recipe";
        string reading = !WholeText.Is(water.Sheet) ? "damaged: its page says what can be done"
            : WaterDraft.Of(water.Sheet.Document).Plan is { } plan && _door.Reckon(() => SourceLiquor.Of(plan, []), () => water.Sheet.Document, out _)?.Ions is { } ions
            ? $"alkalinity {Shown.Number(ions.AlkalinityMilliequivalents / HardnessUnits.MilligramsCalciumCarbonate, 0)} mg/L CaCO3, calcium {Shown.Number(ions.Calcium, 0)} mg/L"
            : "cannot be read as it stands";
        return string.Join(" · ", new[] { what, reading, water.Sheet.IsDemo ? "demo" : null }.Where(part => part is not null));
    }

    private async Task NewAsync() => Navigation.NavigateTo(PageUrls.Liquor(await Book.Waters.CreateAsync(WaterDraft.New(FreeName.Of("My water", Sheets)).Text)));

    private async Task CopyAsync(WaterOf water)
    {
        if (!WholeText.Is(water.Sheet))
        {
            _said = $"{water.Sheet.Name} is damaged, so it cannot be copied.";
            return;
        }

        string name = FreeName.Of($"{water.Sheet.Name}, copy", Sheets);
        await Book.Waters.CreateAsync((WaterDraft.Of(water.Sheet.Document).Put("name", name)?.After.Text ?? water.Sheet.Document));
        _said = $"{name} is made, kept for any recipe.";
        await LoadAsync();
    }

    private async Task DeleteAsync(Sheet sheet)
    {
        await Book.Waters.DeleteAsync(sheet.Id);
        _said = $"{sheet.Name} is in the bin.";
        await LoadAsync();
    }

    private async Task RestoreAsync(Sheet sheet)
    {
        await Book.Waters.RestoreAsync(sheet.Id);
        _said = $"{sheet.Name} is back.";
        await LoadAsync();
    }
}
