namespace Gylebook.Recipes.Forms;

/// <summary>One field of a form, as a page, a log, a schema and a guide need to know it.</summary>
public abstract class Field
{
    private protected Field(string key, string words, FieldNotes notes) => (Key, Words, Notes) = (key, words, notes);

    /// <summary>Its key in the file.</summary>
    public string Key { get; }

    /// <summary>What stands beside it: <c>volume</c>.</summary>
    public string Words { get; }

    /// <summary>What else is said of it.</summary>
    public FieldNotes Notes { get; }

    /// <summary>The kind of value it holds.</summary>
    public abstract ValueForm Value { get; }

    /// <summary>Whether its part can do without it: emptied, it goes.</summary>
    public abstract bool IsOptional { get; }

    /// <summary>The keys it may stand under; more than one where the key itself says something, as that of an ingredient line.</summary>
    internal virtual IReadOnlyList<string> Keys => [Key];
}

/// <summary>What is said of a field besides its key and its words.</summary>
/// <param name="Help">What a reader of the form is told of it: in the guide, in the schema, under the field. Empty for what needs no words.</param>
/// <param name="Placeholder">What stands in it while it is empty: an example, or what is taken then.</param>
public sealed record FieldNotes(string Help = "", string Placeholder = "")
{
    /// <summary>Nothing.</summary>
    public static FieldNotes None { get; } = new();

    /// <summary>What it is called away from its part; null to name the part first: <c>mash, method</c>.</summary>
    public string? Said { get; init; }

    /// <summary>What a log says for a field that says nothing.</summary>
    public string Nothing { get; init; } = "nothing";

    /// <summary>Whether the key is written even when there is nothing to say, so that a reader of the file sees it exists.</summary>
    public bool IsAlwaysWritten { get; init; }
}
