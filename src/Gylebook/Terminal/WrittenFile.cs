using System.Text;
using Gylebook.Recipes.Interchange.Csv;

namespace Gylebook.Terminal;

/// <summary>A file that a verb writes: never over a file of another kind, over one of its own only when told to, and whole or not at all.</summary>
/// <param name="Path">Where to, as typed.</param>
/// <param name="Kind">What is written, as people say it: "an SVG drawing".</param>
/// <param name="IsOne">Whether the beginning of a file that lies there is one of that kind.</param>
internal sealed record WrittenFile(string Path, string Kind, Func<string, bool> IsOne)
{
    private const int BeginningBytes = 1024;

    /// <summary>A drawing.</summary>
    public static WrittenFile Svg(string path) => new(path, "an SVG drawing", text => text.Contains("<svg", StringComparison.OrdinalIgnoreCase));

    /// <summary>A sheet to print.</summary>
    public static WrittenFile Html(string path) => new(path, "an HTML page", text => text.Contains("<!doctype html", StringComparison.OrdinalIgnoreCase));

    /// <summary>Days for a calendar.</summary>
    public static WrittenFile Calendar(string path) => new(path, "a calendar file", text => text.StartsWith("BEGIN:VCALENDAR", StringComparison.OrdinalIgnoreCase));

    /// <summary>A recipe, a kit, anything the book gives out.</summary>
    public static WrittenFile OfOurs(string path) => new(path, "a file of ours", text => text.Contains("\"gylebook-", StringComparison.Ordinal));

    /// <summary>A recipe for other programs: in BeerJSON, in BeerXML, or as a table.</summary>
    public static WrittenFile ForOthers(string path) => new(
        path, "a recipe for other programs",
        text => text.Contains("\"beerjson\"", StringComparison.Ordinal) || text.Contains("<RECIPES>", StringComparison.Ordinal) || text.StartsWith(RecipeCsv.Head, StringComparison.Ordinal));

    /// <summary>Why it must not be written; null when it may.</summary>
    /// <param name="force">Whether a file of that kind may be written over.</param>
    public string? Refusal(bool force)
    {
        if (Directory.Exists(Path))
        {
            return $"{Path}: this is a folder; name a file in it.";
        }

        if (!File.Exists(Path))
        {
            return null;
        }

        if (!IsOne(Beginning(Path)))
        {
            return $"{Path}: there is a file already, and it is not {Kind}; it is left as it is. Name another file.";
        }

        return force ? null : $"{Path}: there is {Kind} already. Name another file, or write over it with --force.";
    }

    /// <summary>Writes it beside, and then puts it in its place: whoever stops half-way leaves what was there.</summary>
    /// <param name="text">All of it.</param>
    /// <param name="force">Whether a file of that kind may be written over.</param>
    /// <exception cref="IOException">There is no room, or a file has turned up meanwhile.</exception>
    public void Write(string text, bool force)
    {
        string whole = System.IO.Path.GetFullPath(Path);
        string beside = $"{whole}.{Guid.CreateVersion7():N}.part";
        try
        {
            using (FileStream stream = new(beside, FileMode.CreateNew, FileAccess.Write))
            {
                stream.Write(Encoding.UTF8.GetBytes(text));
                stream.Flush(flushToDisk: true);
            }

            File.Move(beside, whole, overwrite: force);
        }
        finally
        {
            File.Delete(beside);
        }
    }

    /// <summary>What a file begins with; letters of no meaning where it is no text.</summary>
    internal static string Beginning(string path)
    {
        using FileStream stream = File.OpenRead(path);
        byte[] bytes = new byte[BeginningBytes];
        return Encoding.UTF8.GetString(bytes, 0, stream.ReadAtLeast(bytes, BeginningBytes, throwOnEndOfStream: false));
    }
}
