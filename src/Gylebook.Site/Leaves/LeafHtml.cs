using System.Globalization;
using Gylebook.Pictures.Drawing;
using Gylebook.Site.Publications;
using Gylebook.Science.Data;

namespace Gylebook.Site.Leaves;

/// <summary>Writes a published recipe as a page that is whole without scripts, asks no other host for anything, and prints.</summary>
public static class LeafHtml
{
    /// <summary>What every page is allowed: its own files, and WebAssembly where a script may run.</summary>
    public const string Policy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'self'";

    /// <summary>How pages look.</summary>
    public static string StyleSheet { get; } = EmbeddedText.Of(typeof(LeafHtml).Assembly, "leaves/leaf.css");

    /// <summary>What weighs anew on the page.</summary>
    public static string Script { get; } = EmbeddedText.Of(typeof(LeafHtml).Assembly, "leaves/leaf.js");

    /// <summary>The icon of all pages.</summary>
    public static string Icon { get; } = EmbeddedText.Of(typeof(LeafHtml).Assembly, "leaves/gylebook.svg");

    /// <summary>The page.</summary>
    /// <param name="leaf">What it tells.</param>
    /// <param name="downloads">Files beside it to take along: their names, and what they are.</param>
    /// <param name="address">Where the page will be found, ending in a slash; null where nobody knows yet.</param>
    public static string Page(Leaf leaf, IReadOnlyList<(string File, string Words)> downloads, Uri? address)
    {
        ArgumentNullException.ThrowIfNull(leaf);
        MarkupPen pen = new();
        Head(pen, leaf, address);
        pen.Start("body");
        pen.Start("main", ("class", "sheet"));
        LeafSections sections = new(pen, leaf);
        sections.Mast();
        sections.Words();
        sections.Errata();
        sections.Glance();
        sections.Allergens();
        pen.Start("div", ("class", "cols"));
        pen.Start("div");
        sections.Goods();
        sections.Steps();
        pen.End("div");
        pen.Start("aside");
        sections.Run();
        sections.HowSure();
        sections.Measured();
        pen.End("aside");
        pen.End("div");
        KitPanel.Write(pen, leaf);
        Downloads(pen, downloads);
        pen.Words("p", "For adults. Making and selling beer at home is ruled by local law, and what stands on vessels, gas bottles and packets has the last word.", ("class", "law"));
        pen.End("main");
        pen.End("body");
        pen.End("html");
        return pen.ToString();
    }

    /// <summary>The head of any page of the folder.</summary>
    internal static void Begin(MarkupPen pen, string title, string root, params (string Name, string Content)[] told)
    {
        pen.Raw("<!DOCTYPE html>\n");
        pen.Start("html", ("lang", "en"));
        pen.Start("head");
        pen.Element("meta", ("charset", "utf-8"));
        pen.Element("meta", ("http-equiv", "Content-Security-Policy"), ("content", Policy));
        pen.Element("meta", ("name", "viewport"), ("content", "width=device-width, initial-scale=1"));
        pen.Element("meta", ("name", "referrer"), ("content", "no-referrer"));
        pen.Words("title", title);
        foreach ((string name, string content) in told)
        {
            pen.Element("meta", (name.StartsWith("og:", StringComparison.Ordinal) ? "property" : "name", name), ("content", content));
        }

        pen.Element("link", ("rel", "icon"), ("type", "image/svg+xml"), ("href", root + LeafFiles.Icon));
        pen.Element("link", ("rel", "stylesheet"), ("href", root + LeafFiles.Style));
        pen.Element("link", ("rel", "alternate"), ("type", "application/atom+xml"), ("title", "New recipes"), ("href", root + "feed.xml"));
    }

    private static void Head(MarkupPen pen, Leaf leaf, Uri? address)
    {
        Publication published = leaf.Published;
        string about = LeafText.OneLine(leaf);
        Begin(
            pen, published.By.Length > 0 ? $"{published.Name}, a recipe by {published.By}" : $"{published.Name}, a recipe", "../",
            ("description", about), ("og:type", "article"), ("og:title", published.Name), ("og:description", about));
        if (address is not null)
        {
            pen.Element("meta", ("property", "og:url"), ("content", address.AbsoluteUri));
            pen.Element("meta", ("property", "og:image"), ("content", new Uri(address, LeafFiles.Run).AbsoluteUri));
            pen.Element("link", ("rel", "canonical"), ("href", address.AbsoluteUri));
        }

        pen.Element("link", ("rel", "alternate"), ("type", "application/json"), ("title", "BeerJSON"), ("href", LeafFiles.BeerJson));
        pen.Raw($"<script type=\"application/ld+json\">{LeafJsonLd.Write(leaf, address)}</script>\n");
        pen.Raw($"<script type=\"module\" src=\"../{LeafFiles.Script}\"></script>\n");
        pen.End("head");
    }

    private static void Downloads(MarkupPen pen, IReadOnlyList<(string File, string Words)> downloads)
    {
        pen.Start("section", ("class", "down noprint"), ("aria-label", "Take it with you"));
        pen.Words("b", "Take it with you:");
        foreach ((string file, string words) in downloads)
        {
            pen.Words("a", words, ("href", file), ("download", ""));
        }

        pen.End("section");
    }

    /// <summary>A day as people write it.</summary>
    internal static string Told(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
}
