using Gylebook.Pictures;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Store;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Kits;

/// <summary>The brewer's kits: which one is in use, new ones, copies, the bin.</summary>
public sealed partial class KitsPage
{
    private List<Sheet> _kits = [];
    private List<Sheet> _bin = [];
    private Guid? _inUse;
    private string _said = "";

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>Leads to a new kit.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    /// <inheritdoc/>
    protected override Task OnInitializedAsync() => LoadAsync();

    private async Task LoadAsync()
    {
        _kits = await Book.Kits.ListAsync();
        _bin = await Book.Kits.DeletedAsync();
        _inUse = (await KitInUse.FindAsync(Book)).Id;
    }

    private string About(Sheet sheet) =>
        (KitFile.Read(sheet.Document).Value is { } kit ? KitWords.Of(kit, Shown) : "cannot be read") + (sheet.IsDemo ? " · demo" : "");

    private async Task UseAsync(Sheet sheet)
    {
        await KitInUse.ChooseAsync(Book, sheet.Id);
        _said = $"Recipes are planned for {sheet.Name} from now on.";
        await LoadAsync();
    }

    private async Task NewAsync()
    {
        Guid id = await Book.Kits.CreateAsync(KitFile.Write(BuiltInKit.New(FreeName.Of("My kit", _kits))));
        Navigation.NavigateTo(PageUrls.Kit(id));
    }

    private async Task CopyAsync(Sheet sheet)
    {
        if (KitFile.Read(sheet.Document).Value is not { } kit)
        {
            _said = $"{sheet.Name} cannot be read, so it cannot be copied.";
            return;
        }

        string name = FreeName.Of($"{sheet.Name}, copy", _kits);
        await Book.Kits.CreateAsync(KitFile.Write(kit with { Name = name }));
        _said = $"{name} is made.";
        await LoadAsync();
    }

    private async Task DeleteAsync(Sheet sheet)
    {
        await Book.Kits.DeleteAsync(sheet.Id);
        _said = $"{sheet.Name} is in the bin.";
        await LoadAsync();
    }

    private async Task RestoreAsync(Sheet sheet)
    {
        await Book.Kits.RestoreAsync(sheet.Id);
        _said = $"{sheet.Name} is back.";
        await LoadAsync();
    }
}
