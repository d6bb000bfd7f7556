using Gylebook.Recipes.Editing;
using Gylebook.Store;
using Gylebook.Web.Features.Liquors.Showing;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Liquors;

/// <summary>The beginning of a recipe's water plan; leads on to the plan where there is one.</summary>
public sealed partial class RecipeLiquorPage
{
    private RecipeLine? _recipe;
    private List<WaterOf> _waters = [];
    private bool _isMissing;

    /// <summary>Which recipe.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>Leads to the plan.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (await Book.Waters.OfRecipeAsync(Id) is { } plan)
        {
            Navigation.NavigateTo(PageUrls.Liquor(plan.Id), replace: true);
            return;
        }

        _recipe = await Book.Recipes.FindAsync(Id);
        _isMissing = _recipe is null;
        _waters = [.. (await Book.Waters.ListWithRecipesAsync()).Where(water => WholeText.Is(water.Sheet)).OrderBy(water => water.RecipeId is not null)];
    }

    private Task BeginAsync(WaterOf? from) => MakeAsync(from is null ? RecipeLiquor.Empty(_recipe!.Name) : RecipeLiquor.Like(_recipe!.Name, WaterDraft.Of(from.Sheet.Document)));

    private Task DistilledAsync() => MakeAsync(RecipeLiquor.Empty(_recipe!.Name).Distil(0, true).After.Put("sources[0].name", "distilled")!.After);

    private async Task MakeAsync(WaterDraft plan)
    {
        Guid id = await Book.Waters.CreateForAsync(Id, plan.Text);
        Navigation.NavigateTo(PageUrls.Liquor(id), replace: true);
    }
}
