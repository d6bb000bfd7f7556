using System.Text.Json;
using System.Text.Json.Nodes;
using Gylebook.Recipes.Interchange.Json;

namespace Gylebook.Recipes.Editing;

/// <summary>A file on the desk: its text, where every field holds what was typed, right or wrong.</summary>
/// <remarks>
/// A field that cannot be read yet stays in the text and is a finding at its own path, so nothing typed is lost, not even
/// by closing the page. Never changed: an edit gives another draft. See <c>docs/decisions/0009-drafts-and-edits.md</c>.
/// </remarks>
public abstract class FileDraft
{
    /// <summary>A draft of that file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="text">Its text as it was found; null to lay it out.</param>
    private protected FileDraft(JsonObject file, string? text) => (File, Text) = (file, text ?? JsonLayout.Write(file));

    /// <summary>The whole text of the file.</summary>
    public string Text { get; }

    /// <summary>What it is called.</summary>
    public string Name => this["name"] ?? "";

    /// <summary>What cannot be read, each at the path of its field.</summary>
    public abstract IReadOnlyList<Finding> Findings { get; }

    /// <summary>What a field says, as typed; null when it says nothing.</summary>
    /// <param name="path">As in findings: <c>mash.rests[0].time</c>.</param>
    public string? this[string path] => FieldPath.Find(File, path) is JsonValue value ? TextOf(value) : null;

    /// <summary>How many items a list has: <c>mash.rests</c>.</summary>
    public int CountOf(string path) => FieldPath.Find(File, path) is JsonArray list ? list.Count : 0;

    /// <summary>Whether there is such a part: <c>boil</c>.</summary>
    public bool Has(string path) => FieldPath.Find(File, path) is not null;

    /// <summary>The file; changed by nobody.</summary>
    private protected JsonObject File { get; }

    internal JsonObject Copy() => (JsonObject)File.DeepClone();

    /// <summary>A copy of the file with a change made in it.</summary>
    private protected JsonObject Edited(Action<JsonObject> change)
    {
        JsonObject file = Copy();
        change(file);
        return file;
    }

    internal static JsonArray ListIn(JsonObject file, string key)
    {
        if (file[key] is not JsonArray list)
        {
            FieldPath.Put(file, key, list = []);
        }

        return list;
    }

    /// <summary>A text as it is; any other value as its JSON.</summary>
    internal static string TextOf(JsonNode value) =>
        value.GetValueKind() == JsonValueKind.String ? value.GetValue<string>() : value.ToJsonString();

    /// <summary>The JSON object a file is.</summary>
    /// <exception cref="ArgumentException">Not a JSON object, or one with a key twice: the caller's bug.</exception>
    private protected static JsonObject Parse(string text)
    {
        try
        {
            var options = new JsonDocumentOptions { AllowDuplicateProperties = false };
            return JsonNode.Parse(text, documentOptions: options) as JsonObject
                ?? throw new ArgumentException("Not a JSON object.", nameof(text));
        }
        catch (JsonException broken)
        {
            throw new ArgumentException($"Not JSON: {broken.Message}", nameof(text), broken);
        }
    }
}
