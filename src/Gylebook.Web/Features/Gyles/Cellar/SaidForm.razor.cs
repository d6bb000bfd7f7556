using Gylebook.Pictures;
using Gylebook.Science.Quantities;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Gyles.Cellar;

/// <summary>Something a hand did to a beer that ferments, and the plan does not ask for.</summary>
public sealed partial class SaidForm
{
    private const string SetTo = "warmed or cooled to", Crashed = "chilled to clear", Roused = "roused the yeast", Moved = "moved to another vessel", Own = "something else";

    private static readonly string[] Done = [SetTo, Crashed, Roused, Moved, Own];

    private string _what = SetTo, _celsius = "", _words = "";
    private string? _wrong;

    /// <summary>The gyle.</summary>
    [Parameter]
    [EditorRequired]
    public required OpenGyle Gyle { get; set; }

    /// <summary>To which portion; null for the whole.</summary>
    [Parameter]
    public string? Portion { get; set; }

    /// <summary>It is in the book.</summary>
    [Parameter]
    public EventCallback Said { get; set; }

    /// <summary>Gyles in the fermenter.</summary>
    [Inject]
    public required CellarDesk Cellar { get; init; }

    /// <summary>How the reader wants to see numbers.</summary>
    [CascadingParameter]
    public required Shown Shown { get; set; }

    private async Task SayAsync()
    {
        bool isSet = _what is SetTo or Crashed;
        Entered<Temperature> set = default;
        if (isSet && !TypedText.TryRead(_celsius, null, Shown.Units, out set, out string problem))
        {
            _wrong = $"how warm: {problem}";
            return;
        }

        string words = _words.Trim(), done = isSet ? $"{_what} {set.Text}" : _what == Own ? "" : _what;
        _wrong = await Cellar.SayAsync(Gyle, Portion, done.Length > 0 && words.Length > 0 ? $"{done}: {words}" : done + words, isSet ? set.Value : null);
        if (_wrong is null)
        {
            (_celsius, _words) = ("", "");
            await Said.InvokeAsync();
        }
    }
}
