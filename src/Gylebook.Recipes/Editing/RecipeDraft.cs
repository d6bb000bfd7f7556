using System.Text.Json.Nodes;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Editing;

/// <summary>A recipe on the desk.</summary>
public sealed class RecipeDraft : FileDraft
{
    private readonly Lazy<Reading<Recipe>> _reading;

    private RecipeDraft(JsonObject file, string? text = null)
        : base(file, text) => _reading = new Lazy<Reading<Recipe>>(() => RecipeFile.Read(Text));

    /// <summary>The recipe; null while some field cannot be read.</summary>
    public Recipe? Recipe => _reading.Value.Value;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => _reading.Value.Findings;

    /// <summary>All that goes in, as typed, in the order written.</summary>
    public IReadOnlyList<DraftLine> Lines => [.. LinesIn(File).Select((line, i) => DraftLine.From(i, line))];

    /// <summary>The draft of that text.</summary>
    /// <exception cref="ArgumentException">Not a JSON object, or one with a key twice: the caller's bug.</exception>
    public static RecipeDraft Of(string text) => new(Parse(text), text);

    internal RecipeDraft Changed(Action<JsonObject> change) => new(Edited(change));

    internal static IEnumerable<JsonObject> LinesIn(JsonObject file) =>
        file["ingredients"] is JsonArray lines ? lines.OfType<JsonObject>() : [];
}
