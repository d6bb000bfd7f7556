using Gylebook.Store;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Recipes.Travelling;

/// <summary>A recipe for other programs: each format there is, with what it cannot carry.</summary>
public sealed partial class TravelPage
{
    private readonly List<(TravelFormat Format, TravellingRecipe Recipe)> _recipes = [];
    private KeptFile? _file;
    private bool _isAsked;

    /// <summary>Which recipe.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        _recipes.Clear();
        _file = await Book.Files.FindAsync("recipe", Id);
        _isAsked = true;
        if (_file is { IsDamaged: false } file)
        {
            foreach (TravelFormat format in TravelFormat.All)
            {
                _recipes.Add((format, await TravellingRecipe.OfAsync(Book, file, format)));
            }
        }
    }
}
