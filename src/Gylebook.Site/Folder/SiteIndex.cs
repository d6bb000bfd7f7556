using Gylebook.Pictures.Drawing;
using Gylebook.Site.Leaves;

namespace Gylebook.Site.Folder;

/// <summary>The first page of a published folder: all recipes in it.</summary>
internal static class SiteIndex
{
    /// <summary>The page.</summary>
    public static string Write(IReadOnlyList<Leaf> leaves, string title)
    {
        MarkupPen pen = new();
        LeafHtml.Begin(pen, title, "", ("description", $"Beer recipes: {string.Join(", ", leaves.Select(leaf => leaf.Published.Name))}"));
        pen.End("head");
        pen.Start("body");
        pen.Start("main", ("class", "sheet"));
        pen.Words("h1", title);
        pen.Start("ul", ("class", "list"));
        foreach (Leaf leaf in leaves)
        {
            pen.Start("li");
            pen.Words("a", leaf.Published.Name, ("href", $"{leaf.Published.Slug}/"));
            pen.Words("p", string.Join(" · ", leaf.Metric.Figures.Select(figure => figure.Value)));
            pen.Words("p", $"Given out {LeafHtml.Told(leaf.Published.Day)}{(leaf.Published.Errata.Count > 0 ? "; put right since" : "")}", ("class", "small"));
            pen.End("li");
        }

        pen.End("ul");
        pen.Start("p");
        pen.Words("a", "Follow with a feed reader", ("href", "feed.xml"));
        pen.End("p");
        pen.End("main");
        pen.End("body");
        pen.End("html");
        return pen.ToString();
    }
}
