using Gylebook.Web.Drafting;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Widgets.Fields;

/// <summary>All fields of a part of a form, made from its table.</summary>
public sealed partial class FormFields
{
    /// <summary>The desk the file lies on.</summary>
    [Parameter]
    [EditorRequired]
    public required DraftDesk Desk { get; set; }

    /// <summary>Which part, as in findings: <c>figures</c>, <c>lots[0]</c>; empty for the file's own fields.</summary>
    [Parameter]
    public string Path { get; set; } = "";

    /// <summary>Keys that the page shows elsewhere.</summary>
    [Parameter]
    public IReadOnlyList<string> Skips { get; set; } = [];
}
