using Gylebook.Store;
using Gylebook.Web.Features.Trouble;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Gylebook.Web.Drafting;

/// <summary>What stands above the fields of any file of the book.</summary>
public sealed partial class DraftHead : IDisposable
{
    private TroubleBoundary? _panels;
    private ElementReference _root;
    private PageScript? _script;
    private DotNetObjectReference<DraftHead>? _self;

    /// <summary>What lies on the desk.</summary>
    [Parameter]
    [EditorRequired]
    public required DraftDesk Desk { get; set; }

    /// <summary>What it is, in a word: <c>kit</c>.</summary>
    [Parameter]
    [EditorRequired]
    public required string Noun { get; set; }

    /// <summary>What stands above it where the name is a field further down; null for the name itself, to be typed there.</summary>
    [Parameter]
    public string? Title { get; set; }

    /// <summary>Where its edits are kept.</summary>
    [Parameter]
    [EditorRequired]
    public required BookDrafts Log { get; set; }

    /// <summary>Where its versions are kept.</summary>
    [Parameter]
    [EditorRequired]
    public required BookVersions Kept { get; set; }

    /// <summary>Another version is the latest now.</summary>
    [Parameter]
    public EventCallback<NumberedVersion?> Keeps { get; set; }

    /// <summary>The address of the page with that panel open, null for none.</summary>
    [Parameter]
    [EditorRequired]
    public required Func<string?, string> Address { get; set; }

    /// <summary>What is open beside the fields.</summary>
    [Parameter]
    public string? Panel { get; set; }

    /// <summary>The number of the version kept last; null when none was.</summary>
    [Parameter]
    public int? LatestVersion { get; set; }

    /// <summary>Where it is given out for other programs; null for what is not.</summary>
    [Parameter]
    public string? Others { get; set; }

    /// <summary>The address of the same as a sheet to print; null where there is none.</summary>
    [Parameter]
    public string? Print { get; set; }

    /// <summary>Where a gyle of it begins; null for what is not brewed.</summary>
    [Parameter]
    public string? Gyle { get; set; }

    /// <summary>Where it is given out; null for what is not.</summary>
    [Parameter]
    public string? Publish { get; set; }

    /// <summary>Whether it came with the demo.</summary>
    [Parameter]
    public bool IsDemo { get; set; }

    /// <summary>Whether it lies in the bin.</summary>
    [Parameter]
    public bool IsBinned { get; set; }

    /// <summary>It is wanted out of the bin.</summary>
    [Parameter]
    public EventCallback Restore { get; set; }

    /// <summary>The way to the browser.</summary>
    [Inject]
    public required IJSRuntime Script { get; init; }

    /// <inheritdoc/>
    public void Dispose()
    {
        _script?.Leave();
        _self?.Dispose();
    }

    /// <summary>Ctrl+Z outside of any field.</summary>
    [JSInvokable]
    public Task UndoKeyAsync() => Desk.UndoAsync();

    /// <summary>Ctrl+Shift+Z or Ctrl+Y outside of any field.</summary>
    [JSInvokable]
    public Task RedoKeyAsync() => Desk.RedoAsync();

    /// <summary>A part that could not be shown of the text before may be shown of this one.</summary>
    protected override void OnParametersSet() => _panels?.Recover();

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        _script ??= new PageScript(Script, "./Drafting/DraftHead.razor.js");
        await _script.EnterAsync(_root, _self ??= DotNetObjectReference.Create(this));
    }
}
