using System.Text;
using System.Xml;
using Gylebook.Site.Leaves;

namespace Gylebook.Site.Folder;

/// <summary>The feed that followers subscribe to: Atom (RFC 4287).</summary>
internal static class SiteFeed
{
    private const string Atom = "http://www.w3.org/2005/Atom";

    /// <summary>The feed of those recipes.</summary>
    /// <param name="leaves">The recipes, the newest first.</param>
    /// <param name="title">What the folder is called.</param>
    /// <param name="address">Where the folder will be found; null where nobody knows yet, and links are relative.</param>
    public static string Write(IReadOnlyList<Leaf> leaves, string title, Uri? address)
    {
        StringBuilder text = new();
        using (XmlWriter pen = XmlWriter.Create(text, new XmlWriterSettings { Indent = true, NewLineChars = "\n", OmitXmlDeclaration = true }))
        {
            pen.WriteStartElement("feed", Atom);
            pen.WriteElementString("title", Atom, title);
            pen.WriteElementString("id", Atom, address?.AbsoluteUri ?? IdOf(title));
            pen.WriteElementString("updated", Atom, At(leaves.Select(UpdatedOf).DefaultIfEmpty(DateOnly.MinValue).Max()));
            Link(pen, "self", address is null ? "feed.xml" : new Uri(address, "feed.xml").AbsoluteUri);
            foreach (Leaf leaf in leaves)
            {
                Entry(pen, leaf, title, address);
            }

            pen.WriteEndElement();
        }

        return "<?xml version=\"1.0\" encoding=\"utf-8\"?>\n" + text + "\n";
    }

    private static void Entry(XmlWriter pen, Leaf leaf, string title, Uri? address)
    {
        string page = $"{leaf.Published.Slug}/";
        pen.WriteStartElement("entry", Atom);
        pen.WriteElementString("title", Atom, leaf.Published.Name);
        pen.WriteElementString("id", Atom, address is null ? IdOf(leaf.Published.Slug) : new Uri(address, page).AbsoluteUri);
        pen.WriteElementString("published", Atom, At(leaf.Published.Day));
        pen.WriteElementString("updated", Atom, At(UpdatedOf(leaf)));
        pen.WriteStartElement("author", Atom);
        pen.WriteElementString("name", Atom, leaf.Published.By.Length > 0 ? leaf.Published.By : title);
        pen.WriteEndElement();
        Link(pen, "alternate", address is null ? page : new Uri(address, page).AbsoluteUri);
        pen.WriteElementString("summary", Atom, LeafText.OneLine(leaf));
        pen.WriteEndElement();
    }

    private static void Link(XmlWriter pen, string relation, string to)
    {
        pen.WriteStartElement("link", Atom);
        pen.WriteAttributeString("rel", relation);
        pen.WriteAttributeString("href", to);
        pen.WriteEndElement();
    }

    private static DateOnly UpdatedOf(Leaf leaf) => leaf.Published.Errata.Select(erratum => erratum.Day).Append(leaf.Published.Day).Max();

    private static string At(DateOnly day) => day.ToString("yyyy-MM-dd'T00:00:00Z'", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>An id that needs no address: made of a name, the same at every writing.</summary>
    private static string IdOf(string name) => $"urn:uuid:{new Guid(System.Security.Cryptography.SHA256.HashData(Encoding.UTF8.GetBytes("gylebook:" + name)).AsSpan(0, 16))}";
}
