using System.Text.RegularExpressions;

namespace Gylebook.Web.Widgets.Words;

/// <summary>The words of <c>docs/glossary.md</c>, which travels inside the assembly: one home for what a word means.</summary>
public static partial class Glossary
{
    private static readonly Lazy<IReadOnlyDictionary<string, string>> Meanings = new(() =>
    {
        using Stream file = typeof(Glossary).Assembly.GetManifestResourceStream("glossary.md")!;
        using StreamReader reader = new(file);
        return Rows().Matches(reader.ReadToEnd()).Skip(1)
            .ToDictionary(row => row.Groups["word"].Value, row => Markup().Replace(row.Groups["means"].Value, ""), StringComparer.OrdinalIgnoreCase);
    });

    // The longest first, so that "residual alkalinity" is not found as "alkalinity".
    private static readonly Lazy<Regex> AnyWord = new(() => new(
        $@"(?<![\p{{L}}-])({string.Join('|', Meanings.Value.Keys.OrderByDescending(word => word.Length).Select(Regex.Escape))})(?![\p{{L}}-])",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant));

    /// <summary>All words with what each means.</summary>
    public static IReadOnlyDictionary<string, string> All => Meanings.Value;

    /// <summary>A text in pieces: what it is, and what it means where it is a word of the glossary, each word once.</summary>
    public static IReadOnlyList<(string Text, string? Means)> PiecesOf(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        List<(string, string?)> pieces = [];
        HashSet<string> seen = new(StringComparer.OrdinalIgnoreCase);
        int at = 0;
        foreach (Match found in AnyWord.Value.Matches(text).Where(found => seen.Add(found.Value)))
        {
            if (found.Index > at)
            {
                pieces.Add((text[at..found.Index], null));
            }

            pieces.Add((found.Value, Meanings.Value[found.Value]));
            at = found.Index + found.Length;
        }

        if (at < text.Length)
        {
            pieces.Add((text[at..], null));
        }

        return pieces;
    }

    [GeneratedRegex(@"^\| (?!-)(?<word>[^|]+?) \| (?<means>[^|]+?) \|\r?$", RegexOptions.Multiline)]
    private static partial Regex Rows();

    [GeneratedRegex("[`*]")]
    private static partial Regex Markup();
}
