using Gylebook.Forecast;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Store;
using Gylebook.Web.Drafting;
using Gylebook.Web.Features.Foods.Labels;
using Gylebook.Web.Features.Recipes.Showing;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Foods;

/// <summary>From a food's page into a recipe.</summary>
public sealed partial class PutIntoRecipe
{
    private List<RecipeLine> _recipes = [];
    private Guid _recipe;
    private string _at = "";
    private string _trouble = "";

    /// <summary>A food or a spice.</summary>
    [Parameter]
    [EditorRequired]
    public IngredientKind Kind { get; set; }

    /// <summary>What recipes call it by.</summary>
    [Parameter]
    [EditorRequired]
    public required string Of { get; set; }

    /// <summary>When it goes in, unless somebody says otherwise.</summary>
    [Parameter]
    [EditorRequired]
    public AdditionTime At { get; set; }

    /// <summary>The recipe that wants it; null for none in particular.</summary>
    [Parameter]
    public Guid? For { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>Leads to the recipe.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    private IEnumerable<string> Places => FoodQuestion.Offered.Append(At).Distinct().OrderBy(at => at.Point).Select(Words.Of);

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        _at = Words.Of(At);
        _recipes = await Book.Recipes.ListAsync();
        _recipe = (_recipes.FirstOrDefault(recipe => recipe.Id == For) ?? _recipes.FirstOrDefault())?.Id ?? Guid.Empty;
    }

    private async Task PutAsync()
    {
        try
        {
            using OpenDraft<RecipeDraft>? draft = await OpenDraft.OpenAsync(Book.Drafts, _recipe, RecipeDraft.Of, Guid.CreateVersion7().ToString());
            int line = 0;
            await (draft?.EditAsync(recipe => Added(recipe, out line)) ?? Task.CompletedTask);
            if (draft is { Unsaved: null })
            {
                Navigation.NavigateTo(PageUrls.RecipeAt(_recipe, line));
                return;
            }

            _trouble = $"Not done: {draft?.Unsaved ?? "that recipe is not in the book any more."}";
        }
        catch (Exception trouble) when (trouble is InvalidDataException or BookUnavailableException)
        {
            _trouble = $"Not done: {trouble.Message}";
        }
    }

    private DraftEdit<RecipeDraft> Added(RecipeDraft recipe, out int line)
    {
        if (!AdditionTimeText.TryParse(_at, out AdditionTime at, out _))
        {
            at = At;
        }

        DraftEdit<RecipeDraft> edit = recipe.Add(Kind, Of, IngredientSearch.StartingAmount(Kind), at);
        line = edit.After.Lines.Last(added => added.Of == Of && added.Time == at).Number;
        return edit;
    }
}
