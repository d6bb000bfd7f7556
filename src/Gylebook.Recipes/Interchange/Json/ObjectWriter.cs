using System.Text.Json.Nodes;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.Json;

/// <summary>Puts keys into an object in the order written; what is null is left out.</summary>
internal sealed class ObjectWriter
{
    private readonly JsonObject _object = [];

    internal JsonObject Done => _object;

    internal ObjectWriter Put(string key, JsonNode? node)
    {
        if (node is not null)
        {
            _object[key] = node;
        }

        return this;
    }

    internal ObjectWriter Put<T>(string key, Entered<T> quantity)
        where T : struct, IQuantity<T> => Put(key, (JsonNode)quantity.Text);

    internal ObjectWriter Put<T>(string key, Entered<T>? quantity)
        where T : struct, IQuantity<T> => Put(key, (JsonNode?)quantity?.Text);

    /// <summary>A key that is written even when there is nothing to say, so that a reader sees it exists.</summary>
    internal ObjectWriter PutAlways(string key, JsonNode? node)
    {
        _object[key] = node;
        return this;
    }

    internal ObjectWriter PutList<T>(string key, IEnumerable<T> items, Func<T, JsonNode> write) =>
        Put(key, new JsonArray([.. items.Select(write)]));
}
