namespace Gylebook.Site.Folder;

/// <summary>The engine for readers' browsers, as a release build of Gylebook leaves it beside the program.</summary>
public static class SiteEngine
{
    /// <summary>Its folder in a published folder.</summary>
    public const string Folder = "engine";

    /// <summary>Where it lies beside the program.</summary>
    private static string Home => Path.Combine(AppContext.BaseDirectory, "reader");

    /// <summary>Whether it is there: a debug build leaves it out.</summary>
    public static bool IsHere => File.Exists(Path.Combine(Home, "dotnet.js"));

    /// <summary>Its files: each plain, and packed two ways for hosts that choose.</summary>
    /// <exception cref="FileNotFoundException">It is not there.</exception>
    public static IReadOnlyList<SiteFile> Files() => IsHere
        ? [.. Directory.EnumerateFiles(Home).Order(StringComparer.Ordinal).Select(file => new SiteFile($"{Folder}/{Path.GetFileName(file)}", File.ReadAllBytes(file)))]
        : throw new FileNotFoundException("The engine for readers' browsers is not beside this program: build it with the configuration Release.", Home);
}
