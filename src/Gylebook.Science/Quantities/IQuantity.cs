namespace Gylebook.Science.Quantities;

/// <summary>What every quantity can do: be made from its canonical unit, and give it back.</summary>
/// <remarks>
/// One type per meaning, not per dimension: see <c>docs/decisions/0001-quantities-by-meaning.md</c>.
/// Code that knows which quantity it holds uses the named factories; this door is for tables, files and forms,
/// which treat them all alike.
/// </remarks>
/// <typeparam name="TSelf">The quantity itself.</typeparam>
public interface IQuantity<TSelf> : IComparable<TSelf>
    where TSelf : struct, IQuantity<TSelf>
{
    /// <summary>Name, canonical unit and the values the quantity can have.</summary>
    static abstract QuantityLimits Limits { get; }

    /// <summary>The quantity with that value in its canonical unit.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    static abstract TSelf FromCanonical(double value);

    /// <summary>The value in the canonical unit.</summary>
    double Canonical { get; }
}
