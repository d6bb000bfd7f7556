using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;

namespace Gylebook.Recipes.Editing;

/// <summary>A file on the desk: its text, where every field holds what was typed, right or wrong.</summary>
/// <remarks>
/// A field that cannot be read yet stays in the text and is a finding at its own path, so nothing typed is lost, not even
/// by closing the page. Never changed: an edit gives another draft, which shares with this one all it leaves alone, also
/// what that means. See <c>docs/decisions/0009-drafts-and-edits.md</c>.
/// </remarks>
public abstract class FileDraft
{
    private string? _text;

    /// <summary>A draft of that file.</summary>
    /// <param name="form">Its form.</param>
    /// <param name="file">The file.</param>
    /// <param name="text">Its text as it was found; null to lay it out.</param>
    private protected FileDraft(FileForm form, ObjectNode file, string? text) => (Form, File, _text) = (form, file, text);

    /// <summary>The table of its fields.</summary>
    public FileForm Form { get; }

    /// <summary>The whole text of the file.</summary>
    public string Text => _text ??= NodeLayout.Write(File);

    /// <summary>What it is called.</summary>
    public string Name => this["name"] ?? "";

    /// <summary>Whether every field can be read.</summary>
    public abstract bool IsReadable { get; }

    /// <summary>What cannot be read, each at the path of its field.</summary>
    public abstract IReadOnlyList<Finding> Findings { get; }

    /// <summary>The file.</summary>
    internal ObjectNode File { get; }

    /// <summary>What a field says, as typed; null when it says nothing.</summary>
    /// <param name="path">As in findings: <c>mash.rests[0].time</c>.</param>
    public string? this[string path] => TextOf(NodePath.Find(File, path));

    /// <summary>How many items a list has: <c>mash.rests</c>.</summary>
    public int CountOf(string path) => NodePath.Find(File, path) is ListNode list ? list.Items.Length : 0;

    /// <summary>Whether there is such a part: <c>boil</c>.</summary>
    public bool Has(string path) => NodePath.Find(File, path) is not null;

    /// <summary>The path in the file of a field on a page, where the two differ; null when the file has no such place yet.</summary>
    public virtual string? PathOf(string path) => path;

    /// <summary>Whether both say the same.</summary>
    public bool Says(FileDraft other) => Node.Same(File, other.File);

    /// <summary>The draft of that text.</summary>
    /// <param name="form">Its form.</param>
    /// <param name="text">The whole text.</param>
    /// <typeparam name="T">What its file holds.</typeparam>
    /// <exception cref="ArgumentException">Not a JSON object, or one with a key twice: the caller's bug.</exception>
    public static FileDraft<T> Of<T>(FileForm<T> form, string text)
        where T : class => new(form, Parse(text), text);

    /// <summary>A draft of the same form with another file.</summary>
    internal abstract FileDraft Of(ObjectNode file);

    /// <summary>A text as it is; any other plain value as its JSON; null for what is none.</summary>
    internal static string? TextOf(Node? value) => value switch
    {
        TextNode text => text.Text,
        BareNode bare => bare.Written,
        _ => null,
    };

    /// <summary>The JSON object a file is.</summary>
    /// <exception cref="ArgumentException">Not a JSON object, or one with a key twice: the caller's bug.</exception>
    private protected static ObjectNode Parse(string text)
    {
        FindingList findings = new();
        ObjectNode file = NodeText.Read(text, findings) as ObjectNode
            ?? throw new ArgumentException(findings.All.Count > 0 ? $"Not JSON: {findings.All[0].Message}" : "Not a JSON object.", nameof(text));
        return HasKeyTwice(file) ? throw new ArgumentException("A key is written twice.", nameof(text)) : file;
    }

    /// <summary>Whether some object in it has a key twice: of such a file nobody can say which is meant.</summary>
    internal static bool HasKeyTwice(Node node) => node switch
    {
        ObjectNode pairs => pairs.Pairs.Select(pair => pair.Key).Distinct(StringComparer.Ordinal).Count() < pairs.Pairs.Length || pairs.Pairs.Any(pair => HasKeyTwice(pair.Value)),
        ListNode list => list.Items.Any(HasKeyTwice),
        _ => false,
    };
}

/// <summary>A draft with what it means.</summary>
/// <typeparam name="T">What its file holds.</typeparam>
public class FileDraft<T> : FileDraft
    where T : class
{
    private readonly FileForm<T> _form;
    private Reading<T>? _reading;

    internal FileDraft(FileForm<T> form, ObjectNode file, string? text)
        : base(form, file, text) => _form = form;

    /// <summary>What it means; null while some field cannot be read.</summary>
    public T? Value => Reading.Value;

    /// <inheritdoc/>
    public override bool IsReadable => Value is not null;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => Reading.Findings;

    /// <summary>What it was read as.</summary>
    private protected Reading<T> Reading => _reading ??= _form.Read(File, new FindingList());

    internal override FileDraft Of(ObjectNode file) => new FileDraft<T>(_form, file, null);
}

/// <summary>An edit: what a file says after it, and what was done, in plain words.</summary>
/// <param name="After">The draft after the edit.</param>
/// <param name="Label">For the log and the undo button: <c>pale ale malt: 3.6 kg → 4 kg</c>.</param>
/// <typeparam name="TDraft">Which sort of draft.</typeparam>
public sealed record DraftEdit<TDraft>(TDraft After, string Label)
    where TDraft : FileDraft;
