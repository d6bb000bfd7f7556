using System.Text.Json;
using Gylebook.Tests.Shared;
using Json.Schema;

namespace Gylebook.Recipes.Tests.Interchange.OpenFormats;

/// <summary>The schema of BeerJSON 1.0 as its project publishes it, read from our copy and never fetched.</summary>
internal static class BeerJsonSchema
{
    private const string Home = "tests/Gylebook.Recipes.Tests/Standards/beerjson";
    private static readonly Lazy<JsonSchema> Whole = new(Load);

    /// <summary>The examples of the project, each by its path.</summary>
    public static IEnumerable<string> Examples => Directory.EnumerateFiles(RepositoryFile.PathOf($"{Home}/examples"), "*.json", SearchOption.AllDirectories).Order(StringComparer.Ordinal);

    /// <summary>What the schema has against a document; empty when nothing.</summary>
    public static IReadOnlyList<string> Objections(string text)
    {
        using JsonDocument document = JsonDocument.Parse(text);
        EvaluationResults results = Whole.Value.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        return results.IsValid ? [] :
        [
            .. (results.Details ?? []).Where(detail => detail.Errors is not null)
                .SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation} {error.Key}: {error.Value}")),
            "not valid",
        ];
    }

    private static JsonSchema Load()
    {
        JsonSchema? root = null;
        foreach (string path in Directory.EnumerateFiles(RepositoryFile.PathOf($"{Home}/json"), "*.json").Order(StringComparer.Ordinal))
        {
            JsonSchema schema = JsonSchema.FromText(File.ReadAllText(path));
            SchemaRegistry.Global.Register(schema);
            root = Path.GetFileName(path) == "beer.json" ? schema : root;
        }

        return root!;
    }
}
