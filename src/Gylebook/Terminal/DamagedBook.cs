using Gylebook.Recipes;
using Gylebook.Store;
using Gylebook.Store.Sqlite;

namespace Gylebook.Terminal;

/// <summary>Checks a book, and saves what can be saved of it.</summary>
internal static class DamagedBook
{
    /// <summary>A finding for each damaged place.</summary>
    /// <param name="file">The book.</param>
    /// <param name="folder">Where the newest sound text of each damaged recipe, kit, food and water plan is written, over nothing; null for nowhere.</param>
    public static IReadOnlyList<Finding> Check(string file, string? folder)
    {
        IReadOnlyList<DamagedPlace> places = BookCheck.Damage(file);
        List<Finding> findings = [.. places.Select(place => new Finding("book.damaged", Severity.Error, file, place.Sentence))];
        if (folder is not null)
        {
            findings.AddRange(places.Where(place => place.Sound is not null).DistinctBy(place => place.OwnerId).Select(place => Save(place, folder)));
        }

        return findings;
    }

    private static Finding Save(DamagedPlace place, string folder)
    {
        string target = Path.Combine(folder, place.OwnerId + ".json");
        try
        {
            Directory.CreateDirectory(folder);
            using StreamWriter text = new(new FileStream(target, FileMode.CreateNew));
            text.Write(place.Sound!.Document);
            return new Finding("book.rescued", Severity.Note, target, $"The text of {place.Sound.From} is written here.");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return new Finding("file.unwritable", Severity.Error, target, fault.Message, target);
        }
    }
}
