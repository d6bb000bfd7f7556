using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Widgets.Fields;

/// <summary>A field with few possible words.</summary>
public sealed partial class DraftChoice
{
    /// <summary>The words of the draft, and what people read; an empty word for "says nothing".</summary>
    [Parameter]
    [EditorRequired]
    public required IReadOnlyList<(string Value, string Words)> Choices { get; set; }

    /// <summary>What choosing does, where it is more than typing the word.</summary>
    [Parameter]
    public Func<string, Task>? Does { get; set; }

    /// <summary>What is chosen while the draft says nothing.</summary>
    [Parameter]
    public string Unsaid { get; set; } = "";

    /// <summary>The word the draft's text stands for, where it holds more than that.</summary>
    [Parameter]
    public Func<string, string>? PartOf { get; set; }

    private protected override object Look => (base.Look, Current, string.Join('\n', Choices));

    private string Current => Desk.TextAt(Path) is { } text ? PartOf?.Invoke(text) ?? text : Unsaid;

    private Task ChosenAsync(ChangeEventArgs change)
    {
        string word = change.Value?.ToString() ?? "";
        return Does is null ? Desk.CommitAsync(this, Path, word) : Does(word);
    }
}
