using System.Globalization;
using System.Text;

namespace Gylebook.Store;

/// <summary>Makes names findable however they are typed: <c>brulee</c> finds <c>Brûlée</c>.</summary>
public static class NameSearch
{
    /// <summary>The name without case, accents and outer blanks.</summary>
    public static string Fold(string name)
    {
        var folded = new StringBuilder(name.Length);
        foreach (char letter in name.Trim().Normalize(NormalizationForm.FormD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark)
            {
                folded.Append(char.ToLowerInvariant(letter));
            }
        }

        return folded.ToString();
    }
}
