using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Kits;

/// <summary>Two texts of one kit, and the choice between them.</summary>
public sealed partial class KitClash
{
    /// <summary>What the book holds.</summary>
    [Parameter]
    [EditorRequired]
    public required string Theirs { get; set; }

    /// <summary>What was to be saved.</summary>
    [Parameter]
    [EditorRequired]
    public required string Yours { get; set; }

    /// <summary>The book's was chosen.</summary>
    [Parameter]
    public EventCallback KeepTheirs { get; set; }

    /// <summary>One's own was chosen.</summary>
    [Parameter]
    public EventCallback KeepYours { get; set; }
}
