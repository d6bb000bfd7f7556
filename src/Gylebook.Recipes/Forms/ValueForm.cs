using Gylebook.Recipes.Documents;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Forms;

/// <summary>A kind of value in our files: how it is read, written, told of and shown, whatever field holds it.</summary>
public abstract class ValueForm
{
    /// <summary>What of it there is, for whoever lays out a page or a guide.</summary>
    /// <typeparam name="TResult">What comes of it.</typeparam>
    public abstract TResult Accept<TResult>(IValueFormVisitor<TResult> visitor);

    /// <summary>The value as a file has it for what was typed into a field; text that is no such value stays text, and is found.</summary>
    internal virtual Node Typed(string text) => new TextNode(text);

    /// <summary>What a JSON Schema says of it.</summary>
    internal abstract ObjectNode Schema(SchemaParts parts);

    /// <summary>The part of that form at a step down: a field of an object by its key, an item of a list by its number.</summary>
    internal virtual ValueForm? Inside(string step) => null;

    /// <summary>The field of an object under a key; null for none.</summary>
    internal virtual Field? FieldAt(string step) => null;

    /// <summary>Whether such an object stays in its file when its last field goes: an empty report says that a water is no distilled one.</summary>
    internal virtual bool StaysEmpty => false;
}

/// <summary>A kind of value with the type it is read as.</summary>
/// <typeparam name="T">What it is read as.</typeparam>
public abstract class ValueForm<T> : ValueForm
{
    /// <summary>Reads it; false, and the list knows why, when there is no such value at all. An object with faults in it is one, with stand-ins.</summary>
    internal abstract bool TryRead(NodeCursor at, out T value);

    /// <summary>The value as a file has it.</summary>
    internal abstract Node Write(T value);
}

/// <summary>One answer for each sort of value a form can have.</summary>
/// <typeparam name="TResult">What comes of it.</typeparam>
public interface IValueFormVisitor<out TResult>
{
    /// <summary>A number with a unit.</summary>
    /// <typeparam name="T">Which quantity.</typeparam>
    TResult Quantity<T>()
        where T : struct, IQuantity<T>;

    /// <summary>A number without one.</summary>
    TResult Number();

    /// <summary>A mass or a volume.</summary>
    TResult Amount();

    /// <summary>One of a few words.</summary>
    /// <param name="words">Which.</param>
    TResult Choice(IReadOnlyList<string> words);

    /// <summary>Yes or no.</summary>
    TResult Flag();

    /// <summary>Text, on one line or on several.</summary>
    /// <param name="isLong">Whether on several.</param>
    TResult Text(bool isLong);

    /// <summary>A day; whoever has nothing of its own for days gets a line of text.</summary>
    TResult Day() => Text(isLong: false);

    /// <summary>An object with fields.</summary>
    /// <param name="fields">Which, in the order of the file.</param>
    TResult Part(IReadOnlyList<Field> fields);

    /// <summary>A list.</summary>
    /// <param name="item">What is in it.</param>
    TResult List(ValueForm item);
}
