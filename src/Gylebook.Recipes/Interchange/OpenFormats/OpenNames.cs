using System.Text;

namespace Gylebook.Recipes.Interchange.OpenFormats;

/// <summary>Names from elsewhere, made fit for files of ours.</summary>
internal static class OpenNames
{
    private const int Longest = 200;
    private const int LongestId = 60;

    /// <summary>Whether it can stand in a file of ours as it is.</summary>
    public static bool IsName(string text) => text.Length <= Longest && !string.IsNullOrWhiteSpace(text) && !text.Any(char.IsControl);

    /// <summary>A name on one line, not too long; the other where nothing is left of it.</summary>
    public static string Of(string? text, string otherwise, string where, TravelList travels)
    {
        if (text is not null && IsName(text.Trim()))
        {
            return text.Trim();
        }

        string line = string.Concat((text ?? "").Select(c => char.IsControl(c) ? ' ' : c)).Trim();
        line = line.Length > Longest ? line[..(char.IsHighSurrogate(line[Longest - 1]) ? Longest - 1 : Longest)].Trim() : line;
        if (line.Length == 0)
        {
            travels.Default(where, $"has no name; called \"{otherwise}\"");
            return otherwise;
        }

        travels.Repair(where, $"\"{FindingList.Shorten(text!)}\" is shortened to one line of at most {Longest} characters");
        return line;
    }

    /// <summary>An id made of a name: small letters, digits and hyphens.</summary>
    public static string Id(string name, string otherwise)
    {
        StringBuilder id = new();
        foreach (char letter in name.Normalize(NormalizationForm.FormD).ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(letter))
            {
                id.Append(letter);
            }
            else if (System.Globalization.CharUnicodeInfo.GetUnicodeCategory(letter) != System.Globalization.UnicodeCategory.NonSpacingMark && id.Length > 0 && id[^1] != '-')
            {
                id.Append('-');
            }
        }

        string made = id.ToString(0, Math.Min(id.Length, LongestId)).Trim('-');
        return made.Length > 0 ? made : otherwise;
    }
}
