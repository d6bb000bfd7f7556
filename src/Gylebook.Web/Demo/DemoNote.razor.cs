using Gylebook.Store;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Demo;

/// <summary>The demo's note on a page; nothing once the demo is gone.</summary>
public sealed partial class DemoNote
{
    private DemoState _state = DemoState.NotYet;
    private bool _isJustGone;

    /// <summary>The book.</summary>
    [Inject]
    public required Book Book { get; init; }

    /// <summary>The demo has been removed; whoever lists things lists them anew.</summary>
    [Parameter]
    public EventCallback Removed { get; set; }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync() => _state = await Book.Demo.StateAsync();

    private async Task RemoveAsync()
    {
        await Book.RemoveDemoAsync();
        (_state, _isJustGone) = (DemoState.Removed, true);
        await Removed.InvokeAsync();
    }
}
