using System.Text.Json;
using Json.Schema;

namespace Gylebook.Tests.Shared;

/// <summary>A schema in <c>docs/schema/</c>, as an independent library reads it.</summary>
internal static class PublishedSchema
{
    private static readonly Dictionary<string, JsonSchema> Read = new[] { "recipe", "kit", "food", "forecast", "label", "water", "malt", "hop", "yeast", "shelf", "liquor", "acid", "carbonation", "readings", "learned" }
        .ToDictionary(form => form, form => JsonSchema.FromText(File.ReadAllText(RepositoryFile.PathOf($"docs/schema/{form}.schema.json"))));

    /// <summary>What the schema has against a file; empty when nothing.</summary>
    public static IReadOnlyList<string> Objections(string form, string text)
    {
        using var document = JsonDocument.Parse(text);
        var results = Read[form].Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        return results.IsValid ? [] :
        [
            .. (results.Details ?? []).Where(detail => detail.Errors is not null)
                .SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation} {error.Key}: {error.Value}")),
            "not valid",
        ];
    }
}
