using System.Text.Json;
using System.Text.Json.Nodes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Interchange.Json;

namespace Gylebook.Recipes.Editing;

/// <summary>A recipe on the desk: the text of its file, where every field holds what was typed, right or wrong.</summary>
/// <remarks>
/// A field that cannot be read yet stays in the text and is a finding at its own path, so nothing typed is lost, not even
/// by closing the page. Never changed: an edit gives another draft. See <c>docs/decisions/0009-drafts-and-edits.md</c>.
/// </remarks>
public sealed class RecipeDraft
{
    private readonly JsonObject _file;
    private readonly Lazy<Reading<Recipe>> _reading;

    private RecipeDraft(JsonObject file, string text)
    {
        _file = file;
        Text = text;
        _reading = new Lazy<Reading<Recipe>>(() => RecipeFile.Read(Text));
    }

    /// <summary>The whole text of the file.</summary>
    public string Text { get; }

    /// <summary>The recipe; null while some field cannot be read.</summary>
    public Recipe? Recipe => _reading.Value.Value;

    /// <summary>What cannot be read, each at the path of its field.</summary>
    public IReadOnlyList<Finding> Findings => _reading.Value.Findings;

    /// <summary>What the beer is called.</summary>
    public string Name => this["name"] ?? "";

    /// <summary>All that goes in, as typed, in the order written.</summary>
    public IReadOnlyList<DraftLine> Lines => [.. LinesIn(_file).Select((line, i) => DraftLine.From(i, line))];

    /// <summary>What a field says, as typed; null when it says nothing.</summary>
    /// <param name="path">As in findings: <c>mash.rests[0].time</c>.</param>
    public string? this[string path] => FieldPath.Find(_file, path) is JsonValue value ? TextOf(value) : null;

    /// <summary>The draft of that text.</summary>
    /// <exception cref="ArgumentException">Not a JSON object, or one with a key twice: the caller's bug.</exception>
    public static RecipeDraft Of(string text)
    {
        try
        {
            var options = new JsonDocumentOptions { AllowDuplicateProperties = false };
            return JsonNode.Parse(text, documentOptions: options) is JsonObject file
                ? new RecipeDraft(file, text)
                : throw new ArgumentException("Not a JSON object.", nameof(text));
        }
        catch (JsonException broken)
        {
            throw new ArgumentException($"Not the JSON of a recipe: {broken.Message}", nameof(text), broken);
        }
    }

    /// <summary>How many items a list has: <c>mash.rests</c>.</summary>
    public int CountOf(string path) => FieldPath.Find(_file, path) is JsonArray list ? list.Count : 0;

    /// <summary>Whether there is such a part: <c>boil</c>.</summary>
    public bool Has(string path) => FieldPath.Find(_file, path) is not null;

    internal JsonObject Copy() => (JsonObject)_file.DeepClone();

    internal RecipeDraft Changed(Action<JsonObject> change)
    {
        JsonObject file = Copy();
        change(file);
        return new RecipeDraft(file, JsonLayout.Write(file));
    }

    internal static JsonArray ListIn(JsonObject file, string key)
    {
        if (file[key] is not JsonArray list)
        {
            FieldPath.Put(file, key, list = []);
        }

        return list;
    }

    internal static IEnumerable<JsonObject> LinesIn(JsonObject file) =>
        file["ingredients"] is JsonArray lines ? lines.OfType<JsonObject>() : [];

    /// <summary>A text as it is; any other value as its JSON.</summary>
    internal static string TextOf(JsonNode value) =>
        value.GetValueKind() == JsonValueKind.String ? value.GetValue<string>() : value.ToJsonString();
}
