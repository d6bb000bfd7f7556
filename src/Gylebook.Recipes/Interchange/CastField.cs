using System.Collections.Immutable;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;

namespace Gylebook.Recipes.Interchange;

/// <summary>Where a portion parts from the others: at the cast, and nowhere else.</summary>
internal sealed class CastField() : Field<PortionShare>("from", "from", new FieldNotes("Where the portions part."))
{
    private const string Cast = "cast";

    public override ValueForm Value => Leaves.Name;

    public override bool IsOptional => true;

    internal override PortionShare Read(PartReader reader, PortionShare part)
    {
        if (reader.Take(Key) is { } at && at.Text(int.MaxValue) is { } stage && stage != Cast)
        {
            at.Error("portion.from", $"\"{FindingList.Shorten(stage)}\"; portions part at \"{Cast}\" only", stage, Cast);
        }

        return part;
    }

    internal override void Write(PortionShare part, ImmutableArray<KeyValuePair<string, Node>>.Builder pairs) => pairs.Add(new(Key, new TextNode(Cast)));

    internal override IEnumerable<(string Key, Node Value)> Schema(SchemaParts parts) =>
        [(Key, Node.Object(("enum", new ListNode([new TextNode(Cast), BareNode.Null]))))];
}
