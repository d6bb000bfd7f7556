namespace Gylebook.Pictures.Drawing;

/// <summary>What is written about a step, by the room there is: a name is never cut so that a band may stand beside it.</summary>
/// <param name="Beside">On the line of the litres; the portion's name, for a branch.</param>
/// <param name="Litres">At the right edge.</param>
/// <param name="Below">On a line of its own; empty for none.</param>
internal readonly record struct Said(string Beside, string Litres, string Below)
{
    private const double Between = 8;

    /// <summary>Finds what fits where.</summary>
    public static Said Of(RunPicture picture, RunFrame frame, RunLevel level, RunStep step)
    {
        string name = level.Parted ? step.Portion : level.Name;
        double size = level.Parted ? Type.Small : Type.Name;
        string litres = picture.Shown.Litres(step.Litres);
        string below = step.Says;
        if (!Fits(name, size, litres, frame))
        {
            string likely = picture.Shown.Litres(step.Litres.Likely);
            below = likely == litres ? below : Joined(picture.Shown.Ends(step.Litres), below);
            litres = likely;
        }

        string together = Joined(name, below);
        return level.Parted && Fits(together, size, litres, frame) ? new(together, litres, "") : new(name, litres, below);
    }

    private static bool Fits(string words, double size, string litres, RunFrame frame) =>
        TextRoom.WidthOf(words, size) + Between + TextRoom.WidthOf(litres, Type.Small) <= frame.TextRoom;

    private static string Joined(string first, string then) => then.Length > 0 ? $"{first} · {then}" : first;
}
