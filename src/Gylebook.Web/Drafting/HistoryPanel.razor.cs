using Gylebook.Store;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Drafting;

/// <summary>The edit log; any text in it can be had back, as a new edit.</summary>
public sealed partial class HistoryPanel
{
    private List<DraftEdit> _edits = [];
    private long _revision;

    /// <summary>What lies on the desk.</summary>
    [Parameter]
    [EditorRequired]
    public required DraftDesk Desk { get; set; }

    /// <summary>Where its edits are kept.</summary>
    [Parameter]
    [EditorRequired]
    public required BookDrafts Log { get; set; }

    /// <summary>The time.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (_revision != Desk.Draft.Revision)
        {
            _revision = Desk.Draft.Revision;
            _edits = await Log.HistoryAsync(Desk.Draft.Id);
        }
    }

    private Task ReturnAsync(DraftEdit edit) => Desk.ReturnAsync(edit.After, $"back to: {edit.Label}");
}
