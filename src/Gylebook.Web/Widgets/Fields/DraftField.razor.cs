using Gylebook.Pictures;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Widgets.Fields;

/// <summary>A field of a file on a desk: reckons at every key, saves when it changes hands or after a pause.</summary>
/// <remarks>
/// It also holds text that cannot be read: that is saved with the rest, and its
/// finding stands under it, here and after a reload.
/// </remarks>
public sealed partial class DraftField : IDisposable
{
    private readonly string _noteId = FieldIds.Next();
    private readonly TypingPause _pause = new();
    private ElementReference _input;
    private string _text = "";
    private bool _isFocused;
    private bool _isTyping;
    private bool _wantsFocus;
    private (string? Text, FieldText As, ReaderUnits Units, string Shown)? _shown;

    /// <summary>How its text is shown and kept.</summary>
    [Parameter]
    public FieldText As { get; set; } = FieldText.Plain;

    /// <summary>What stands there while it is empty.</summary>
    [Parameter]
    public string? Placeholder { get; set; }

    /// <summary>A few words under it while nothing was found there.</summary>
    [Parameter]
    public string? Hint { get; set; }

    /// <summary>Whether several lines may be typed.</summary>
    [Parameter]
    public bool IsLong { get; set; }

    /// <summary>A class for its looks: <c>name</c>, <c>q</c>.</summary>
    [Parameter]
    public string? Class { get; set; }

    /// <summary>The field takes the focus when this becomes true.</summary>
    [Parameter]
    public bool TakesFocus { get; set; }

    /// <summary>It has taken the focus it was given.</summary>
    [Parameter]
    public Action? TookFocus { get; set; }

    /// <summary>What a phone writes on its Enter key: <c>done</c>, <c>next</c>.</summary>
    [Parameter]
    public string EnterKey { get; set; } = "done";

    /// <summary>What is shown for the draft's text, where a field holds but a part of it.</summary>
    [Parameter]
    public Func<string, string>? PartOf { get; set; }

    /// <summary>The draft's text for what was typed, where a field holds but a part of it.</summary>
    [Parameter]
    public Func<string, string>? WholeOf { get; set; }

    /// <summary>Whether its findings stand under it; where there is no room, somebody else shows them.</summary>
    [Parameter]
    public bool ShowsFindings { get; set; } = true;

    /// <summary>The id of what shows them instead.</summary>
    [Parameter]
    public string? NotesId { get; set; }

    /// <summary>What this page has yet to save.</summary>
    [CascadingParameter]
    public PageSaves? Saves { get; set; }

    /// <summary>The time, for the pause.</summary>
    [Inject]
    public required TimeProvider Clock { get; init; }

    /// <summary>The draft's text, as this field shows it.</summary>
    private string Stored => Desk.TextAt(Path) is var text && PartOf is not null ? PartOf(text ?? "") : Show(text);

    private string InputMode => As == FieldText.Plain && WholeOf is null ? "text" : "decimal";

    private protected override object Look => (base.Look, Stored, _text, _wantsFocus, (Placeholder, Hint, Class, NotesId, ShowsFindings));

    /// <inheritdoc/>
    public void Dispose() => _pause.Dispose();

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        _wantsFocus |= TakesFocus;
        if (!_isFocused && !_isTyping)
        {
            ShowDraft();
        }

        base.OnParametersSet();
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (_wantsFocus)
        {
            _wantsFocus = false;
            TookFocus?.Invoke();
            await _input.FocusAsync();
        }
    }

    private void ShowDraft() => _text = Stored;

    /// <summary>The text as this reader sees it; one that has not changed is not read again.</summary>
    private string Show(string? text)
    {
        if (_shown is not { } last || last.Text != text || last.As != As || last.Units != Desk.Shown.Units)
        {
            _shown = last = (text, As, Desk.Shown.Units, As.Show(text ?? "", Desk.Shown.Units));
        }

        return last.Shown;
    }

    private string Kept() => WholeOf is null ? As.Keep(_text.Trim(), Desk.TextAt(Path), Desk.Shown.Units) : WholeOf(_text);

    private void Focused()
    {
        _isFocused = true;
        Desk.Focus(this);
    }

    private async Task TypedAsync(string? text)
    {
        _text = text ?? "";
        _isTyping = true;
        _pause.End();
        if (string.IsNullOrWhiteSpace(_text))
        {
            // An emptied field is about to be filled again: it counts when the brewer leaves it.
            return;
        }

        Desk.Preview(Path, Kept());
        await _pause.ThenAsync(Clock, Saves, CommitAsync);
    }

    /// <summary>The browser's last word on what stands there: should a key not have been heard of on a busy machine, it counts all the same.</summary>
    private Task ChangedAsync(ChangeEventArgs change)
    {
        string text = change.Value?.ToString() ?? "";
        _isTyping |= text != _text;
        _text = text;
        return CommitAsync();
    }

    private async Task LeftAsync()
    {
        await CommitAsync();
        _isFocused = false;
        Desk.Blur(this);
        ShowDraft();
    }

    private async Task CommitAsync()
    {
        _pause.End();
        if (_isTyping)
        {
            _isTyping = false;
            await Desk.CommitAsync(this, Path, Kept());
        }
    }
}
