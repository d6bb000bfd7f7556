namespace Gylebook.Recipes.Forms;

/// <summary>The words a file has for the values of an enumeration, both ways.</summary>
/// <typeparam name="TEnum">The enumeration.</typeparam>
internal sealed class WordTable<TEnum>(params (TEnum Value, string Word)[] rows)
    where TEnum : struct, Enum
{
    /// <summary>Each value with its word.</summary>
    internal IReadOnlyList<(TEnum Value, string Word)> Rows => rows;

    internal IEnumerable<string> Words => rows.Select(row => row.Word);

    internal string Word(TEnum value) => rows.First(row => row.Value.Equals(value)).Word;

    internal TEnum? Value(string word)
    {
        foreach (var row in rows)
        {
            if (row.Word == word)
            {
                return row.Value;
            }
        }

        return null;
    }
}
