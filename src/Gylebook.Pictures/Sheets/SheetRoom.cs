namespace Gylebook.Pictures.Sheets;

/// <summary>How small a sheet must be written to stand on one page of A4: estimated, since no font is at hand here.</summary>
/// <remarks>Lengths in mm on paper, in em within the text; widths are those of a wide common letter, so that a page needs less, hardly ever more.</remarks>
/// <param name="Size">Number of the style sheet's class of letters, 1 the largest.</param>
/// <param name="HasNotes">Whether there is room for the brewer's notes.</param>
internal sealed record SheetRoom(int Size, bool HasNotes)
{
    /// <summary>A point on paper.</summary>
    internal const double MillimetresPerPoint = 25.4 / 72;
    /// <summary>From line to line.</summary>
    internal const double LineEms = 1.3;
    private const double LetterEms = 0.53;
    private const double PageHeight = 275;
    private const double PageWidth = 184;
    private const double LeftWidth = 116;
    private const double NameWidth = 54;
    private const double WhenWidth = 27;

    /// <summary>Points of the classes in the style sheet, the largest first.</summary>
    private static readonly double[] Points = [10, 9.2, 8.4, 7.6];

    /// <summary>The largest letters in which all fits; notes go before letters become small.</summary>
    public static SheetRoom For(RecipeSheet sheet)
    {
        (int Size, bool HasNotes)[] ways = [(0, true), (1, true), (0, false), (1, false), (2, false)];
        foreach ((int size, bool hasNotes) in ways)
        {
            if (Height(sheet, Points[size], hasNotes) <= PageHeight)
            {
                return new(size + 1, hasNotes);
            }
        }

        return new(Points.Length, false);
    }

    private static double Height(RecipeSheet sheet, double points, bool hasNotes)
    {
        double em = points * MillimetresPerPoint;
        double ems = Lines(sheet.Name, PageWidth, em * 2.6) * 2.6 * LineEms + 3.2
            + (sheet.Figures.Count > 0 ? 5.2 : 0)
            + sheet.Allergens.Sum(sentence => Paragraph(sentence, PageWidth, em)) + 0.6
            + sheet.Problems.Sum(problem => Paragraph(problem.Where + problem.Message, PageWidth, em))
            + sheet.Parts.Sum(part => PartEms(part, em))
            + (0.85 * Paragraph(string.Join(" · ", sheet.Marks), PageWidth, em * 0.85)) + 2.5
            + (hasNotes && sheet.Notes.Length > 0 ? 2 + sheet.Notes.Split('\n').Sum(line => Paragraph(line, PageWidth, em)) : 0);
        return ems * em;
    }

    private static double PartEms(SheetPart part, double em) =>
        2.5 + (LineEms * (Lines(part.Name + part.Aside, LeftWidth * 0.9, em) - 1))
        + part.Rows.Sum(row => (LineEms * Math.Max(Lines(row.What, NameWidth, em), Lines(row.When, WhenWidth, em))) + 0.3)
        + part.Cautions.Sum(caution => Paragraph(caution.Mark + caution.Message, LeftWidth, em) + 0.3);

    /// <summary>Em that a paragraph is high.</summary>
    internal static double Paragraph(string text, double width, double em) => (LineEms * Lines(text, width, em)) + 0.2;

    /// <summary>Lines that a text takes.</summary>
    internal static int Lines(string text, double width, double em) => Math.Max(1, (int)Math.Ceiling(text.Length * LetterEms * em / width));
}
