using Gylebook.Forecast;
using Gylebook.Pictures;
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

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public Shown? Shown { get; set; }

    private protected override object Look => (Caution, Told);

    private string Told => ToldText.Of(Caution.Message, Shown?.Units ?? ReaderUnits.Metric);

    private string Word => Caution.Severity switch
    {
        Severity.Error => "Do not go on like this.",
        Severity.Warning => "Take care.",
        _ => "Note.",
    };
}
