using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

namespace Gylebook.Web.Widgets;

/// <summary>Finds a row of a table while somebody types; by thumb, by mouse, by arrow keys and Enter.</summary>
/// <remarks>Built to the combobox pattern of the ARIA Authoring Practices Guide: the focus stays in the field.</remarks>
/// <typeparam name="TItem">What a row is.</typeparam>
public sealed partial class SearchBox<TItem>
{
    private readonly string _id = FieldIds.Next();
    private readonly string _listId = FieldIds.Next();
    private IReadOnlyList<TItem> _found = [];
    private string _text = "";
    private bool _isOpen;
    private bool _isOtherwise;
    private int _active = -1;

    /// <summary>What is searched for.</summary>
    [Parameter]
    [EditorRequired]
    public required string Label { get; set; }

    /// <summary>Rows that fit what was typed, the best first. Asked with an empty text when the field is entered.</summary>
    [Parameter]
    [EditorRequired]
    public required Func<string, IReadOnlyList<TItem>> Search { get; set; }

    /// <summary>What is offered where nothing fits what was typed; null for nothing.</summary>
    [Parameter]
    public Func<string, TItem>? Otherwise { get; set; }

    /// <summary>What the field shows of a row.</summary>
    [Parameter]
    [EditorRequired]
    public required Func<TItem, string> TextOf { get; set; }

    /// <summary>A row was chosen.</summary>
    [Parameter]
    public EventCallback<TItem> Chosen { get; set; }

    /// <summary>How a row of the list looks; the plain text without it.</summary>
    [Parameter]
    public RenderFragment<TItem>? Row { get; set; }

    /// <summary>Whether the label is for the ear only.</summary>
    [Parameter]
    public bool HidesLabel { get; set; }

    /// <summary>An example, while the field is empty.</summary>
    [Parameter]
    public string? Placeholder { get; set; }

    /// <summary>Whether the field is emptied once a row is chosen, ready for the next.</summary>
    [Parameter]
    public bool ClearsAfterwards { get; set; } = true;

    private protected override object Look => (Label, HidesLabel, Placeholder, _text, _isOpen, _active, _found);

    private string? ActiveId => _isOpen && _active >= 0 && _active < _found.Count ? OptionId(_active) : null;

    private bool IsNothing => _isOpen && _text.Length > 0 && (_found.Count == 0 || _isOtherwise);

    private string Status => !_isOpen ? "" : IsNothing ? "Nothing of that name." : _found.Count switch
    {
        0 => "",
        1 => "One found.",
        _ => $"{_found.Count.ToString(System.Globalization.CultureInfo.InvariantCulture)} found.",
    };

    private string OptionId(int at) => $"{_listId}-{at.ToString(System.Globalization.CultureInfo.InvariantCulture)}";

    private void Typed(string? text)
    {
        _text = text ?? "";
        Find();
    }

    private void Open() => Find();

    private void Find()
    {
        string typed = _text.Trim();
        _found = Search(typed);
        _isOtherwise = _found.Count == 0 && typed.Length > 0 && Otherwise is not null;
        if (_isOtherwise)
        {
            _found = [Otherwise!(typed)];
        }

        // What is offered otherwise was not searched for: Enter alone does not take it.
        _active = _found.Count > 0 && typed.Length > 0 && !_isOtherwise ? 0 : -1;
        _isOpen = true;
    }

    private void Left() => _isOpen = false;

    private async Task KeyAsync(KeyboardEventArgs key)
    {
        switch (key.Key)
        {
            case "ArrowDown" when !_isOpen:
                Find();
                break;
            case "ArrowDown" when _found.Count > 0:
                _active = (_active + 1) % _found.Count;
                break;
            case "ArrowUp" when _found.Count > 0:
                _active = _active <= 0 ? _found.Count - 1 : _active - 1;
                break;
            case "Enter" when _isOpen && _active >= 0:
                await ChooseAsync(_active);
                break;
            case "Escape":
                _isOpen = false;
                break;
        }
    }

    private async Task ChooseAsync(int at)
    {
        // What was typed since may have shortened the list under the finger.
        if (at >= _found.Count)
        {
            return;
        }

        TItem item = _found[at];
        _text = ClearsAfterwards ? "" : TextOf(item);
        _isOpen = false;
        _active = -1;
        await Chosen.InvokeAsync(item);
    }
}
