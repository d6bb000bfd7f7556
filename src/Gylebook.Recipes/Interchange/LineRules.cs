using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>Which fields of an ingredient line go with which kinds, as a JSON Schema says it.</summary>
internal static class LineRules
{
    private static readonly IngredientKind[] Jugged =
        [IngredientKind.Water, IngredientKind.Acid, IngredientKind.Food, IngredientKind.Sugar, IngredientKind.Extract, IngredientKind.Yeast];

    /// <summary>Whether a thing of that kind may be measured in a jug. The rest is weighed.</summary>
    public static bool MayBeMeasuredInAJug(IngredientKind kind) => Jugged.Contains(kind);

    /// <summary>The rules beside the fields.</summary>
    public static IReadOnlyList<(string Key, Node Value)> InSchema { get; } =
    [
        ("oneOf", new ListNode([.. FileWords.Kinds.Words.Select(Has)])),
        ("allOf", new ListNode([
            Node.Object(("if", Has("malt")), ("else", Has("at"))),
            Goes("alpha", "hop"),
            Goes("colour", "malt", "extract", "sugar"),
            Goes("age", "hop", "yeast"),
            Goes("storage", "hop"),
            Goes("cells", "yeast"),
            Goes("attenuation", "yeast"),
            Goes("share", "malt", "food"),
            Words("form", FileWords.HopForms.Words, "hop"),
            Words("form", FileWords.YeastForms.Words, "yeast"),
            Node.Object(
                ("if", Node.Object(("properties", Node.Object(("amount", Leaves.Of<VolumeAt20C>().Schema(new SchemaParts())))))),
                ("then", AnyOf([.. Jugged.Select(FileWords.Kinds.Word)])))])),
    ];

    private static ObjectNode Has(string key) => Node.Object(("required", new ListNode([new TextNode(key)])));

    private static ObjectNode AnyOf(params string[] keys) => Node.Object(("anyOf", new ListNode([.. keys.Select(Has)])));

    private static ObjectNode Goes(string key, params string[] with) => If(
        key, Node.Object(("not", Node.Object(("type", new TextNode("null"))))), with);

    private static ObjectNode Words(string key, IEnumerable<string> words, params string[] with) => If(
        key, Node.Object(("enum", new ListNode([.. words.Select(word => new TextNode(word))]))), with);

    private static ObjectNode If(string key, ObjectNode said, string[] with) => Node.Object(
        ("if", Node.Object(("required", new ListNode([new TextNode(key)])), ("properties", Node.Object((key, said))))),
        ("then", AnyOf(with)));
}
