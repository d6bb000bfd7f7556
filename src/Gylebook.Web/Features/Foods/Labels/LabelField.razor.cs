using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Web.Reading;
using Gylebook.Web.Widgets;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>A line of the panel: a number pad's number, "less than" as a button, and a button for its unit.</summary>
/// <remarks>What is typed stays as typed, also where it cannot be read; it is passed on after a short pause, or when the field is left.</remarks>
public sealed partial class LabelField : IDisposable
{
    private readonly string _id = FieldIds.Next();
    private readonly string _noteId = FieldIds.Next();
    private readonly TypingPause _pause = new();
    private string _text = "";
    private string _unit = "";
    private string _problem = "";
    private string? _shown;
    private PanelField? _shownFor;
    private bool _isFocused;
    private bool _isTyping;

    /// <summary>Which line.</summary>
    [Parameter]
    [EditorRequired]
    public required PanelField Field { get; set; }

    /// <summary>The panel.</summary>
    [Parameter]
    [EditorRequired]
    public required LabelPanel Panel { get; set; }

    /// <summary>The line was changed: how to change a panel accordingly.</summary>
    [Parameter]
    public EventCallback<Func<LabelPanel, LabelPanel>> Changed { get; set; }

    /// <summary>What was found about this line.</summary>
    [Parameter]
    public IReadOnlyList<Finding> Findings { get; set; } = [];

    /// <summary>What is meant by an empty field, if anything.</summary>
    [Parameter]
    public string? Placeholder { get; set; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public Shown? Reader { get; set; }

    /// <summary>What this page has yet to save.</summary>
    [CascadingParameter]
    public PageSaves? Saves { get; set; }

    /// <summary>The time, for the pause.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    private PrintedText Pieces => PrintedText.Of(_text);

    private string OtherUnit => Field.Units[_unit == Field.Units[0] ? 1 : 0];

    private IReadOnlyList<Finding> Told => _problem.Length > 0 ? [new Finding("quantity.unread", Severity.Error, "", _problem)] : Findings;

    /// <inheritdoc/>
    public void Dispose() => _pause.Dispose();

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        string? stored = Field.Text(Panel);
        bool isOtherLine = _shownFor != Field;
        _shownFor = Field;
        if (isOtherLine || (stored != _shown && !_isFocused))
        {
            Show(stored);
        }
    }

    private void Show(string? stored)
    {
        PrintedText pieces = PrintedText.Of(stored ?? "");
        (_shown, _text, _problem) = (stored, pieces.Number, "");
        _unit = Field.Units.FirstOrDefault(unit => unit == pieces.Unit) ?? Field.Units[0];
    }

    private async Task TypedAsync(string? text)
    {
        _text = text ?? "";
        _isTyping = true;
        await _pause.ThenAsync(Clock, Saves, CommitAsync);
    }

    private async Task LeftAsync()
    {
        await CommitAsync();
        _isFocused = false;
    }

    private Task CommitAsync()
    {
        _pause.End();
        return _isTyping ? PassOnAsync() : Task.CompletedTask;
    }

    private Task ToggleUnitAsync()
    {
        _unit = OtherUnit;
        return _text.Trim().Length > 0 ? PassOnAsync() : Task.CompletedTask;
    }

    /// <summary>Without a number yet the sign stands there and waits for one.</summary>
    private Task ToggleLessAsync()
    {
        _text = Pieces.WithLess(!Pieces.IsLess).Number;
        return _text.Length > 1 ? PassOnAsync() : Task.CompletedTask;
    }

    private async Task PassOnAsync()
    {
        _isTyping = false;
        PrintedText pieces = Pieces;
        if (pieces.Unit is { } typed && Field.Units.Contains(typed))
        {
            (_unit, _text) = (typed, pieces.Number);
        }

        string? text = pieces.Number.Length == 0 && pieces.Unit is null ? null : pieces.InFull(pieces.Unit ?? _unit);
        _problem = Field.Put(Panel, text, out LabelPanel after);
        if (_problem.Length > 0 && Reader?.Units.DecimalSign == DecimalSign.Comma && text!.Contains(',', StringComparison.Ordinal)
            && Field.Put(Panel, text.Replace(',', '.'), out LabelPanel unambiguous).Length == 0)
        {
            (_problem, text, after) = ("", text.Replace(',', '.'), unambiguous);
        }

        string? stored = Field.Text(after);
        if (_problem.Length == 0 && stored != Field.Text(Panel))
        {
            _shown = stored;
            await Changed.InvokeAsync(panel => Field.Put(panel, text, out LabelPanel changed).Length == 0 ? changed : panel);
        }
    }
}
