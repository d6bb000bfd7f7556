using Gylebook.Forecast;
using Gylebook.Recipes;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Widgets;

/// <summary>A caution, shown at the step that needs it.</summary>
public sealed partial class CautionNote
{
    /// <summary>The caution.</summary>
    [Parameter]
    [EditorRequired]
    public required Caution Caution { get; set; }

    private string Word => Caution.Severity switch
    {
        Severity.Error => "Do not go on like this.",
        Severity.Warning => "Take care.",
        _ => "Note.",
    };
}
