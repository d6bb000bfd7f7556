using Gylebook.Science.Quantities;
using Gylebook.Web.Widgets.Fields;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>A line of the panel. The file holds its figure with its unit; the field shows the number alone.</summary>
public sealed partial class LabelField
{
    private string? _chosenUnit;
    private bool _isLessNext;

    /// <summary>The desk the label lies on.</summary>
    [Parameter]
    [EditorRequired]
    public required LabelDesk Desk { get; set; }

    /// <summary>Which line.</summary>
    [Parameter]
    [EditorRequired]
    public required PanelLine Line { get; set; }

    /// <summary>What is meant by an empty field, if anything.</summary>
    [Parameter]
    public string? Placeholder { get; set; }

    private PrintedText Stored => PrintedText.Of(Desk.TextAt(Line.Path) ?? "");

    private bool IsLess => Stored.HasNumber ? Stored.IsLess : _isLessNext;

    private string Unit => Line.Units.FirstOrDefault(unit => unit == Stored.Unit) ?? Line.Units.FirstOrDefault(unit => unit == _chosenUnit) ?? Line.Units[0];

    private string OtherUnit => Line.Units[Unit == Line.Units[0] ? 1 : 0];

    private static string NumberOf(string text) => PrintedText.Of(text).Number;

    /// <summary>The file's text for what stands in the field and on its buttons.</summary>
    private string InFull(string typed)
    {
        PrintedText pieces = PrintedText.Of(typed);
        PrintedText meant = _isLessNext && pieces.HasNumber ? pieces.WithLess(true) : pieces;
        string text = meant.InFull(Unit);
        return Line.IsEnergy || !meant.HasNumber ? text
            : meant.IsLess ? $"<{Weighed(text[1..])}"
            : Weighed(text);
    }

    /// <summary>As typed wherever that can be read again by itself: "1,068 g" is one gram to a reader who has said what a comma is.</summary>
    private string Weighed(string text) => FieldText.Of<Mass>().Keep(text, null, Desk.Shown.Units);

    private Task ToggleUnitAsync()
    {
        string other = OtherUnit;
        _chosenUnit = other;
        return Desk.ChangeAsync(Line.Path, text => PrintedText.Of(text) is { HasNumber: true } figure ? (figure with { Unit = other }).InFull(other) : text);
    }

    /// <summary>Without a number yet the sign waits for one.</summary>
    private Task ToggleLessAsync()
    {
        bool isLess = !IsLess;
        _isLessNext = isLess && !Stored.HasNumber;
        string unit = Unit;
        return Desk.ChangeAsync(Line.Path, text => PrintedText.Of(text) is { HasNumber: true } figure ? figure.WithLess(isLess).InFull(unit) : text);
    }

    /// <summary>The sign that waited stands in the figure now: typed anew, the figure says itself whether it has one.</summary>
    private void Left() => _isLessNext &= !Stored.HasNumber;
}
