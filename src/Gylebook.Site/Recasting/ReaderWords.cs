namespace Gylebook.Site.Recasting;

/// <summary>What a follower typed, by the names of the address: the whole of it is the address.</summary>
public sealed class ReaderWords
{
    private const int Longest = 200;

    private readonly Dictionary<string, string> _words = new(StringComparer.Ordinal);

    /// <summary>Nothing typed.</summary>
    public static ReaderWords None { get; } = new();

    /// <summary>What stands behind the question mark of an address.</summary>
    public static ReaderWords Read(string query)
    {
        ArgumentNullException.ThrowIfNull(query);
        ReaderWords read = new();
        foreach (string pair in query.TrimStart('?').Split('&', StringSplitOptions.RemoveEmptyEntries))
        {
            int equals = pair.IndexOf('=', StringComparison.Ordinal);
            if (equals > 0 && Plain(pair[(equals + 1)..]) is { Length: > 0 and <= Longest } word)
            {
                read._words[Plain(pair[..equals])] = word;
            }
        }

        return read;
    }

    /// <summary>What was typed under that name; null for nothing.</summary>
    public string? this[string key] => _words.GetValueOrDefault(key);

    private static string Plain(string written) => Uri.UnescapeDataString(written.Replace('+', ' ')).Trim();
}
