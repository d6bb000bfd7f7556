using Gylebook.Forecast.Report;
using Gylebook.Pictures.Drawing;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Interchange.BeerJson;
using Gylebook.Recipes.Interchange.BeerXml;
using Gylebook.Recipes.Interchange.OpenFormats;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;
using Gylebook.Recipes.Lots;
using Gylebook.Site.Leaves;
using Gylebook.Site.Publications;

namespace Gylebook.Site.Folder;

/// <summary>A folder that any web host can serve: a page for each recipe, an index, a feed, and the engine that weighs recipes anew.</summary>
/// <param name="title">What the folder is called.</param>
/// <param name="address">Where it will be found, ending in a slash; null where nobody knows yet.</param>
public sealed class SiteFolder(string title, Uri? address)
{
    private static readonly (string File, string Words)[] OwnFiles =
    [
        (LeafFiles.Recipe, "the recipe's file"), (LeafFiles.Kit, "the kit's file"), (LeafFiles.BeerJson, "BeerJSON"), (LeafFiles.BeerXml, "BeerXML"), (LeafFiles.Text, "plain text"), (LeafFiles.Short, "plain text, short"),
    ];

    /// <summary>What an address must be, for people.</summary>
    public const string AddressWanted = "must be a whole web address, such as https://example.org/beer/";

    /// <summary>An address as somebody typed it, with a slash at its end; null where it is none of the web.</summary>
    public static Uri? AddressOf(string? typed) =>
        Uri.TryCreate(typed?.TrimEnd('/') + "/", UriKind.Absolute, out Uri? whole) && whole.Scheme.StartsWith("http", StringComparison.Ordinal) ? whole : null;

    /// <summary>Pages, index and feed of those publications; without the engine.</summary>
    /// <param name="publications">What is given out, in any order; no two share a slug.</param>
    /// <returns>The files; and what stands against a publication, each finding with its name before it: such a one gets no page.</returns>
    public (IReadOnlyList<SiteFile> Files, IReadOnlyList<Finding> Findings) Pages(IEnumerable<Publication> publications)
    {
        List<Leaf> leaves = [];
        List<Finding> findings = [];
        foreach (Publication publication in publications.OrderByDescending(one => one.Day).ThenBy(one => one.Slug, StringComparer.Ordinal))
        {
            (Leaf? leaf, IReadOnlyList<Finding> found) = Leaf.Of(publication);
            findings.AddRange(found.Where(finding => leaf is null || finding.Severity == Severity.Error).Select(finding => finding with { Message = $"{publication.Name}: {finding.Message}" }));
            if (leaf is not null)
            {
                leaves.Add(leaf);
            }
        }

        return (
        [
            SiteFile.Of(LeafFiles.Page, SiteIndex.Write(leaves, title)),
            SiteFile.Of("feed.xml", SiteFeed.Write(leaves, title, address)),
            SiteFile.Of(LeafFiles.Style, LeafHtml.StyleSheet),
            SiteFile.Of(LeafFiles.Script, LeafHtml.Script),
            SiteFile.Of(LeafFiles.Icon, LeafHtml.Icon),
            .. leaves.SelectMany(Of),
        ], findings);
    }

    private IEnumerable<SiteFile> Of(Leaf leaf)
    {
        Publication published = leaf.Published;
        Uri? page = address is null ? null : new Uri(address, $"{published.Slug}/");
        SiteFile File(string name, string text) => SiteFile.Of($"{published.Slug}/{name}", text);
        (string File, string Words, string Text)[] sheets = [.. leaf.Inputs.Larder.Sheets.Select(SheetOf)];
        yield return File(LeafFiles.Page, LeafHtml.Page(leaf, [.. OwnFiles, .. sheets.Select(sheet => (sheet.File, sheet.Words))], page));
        foreach ((string name, _, string text) in sheets)
        {
            yield return File(name, text);
        }

        yield return File(LeafFiles.Publication, PublicationFile.Write(published));
        yield return File(LeafFiles.Recipe, published.Files.Recipe);
        yield return File(LeafFiles.Kit, published.Files.Kit);
        yield return File(LeafFiles.BeerJson, OpenText(leaf, BeerJsonFile.Write));
        yield return File(LeafFiles.BeerXml, OpenText(leaf, BeerXmlFile.Write));
        yield return File(LeafFiles.Text, LeafText.Whole(leaf));
        yield return File(LeafFiles.Short, LeafText.Brief(leaf));
        if (leaf.Metric.Run is { } run)
        {
            yield return File(LeafFiles.Run, RunSvg.Wide(run, standalone: true));
        }
    }

    /// <summary>The recipe for other programs; its story goes where they have room for words.</summary>
    private static string OpenText(Leaf leaf, Func<Recipe, Larder, BrewedFigures?, string, WaterPlan?, (string Text, IReadOnlyList<Travel> Travels)> write) => write(
        leaf.Inputs.Recipe with { Notes = leaf.Inputs.Recipe.Story is { } story ? Story.Plain(story) : null, Story = null },
        leaf.Inputs.Larder, StatedFigures.Of(leaf.Forecast), leaf.Published.By, leaf.Inputs.Water).Text;

    /// <summary>A sheet where the command line seeks it, beside the recipe's file.</summary>
    private static (string File, string Words, string Text) SheetOf(LarderSheet sheet) =>
        ($"{(sheet is FoodSheet ? "foods" : "larder")}/{Uri.EscapeDataString(sheet.Id)}.json", $"the sheet of {sheet.Name}", LarderFile.Write(sheet));
}
