using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

namespace Gylebook.Web.Widgets;

/// <summary>Finds a row of a table while somebody types; by thumb, by mouse, by arrow keys and Enter.</summary>
/// <remarks>Built to the combobox pattern of the ARIA Authoring Practices Guide: the focus stays in the field.</remarks>
/// <typeparam name="TItem">What a row is.</typeparam>
public sealed partial class SearchBox<TItem>
{
    private const int MostShown = 12;

    private readonly string _id = FieldIds.Next();
    private readonly string _listId = FieldIds.Next();
    private IReadOnlyList<TItem> _found = [];
    private string _text = "";
    private bool _isOpen;
    private int _active = -1;

    /// <summary>What is searched for.</summary>
    [Parameter]
    [EditorRequired]
    public required string Label { get; set; }

    /// <summary>Rows that fit what was typed, the best first. Asked with an empty text when the field is entered.</summary>
    [Parameter]
    [EditorRequired]
    public required Func<string, IReadOnlyList<TItem>> Search { get; set; }

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

    private string? ActiveId => _isOpen && _active >= 0 && _active < _found.Count ? OptionId(_active) : null;

    private string Status => !_isOpen ? "" : _found.Count switch
    {
        0 => _text.Length > 0 ? "Nothing of that name." : "",
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
        _found = [.. Search(_text.Trim()).Take(MostShown)];
        _active = _found.Count > 0 && _text.Trim().Length > 0 ? 0 : -1;
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
