namespace Gylebook.Recipes;

/// <summary>Findings as they come up, up to a number a person could still want to read.</summary>
internal sealed class FindingList
{
    private const int Most = 1000;
    private const int LongestQuote = 60;
    private readonly List<Finding> _found = [];

    /// <summary>Whether anything stands in the way of using what was read.</summary>
    internal bool HasErrors { get; private set; }

    /// <summary>Whether so much was found that no more is kept.</summary>
    internal bool IsFull => _found.Count > Most;

    /// <summary>All that was found.</summary>
    internal IReadOnlyList<Finding> All => _found;

    internal void Error(string code, string where, string message, string? value = null, string? limit = null) =>
        Add(new Finding(code, Severity.Error, where, message, value is null ? null : Shorten(value), limit));

    internal void Warning(string code, string where, string message, string? value = null, string? limit = null) =>
        Add(new Finding(code, Severity.Warning, where, message, value is null ? null : Shorten(value), limit));

    internal void Note(string code, string where, string message, string? value = null) =>
        Add(new Finding(code, Severity.Note, where, message, value));

    /// <summary>Takes over what was found in a part of what this list is about.</summary>
    /// <param name="part">What was found, at paths from the part.</param>
    /// <param name="at">Where the part stands.</param>
    internal void TakeOver(FindingList part, string at)
    {
        foreach (Finding finding in part.All)
        {
            Add(at.Length == 0 ? finding : finding with { Where = finding.Where.Length == 0 ? at : $"{at}.{finding.Where}" });
        }
    }

    /// <summary>Enough of a text to recognise it by, on one line.</summary>
    internal static string Shorten(string text)
    {
        var start = text.Length > LongestQuote ? string.Concat(text.AsSpan(0, LongestQuote), "…") : text;
        return start.Any(char.IsControl) ? string.Concat(start.Select(c => char.IsControl(c) ? '\uFFFD' : c)) : start;
    }

    /// <summary>Takes a finding in.</summary>
    internal void Add(Finding finding)
    {
        HasErrors |= finding.Severity == Severity.Error;
        if (_found.Count < Most)
        {
            _found.Add(finding);
        }
        else if (_found.Count == Most)
        {
            _found.Add(new Finding(
                "file.more", Severity.Error, "", $"there is more wrong than these {Most} findings; mend them and read again", null, $"{Most}"));
        }
    }
}
