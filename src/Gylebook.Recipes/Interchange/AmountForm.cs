using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>A mass or a volume; which is meant shows in the unit.</summary>
internal sealed class AmountForm : ValueForm<Amount>
{
    private readonly bool _mayBePoured;

    private AmountForm(bool mayBePoured) => _mayBePoured = mayBePoured;

    /// <summary>For what is only weighed.</summary>
    public static AmountForm Weighed { get; } = new(mayBePoured: false);

    /// <summary>For what may be measured in a jug as well.</summary>
    public static AmountForm WeighedOrPoured { get; } = new(mayBePoured: true);

    public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => visitor.Amount();

    internal override bool TryRead(NodeCursor at, out Amount value)
    {
        value = default;
        if (_mayBePoured && at.Node is TextNode { Text: var text })
        {
            if (UnitTable.TryParse(text, out Entered<VolumeAt20C> volume, out _))
            {
                value = new Amount(null, volume);
                return true;
            }

            if (UnitTable.LooksLike<VolumeAt20C>(text))
            {
                // Litres, but not a volume there can be: told of as litres.
                return Leaves.Of<VolumeAt20C>().TryRead(at, out _);
            }
        }

        bool isMass = Leaves.Of<Mass>().TryRead(at, out Entered<Mass> mass);
        value = isMass ? new Amount(mass, null) : default;
        return isMass;
    }

    internal override Node Write(Amount value) => new TextNode(value.Text);

    internal override ObjectNode Schema(SchemaParts parts)
    {
        ObjectNode mass = Leaves.Of<Mass>().Schema(parts);
        return _mayBePoured ? Node.Object(("anyOf", new ListNode([mass, Leaves.Of<VolumeAt20C>().Schema(parts)]))) : mass;
    }
}
