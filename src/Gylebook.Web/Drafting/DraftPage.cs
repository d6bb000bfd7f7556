using Gylebook.Pictures;
using Gylebook.Recipes.Editing;
using Gylebook.Store;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Logging;

namespace Gylebook.Web.Drafting;

/// <summary>A page with a file of the book on its desk: opened once, saved as one goes, taken in anew when others change it.</summary>
/// <typeparam name="TDraft">Which sort of draft.</typeparam>
/// <typeparam name="TDesk">The desk it lies on.</typeparam>
public abstract class DraftPage<TDraft, TDesk> : ComponentBase, IDisposable
    where TDraft : FileDraft
    where TDesk : DraftDesk<TDraft>
{
    private CancellationTokenSource _listening = new();
    private bool _isAsked;
    private bool _isLeft;
    private bool _hasAddress;
    private Guid? _asked;

    /// <summary>Which file, as the address says; null for one that is not in the book yet.</summary>
    [Parameter]
    public Guid? Id { get; set; }

    /// <summary>What is open beside the fields: <c>versions</c>, <c>history</c>.</summary>
    [SupplyParameterFromQuery(Name = "open")]
    public string? Panel { get; set; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    /// <summary>What this page has yet to save.</summary>
    [CascadingParameter]
    public PageSaves? Saves { get; set; }

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>Gives what begins on this page its address.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>Tells the terminal.</summary>
    [Inject]
    public required ILoggerFactory Logs { get; init; }

    /// <summary>Which file is on the desk, in the book or not yet.</summary>
    protected Guid Which { get; private set; }

    /// <summary>Which tab.</summary>
    protected string TabId { get; } = Guid.CreateVersion7().ToString();

    /// <summary>The desk; null when there is nothing to lay on it.</summary>
    protected TDesk? Desk { get; private set; }

    /// <summary>What is wrong with a text that cannot be opened; null when nothing is.</summary>
    protected string? Damage { get; private set; }

    /// <summary>Whether the book has no such file.</summary>
    protected bool IsMissing { get; private set; }

    /// <summary>Whether it began on this page: its first edit brought it into the book, or will.</summary>
    protected bool IsBegunHere { get; private set; }

    /// <summary>The number of the version kept last; null when none was.</summary>
    protected int? LatestVersion { get; private set; }

    /// <summary>What the terminal is told.</summary>
    protected ILogger Log => Logs.CreateLogger(GetType());

    /// <summary>Where its edits are kept.</summary>
    protected abstract BookDrafts Drafts { get; }

    /// <summary>Where its versions are kept.</summary>
    protected abstract BookVersions Versions { get; }

    /// <summary>The page is left.</summary>
    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    /// <summary>The address of this page as it is looked at, with that panel open; null for none.</summary>
    protected abstract string Address(string? panel);

    /// <summary>A text of the sort that lies on this desk.</summary>
    /// <exception cref="ArgumentException">Not a file at all.</exception>
    protected abstract TDraft Read(string text);

    /// <summary>The text of one that is not in the book yet; null on a page that begins none.</summary>
    protected virtual Task<string?> BeginAsync() => Task.FromResult<string?>(null);

    /// <summary>Looks up what the book says beside the text: its name in lists, whether it is in the bin.</summary>
    protected abstract Task LookAsync();

    /// <summary>Lays an opened draft on a desk.</summary>
    protected abstract Task<TDesk> LayOutAsync(OpenDraft<TDraft> draft);

    /// <summary>Whether a change in the book is anything to this page, and not its own doing.</summary>
    protected virtual bool IsNews(BookChange change) => change.Id == Which && change.TabId != TabId;

    /// <summary>Takes such a change in.</summary>
    protected virtual async Task TakeChangeAsync(BookChange change)
    {
        await LookAsync();
        await (Desk?.AdoptAsync() ?? Task.CompletedTask);
        if (await LatestAsync() is var latest && latest?.Number != LatestVersion)
        {
            Keep(latest);
        }
    }

    /// <summary>Something on the desk is not what it was, and the page is about to be drawn.</summary>
    protected virtual void Redrawing()
    {
    }

    /// <summary>Another version is the latest now.</summary>
    protected virtual void Keep(NumberedVersion? latest) => LatestVersion = latest?.Number;

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        // Between the first edit of a new file and its own address the page is asked for "a new one" again, whenever a setting
        // changes: that is still the file on this desk.
        bool isOnDesk = _isAsked && (Id == _asked || Id == Which);
        (_isAsked, _asked) = (true, Id);
        if (!isOnDesk)
        {
            await OpenAsync();
        }
        else if (Desk is { } desk && desk.Shown != Shown)
        {
            desk.Show(Shown);
        }
    }

    /// <summary>Opens the file, or opens it once more after a whole text took the place of a damaged one.</summary>
    protected async Task OpenAsync()
    {
        IAsyncEnumerable<BookChange> changes = Book.Changes.WatchAllAsync(ListenAnew());
        Which = Id ?? Guid.CreateVersion7(Clock.GetUtcNow());
        await LookAsync();
        OpenDraft<TDraft>? draft = await FindOrBeginAsync();
        IsMissing = draft is null && Damage is null;
        Saves?.Opened();
        Put(draft is null ? null : await LayOutAsync(draft));
        if (Desk is null)
        {
            return;
        }

        (IsBegunHere, _hasAddress) = (Id is null, Id is not null);
        Keep(await LatestAsync());
        _ = changes.HearAsync(IsNews, change => InvokeAsync(() => TakeAsync(change)));
    }

    /// <summary>Leaves what the page holds on to.</summary>
    /// <param name="isLeft">Always: there is no finalizer.</param>
    protected virtual void Dispose(bool isLeft)
    {
        _isLeft = true;
        _listening.Cancel();
        _listening.Dispose();
        Put(null);
    }

    /// <summary>The file as a draft; null, and <see cref="Damage"/> says why if there is one, when it cannot be laid on a desk.</summary>
    private async Task<OpenDraft<TDraft>?> FindOrBeginAsync()
    {
        Damage = null;
        if (Id is null)
        {
            return await BeginAsync() is { } text ? OpenDraft.Begin(Drafts, Which, text, Read, TabId, Saves) : null;
        }

        try
        {
            return await OpenDraft.OpenAsync(Drafts, Which, Read, TabId, Saves);
        }
        catch (Exception damage) when (damage is InvalidDataException or BookUnavailableException { Trouble: BookTrouble.Damaged })
        {
            Log.NotRead(damage, Which.ToString());
            Damage = damage.Message.Split('\n')[0];
            return null;
        }
    }

    /// <summary>What was heard for the file that lay here before is heard no more.</summary>
    private CancellationToken ListenAnew()
    {
        _listening.Cancel();
        _listening.Dispose();
        _listening = new CancellationTokenSource();
        return _listening.Token;
    }

    private async Task<NumberedVersion?> LatestAsync() => (await Versions.ListAsync(Which)).FirstOrDefault(version => !version.IsDamaged);

    private async Task TakeAsync(BookChange change)
    {
        if (!_isLeft)
        {
            await TakeChangeAsync(change);
            StateHasChanged();
        }
    }

    private void Put(TDesk? desk)
    {
        if (Desk is { } before)
        {
            before.Changed -= Redraw;
            before.Draft.Dispose();
        }

        Desk = desk;
        if (desk is not null)
        {
            desk.Changed += Redraw;
        }
    }

    private void Redraw() => _ = InvokeAsync(() =>
    {
        Redrawing();
        if (!_hasAddress && Desk is { Draft.IsInBook: true })
        {
            // Its first edit brought it into the book: from now on it has an address of its own.
            _hasAddress = true;
            Navigation.NavigateTo(Address(Panel), replace: true);
        }

        StateHasChanged();
    });
}
