using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Widgets.Words;

/// <summary>Words of the trade that explain themselves where they stand, from the glossary.</summary>
public sealed partial class Explained
{
    private readonly string _id = FieldIds.Next();

    /// <summary>The text.</summary>
    [Parameter]
    [EditorRequired]
    public required string Text { get; set; }

    private protected override object Look => Text;

    private string IdOf(string word) => $"{_id}-{word.Replace(' ', '-')}";
}
