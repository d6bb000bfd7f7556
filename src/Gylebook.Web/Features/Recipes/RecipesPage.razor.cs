using Gylebook.Store;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Features.Liquors.Showing;
using Gylebook.Web.Features.Today;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Recipes;

/// <summary>The list of recipes: search, begin, duplicate, delete and restore.</summary>
public sealed partial class RecipesPage
{
    // A screen or two: a book of thousands opens as fast as one of ten, and the search finds the rest.
    private const int Step = 50;

    private RecipesFound? _recipes;
    private RecipesFound _deleted = new([], 0);
    private RecipeLine? _undo;
    private string _search = "";
    private int _most = Step;
    private int _mostDeleted = Step;

    /// <summary>What is searched for when the page opens.</summary>
    [SupplyParameterFromQuery(Name = "find")]
    public string? Find { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>Leads to a recipe.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    /// <inheritdoc/>
    protected override Task OnInitializedAsync()
    {
        _search = Find ?? "";
        return LoadAsync();
    }

    private string Says(RecipeLine recipe) => string.Join(" · ", new[]
    {
        Instants.Ago(recipe.Updated, Clock),
        recipe.LatestVersion is int version ? Invariant($"version {version}") : null,
        recipe.PublishedVersion is not null ? "published" : null,
        recipe.IsDemo ? "demo" : null,
    }.Where(text => text is not null));

    private async Task LoadAsync()
    {
        await LoadRecipesAsync();
        _deleted = await Book.Recipes.BinAsync(_mostDeleted);
    }

    private async Task LoadRecipesAsync()
    {
        string asked = _search;
        RecipesFound found = await Book.Recipes.SearchAsync(asked, _most);
        if (asked == _search)
        {
            _recipes = found;
        }
    }

    private Task SearchAsync(string? text)
    {
        _search = text ?? "";
        _most = Step;
        return LoadRecipesAsync();
    }

    private Task MoreAsync()
    {
        _most += Step;
        return LoadRecipesAsync();
    }

    private Task MoreDeletedAsync()
    {
        _mostDeleted += Step;
        return LoadAsync();
    }

    private async Task NewAsync()
    {
        KitInUse kit = await KitInUse.FindAsync(Book);
        Navigation.NavigateTo(PageUrls.Recipe(await Book.Recipes.CreateAsync(NewRecipe.DocumentFor(kit.Kit))));
    }

    private async Task DuplicateAsync(RecipeLine recipe)
    {
        string name = $"{recipe.Name}, again";
        Guid id = await Book.Recipes.DuplicateAsync(recipe.Id, name);
        await RecipeLiquor.CopyAsync(Book, id, name, recipe.Id);
        Navigation.NavigateTo(PageUrls.Recipe(id));
    }

    private async Task DeleteAsync(RecipeLine recipe)
    {
        await Book.Recipes.DeleteAsync(recipe.Id);
        _undo = recipe;
        await LoadAsync();
    }

    private async Task RestoreAsync(Guid recipe)
    {
        await Book.Recipes.RestoreAsync(recipe);
        _undo = null;
        await LoadAsync();
    }
}
