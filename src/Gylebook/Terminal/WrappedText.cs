namespace Gylebook.Terminal;

/// <summary>Long lines cut between words, what follows set in under what comes first.</summary>
internal static class WrappedText
{
    /// <summary>The lines, none longer than the width unless one word is.</summary>
    /// <param name="text">One paragraph.</param>
    /// <param name="width">Columns there are.</param>
    /// <param name="first">Spaces before the first line.</param>
    /// <param name="rest">Spaces before those that follow.</param>
    public static IEnumerable<string> Lines(string text, int width, int first, int rest)
    {
        string line = new(' ', first);
        bool empty = true;
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!empty && line.Length + 1 + word.Length > width)
            {
                yield return line;
                line = new string(' ', rest);
                empty = true;
            }

            line += empty ? word : " " + word;
            empty = false;
        }

        yield return line;
    }
}
