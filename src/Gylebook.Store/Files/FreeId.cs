using System.Globalization;

namespace Gylebook.Store;

/// <summary>Ids by which recipes call a sheet, made of its name.</summary>
public static class FreeId
{
    /// <summary>The id of a name, or the first of "id-2", "id-3" that nobody has.</summary>
    /// <param name="name">What the sheet is called.</param>
    /// <param name="otherwise">The id of a name without a letter.</param>
    /// <param name="isTaken">Whether an id stands for something else.</param>
    public static string Of(string name, string otherwise, Func<string, bool> isTaken)
    {
        string wanted = From(name, otherwise);
        string id = wanted;
        for (int n = 2; isTaken(id); n++)
        {
            id = string.Create(CultureInfo.InvariantCulture, $"{wanted}-{n}");
        }

        return id;
    }

    /// <summary>Small letters, digits, and hyphens for all the rest.</summary>
    public static string From(string name, string otherwise)
    {
        char[] letters = [.. NameSearch.Fold(name).Select(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) ? c : '-')];
        string id = string.Join('-', new string(letters).Split('-', StringSplitOptions.RemoveEmptyEntries));
        return id.Length == 0 ? otherwise : id;
    }
}
