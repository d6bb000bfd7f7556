using System.Collections.Immutable;
using Gylebook.Recipes.Documents;

namespace Gylebook.Recipes.Forms;

/// <summary>A file of one of our forms, whatever it holds.</summary>
public abstract class FileForm
{
    private protected FileForm(string format) => Format = format;

    /// <summary>What its <c>format</c> key says: <c>gylebook-recipe/1</c>.</summary>
    public string Format { get; }

    /// <summary>What it is of, in a word: <c>recipe</c>.</summary>
    public string Noun => Format["gylebook-".Length..Format.IndexOf('/')];

    /// <summary>The table of its fields.</summary>
    public abstract ValueForm Whole { get; }

    /// <summary>The field at a path as findings use it, <c>ingredients[2].amount</c>; null when there can be none.</summary>
    public Field? At(string path)
    {
        string[] steps = NodePath.Steps(path);
        return steps.Length == 0 ? null : PartAt(steps[..^1])?.FieldAt(steps[^1]);
    }

    /// <summary>The fields of the part at a path, in the order of the file; none for what is no part. An empty path is the file's.</summary>
    public IReadOnlyList<Field> FieldsAt(string path) => PartAt(path)?.Accept(FieldsOfPart.Only) ?? [];

    /// <summary>The JSON Schema of such a file, as its text.</summary>
    public abstract string Schema();

    /// <summary>What is found in a file that says it is of this form.</summary>
    internal abstract IReadOnlyList<Finding> FindingsIn(Node file);

    /// <summary>The form of the part at a path; null when there can be none.</summary>
    internal ValueForm? PartAt(string path) => PartAt(NodePath.Steps(path));

    private ValueForm? PartAt(IEnumerable<string> steps) => steps.Aggregate((ValueForm?)Whole, (part, step) => part?.Inside(step));

    private sealed class FieldsOfPart : ValueFormSorter<IReadOnlyList<Field>>
    {
        public static FieldsOfPart Only { get; } = new();

        public override IReadOnlyList<Field> Part(IReadOnlyList<Field> fields) => fields;
    }
}

/// <summary>Opens a file of one of our forms, checks that it is of the form wanted, and reads it.</summary>
/// <typeparam name="T">What the file holds.</typeparam>
public sealed class FileForm<T> : FileForm
    where T : class
{
    private readonly Form<T> _form;
    private readonly string _title;

    internal FileForm(string format, string title, Form<T> form)
        : base(format)
    {
        (_form, _title) = (form, title);
        form.First(new FormatField<T>(format));
    }

    /// <inheritdoc/>
    public override ValueForm Whole => _form;

    /// <summary>Reads a file's text.</summary>
    public Reading<T> Read(string text)
    {
        FindingList findings = new();
        return Read(NodeText.Read(text, findings), findings);
    }

    /// <summary>Reads an open file; the stream stays open.</summary>
    public Reading<T> Read(Stream stream)
    {
        FindingList findings = new();
        return Read(NodeText.Read(stream, findings), findings);
    }

    /// <summary>Reads UTF-8 bytes.</summary>
    public Reading<T> Read(ReadOnlyMemory<byte> bytes)
    {
        FindingList findings = new();
        return Read(NodeText.Read(bytes, findings), findings);
    }

    /// <summary>The text of the file: keys in the order of the form, quantities as they were typed.</summary>
    public string Write(T value) => NodeLayout.Write((ObjectNode)_form.Write(value));

    /// <inheritdoc/>
    public override string Schema()
    {
        SchemaParts parts = new();
        ObjectNode whole = _form.SchemaOf(parts);
        ObjectNode schema = Node.Object([
            ("$schema", new TextNode("https://json-schema.org/draft/2020-12/schema")),
            ("$id", new TextNode($"urn:gylebook:schema:{Noun}:{Format[(Format.IndexOf('/') + 1)..]}")),
            ("title", new TextNode(_title)),
            .. whole.Pairs.Select(pair => (pair.Key, pair.Value)),
            ("$defs", parts.All)]);
        return NodeLayout.Write(schema);
    }

    internal override IReadOnlyList<Finding> FindingsIn(Node file) => Read(file, new FindingList()).Findings;

    internal Reading<T> Read(Node? file, FindingList findings)
    {
        if (file is null || !IsOfThisForm(file, findings))
        {
            return new Reading<T>(null, findings.All);
        }

        _form.TryRead(new NodeCursor(file, "", findings), out T value);
        return new Reading<T>(findings.HasErrors ? null : value, findings.All) { Rough = file is ObjectNode ? value : null };
    }

    /// <summary>A file that says it is of another form is not read as this one; a file that says nothing is.</summary>
    private bool IsOfThisForm(Node file, FindingList findings)
    {
        if (file is not ObjectNode pairs || pairs["format"] is not TextNode { Text: var stated } || stated == Format)
        {
            return true;
        }

        findings.Error("format.wrong", "format", $"\"{FindingList.Shorten(stated)}\"; must be \"{Format}\"", stated, Format);
        return false;
    }
}

/// <summary>What says of which form a file is: the same in all files of one form.</summary>
/// <typeparam name="T">What the file holds.</typeparam>
internal sealed class FormatField<T>(string format) : Field<T>("format", "form", FieldNotes.None)
    where T : class
{
    public override ValueForm Value => Leaves.Name;

    public override bool IsOptional => false;

    internal override T Read(PartReader reader, T part)
    {
        if (reader.Need(Key) is { Node: not TextNode } other)
        {
            other.IsNot("text");
        }

        return part;
    }

    internal override void Write(T part, ImmutableArray<KeyValuePair<string, Node>>.Builder pairs) => pairs.Add(new(Key, new TextNode(format)));

    internal override IEnumerable<(string Key, Node Value)> Schema(SchemaParts parts) =>
        [(Key, Node.Object(("description", new TextNode("What form of file this is, and its version.")), ("const", new TextNode(format))))];
}
