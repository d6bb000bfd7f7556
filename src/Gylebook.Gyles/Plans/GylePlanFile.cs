using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace Gylebook.Gyles.Plans;

/// <summary>Writes and reads a frozen plan, <c>gylebook-plan/1</c>. A form that was released once is read for ever: keys come, none goes or changes what it means.</summary>
public static class GylePlanFile
{
    /// <summary>What the document's <c>format</c> key says.</summary>
    public const string Format = "gylebook-plan/1";

    /// <summary>Keys under which whole files stand: as JSON within the document, so that a person can read them.</summary>
    private static readonly string[] Files = ["recipe", "kit", "water", "larder", "forecast"];

    private static readonly JsonSerializerOptions Readable = new(JsonSerializerDefaults.Web)
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The document's text.</summary>
    public static string Write(GylePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        JsonObject document = new() { ["format"] = Format };
        foreach ((string key, JsonNode? value) in JsonSerializer.SerializeToNode(plan, Readable)!.AsObject())
        {
            document[key] = Files.Contains(key) ? EachOf(value, text => JsonNode.Parse((string)text!)) : value?.DeepClone();
        }

        return document.ToJsonString(Readable);
    }

    /// <summary>The plan in a document; null, and why, where it is none or of a form to come.</summary>
    public static GylePlan? Read(string text, out string? fault)
    {
        ArgumentNullException.ThrowIfNull(text);
        try
        {
            JsonObject? document = JsonNode.Parse(text) as JsonObject;
            string? format = (string?)document?["format"];
            fault = document is null || format is null ? "this is no frozen plan: it has no format"
                : format != Format ? $"the plan is of the form {format}; this program reads {Format}" : null;
            return fault is null ? Plan(document!) : null;
        }
        catch (Exception broken) when (broken is JsonException or InvalidOperationException)
        {
            fault = $"the plan cannot be read: {broken.Message}";
            return null;
        }
    }

    private static GylePlan? Plan(JsonObject document)
    {
        foreach (string key in Files)
        {
            document[key] = EachOf(document[key], file => JsonValue.Create(file!.ToJsonString(Readable)));
        }

        return document.Deserialize<GylePlan>(Readable);
    }

    private static JsonNode? EachOf(JsonNode? value, Func<JsonNode?, JsonNode?> change) => value switch
    {
        null => null,
        JsonArray list => new JsonArray([.. list.Select(change)]),
        _ => change(value),
    };
}
