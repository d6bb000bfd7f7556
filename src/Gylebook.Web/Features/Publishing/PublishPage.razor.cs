using System.Globalization;
using Gylebook.Recipes;
using Gylebook.Store;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Publishing;

/// <summary>A recipe on its way out: what goes, who says so, what was put right since.</summary>
public sealed partial class PublishPage
{
    private readonly CancellationTokenSource _left = new();
    private IReadOnlyList<GyleLine> _gyles = [];
    private IReadOnlyList<Finding> _against = [];
    private KeptPublication? _kept;
    private string? _name;
    private string _by = "";
    private string _of = "";
    private string _erratum = "";
    private string _said = "";
    private bool _isLoaded;
    private bool _isBusy;

    /// <summary>Which recipe.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>Gives out.</summary>
    [Inject]
    public required PublishDesk Desk { get; init; }

    /// <inheritdoc/>
    public void Dispose()
    {
        _left.Cancel();
        _left.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        IAsyncEnumerable<BookChange>? changes = RendererInfo.IsInteractive ? Book.Changes.WatchAsync(Id, _left.Token) : null;
        _by = await Desk.ByAsync();
        await LoadAsync();
        _ = changes?.HearAsync(_ => true, _ => InvokeAsync(async () =>
        {
            await LoadAsync();
            StateHasChanged();
        }));
    }

    private async Task LoadAsync()
    {
        RecipeLine? recipe = await Book.Recipes.FindAsync(Id);
        _name = recipe is { Deleted: null } ? recipe.Name : null;
        _kept = await Book.Publications.FindAsync(Id);
        _gyles = [.. (await Book.Gyles.ListAsync()).Where(gyle => gyle.RecipeId == Id && gyle.VersionNumber is not null).OrderByDescending(gyle => gyle.Started)];
        _isLoaded = true;
    }

    private async Task PublishAsync()
    {
        (_isBusy, _said, _against) = (true, "One moment.", []);
        await Task.Yield();
        try
        {
            await Desk.SetByAsync(_by);
            (KeptPublication? kept, IReadOnlyList<Finding> findings) = Guid.TryParse(_of, out Guid gyle) ? await Desk.PublishGyleAsync(gyle) : await Desk.PublishRecipeAsync(Id);
            _against = [.. findings.Where(finding => finding.Severity == Severity.Error)];
            _said = kept is null ? "It is not given out: it cannot be brewed as it is." : Invariant($"Version {kept.Version} is given out.");
            await LoadAsync();
        }
        catch (BookUnavailableException trouble)
        {
            _said = $"It is not given out: {trouble.Message}";
        }
        finally
        {
            _isBusy = false;
        }
    }

    private async Task AddErratumAsync()
    {
        if (string.IsNullOrWhiteSpace(_erratum))
        {
            _said = "Say what is wrong, and what to do.";
            return;
        }

        await TryAsync(() => Book.Publications.AddErratumAsync(Id, _erratum), "It is put right.");
        _erratum = "";
    }

    private Task TakeBackAsync(KeptErratum erratum) => TryAsync(() => Book.Publications.RemoveErratumAsync(Id, erratum.Id), "It is taken back.");

    private Task WithdrawAsync() => TryAsync(() => Book.Publications.WithdrawAsync(Id), "The recipe is taken back.");

    private async Task TryAsync(Func<Task> change, string done)
    {
        try
        {
            await change();
            _said = done;
            await LoadAsync();
        }
        catch (BookUnavailableException trouble)
        {
            _said = $"Not done: {trouble.Message}";
        }
    }

    private static string Day(DateTimeOffset at) => at.ToLocalTime().ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    private static string Day(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
}
