using Gylebook.Pictures.Drawing;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Science.Data;

namespace Gylebook.Pictures.Sheets;

/// <summary>Writes a recipe's sheet as an HTML page that any browser prints on one page of A4. No scripts, no style attributes, every text escaped.</summary>
public static class RecipeSheetHtml
{
    /// <summary>How it looks: on a screen, on a telephone, on paper.</summary>
    public static string StyleSheet { get; } = EmbeddedText.Of(typeof(RecipeSheetHtml).Assembly, "sheets/recipe-sheet.css");

    /// <summary>A file of its own, the style sheet inside.</summary>
    public static string File(RecipeSheet sheet) => Written(sheet, null, null, null);

    /// <summary>A page of a site whose policy allows no style inside.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="styleAddress">Where <see cref="StyleSheet"/> is served.</param>
    /// <param name="iconAddress">Where the site's icon is served; a browser that is told of none asks for one that is not there.</param>
    /// <param name="back">Where the recipe is.</param>
    public static string Page(RecipeSheet sheet, string styleAddress, string iconAddress, string back) => Written(sheet, styleAddress, iconAddress, back);

    private static string Written(RecipeSheet sheet, string? styleAddress, string? iconAddress, string? back)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        SheetRoom room = SheetRoom.For(sheet);
        MarkupPen pen = new();
        SheetPaper.Begin(pen, $"{sheet.Name}, recipe sheet", StyleSheet, styleAddress, iconAddress, back is null ? null : (back, "Back to the recipe"));
        pen.Start("main", ("class", Invariant($"sheet size-{room.Size}")));
        Mast(pen, sheet);
        pen.Start("div", ("class", "columns"));
        pen.Start("div", ("class", "goes-in"));
        foreach (SheetPart part in sheet.Parts)
        {
            Part(pen, part);
        }

        pen.End("div");
        Beside(pen, sheet);
        pen.End("div");
        Foot(pen, sheet, room);
        pen.End("main");
        SheetPaper.End(pen);
        return pen.ToString();
    }

    private static void Mast(MarkupPen pen, RecipeSheet sheet)
    {
        pen.Start("header", ("class", "mast"));
        pen.Words("h1", sheet.Name);
        pen.Words("p", sheet.Kit.Length > 0 ? $"for the kit {sheet.Kit}" : "");
        pen.End("header");
        if (sheet.Problems.Any())
        {
            pen.Start("ul", ("class", "problems"), ("aria-label", "Why it cannot be brewed as it is"));
            foreach (Finding problem in sheet.Problems)
            {
                pen.Words("li", problem.Where.Length > 0 ? $"{PlaceWords.Of(problem.Where)}: {problem.Message}" : problem.Message);
            }

            pen.End("ul");
        }

        if (sheet.Figures.Count > 0)
        {
            pen.Start("dl", ("class", "figures"));
            foreach (SheetFigure figure in sheet.Figures)
            {
                pen.Start("div");
                pen.Words("dt", figure.Title);
                pen.Words("dd", figure.Value, ("class", "value"));
                if (figure.Ends.Length > 0)
                {
                    pen.Words("dd", figure.Ends, ("class", "ends"));
                }

                pen.End("div");
            }

            pen.End("dl");
        }

        foreach (string sentence in sheet.Allergens)
        {
            pen.Words("p", sentence, ("class", "allergens"));
        }
    }

    private static void Part(MarkupPen pen, SheetPart part)
    {
        pen.Start("section");
        pen.Start("div", ("class", "head"));
        pen.Words("h2", part.Name);
        pen.Words("p", part.Aside);
        pen.End("div");
        if (part.Rows.Count > 0)
        {
            pen.Start("table");
            foreach (SheetRow row in part.Rows)
            {
                pen.Start("tr");
                pen.Words("th", row.What, ("scope", "row"));
                pen.Words("td", row.When);
                pen.Words("td", row.Amount, ("class", "amount"));
                pen.Words("td", row.Brings, ("class", "brings"));
                pen.End("tr");
            }

            pen.End("table");
        }

        foreach (SheetCaution caution in part.Cautions)
        {
            SheetPaper.Grave(pen, caution);
        }

        pen.End("section");
    }

    private static void Beside(MarkupPen pen, RecipeSheet sheet)
    {
        pen.Start("div", ("class", "beside"));
        if (sheet.Run is { } run)
        {
            pen.Raw(RunSvg.Narrow(run));
        }

        pen.Start("section", ("class", "next"));
        pen.Words("h2", "Next time");
        pen.Words("div", "", ("class", "lines"));
        pen.End("section");
        pen.End("div");
    }

    private static void Foot(MarkupPen pen, RecipeSheet sheet, SheetRoom room)
    {
        if (room.HasNotes && sheet.Notes.Length > 0)
        {
            pen.Words("p", sheet.Notes, ("class", "notes"));
        }

        if (sheet.Marks.Count > 0)
        {
            pen.Start("footer");
            pen.Words("b", "Also:");
            pen.Words("span", string.Join(" · ", sheet.Marks));
            pen.End("footer");
        }
    }
}
