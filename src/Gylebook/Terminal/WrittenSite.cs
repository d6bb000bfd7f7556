using Gylebook.Site.Folder;

namespace Gylebook.Terminal;

/// <summary>A published folder on the disk: files of ours are written over, and others left.</summary>
internal static class WrittenSite
{
    /// <summary>Writes the pages, and the engine beside them.</summary>
    /// <returns>Why that cannot be; null when it was done.</returns>
    public static string? Write(string folder, IReadOnlyList<SiteFile> pages)
    {
        try
        {
            RemoveOldEngine(folder);
            foreach (SiteFile file in pages.Concat(SiteEngine.Files()))
            {
                string path = Path.Combine(folder, file.Path.Replace('/', Path.DirectorySeparatorChar));
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                File.WriteAllBytes(path, file.Bytes.Span);
            }

            return null;
        }
        catch (Exception cannot) when (cannot is IOException or UnauthorizedAccessException)
        {
            return cannot.Message;
        }
    }

    /// <summary>Takes a page out of it.</summary>
    public static void RemovePage(string folder, string slug)
    {
        string page = Path.Combine(Path.GetFullPath(folder), slug);
        if (File.Exists(Path.Combine(page, "publication.json")))
        {
            Directory.Delete(page, recursive: true);
        }
    }

    /// <summary>Files of an engine have the sum of what is in them in their names: an older one would stay for ever.</summary>
    private static void RemoveOldEngine(string folder)
    {
        string engine = Path.Combine(folder, SiteEngine.Folder);
        if (File.Exists(Path.Combine(engine, "dotnet.js")))
        {
            Directory.Delete(engine, recursive: true);
        }
    }
}
