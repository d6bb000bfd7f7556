using Gylebook.Pictures.Drawing;
using Gylebook.Science.Data;

namespace Gylebook.Pictures.Sheets;

/// <summary>Writes a shopping list as an HTML page to print. No scripts, no style attributes, every text escaped.</summary>
public static class ShoppingSheetHtml
{
    /// <summary>How it looks.</summary>
    public static string StyleSheet { get; } = EmbeddedText.Of(typeof(ShoppingSheetHtml).Assembly, "sheets/shopping-sheet.css");

    /// <summary>A page of a site whose policy allows no style inside.</summary>
    /// <param name="sheet">The list.</param>
    /// <param name="styleAddress">Where <see cref="StyleSheet"/> is served.</param>
    /// <param name="iconAddress">Where the site's icon is served.</param>
    /// <param name="back">Where it came from.</param>
    public static string Page(ShoppingSheet sheet, string styleAddress, string iconAddress, string back)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        MarkupPen pen = new();
        SheetPaper.Begin(pen, $"{sheet.Name}, shopping list", StyleSheet, styleAddress, iconAddress, (back, "Back to the brew"));
        pen.Start("main", ("class", "sheet"));
        pen.Words("h1", $"For {sheet.Name}");
        Part(pen, "To buy", sheet.ToBuy);
        Part(pen, "Look whether you have it", sheet.ToLook);
        Part(pen, "At hand", sheet.AtHand);
        if (sheet.Cost.Length > 0)
        {
            pen.Words("p", sheet.Cost);
        }

        pen.Words("p", "Read the packets for allergens: they have the last word.");
        pen.End("main");
        SheetPaper.End(pen);
        return pen.ToString();
    }

    private static void Part(MarkupPen pen, string title, IReadOnlyList<ShoppingRow> rows)
    {
        if (rows.Count == 0)
        {
            return;
        }

        pen.Start("section");
        pen.Words("h2", title);
        pen.Start("table");
        foreach (ShoppingRow row in rows)
        {
            pen.Start("tr");
            pen.Start("td", ("class", "box"));
            pen.End("td");
            pen.Words("th", row.What, ("scope", "row"));
            pen.Words("td", row.Take, ("class", "amount"));
            pen.Words("td", row.Wanted.Length > 0 ? $"wanted {row.Wanted}" : "");
            pen.Words("td", row.Cost);
            pen.End("tr");
        }

        pen.End("table");
        pen.End("section");
    }
}
