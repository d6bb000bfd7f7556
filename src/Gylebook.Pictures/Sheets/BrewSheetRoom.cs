namespace Gylebook.Pictures.Sheets;

/// <summary>How a brew-day sheet must be written to stand on one page of A4: estimated, since no font is at hand here.</summary>
/// <remarks>Lengths in mm on paper, in em within the text; widths are those of a wide common letter, so that a page needs less, hardly ever more.</remarks>
/// <param name="Size">Number of the style sheet's class of letters, 1 the largest.</param>
/// <param name="HasNotes">Whether there is room for the brewer's notes.</param>
/// <param name="HasAllCautions">Whether cautions that are not grave stand in full too.</param>
internal sealed record BrewSheetRoom(int Size, bool HasNotes, bool HasAllCautions)
{
    private const double PageHeight = 275, PageWidth = 190, DoWidth = 104, WideWidth = 162, HalfWidth = 92;
    private const double BetweenSteps = 0.55, BlankEms = 1.75;

    /// <summary>Points of the classes in the style sheet, the largest first.</summary>
    private static readonly double[] Points = [10, 9.2, 8.4, 7.6];

    /// <summary>The first that fits: notes go before cautions, and letters become small before a caution is shortened.</summary>
    private static readonly BrewSheetRoom[] Ways =
    [
        new(1, true, true), new(2, true, true), new(1, false, true), new(2, false, true), new(3, false, true), new(4, false, true),
        new(3, false, false), new(4, false, false),
    ];

    /// <summary>The largest letters in which all fits.</summary>
    public static BrewSheetRoom For(BrewSheet sheet) => Array.Find(Ways, way => way.Height(sheet) <= PageHeight) ?? Ways[^1];

    /// <summary>Whether a caution stands in full.</summary>
    public bool IsInFull(BrewSheetCaution caution) => caution.IsGrave || HasAllCautions;

    private double Height(BrewSheet sheet)
    {
        double em = Points[Size - 1] * SheetRoom.MillimetresPerPoint;
        double ems = (2.2 * SheetRoom.LineEms * SheetRoom.Lines(sheet.Name, PageWidth / 2, em * 2.2)) + 1
            + sheet.Allergens.Sum(sentence => SheetRoom.Paragraph(sentence, PageWidth, em)) + 2
            + sheet.Steps.Sum(step => StepEms(step, em))
            + Math.Max(ListEms(sheet.Mends, sheet.MendsAside, em), ListEms(sheet.Later, "", em)) + 0.5
            + CautionEms(sheet.LaterCautions, PageWidth, em) + SheetRoom.Paragraph(Marks(sheet.LaterCautions), PageWidth, em)
            + (HasNotes && sheet.Notes.Length > 0 ? 0.5 + sheet.Notes.Split('\n').Sum(line => SheetRoom.Paragraph(line, PageWidth, em)) : 0);
        return ems * em;
    }

    private double StepEms(BrewSheetStep step, double em)
    {
        double width = step.Blanks.Count > 0 ? DoWidth : WideWidth;
        double doing = SheetRoom.Paragraph($"{step.Title}  {step.Say}{Marks(step.Cautions)}", width, em) + CautionEms(step.Cautions, width, em);
        if (step.Items.Count > 0)
        {
            doing += SheetRoom.Paragraph(string.Concat(step.Items.Select(item => $"{item.What} {item.Amount}       ")), width, em);
        }

        return Math.Max(doing, BlankEms * step.Blanks.Count) + BetweenSteps;
    }

    private double CautionEms(IReadOnlyList<BrewSheetCaution> cautions, double width, double em) =>
        cautions.Where(IsInFull).Sum(caution => SheetRoom.Paragraph($"{caution.Words.Mark}. {caution.Words.Message}", width - 3, em));

    private string Marks(IReadOnlyList<BrewSheetCaution> cautions) =>
        cautions.All(IsInFull) ? "" : $" Mind: {string.Join(" · ", cautions.Where(caution => !IsInFull(caution)).Select(caution => caution.Words.Mark))}.";

    private static double ListEms(IReadOnlyList<BrewSheetMend> rows, string aside, double em) => rows.Count == 0 ? 0
        : 2 + rows.Sum(row => SheetRoom.Paragraph($"{row.When}: {row.Do}", HalfWidth, em)) + (aside.Length > 0 ? SheetRoom.Paragraph(aside, HalfWidth, em * 0.85) : 0);
}
