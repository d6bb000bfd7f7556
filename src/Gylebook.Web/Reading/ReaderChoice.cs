using Gylebook.Pictures;
using Gylebook.Web.Layout;

namespace Gylebook.Web.Reading;

/// <summary>What a reader chose to see; kept in a cookie of their browser.</summary>
/// <param name="Units">Their units and decimal sign.</param>
/// <param name="Theme">One of <see cref="Themes"/>.</param>
public sealed record ReaderChoice(ReaderUnits Units, string Theme)
{
    /// <summary>The cookie's name.</summary>
    public const string Cookie = "gylebook-reader";

    /// <summary>The choice in words: <c>units.gravity=SG&amp;units.volume=US gal&amp;theme=dark</c>.</summary>
    public string Words => string.Join('&', Settings(this).Select(setting => $"{setting.Key}={setting.Value}"));

    /// <summary>The choice that settings say; what they do not say, or nobody knows, is as usual.</summary>
    public static ReaderChoice Of(IReadOnlyDictionary<string, string> settings) =>
        new(ReaderSettings.Read(settings), Themes.Known(settings.GetValueOrDefault(Themes.Key)));

    /// <summary>The choice that those words say: a browser may send anything.</summary>
    /// <param name="words">As <see cref="Words"/>; null for a reader who never chose.</param>
    /// <param name="otherwise">What holds for all that they do not say.</param>
    public static ReaderChoice Read(string? words, ReaderChoice otherwise)
    {
        Dictionary<string, string> settings = new(Settings(otherwise));
        foreach (string setting in (words ?? "").Split('&'))
        {
            int end = setting.IndexOf('=', StringComparison.Ordinal);
            if (end > 0)
            {
                settings[setting[..end]] = setting[(end + 1)..];
            }
        }

        return Of(settings);
    }

    private static IEnumerable<KeyValuePair<string, string>> Settings(ReaderChoice choice) =>
        ReaderSettings.Write(choice.Units).Append(new(Themes.Key, choice.Theme));
}
