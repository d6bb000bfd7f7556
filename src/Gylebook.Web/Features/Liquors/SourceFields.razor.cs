using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Science.Water;
using Gylebook.Web.Features.Liquors.Showing;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Liquors;

/// <summary>One of the plan's waters.</summary>
public sealed partial class SourceFields
{
    private static readonly PrintedAs CalciumCarbonate = new("mg/L CaCO3", "boiledTo", "mg/L CaCO3");

    /// <summary>The plan.</summary>
    [Parameter]
    [EditorRequired]
    public required LiquorDesk Desk { get; set; }

    /// <summary>Its place, from 0.</summary>
    [Parameter]
    [EditorRequired]
    public required int Number { get; set; }

    private bool IsDistilled => Desk.TextAt(Field("distilled")) == "true";

    private bool IsBoiled => Desk.TextAt(Field("boiled")) == "true";

    /// <summary>What no field shows: what the report says as a whole.</summary>
    private IReadOnlyList<Finding> Rest =>
        [.. Desk.In(Invariant($"sources[{Number}]")).Where(f => f.Severity != Severity.Note && !ShownFields.Contains(f.Where))];

    private IEnumerable<string> ShownFields =>
        ReportLine.Usual.Concat(ReportLine.Rare).SelectMany(line => line.Ways.Select(way => Field($"report.{way.Key}"))).Concat([Field("name"), Field("share"), Field("boiledTo")]);

    /// <summary>The report's ions against each other; null while none is typed.</summary>
    private ChargeBalance? Charges => Desk.Outlook?.Plan.Sources.ElementAtOrDefault(Number)?.Report?.ToProfile() is { } ions && ChargeBalance.Of(ions) is { Cations: > 0 } balance
        ? balance
        : null;

    private string Field(string key) => Invariant($"sources[{Number}].{key}");

    private bool IsPrinted(ReportLine line) => line.WayOf(key => Desk.TextAt(Field($"report.{key}"))) is not null;

    private Task BoilAsync(bool isBoiled) => Desk.EditAsync(draft => isBoiled
        ? draft.Flag(Field("boiled"), true)
        : draft.InTurn(d => d.Put(Field("boiledTo"), null), d => d.Flag(Field("boiled"), false)));
}
