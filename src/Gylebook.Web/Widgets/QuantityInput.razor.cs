using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Science.Quantities;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Widgets;

/// <summary>The only place where people type numbers with units.</summary>
/// <remarks>
/// What is typed is kept as typed, and read by the table of units. It is committed when the field changes hands or after a
/// short pause. While the field has the focus its text belongs to the person typing: nothing rewrites it.
/// </remarks>
/// <typeparam name="T">The quantity.</typeparam>
public sealed partial class QuantityInput<T> : IDisposable
    where T : struct, IQuantity<T>
{
    private readonly string _id = FieldIds.Next();
    private readonly string _noteId = FieldIds.Next();
    private readonly TypingPause _pause = new();
    private string _text = "";
    private string _problem = "";
    private Entered<T>? _committed;
    private Entered<T>? _given;
    private ReaderUnits? _givenFor;
    private bool _isFocused;
    private bool _isTyping;

    /// <summary>What it is; always there for those who hear the page.</summary>
    [Parameter]
    [EditorRequired]
    public required string Label { get; set; }

    /// <summary>Whether the label is for the ear only, since a table head or a line says it to the eye.</summary>
    [Parameter]
    public bool HidesLabel { get; set; }

    /// <summary>The quantity and its text; null for an empty field.</summary>
    [Parameter]
    public Entered<T>? Value { get; set; }

    /// <summary>A new quantity was committed; null when the field was emptied.</summary>
    [Parameter]
    public EventCallback<Entered<T>?> ValueChanged { get; set; }

    /// <summary>A text was committed that cannot be read as this quantity. It stays in the field.</summary>
    [Parameter]
    public EventCallback<string> Refused { get; set; }

    /// <summary>Whether the field may be empty.</summary>
    [Parameter]
    public bool IsOptional { get; set; }

    /// <summary>Whether nobody may type just now.</summary>
    [Parameter]
    public bool IsDisabled { get; set; }

    /// <summary>An example, while the field is empty.</summary>
    [Parameter]
    public string? Placeholder { get; set; }

    /// <summary>A few words under the field.</summary>
    [Parameter]
    public string? Hint { get; set; }

    /// <summary>The keyboard a phone offers. A bare number keeps the unit that stood there.</summary>
    [Parameter]
    public string InputMode { get; set; } = "decimal";

    /// <summary>What others found about this field.</summary>
    [Parameter]
    public IReadOnlyList<Finding> Findings { get; set; } = [];

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public Shown? Reader { get; set; }

    /// <summary>What this page has yet to save.</summary>
    [CascadingParameter]
    public PageSaves? Saves { get; set; }

    /// <summary>The time, for the pause.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    private ReaderUnits Units => Reader?.Units ?? ReaderUnits.Metric;

    private string Stored => _committed is { } entered ? TypedText.Show(entered, Units) : "";

    private bool HasError => Shown.Any(finding => finding.Severity == Severity.Error);

    private IReadOnlyList<Finding> Shown => _problem.Length == 0
        ? Findings
        : [new Finding("quantity.unread", Severity.Error, "", _problem)];

    /// <inheritdoc/>
    public void Dispose() => _pause.Dispose();

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        bool isNew = Value != _given || Units != _givenFor || _givenFor is null;
        (_given, _givenFor) = (Value, Units);
        if (!isNew)
        {
            return;
        }

        bool isOwn = Value == _committed;
        _committed = Value;
        if (!_isFocused && !(isOwn && _problem.Length > 0))
        {
            ShowCommitted();
        }
    }

    private void Focused() => _isFocused = true;

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
        if (_problem.Length == 0)
        {
            ShowCommitted();
        }
    }

    private async Task CommitAsync()
    {
        _pause.End();
        if (!_isTyping)
        {
            return;
        }

        _isTyping = false;
        if (IsOptional && string.IsNullOrWhiteSpace(_text))
        {
            await TakeAsync(null);
        }
        else if (_committed is { } unchanged && _text == TypedText.Show(unchanged, Units))
        {
            _problem = "";
        }
        else if (TypedText.TryRead(_text, _committed?.Text, Units, out Entered<T> entered, out string problem))
        {
            await TakeAsync(entered);
        }
        else
        {
            _problem = problem;
            await Refused.InvokeAsync(_text);
        }
    }

    private async Task TakeAsync(Entered<T>? entered)
    {
        _problem = "";
        if (entered != _committed)
        {
            _committed = entered;
            await ValueChanged.InvokeAsync(entered);
        }
    }

    private void ShowCommitted()
    {
        _problem = "";
        _text = Stored;
    }
}
