using System.Text.Json.Nodes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Liquors;

namespace Gylebook.Recipes.Editing;

/// <summary>A water plan on the desk.</summary>
public sealed class WaterDraft : FileDraft
{
    private readonly Lazy<Reading<WaterPlan>> _reading;

    private WaterDraft(JsonObject file, string? text = null)
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
        return new WaterDraft(file);
    }

    /// <summary>
    /// The path in the file of a field on a page: <c>wish.calcium</c> is the amount of the line that wants calcium. Null when the
    /// file has no such line.
    /// </summary>
    public string? PathOf(string path) => WishOf(path) is not { } ion ? path
        : PlaceOfWish(ion) is { } place ? Invariant($"targets[{place}].amount") : null;

    /// <summary>The place of the line that wants an ion; null when none does.</summary>
    internal int? PlaceOfWish(string ion)
    {
        int place = Enumerable.Range(0, CountOf("targets")).FirstOrDefault(i => this[Invariant($"targets[{i}].ion")] == ion, -1);
        return place < 0 ? null : place;
    }

    /// <summary>The ion that a path of the form <c>wish.calcium</c> is about; null for any other path.</summary>
    internal static string? WishOf(string path) => path.StartsWith(Wish, StringComparison.Ordinal) ? path[Wish.Length..] : null;

    private const string Wish = "wish.";

    internal WaterDraft Changed(Action<JsonObject> change) => new(Edited(change));
}
