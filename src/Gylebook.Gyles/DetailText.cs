using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Gylebook.Gyles;

/// <summary>Details of the log (<see cref="BrewAction.Detail"/>) as JSON.</summary>
internal static class DetailText
{
    /// <summary>How they are written: letters as they are.</summary>
    public static JsonSerializerOptions Plain { get; } = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The object; null where it is none.</summary>
    public static JsonObject? Parsed(string? detail)
    {
        try
        {
            return detail is null ? null : JsonNode.Parse(detail) as JsonObject;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
