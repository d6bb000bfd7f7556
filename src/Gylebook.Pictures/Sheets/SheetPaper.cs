using Gylebook.Pictures.Drawing;

namespace Gylebook.Pictures.Sheets;

/// <summary>What every sheet to print is written on: a page without scripts, its style inside or beside it, and on a screen the way back.</summary>
internal static class SheetPaper
{
    /// <summary>Opens the page.</summary>
    /// <param name="pen">What writes.</param>
    /// <param name="title">What the browser calls it.</param>
    /// <param name="style">The sheet's own style sheet.</param>
    /// <param name="styleAddress">Where that is served; null to put it inside.</param>
    /// <param name="iconAddress">Where the site's icon is served; null for none.</param>
    /// <param name="back">Where it leads back to, and in what words; null for nowhere.</param>
    public static void Begin(MarkupPen pen, string title, string style, string? styleAddress, string? iconAddress, (string Address, string Words)? back)
    {
        pen.Raw("<!DOCTYPE html>\n");
        pen.Start("html", ("lang", "en"));
        pen.Start("head");
        pen.Element("meta", ("charset", "utf-8"));
        pen.Element("meta", ("name", "viewport"), ("content", "width=device-width, initial-scale=1"));
        pen.Words("title", title);
        if (iconAddress is not null)
        {
            pen.Element("link", ("rel", "icon"), ("type", "image/svg+xml"), ("href", iconAddress));
        }

        if (styleAddress is not null)
        {
            pen.Element("link", ("rel", "stylesheet"), ("href", styleAddress));
        }
        else
        {
            pen.Raw($"<style>\n{style}</style>\n");
        }

        pen.End("head");
        pen.Start("body");
        if (back is { } way)
        {
            pen.Start("nav", ("aria-label", "Away from the sheet"));
            pen.Words("a", way.Words, ("href", way.Address));
            pen.Words("p", "Your browser prints this sheet on one page of A4.");
            pen.End("nav");
        }
    }

    /// <summary>A caution that is read in full.</summary>
    public static void Grave(MarkupPen pen, SheetCaution caution)
    {
        pen.Start("p", ("class", "grave"));
        pen.Words("b", caution.Mark + ".");
        pen.Words("span", caution.Message);
        pen.End("p");
    }

    /// <summary>Closes the page.</summary>
    public static void End(MarkupPen pen)
    {
        pen.End("body");
        pen.End("html");
    }
}
