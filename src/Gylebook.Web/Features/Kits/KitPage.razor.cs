using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Store;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Kits;

/// <summary>One kit, edited in place and saved as one goes.</summary>
public sealed partial class KitPage : IDisposable
{
    private static readonly string[] FieldsWithNotes =
        ["kettle.", "conversion", "grainTemperature", "bag.", "tun.", "chiller.", "fermenter.", "racking.", "packages", "altitude"];

    private readonly CancellationTokenSource _page = new();
    private readonly string _tab = Guid.CreateVersion7().ToString();
    private Sheet? _sheet;
    private Kit? _kit;
    private IReadOnlyList<Finding> _findings = [];
    private DraftSave.Stale? _clash;
    private string _saved = "";
    private bool _isMissing;
    private bool _isSaving;
    private bool _isChanged;

    /// <summary>Which kit.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

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
            _ = WatchAsync(_page.Token);
        }
    }

    private async Task LoadAsync()
    {
        _sheet = await Book.Kits.FindAsync(Id);
        _isMissing = _sheet is null;
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
        return SaveAsync();
    }

    /// <summary>One save at a time; what was typed meanwhile goes with the next.</summary>
    private async Task SaveAsync()
    {
        _isChanged = true;
        if (_isSaving || _clash is not null)
        {
            return;
        }

        _isSaving = true;
        try
        {
            while (_isChanged && _clash is null)
            {
                _isChanged = false;
                Answer(await Book.Kits.SaveAsync(Id, _sheet!.Revision, KitFile.Write(_kit!), _tab));
            }
        }
        finally
        {
            _isSaving = false;
        }
    }

    private void Answer(DraftSave answer)
    {
        switch (answer)
        {
            case DraftSave.Saved saved:
                _sheet = _sheet! with { Revision = saved.Revision };
                _saved = $"Saved {Instants.Clock(Clock.GetUtcNow(), Clock)}";
                break;
            case DraftSave.Stale stale:
                _clash = stale;
                _saved = "Not saved: this kit was changed elsewhere";
                break;
        }
    }

    private async Task KeepTheirsAsync()
    {
        _clash = null;
        _isChanged = false;
        _saved = "";
        await LoadAsync();
    }

    private async Task KeepYoursAsync()
    {
        _sheet = _sheet! with { Revision = _clash!.TheirRevision };
        _clash = null;
        await SaveAsync();
    }

    private async Task RestoreAsync()
    {
        await Book.Kits.RestoreAsync(Id);
        await LoadAsync();
    }

    private async Task WatchAsync(CancellationToken cancellation)
    {
        try
        {
            await foreach (BookChange change in Book.Changes.WatchAllAsync(cancellation))
            {
                if (change.Id == Id && change.TabId != _tab && !_isSaving && _clash is null)
                {
                    await InvokeAsync(async () =>
                    {
                        await LoadAsync();
                        StateHasChanged();
                    });
                }
            }
        }
        catch (OperationCanceledException)
        {
            // The page is gone.
        }
    }
}
