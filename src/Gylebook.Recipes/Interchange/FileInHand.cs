using System.Text;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Forms;

namespace Gylebook.Recipes.Interchange;

/// <summary>A file somebody hands over, read by the form its <c>format</c> key names.</summary>
public sealed record FileInHand
{
    /// <summary>No larger file is read, bytes.</summary>
    public const int MostBytes = NodeText.MostBytes;

    private FileInHand(FileForm? form, string text, IReadOnlyList<Finding> findings, bool canBeDraft) =>
        (Form, Text, Findings, CanBeDraft) = (form, text, findings, canBeDraft);

    /// <summary>Its form; null when it is of none of ours, or no JSON.</summary>
    public FileForm? Form { get; }

    /// <summary>Its text, letter for letter, without the mark that some editors put before UTF-8.</summary>
    public string Text { get; }

    /// <summary>All that was found, each with field, value and limit.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether it can lie on the desk as it is, with fields that cannot be read: an object with a name, no key twice.</summary>
    public bool CanBeDraft { get; }

    /// <summary>Whether every field of it was read.</summary>
    public bool IsReadable => Form is not null && CanBeDraft && Findings.All(finding => finding.Severity != Severity.Error);

    /// <summary>Whether it may go into a book.</summary>
    /// <param name="evenUnreadable">Whether somebody has asked for it although fields of it cannot be read.</param>
    public bool MayEnter(bool evenUnreadable) => IsReadable || (evenUnreadable && CanBeDraft);

    /// <summary>What is wrong with a name that a file is to enter under; null when it is one.</summary>
    public static string? FaultOf(string name)
    {
        FindingList findings = new();
        return Leaves.Name.TryRead(new NodeCursor(new TextNode(name), "name", findings), out _) ? null : findings.All[0].Message;
    }

    /// <summary>Reads an open file; the stream stays open.</summary>
    public static FileInHand Read(Stream stream)
    {
        FindingList findings = new();
        return NodeText.BytesOf(stream, findings) is { } bytes ? Read(bytes, findings) : new(null, "", findings.All, false);
    }

    /// <summary>Reads UTF-8 bytes.</summary>
    public static FileInHand Read(ReadOnlyMemory<byte> bytes) => Read(bytes, new FindingList());

    /// <summary>All bytes of an open file; null when it is too large, of which <see cref="Read(Stream)"/> tells.</summary>
    public static ReadOnlyMemory<byte>? BytesOf(Stream stream) => NodeText.BytesOf(stream, new FindingList());

    /// <summary>A file of so many bytes that it is not opened at all.</summary>
    /// <param name="bytes">How many, more than <see cref="MostBytes"/>.</param>
    public static FileInHand TooLarge(long bytes)
    {
        FindingList findings = new();
        NodeText.TooLarge(bytes, findings);
        return new(null, "", findings.All, false);
    }

    private static FileInHand Read(ReadOnlyMemory<byte> bytes, FindingList findings)
    {
        if (NodeText.Read(bytes, findings) is not { } file)
        {
            return new(null, "", findings.All, false);
        }

        string? stated = (file as ObjectNode)?["format"] is TextNode { Text: var text } ? text : null;
        if (FileForms.All.FirstOrDefault(form => form.Format == stated) is not { } known)
        {
            Other(file, stated, findings);
            return new(null, "", findings.All, false);
        }

        // What a water plan means is found with its fields: a salt nobody knows cannot be read either.
        IReadOnlyList<Finding> found = known == WaterFile.Form ? WaterFile.Meant(WaterFile.Form.Read(file, findings)).Findings : known.FindingsIn(file);
        return new(known, Encoding.UTF8.GetString(NodeText.WithoutMark(bytes).Span), found, IsDraft((ObjectNode)file));
    }

    private static bool IsDraft(ObjectNode file) =>
        file["name"] is TextNode { Text: var name } && !string.IsNullOrWhiteSpace(name)
        && file["id"] is null or TextNode or BareNode { IsNull: true }
        && !FileDraft.HasKeyTwice(file);

    private static void Other(Node file, string? stated, FindingList findings)
    {
        string forms = string.Join(", ", FileForms.All.Select(form => form.Format));
        string must = $"must be one of {forms}";
        findings.Error(
            file is ObjectNode ? "format.wrong" : "file.shape",
            file is ObjectNode ? "format" : "",
            file is not ObjectNode ? $"{file.Sort}; a file of ours is an object, its \"format\" {must}" : stated is null ? $"this key is missing; {must}" : $"\"{FindingList.Shorten(stated)}\"; {must}",
            stated,
            forms);
    }
}
