using Gylebook.Recipes.Editing;

namespace Gylebook.Recipes.Interchange.OpenFormats;

/// <summary>The block at the end of a recipe's notes that tells a reader of the file what the file cannot say.</summary>
internal static class OpenNotes
{
    private const string Head = "-- What this file cannot carry --";
    private const int MostLines = 40;

    /// <summary>The notes with that block, where anything stays behind.</summary>
    public static string? With(string? notes, IReadOnlyList<Travel> travels)
    {
        string[] left = [.. travels.Where(travel => travel.Kind == TravelKind.Left).Select(travel => Told(travel))];
        if (left.Length == 0)
        {
            return notes;
        }

        IEnumerable<string> told = left.Length <= MostLines ? left : left.Take(MostLines).Append(Invariant($"and {left.Length - MostLines} more"));
        string block = $"{Head}\n{string.Join('\n', told)}";
        return string.IsNullOrEmpty(notes) ? block : $"{notes}\n\n{block}";
    }

    private static string Told(Travel travel) => travel.Where.StartsWith("ingredients", StringComparison.Ordinal) ? travel.Words : $"{PlaceWords.Of(travel.Where)}: {travel.Words}";

    /// <summary>The notes without it.</summary>
    public static string? Without(string? notes)
    {
        int at = notes?.IndexOf(Head, StringComparison.Ordinal) ?? -1;
        if (at < 0)
        {
            return notes;
        }

        string before = notes![..at];
        string kept = before.EndsWith("\n\n", StringComparison.Ordinal) ? before[..^2] : before;
        return kept.Length == 0 ? null : kept;
    }
}
