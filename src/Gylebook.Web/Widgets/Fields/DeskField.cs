using Gylebook.Recipes;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Widgets.Fields;

/// <summary>What the fields of a file on a desk have in common.</summary>
public abstract class DeskField : DrawnOnChange
{
    /// <summary>The desk its file lies on.</summary>
    [Parameter]
    [EditorRequired]
    public required IFieldDesk Desk { get; set; }

    /// <summary>Which field, as in findings: <c>boil.time</c>.</summary>
    [Parameter]
    [EditorRequired]
    public required string Path { get; set; }

    /// <summary>What it is; always there for those who hear the page.</summary>
    [Parameter]
    [EditorRequired]
    public required string Label { get; set; }

    /// <summary>Whether the label is for the ear only.</summary>
    [Parameter]
    public bool HidesLabel { get; set; }

    private protected string Id { get; } = FieldIds.Next();

    private protected IReadOnlyList<Finding> Findings => Desk.At(Path);

    /// <inheritdoc/>
    private protected override object Look =>
        (Path, Label, HidesLabel, Desk.TextAt(Path), Desk.Shown, FindingList.AsText(Findings));

    private protected bool HasError => Findings.Any(f => f.Severity == Severity.Error);
}
