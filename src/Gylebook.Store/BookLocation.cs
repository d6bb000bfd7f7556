namespace Gylebook.Store;

/// <summary>Where the book lies when nobody says otherwise.</summary>
public static class BookLocation
{
    /// <summary>Environment variable that names the book's file.</summary>
    public const string Variable = "GYLEBOOK_BOOK";

    /// <summary>
    /// The file given by hand; else the one the environment names; else <c>gylebook/book.sqlite</c> in the user's data
    /// folder: <c>XDG_DATA_HOME</c> where it is set, or the system's own place for application data.
    /// </summary>
    /// <param name="given">As on the command line; null or blank when not given.</param>
    /// <param name="environment">Reads an environment variable; null for the real environment.</param>
    public static string Find(string? given = null, Func<string, string?>? environment = null)
    {
        environment ??= Environment.GetEnvironmentVariable;
        if (!string.IsNullOrWhiteSpace(given))
        {
            return Path.GetFullPath(given);
        }

        return environment(Variable) is { } named && !string.IsNullOrWhiteSpace(named)
            ? Path.GetFullPath(named)
            : Path.Combine(DataFolder(environment), "gylebook", "book.sqlite");
    }

    private static string DataFolder(Func<string, string?> environment)
    {
        // The XDG specification tells us to pass over a relative path.
        if (environment("XDG_DATA_HOME") is { } xdg && Path.IsPathFullyQualified(xdg))
        {
            return xdg;
        }

        string local = Environment.GetFolderPath(
            Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);

        // An account without a home, as some services have: beside the program is better than nowhere.
        return local.Length > 0 ? local : AppContext.BaseDirectory;
    }
}
