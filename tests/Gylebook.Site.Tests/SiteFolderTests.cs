using System.Text;
using System.Xml.Linq;
using Gylebook.Recipes;
using Gylebook.Site.Folder;
using Gylebook.Site.Publications;

namespace Gylebook.Site.Tests;

/// <summary>The folder: an index, a feed that readers of feeds can read, and each page with its files.</summary>
public sealed class SiteFolderTests
{
    private static readonly XNamespace Atom = "http://www.w3.org/2005/Atom";

    [Fact]
    public void Every_link_of_index_and_page_leads_to_a_file_of_the_folder()
    {
        Dictionary<string, string> files = Files(null, Given.Of("plain-bitter"), Given.Of("hedgerow-brown"));
        foreach (string page in new[] { "index.html", "plain-bitter/index.html", "hedgerow-brown/index.html" })
        {
            foreach (System.Text.RegularExpressions.Match link in System.Text.RegularExpressions.Regex.Matches(files[page], "(?:href|src)=\"([^\"#]+)\""))
            {
                Uri to = new(new Uri("http://host/" + page), System.Net.WebUtility.HtmlDecode(link.Groups[1].Value));
                string path = to.AbsolutePath.TrimStart('/');
                Assert.Contains(path.Length == 0 || path.EndsWith('/') ? path + "index.html" : path, files.Keys);
            }
        }
    }

    /// <summary>Source: RFC 4287 §4.1: what a feed and an entry must have.</summary>
    [Theory]
    [InlineData(null)]
    [InlineData("https://example.org/beer/")]
    public void The_feed_has_all_that_Atom_wants(string? address)
    {
        Publication older = Given.Of("plain-bitter"), newer = Given.Of("hedgerow-brown") with { Day = Given.Day.AddDays(3), Errata = [new(Given.Day.AddDays(9), 3, "More water.")] };
        Dictionary<string, string> files = Files(address is null ? null : new Uri(address), older, newer);
        XElement feed = XDocument.Parse(files["feed.xml"]).Root!;
        Assert.Equal(Atom + "feed", feed.Name);
        XElement[] entries = [.. feed.Elements(Atom + "entry")];
        Assert.Equal(["Hedgerow Brown", "Plain Bitter"], entries.Select(entry => entry.Element(Atom + "title")!.Value));
        Assert.Equal("2027-03-10T00:00:00Z", feed.Element(Atom + "updated")!.Value);
        Assert.Equal("2027-03-10T00:00:00Z", entries[0].Element(Atom + "updated")!.Value);
        foreach (XElement part in entries.Prepend(feed))
        {
            Assert.True(Uri.TryCreate(part.Element(Atom + "id")!.Value, UriKind.Absolute, out _));
            Assert.NotNull(part.Element(Atom + "link")!.Attribute("href"));
        }

        Assert.All(entries, entry => Assert.NotNull(entry.Element(Atom + "author")!.Element(Atom + "name")));
        Assert.Equal(entries.Length + 1, entries.Select(entry => entry.Element(Atom + "id")!.Value).Append(feed.Element(Atom + "id")!.Value).Distinct().Count());
        Assert.Equal(address is null ? "hedgerow-brown/" : address + "hedgerow-brown/", entries[0].Element(Atom + "link")!.Attribute("href")!.Value);
    }

    [Fact]
    public void The_same_is_written_every_time()
    {
        Dictionary<string, string> once = Files(null, Given.Of("hedgerow-brown")), again = Files(null, Given.Of("hedgerow-brown"));
        Assert.Equal(once, again);
    }

    [Fact]
    public void What_cannot_be_brewed_gets_no_page_and_a_reason()
    {
        Publication wrong = Given.Of("plain-bitter", recipe => recipe with { Package = recipe.Package with { In = "bucket" } });
        (IReadOnlyList<SiteFile> files, IReadOnlyList<Finding> findings) = new SiteFolder("Recipes", null).Pages([wrong, Given.Of("hedgerow-brown")]);
        Assert.DoesNotContain(files, file => file.Path.StartsWith("plain-bitter/", StringComparison.Ordinal));
        Assert.Contains(findings, finding => finding.Severity == Severity.Error && finding.Message.StartsWith("Plain Bitter: ", StringComparison.Ordinal));
        Assert.Contains(files, file => file.Path == "hedgerow-brown/index.html");
    }

    private static Dictionary<string, string> Files(Uri? address, params Publication[] publications)
    {
        (IReadOnlyList<SiteFile> files, IReadOnlyList<Finding> findings) = new SiteFolder("Lantern Shed", address).Pages(publications);
        Assert.DoesNotContain(findings, finding => finding.Severity == Severity.Error);
        return files.ToDictionary(file => file.Path, file => Encoding.UTF8.GetString(file.Bytes.Span));
    }
}
