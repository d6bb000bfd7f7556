using Gylebook.Recipes.Interchange;
using Gylebook.Store;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Reading;
using Gylebook.Web.Widgets;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Recipes;

/// <summary>Chooses the kit in use.</summary>
public sealed partial class KitPicker : IDisposable
{
    private readonly CancellationTokenSource _leaving = new();
    private readonly string _id = FieldIds.Next();
    private List<Sheet> _kits = [];
    private string _trouble = "";

    /// <summary>The kit in use; null for the built-in one.</summary>
    [Parameter]
    public Guid? KitId { get; set; }

    /// <summary>Another kit was chosen.</summary>
    [Parameter]
    public EventCallback<KitInUse> Chosen { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <inheritdoc/>
    public void Dispose()
    {
        _leaving.Cancel();
        _leaving.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        IAsyncEnumerable<BookChange> changes = Book.Changes.WatchAllAsync(_leaving.Token);
        await ListAsync();
        _ = changes.HearAsync(change => change.Noun == BookNoun.Kit, _ => InvokeAsync(ListAsync));
    }

    private async Task ListAsync()
    {
        _kits = await Book.Kits.ListAsync();
        StateHasChanged();
    }

    private async Task PickAsync(ChangeEventArgs change)
    {
        Sheet? sheet = _kits.FirstOrDefault(kit => kit.Id.ToString() == change.Value?.ToString());
        if (sheet is null)
        {
            return;
        }

        if (KitFile.Read(sheet.Document).Value is { } kit)
        {
            _trouble = "";
            await Chosen.InvokeAsync(new KitInUse(sheet.Id, kit));
        }
        else
        {
            _trouble = $"{sheet.Name} cannot be read; open it on the Kit page to see why.";
        }
    }
}
