using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Editing;

/// <summary>A recipe on the desk.</summary>
public sealed class RecipeDraft : FileDraft<Recipe>
{
    private IReadOnlyList<DraftLine>? _lines;

    private RecipeDraft(ObjectNode file, string? text)
        : base(RecipeFile.Form, file, text)
    {
    }

    /// <summary>The recipe; null while some field cannot be read.</summary>
    public Recipe? Recipe => Value;

    /// <summary>All that goes in, as typed, in the order written.</summary>
    public IReadOnlyList<DraftLine> Lines => _lines ??=
        [.. (File["ingredients"] as ListNode ?? ListNode.Empty).Items.OfType<ObjectNode>().Select((line, i) => DraftLine.From(i, line))];

    /// <summary>The draft of that text.</summary>
    /// <exception cref="ArgumentException">Not a JSON object, or one with a key twice: the caller's bug.</exception>
    public static RecipeDraft Of(string text) => new(Parse(text), text);

    internal override FileDraft Of(ObjectNode file) => new RecipeDraft(file, null);
}
