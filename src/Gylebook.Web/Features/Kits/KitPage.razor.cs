using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Store;
using Gylebook.Store.Rows;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Kits;

/// <summary>One kit, edited in place and saved as one goes.</summary>
public sealed partial class KitPage : IDisposable
{
    private static readonly string[] FieldsWithNotes =
        ["kettle.", "conversion", "grainTemperature", "bag.", "tun.", "chiller.", "fermenter.", "racking.", "packages", "altitude", "mashCooling", "wortCooling"];

    private readonly CancellationTokenSource _page = new();
    private Sheet? _sheet;
    private OpenSheet<KitRow>? _open;
    private Kit? _kit;
    private IReadOnlyList<Finding> _findings = [];
    private string _saved = "";
    private bool _isMissing;

    /// <summary>Which kit.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>What this page has yet to save.</summary>
    [CascadingParameter]
    public PageSaves? Saves { get; set; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    private IReadOnlyList<Finding> Elsewhere =>
        [.. _findings.Where(f => f.Severity != Severity.Note && !FieldsWithNotes.Any(start => f.Where.StartsWith(start, StringComparison.Ordinal)))];

    /// <inheritdoc/>
    public void Dispose()
    {
        _page.Cancel();
        _page.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (_sheet?.Id != Id)
        {
            await LoadAsync();
        }
    }

    /// <inheritdoc/>
    protected override void OnAfterRender(bool firstRender)
    {
        if (firstRender)
        {
            _ = Book.Changes.WatchAllAsync(_page.Token).HearAsync(change => _open?.IsNews(change) == true, () => InvokeAsync(ReloadAsync));
        }
    }

    private async Task LoadAsync()
    {
        _sheet = await Book.Kits.FindAsync(Id);
        _isMissing = _sheet is null;
        _open = _sheet is null ? null : new OpenSheet<KitRow>(Book.Kits, Id, _sheet.Revision, Saves);
        Saves?.Opened();
        if (_sheet is not null)
        {
            Show(_sheet.Document);
        }
    }

    private void Show(string document)
    {
        Reading<Kit> reading = KitFile.Read(document);
        _kit = reading.Value;
        _findings = _kit is null ? reading.Findings : KitCheck.Findings(_kit);
    }

    private Task NamedAsync(ChangeEventArgs change)
    {
        string name = change.Value?.ToString()?.Trim() ?? "";
        return name.Length == 0 || _kit is null ? Task.CompletedTask : EditAsync(_kit with { Name = name });
    }

    private Task EditAsync(Kit kit)
    {
        _kit = kit;
        _findings = KitCheck.Findings(kit);
        return SaveAsync(_open!.SaveAsync);
    }

    private async Task SaveAsync(Func<Func<string>, Task> save)
    {
        await save(() => KitFile.Write(_kit!));
        _saved = _open!.Says("kit", Clock);
    }

    private Task KeepTheirsAsync()
    {
        _saved = "";
        return LoadAsync();
    }

    private Task SaveAgainAsync() => SaveAsync(_open!.SaveAsync);

    private Task KeepYoursAsync() => SaveAsync(_open!.OverwriteAsync);

    private async Task RestoreAsync()
    {
        await Book.Kits.RestoreAsync(Id);
        await LoadAsync();
    }

    private async Task ReloadAsync()
    {
        await LoadAsync();
        StateHasChanged();
    }
}
