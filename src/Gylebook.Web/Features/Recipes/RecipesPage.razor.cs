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
    private List<RecipeLine>? _recipes;
    private List<RecipeLine> _deleted = [];
    private RecipeLine? _undo;
    private string _search = "";

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
    protected override Task OnInitializedAsync() => LoadAsync();

    private string Says(RecipeLine recipe) => string.Join(" · ", new[]
    {
        Instants.Ago(recipe.Updated, Clock),
        recipe.LatestVersion is int version ? Invariant($"version {version}") : null,
        recipe.PublishedVersion is not null ? "published" : null,
        recipe.IsDemo ? "demo" : null,
    }.Where(text => text is not null));

    private async Task LoadAsync()
    {
        string asked = _search;
        List<RecipeLine> found = await Book.Recipes.ListAsync(asked);
        if (asked == _search)
        {
            _recipes = found;
        }

        _deleted = await Book.Recipes.DeletedAsync();
    }

    private Task SearchAsync(string? text)
    {
        _search = text ?? "";
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
