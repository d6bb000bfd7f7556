using System.Globalization;
using Gylebook.Forecast;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Pitching;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Lots;
using Gylebook.Web.Features.Recipes.Showing;
using Gylebook.Web.Widgets;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

namespace Gylebook.Web.Features.Recipes;

/// <summary>A line of the recipe, edited in place.</summary>
public sealed partial class LineRow
{
    private static readonly (string, string)[] WhenChoices = [.. WhenText.Places.Select(p => (p.Word, p.Word))];

    private readonly string _notesId = FieldIds.Next();

    // Findings of these fields stand under the fields themselves.
    private static readonly string[] ShownWhenOpen = ["at", "share", "alpha", "form", "colour", "portion", "lot", "as", "age", "cells", "attenuation", "storage.pack", "storage.temperature", "storage.lost"];

    /// <summary>The recipe.</summary>
    [Parameter]
    [EditorRequired]
    public required RecipeDesk Desk { get; set; }

    /// <summary>The line, as typed.</summary>
    [Parameter]
    [EditorRequired]
    public required DraftLine Line { get; set; }

    /// <summary>Whether its details are open.</summary>
    [Parameter]
    public bool IsOpen { get; set; }

    /// <summary>Details of that line are to open or close.</summary>
    [Parameter]
    public EventCallback<int> Toggled { get; set; }

    // Open, it shows too much to hold against what it showed.
    private protected override object Look => IsOpen ? new object() : (
        (Desk, Desk.Shown, Line.Number, Title, Says, Brings),
        (Desk.TextAt(Field("amount")), Desk.NewLine == Line.Number, FindingList.AsText(Desk.OfLine(Line.Number, Shown))));

    private string[] Shown => IsOpen ? ShownWhenOpen : [];

    private LinePart? Part => Desk.Outlook?.Parts.GetValueOrDefault(Line.Number);

    private string Title => (Line.As ?? TableName ?? Line.Of) is { Length: > 0 } name ? Words.Sentence(name) : "A line without a name";

    private string? TableName => OwnSheet?.Name ?? Line.Kind switch
    {
        IngredientKind.Food or IngredientKind.Spice => Desk.Larder.Food(Line.Of)?.Name ?? Gylebook.Recipes.Foods.FoodTable.Find(Line.Of).Match?.Name,
        IngredientKind.Sugar or IngredientKind.Extract => Sugars.Find(Line.Of).Match?.Name,
        _ => null,
    };

    private LarderSheet? OwnSheet => Line.Kind is { } kind ? Desk.Larder.Sheet(kind, Line.Of) : null;

    /// <summary>The lots it may be of; one that is written and not there stays to be seen.</summary>
    private IReadOnlyList<(string Value, string Words)> Lots => OwnSheet is { EveryLot.Count: > 0 } sheet
        ? [("", "of no lot"), .. sheet.EveryLot.Select(lot => (lot.Name, lot.Name))]
        : Desk.TextAt(Field("lot")) is null ? [] : [("", "of no lot"), (Desk.TextAt(Field("lot"))!, Desk.TextAt(Field("lot"))!)];

    private string Says => string.Join(" · ", new[]
    {
        Line.Kind == IngredientKind.Hop ? AlphaWords : null,
        Line.Form,
        Line.Cells,
        Line.Age is { } age ? $"{age} old" : null,
        Line.Colour,
        TimeWords,
        Desk.TextAt(Field("lot")) is { } lot ? $"lot {lot}" : null,
        Line.Portion is { } portion ? $"into {portion}" : null,
    }.Where(text => !string.IsNullOrEmpty(text)));

    /// <summary>When it goes in, unless the stage it stands under says it all.</summary>
    private string? TimeWords => Line.Time.Point switch
    {
        AdditionPoint.Mash or AdditionPoint.KnockOut or AdditionPoint.Pitch or AdditionPoint.Package => null,
        AdditionPoint.Boil or AdditionPoint.Stand => $"{CountOf(Line.At)} min",
        AdditionPoint.Ferment => $"day {CountOf(Line.At)}",
        _ => Line.At,
    };

