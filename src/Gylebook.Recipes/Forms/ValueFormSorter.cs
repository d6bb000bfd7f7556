using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Forms;

/// <summary>A visitor that has the same answer for all sorts of value but those it says otherwise of.</summary>
/// <typeparam name="TResult">What comes of it.</typeparam>
public abstract class ValueFormSorter<TResult> : IValueFormVisitor<TResult?>
{
    /// <inheritdoc/>
    public virtual TResult? Quantity<T>()
        where T : struct, IQuantity<T> => Other;

    /// <inheritdoc/>
    public virtual TResult? Number() => Other;

    /// <inheritdoc/>
    public virtual TResult? Amount() => Other;

    /// <inheritdoc/>
    public virtual TResult? Choice(IReadOnlyList<string> words) => Other;

    /// <inheritdoc/>
    public virtual TResult? Flag() => Other;

    /// <inheritdoc/>
    public virtual TResult? Text(bool isLong) => Other;

    /// <inheritdoc/>
    public virtual TResult? Day() => Text(isLong: false);

    /// <inheritdoc/>
    public virtual TResult? Part(IReadOnlyList<Field> fields) => Other;

    /// <inheritdoc/>
    public virtual TResult? List(ValueForm item) => Other;

    /// <summary>The answer for all others.</summary>
    protected virtual TResult? Other => default;
}
