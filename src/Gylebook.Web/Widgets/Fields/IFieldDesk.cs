using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Forms;

namespace Gylebook.Web.Widgets.Fields;

/// <summary>What a field asks of the desk on which its file lies: a recipe, a water plan.</summary>
public interface IFieldDesk
{
    /// <summary>How this reader wants to see numbers.</summary>
    Shown Shown { get; }

    /// <summary>What the file says there, as typed; null when it says nothing.</summary>
    /// <param name="path">Which field, as in findings: <c>boil.time</c>.</param>
    string? TextAt(string path);

    /// <summary>What the form says of that field; null when it has none such.</summary>
    Field? FieldAt(string path);

    /// <summary>Findings at a field.</summary>
    IReadOnlyList<Finding> At(string path);

    /// <summary>A field got the focus: what is typed there answers to what the brewer sees now.</summary>
    void Focus(object field);

    /// <summary>That field has the focus no more.</summary>
    void Blur(object field);

    /// <summary>Reckons with what is being typed; nothing is saved, and a text that cannot be read yet changes nothing.</summary>
    void Preview(string path, string text);

    /// <summary>Saves what was typed into a field, or chosen.</summary>
    /// <param name="field">The field that has, or just had, the focus.</param>
    /// <param name="path">Which field of the file.</param>
    /// <param name="text">Its text.</param>
    Task CommitAsync(object field, string path, string? text);
}
