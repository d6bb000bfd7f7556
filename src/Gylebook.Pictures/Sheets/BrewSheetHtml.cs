using Gylebook.Pictures.Drawing;
using Gylebook.Science.Data;

namespace Gylebook.Pictures.Sheets;

/// <summary>Writes a brew-day sheet as an HTML page that any browser prints on one page of A4. No scripts, no style attributes, every text escaped.</summary>
public static class BrewSheetHtml
{
    /// <summary>How it looks: on a screen, on a telephone, on paper.</summary>
    public static string StyleSheet { get; } = EmbeddedText.Of(typeof(BrewSheetHtml).Assembly, "sheets/brew-sheet.css");

    /// <summary>A file of its own, the style sheet inside.</summary>
    public static string File(BrewSheet sheet) => Written(sheet, null, null, null);

    /// <summary>A page of a site whose policy allows no style inside.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="styleAddress">Where <see cref="StyleSheet"/> is served.</param>
    /// <param name="iconAddress">Where the site's icon is served.</param>
    /// <param name="back">Where the gyle is.</param>
    public static string Page(BrewSheet sheet, string styleAddress, string iconAddress, string back) => Written(sheet, styleAddress, iconAddress, back);

    private static string Written(BrewSheet sheet, string? styleAddress, string? iconAddress, string? back)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        BrewSheetRoom room = BrewSheetRoom.For(sheet);
        MarkupPen pen = new();
        SheetPaper.Begin(pen, $"{sheet.Name}, brew-day sheet", StyleSheet, styleAddress, iconAddress, back is null ? null : (back, "Back to the gyle"));
        pen.Start("main", ("class", Invariant($"sheet size-{room.Size}")));
        Mast(pen, sheet);
        pen.Start("table");
        Head(pen);
        pen.Start("tbody");
        foreach ((int number, BrewSheetStep step) in sheet.Steps.Index())
        {
            Step(pen, number + 1, step, room);
        }

        pen.End("tbody");
        pen.End("table");
        Foot(pen, sheet, room);
        pen.End("main");
        SheetPaper.End(pen);
        return pen.ToString();
    }

    private static void Mast(MarkupPen pen, BrewSheet sheet)
    {
        pen.Start("header", ("class", "mast"));
        pen.Words("h1", sheet.Name);
        pen.Words("p", sheet.Under);
        pen.End("header");
        foreach (string sentence in sheet.Allergens)
        {
            pen.Words("p", sentence, ("class", "allergens"));
        }
    }

    private static void Head(MarkupPen pen)
    {
        pen.Start("thead");
        pen.Start("tr");
        foreach (string title in (string[])["Step", "Clock", "Do", "Read (plan)"])
        {
            pen.Words("th", title, ("scope", "col"));
        }

        pen.End("tr");
        pen.End("thead");
    }

    private static void Step(MarkupPen pen, int number, BrewSheetStep step, BrewSheetRoom room)
    {
        pen.Start("tr");
        pen.Start("td", ("class", "no"));
        Box(pen);
        pen.Words("span", Invariant($"{number}"));
        pen.End("td");
        pen.Words("td", "", ("class", "clock"));
        pen.Start("td", ("colspan", step.Blanks.Count > 0 ? "1" : "2"));
        pen.Start("p");
        pen.Words("b", step.Title, ("class", "title"));
        pen.Words("span", step.Say);
        Marks(pen, step.Cautions, room);
        pen.End("p");
        if (step.Items.Count > 0)
        {
            pen.Start("ul", ("class", "items"));
            foreach (BrewSheetItem item in step.Items)
            {
                pen.Start("li");
                Box(pen);
                pen.Words("span", item.What);
                pen.Words("b", item.Amount);
                pen.End("li");
            }

            pen.End("ul");
        }

        InFull(pen, step.Cautions, room);
        pen.End("td");
        if (step.Blanks.Count > 0)
        {
            Blanks(pen, step.Blanks);
        }

        pen.End("tr");
    }

    private static void Blanks(MarkupPen pen, IReadOnlyList<BrewSheetBlank> blanks)
    {
        pen.Start("td", ("class", "read"));
        foreach (BrewSheetBlank blank in blanks)
        {
            pen.Start("p");
            pen.Words("span", blank.Planned.Length > 0 ? $"{blank.What} ({blank.Planned})" : blank.What);
            pen.Words("i", "");
            pen.End("p");
        }

        pen.End("td");
    }

    /// <summary>Grave ones always, the others where there is room.</summary>
    private static void InFull(MarkupPen pen, IReadOnlyList<BrewSheetCaution> cautions, BrewSheetRoom room)
    {
        foreach (BrewSheetCaution caution in cautions.Where(room.IsInFull))
        {
            SheetPaper.Grave(pen, caution.Words);
        }
    }

    /// <summary>The rest in two or three words each.</summary>
    private static void Marks(MarkupPen pen, IReadOnlyList<BrewSheetCaution> cautions, BrewSheetRoom room)
    {
        string[] marks = [.. cautions.Where(caution => !room.IsInFull(caution)).Select(caution => caution.Words.Mark).Distinct()];
        if (marks.Length > 0)
        {
            pen.Words("b", $"Mind: {string.Join(" · ", marks)}.", ("class", "marks"));
        }
    }

    private static void Foot(MarkupPen pen, BrewSheet sheet, BrewSheetRoom room)
    {
        pen.Start("div", ("class", "after"));
        List(pen, "A point off", sheet.Mends, sheet.MendsAside);
        List(pen, "After today", sheet.Later, "");
        pen.End("div");
        InFull(pen, sheet.LaterCautions, room);
        pen.Start("p");
        Marks(pen, sheet.LaterCautions, room);
        pen.End("p");
        if (room.HasNotes && sheet.Notes.Length > 0)
        {
            pen.Words("p", sheet.Notes, ("class", "notes"));
        }
    }

    private static void List(MarkupPen pen, string title, IReadOnlyList<BrewSheetMend> rows, string aside)
    {
        if (rows.Count == 0)
        {
            return;
        }

        pen.Start("section");
        pen.Words("h2", title);
        foreach (BrewSheetMend row in rows)
        {
            pen.Start("p");
            pen.Words("b", row.When + ":");
            pen.Words("span", row.Do);
            pen.End("p");
        }

        if (aside.Length > 0)
        {
            pen.Words("p", aside, ("class", "aside"));
        }

        pen.End("section");
    }

    private static void Box(MarkupPen pen) => pen.Words("i", "", ("class", "box"));
}
