using System.Globalization;
using Gylebook.Recipes.Editing;
using Gylebook.Web.Features.Liquors.Showing;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Liquors;

/// <summary>One line of a laboratory's report, as it is printed.</summary>
public sealed partial class ReportRow
{
    private PrintedAs? _chosen;

    /// <summary>The plan.</summary>
    [Parameter]
    [EditorRequired]
    public required LiquorDesk Desk { get; set; }

    /// <summary>Which report: <c>sources[0].report</c>.</summary>
    [Parameter]
    [EditorRequired]
    public required string Report { get; set; }

    /// <summary>The line.</summary>
    [Parameter]
    [EditorRequired]
    public required ReportLine Line { get; set; }

    private PrintedAs Way => Line.WayOf(key => Desk.TextAt($"{Report}.{key}")) ?? _chosen ?? Line.Ways[0];

    private string Path => $"{Report}.{Way.Key}";

    private int Place => Line.Ways.ToList().IndexOf(Way);

    private Task PrintedAsync(ChangeEventArgs change)
    {
        PrintedAs before = Way;
        _chosen = Line.Ways[int.Parse(change.Value!.ToString()!, CultureInfo.InvariantCulture)];
        if (Desk.TextAt(Path) is not { } text)
        {
            return Task.CompletedTask;
        }

        string number = ReportLine.NumberOf(text, before, Pictures.DecimalSign.Point);
        string from = $"{Report}.{before.Key}", to = $"{Report}.{_chosen.Key}";
        return Desk.EditAsync(draft => draft.InTurn(d => d.Rename(from, to), d => d.Put(to, ReportLine.TextOf(number, _chosen))));
    }
}
