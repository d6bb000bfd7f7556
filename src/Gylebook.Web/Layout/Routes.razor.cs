using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Layout;

/// <summary>The page that an address leads to, for the reader whose browser asked for it.</summary>
public sealed partial class Routes
{
    /// <summary>What the browser had kept of its reader's choice; null for nothing.</summary>
    [Parameter]
    public string? Chosen { get; set; }

    /// <summary>The reader, who must be known before anything is drawn.</summary>
    [Inject]
    public required Reader Reader { get; init; }

    /// <inheritdoc/>
    protected override void OnInitialized() => Reader.Recall(Chosen);
}