    private string? AlphaWords => OwnSheet is not null && Line.Alpha is null ? null : Line.Alpha is { } own
        ? $"{own} alpha"
        : HopCultivars.Find(Line.Of).Match is { } row ? $"{Desk.Shown.Percent(row.Alpha.Percent)} alpha, from the table" : null;

    private string Brings => Part switch
    {
        { Ibu: double ibu } => Desk.Shown.Ibu(ibu),
        { GristPercent: double share } => $"{(Desk.TextAt(Field("share")) is null ? "" : "held, ")}{Desk.Shown.Percent(share)}",
        { GravityPoints: double points } => $"{(points < 0 ? "−" : "+")} {Desk.Shown.Number(Math.Abs(points), 1)} points",
        { GramsPerLitre: double grams } => $"{Desk.Shown.Number(grams, 1)} g/L",
        _ when Line.Kind == IngredientKind.Yeast && Desk.Outlook?.Forecast.Pitch is { } pitch => Cells(pitch),
        _ => "",
    };

    private string CountLabel => Line.Time.Point == AdditionPoint.Ferment ? "On day" : Line.Time.Point == AdditionPoint.Boil ? "Minutes before knock-out" : "Minutes before the stand ends";

    private IReadOnlyList<(string Value, string Words)> Portions =>
    [
        ("", "all portions"),
        .. Enumerable.Range(0, Desk.Now.CountOf("portions")).Select(i => Desk.Now[Invariant($"portions[{i}].name")] ?? "").Where(n => n.Length > 0).Select(n => (n, n)),
    ];

    private string Field(string key) => $"{Line.Path}.{key}";

    private string Cells(PitchAdvice pitch) => pitch.CellsBillions is double cells
        ? $"{Desk.Shown.Number(cells, 0)} of {Desk.Shown.Number(pitch.CellsNeededBillions, 0)} billion cells"
        : $"{Desk.Shown.Number(pitch.CellsNeededBillions, 0)} billion cells wanted";

    private static string PlaceWord(string at) => AdditionTimeText.TryParse(at, out AdditionTime time, out _)
        ? WhenText.Places.First(p => p.Point == time.Point).Word
        : at;

    private string CountOf(string at) => AdditionTimeText.TryParse(at, out AdditionTime time, out _)
        ? Desk.Shown.Number(time.Count, time.Count == Math.Round(time.Count) ? 0 : 1)
        : at;

    private DraftEdit<RecipeDraft>? MoveInTime(RecipeDraft draft, string word)
    {
        AdditionPoint point = WhenText.Places.FirstOrDefault(p => p.Word == word).Point;
        string count = point == AdditionPoint.Boil ? draft.Recipe?.Boil?.Time.Value.Minutes.ToString("0.#", CultureInfo.InvariantCulture) ?? WhenText.UsualCount(point) : WhenText.UsualCount(point);
        return draft.Put(Field("at"), WhenText.Of(point, count));
    }

    private async Task KeyAsync(KeyboardEventArgs key)
    {
        if (key is { AltKey: true, Key: "ArrowUp" })
        {
            await MoveAsync(-1);
        }
        else if (key is { AltKey: true, Key: "ArrowDown" })
        {
            await MoveAsync(1);
        }
    }

    /// <summary>Past the neighbour of its own stage, so that every step is seen.</summary>
    private Task MoveAsync(int step)
    {
        IReadOnlyList<DraftLine> lines = Desk.Now.Lines;
        RecipeStage stage = StagePlaces.Of(Line.Time.Point);
        for (int to = Line.Number + step; to >= 0 && to < lines.Count; to += step)
        {
            if (StagePlaces.Of(lines[to].Time.Point) == stage)
            {
                Desk.NewLine = to;
                return Desk.EditAsync(draft => draft.Move(Line.Number, to));
            }
        }

        return Task.CompletedTask;
    }
}
