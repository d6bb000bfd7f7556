using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Liquors;

namespace Gylebook.Recipes.Editing;

/// <summary>A water plan on the desk.</summary>
public sealed class WaterDraft : FileDraft<WaterSheet>
{
    private const string Wish = "wish.";
    private Forms.Reading<WaterPlan>? _meant;

    private WaterDraft(ObjectNode file, string? text = null)
        : base(WaterFile.Form, file, text)
    {
    }

    /// <summary>The plan; null while some field cannot be read.</summary>
    public WaterPlan? Plan => Meant.Value;

    /// <inheritdoc/>
    public override bool IsReadable => Plan is not null;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => Meant.Findings;

    private Forms.Reading<WaterPlan> Meant => _meant ??= WaterFile.Meant(Reading);

    /// <summary>The draft of that text.</summary>
    /// <exception cref="ArgumentException">Not a JSON object, or one with a key twice: the caller's bug.</exception>
    public static WaterDraft Of(string text) => new(Parse(text), text);

    /// <summary>A new plan: one water without a report yet, and nothing on the shelf.</summary>
    public static WaterDraft New(string name) => new(Node.Object(
        ("format", new TextNode(WaterFile.Format)),
        ("name", new TextNode(name)),
        ("sources", new ListNode([Node.Object(("name", new TextNode("tap")), ("report", ObjectNode.Empty))]))));

    /// <summary>
    /// The path in the file of a field on a page: <c>wish.calcium</c> is the amount of the line that wants calcium. Null when the
    /// file has no such line.
    /// </summary>
    public override string? PathOf(string path) => WishOf(path) is not { } ion ? path
        : PlaceOfWish(ion) is { } place ? Invariant($"targets[{place}].amount") : null;

    /// <summary>The place of the line that wants an ion; null when none does.</summary>
    internal int? PlaceOfWish(string ion)
    {
        int place = Enumerable.Range(0, CountOf("targets")).FirstOrDefault(i => this[Invariant($"targets[{i}].ion")] == ion, -1);
        return place < 0 ? null : place;
    }

    /// <summary>The ion that a path of the form <c>wish.calcium</c> is about; null for any other path.</summary>
    internal static string? WishOf(string path) => path.StartsWith(Wish, StringComparison.Ordinal) ? path[Wish.Length..] : null;

    internal override FileDraft Of(ObjectNode file) => new WaterDraft(file);
}
