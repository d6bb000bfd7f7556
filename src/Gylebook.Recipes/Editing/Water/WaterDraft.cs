using System.Text.Json.Nodes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Interchange.Json;
using Gylebook.Recipes.Liquors;

namespace Gylebook.Recipes.Editing;

/// <summary>A water plan on the desk.</summary>
public sealed class WaterDraft : FileDraft
{
    private readonly Lazy<Reading<WaterPlan>> _reading;

    private WaterDraft(JsonObject file, string text)
        : base(file, text) => _reading = new Lazy<Reading<WaterPlan>>(() => WaterFile.Read(Text));

    /// <summary>The plan; null while some field cannot be read.</summary>
    public WaterPlan? Plan => _reading.Value.Value;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => _reading.Value.Findings;

    /// <summary>The draft of that text.</summary>
    /// <exception cref="ArgumentException">Not a JSON object, or one with a key twice: the caller's bug.</exception>
    public static WaterDraft Of(string text) => new(Parse(text), text);

    /// <summary>A new plan: one water without a report yet, and nothing on the shelf.</summary>
    public static WaterDraft New(string name)
    {
        JsonObject water = new() { ["name"] = "tap", ["report"] = new JsonObject() };
        JsonObject file = new() { ["format"] = WaterFile.Format, ["name"] = name, ["sources"] = new JsonArray(water) };
        return new WaterDraft(file, JsonLayout.Write(file));
    }

    internal WaterDraft Changed(Action<JsonObject> change)
    {
        JsonObject file = Copy();
        change(file);
        return new WaterDraft(file, JsonLayout.Write(file));
    }
}
