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

    private static string Word(Severity severity) => severity switch
    {
        Severity.Error => "Cannot be:",
        Severity.Warning => "Doubtful:",
        _ => "Note:",
    };
}
