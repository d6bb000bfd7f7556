using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Widgets;

/// <summary>Two texts of one sheet, and the choice between them.</summary>
public sealed partial class SheetClash
{
    /// <summary>What sort of sheet, in a word: <c>kit</c>.</summary>
    [Parameter]
    [EditorRequired]
    public required string What { get; set; }

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
