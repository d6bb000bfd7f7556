using Gylebook.Store;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Recipes;

/// <summary>The way back from a text that cannot be opened: the versions and the log, which are other texts.</summary>
public sealed partial class DamagedRecipe
{
    private List<RecipeVersion> _versions = [];
    private List<(string Text, string Label, DateTimeOffset At)> _texts = [];
    private string? _name;
    private string? _text;
    private string _said = "";

    /// <summary>Which recipe.</summary>
    [Parameter]
    [EditorRequired]
    public required Guid Id { get; set; }

    /// <summary>What is wrong with it, in a sentence.</summary>
    [Parameter]
    [EditorRequired]
    public required string Why { get; set; }

    /// <summary>Which tab.</summary>
    [Parameter]
    [EditorRequired]
    public required string TabId { get; set; }

    /// <summary>A whole text is the recipe again.</summary>
    [Parameter]
    public EventCallback Mended { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        _name = (await Book.Recipes.FindAsync(Id))?.Name;
        _versions = [.. (await Book.Versions.ListAsync(Id)).Where(version => !version.IsDamaged && WholeText.Is(version.Document))];
        _texts =
        [
            .. (await Book.Drafts.HistoryAsync(Id))
                .Where(edit => !edit.IsDamaged)
                .SelectMany(edit => new[] { (edit.After, edit.Label, edit.At), (edit.Before, $"before {edit.Label}", edit.At) })
                .Where(text => WholeText.Is(text.Item1))
                .DistinctBy(text => text.Item1),
        ];
        _text = await TextAsync();
    }

    private async Task<string?> TextAsync()
    {
        try
        {
            return (await Book.Drafts.FindAsync(Id))?.Document;
        }
        catch (BookUnavailableException)
        {
            // The page says already why.
            return null;
        }
    }

    private async Task ReturnAsync(string text, string label)
    {
        try
        {
            long revision = (await Book.Drafts.FindAsync(Id))?.Revision ?? 0;
            await Book.Drafts.SaveAsync(Id, revision, text, label, TabId);
        }
        catch (BookUnavailableException trouble)
        {
            _said = $"Not done: {trouble.Message}";
            return;
        }

        await Mended.InvokeAsync();
    }
}
