using Gylebook.Forecast;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Widgets;

/// <summary>The cautions of one place, quiet unless one is grave.</summary>
public sealed partial class CautionMarks
{
    /// <summary>Which, in the order of the brew.</summary>
    [Parameter]
    [EditorRequired]
    public required IReadOnlyList<Caution> Cautions { get; set; }

    private protected override object Look => string.Join('\n', Cautions);

    private IReadOnlyList<Caution> Marked => [.. Cautions.Where(caution => !caution.IsGrave)];

    private string Read => Marked.All(caution => caution.Kind.Weight == CautionWeight.Reminder) ? "what is usual here" : "read";
}
