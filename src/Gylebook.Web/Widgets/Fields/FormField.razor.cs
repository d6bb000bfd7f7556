using Gylebook.Recipes.Forms;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Widgets.Fields;

/// <summary>One field of a form on a desk.</summary>
public sealed partial class FormField
{
    private Field? _field;
    private FieldLook _look = new(FieldText.Plain);

    /// <summary>The desk its file lies on.</summary>
    [Parameter]
    [EditorRequired]
    public required IFieldDesk Desk { get; set; }

    /// <summary>Which field, as in findings: <c>kettle.brim</c>.</summary>
    [Parameter]
    [EditorRequired]
    public required string Path { get; set; }

    /// <summary>What it is, where the form's own words do not fit the place; null for those.</summary>
    [Parameter]
    public string? Label { get; set; }

    /// <summary>A few words under it; null for the form's own.</summary>
    [Parameter]
    public string? Hint { get; set; }

    /// <summary>What stands there while it is empty; null for the form's own.</summary>
    [Parameter]
    public string? Placeholder { get; set; }

    /// <summary>What people read for its words; null for the words themselves.</summary>
    [Parameter]
    public IReadOnlyList<(string Value, string Words)>? Choices { get; set; }

    /// <summary>What a phone writes on its Enter key: <c>done</c>, <c>next</c>.</summary>
    [Parameter]
    public string EnterKey { get; set; } = "done";

    /// <summary>What is shown for the draft's text, where a field holds but a part of it.</summary>
    [Parameter]
    public Func<string, string>? PartOf { get; set; }

    /// <summary>The draft's text for what was typed, where a field holds but a part of it.</summary>
    [Parameter]
    public Func<string, string>? WholeOf { get; set; }

    private string Title => Label ?? (_field?.Words is { Length: > 0 } words ? Gylebook.Forecast.Words.Sentence(words) : Path);

    private string? Emptied => _field switch
    {
        { Notes.Placeholder: { Length: > 0 } own } => own,
        { IsOptional: true } => "may stay empty",
        _ => null,
    };

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        _field = Desk.FieldAt(Path);
        _look = _field is null ? _look : FieldLook.Of(_field);
    }
}
