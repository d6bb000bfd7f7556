using System.Security.Claims;
using Gylebook.Web.Features.Trouble;
using Gylebook.Web.Hosting.Entry;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.JSInterop;

namespace Gylebook.Web.Layout;

/// <summary>The head with the way to every page, and the page under it.</summary>
public sealed partial class MainLayout : IDisposable
{
    private PageSaves _saves = PageSaves.Unasked();
    private TroubleBoundary? _boundary;
    private DotNetObjectReference<MainLayout>? _self;
    private PageScript? _unsent;
    private PageScript? _reader;
    private string? _worn;
    private bool _isHelper;
    private bool _wasAsked;

    /// <summary>Where we are.</summary>
    [Inject]
    public required NavigationManager Navigation { get; init; }

    /// <summary>Who reads.</summary>
    [Inject]
    public required Reader Reader { get; init; }

    /// <summary>The way to the browser.</summary>
    [Inject]
    public required IJSRuntime Script { get; init; }

    /// <summary>Who came in.</summary>
    [CascadingParameter]
    public Task<AuthenticationState>? Entered { get; set; }

    // A bare #page would be read against the base address, and lead to Today.
    private string SkipTo => new Uri(Navigation.Uri).PathAndQuery + "#page";

    // What is typed before the page has its connection would be lost, so nothing can be typed until then.
    private bool IsWaiting => AssignedRenderMode is not null && !RendererInfo.IsInteractive;

    /// <inheritdoc/>
    public void Dispose()
    {
        Reader.Changed -= Redraw;
        _unsent?.Leave();
        _reader?.Leave();
        _self?.Dispose();
    }

    /// <summary>Asked by the page's script: once nothing is being saved any more, where a save failed, and why.</summary>
    [JSInvokable]
    public async Task<IReadOnlyDictionary<string, string>> SettledAsync()
    {
        IReadOnlyDictionary<string, string> failed = await _saves.SettledAsync();

        // What a field has to say about its text is drawn before this answer leaves.
        await Task.Yield();
        return failed;
    }

    /// <summary>Told by the page's script: what another tab of this browser chose.</summary>
    [JSInvokable]
    public Task RecallAsync(string words)
    {
        Reader.Recall(words);
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        _saves = new PageSaves(() => Navigation.ToBaseRelativePath(Navigation.Uri).Split('?', '#')[0]);
        Reader.Changed += Redraw;
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        _boundary?.Recover();
        if (Entered is not null)
        {
            ClaimsPrincipal who = (await Entered).User;
            (_isHelper, _wasAsked) = (Who.RoleOf(who) == Who.Helper, Who.WasAsked(who));
        }
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            _worn = Reader.Theme;
            _unsent = new PageScript(Script, "./Layout/UnsentBar.razor.js");
            await _unsent.EnterAsync(_self = DotNetObjectReference.Create(this));
            _reader = new PageScript(Script, Reader.Script);
            await _reader.EnterAsync(_self, ReaderChoice.Cookie, Reader.Choice.Words);
        }
        else if (_worn != Reader.Theme)
        {
            _worn = Reader.Theme;
            await WearAsync(_worn);
        }
    }

    private async Task WearAsync(string theme)
    {
        try
        {
            await using IJSObjectReference script = await Script.InvokeAsync<IJSObjectReference>("import", Reader.Script);
            await script.InvokeVoidAsync("wear", theme);
        }
        catch (Exception gone) when (gone is JSDisconnectedException or OperationCanceledException)
        {
            // The page is gone; the next one is written in the right theme.
        }
    }

    private void Redraw() => _ = InvokeAsync(StateHasChanged);
}
