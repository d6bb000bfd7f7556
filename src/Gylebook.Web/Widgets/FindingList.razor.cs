using Gylebook.Pictures;
using Gylebook.Recipes;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Widgets;

/// <summary>What is wrong or doubtful in what was entered; nothing at all when there is nothing.</summary>
public sealed partial class FindingList
{
    /// <summary>The findings.</summary>
    [Parameter]
    [EditorRequired]
    public required IReadOnlyList<Finding> Findings { get; set; }

    /// <summary>What the list is about, for those who hear the page.</summary>
    [Parameter]
    public string Label { get; set; } = "What we found";

    /// <summary>Whether to name the field; not needed when the list stands under it.</summary>
    [Parameter]
    public bool ShowsWhere { get; set; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public Shown? Shown { get; set; }

    private protected override object Look => (Label, ShowsWhere, AsText(Findings), Units);

    private ReaderUnits Units => Shown?.Units ?? ReaderUnits.Metric;

    /// <summary>All that is shown of findings, as one text.</summary>
    internal static string AsText(IReadOnlyList<Finding> findings) =>
        findings.Count == 0 ? "" : string.Join('\n', findings.Select(finding => $"{finding.Severity} {finding.Code} {finding.Where}: {finding.Message}"));

    private static string Word(Severity severity) => severity switch
    {
        Severity.Error => "Cannot be:",
        Severity.Warning => "Doubtful:",
        _ => "Note:",
    };
}
