using System.Text;
using Gylebook.Recipes.Interchange.BeerJson;
using Gylebook.Recipes.Interchange.BeerXml;
using Gylebook.Recipes.Interchange.OpenFormats.Tables;
using Gylebook.Tests.Shared;

namespace Gylebook.Recipes.Tests.Interchange.OpenFormats;

/// <summary>The guide's tables of what goes where are those that read and write.</summary>
public sealed class OpenFormatsPageTests
{
    private const string Begin = "<!-- tables: written by OpenFormatsPageTests, GYLEBOOK_APPROVE=1 writes them anew -->\n";
    private const string End = "<!-- end of tables -->";

    [Fact]
    public void The_tables_of_the_guide_are_those_of_the_code()
    {
        string path = RepositoryFile.PathOf("docs/guide/open-formats.md");
        string page = File.ReadAllText(path);
        int from = page.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length, to = page.IndexOf(End, StringComparison.Ordinal);
        Assert.True(from >= Begin.Length && to >= from, "The guide has no place for the tables.");
        string tables = Tables("BeerJSON", BeerJsonForms.Tables) + Tables("BeerXML", BeerXmlForms.Tables);
        if (Environment.GetEnvironmentVariable("GYLEBOOK_APPROVE") == "1")
        {
            File.WriteAllText(path, page[..from] + tables + page[to..]);
            return;
        }

        Assert.Equal(tables, page[from..to]);
    }

    private static string Tables(string standard, IReadOnlyList<(string Of, IReadOnlyList<OpenField> Fields)> tables)
    {
        StringBuilder text = new($"\n### {standard}\n");
        foreach ((string of, IReadOnlyList<OpenField> fields) in tables)
        {
            text.Append($"\n**{of}**\n\n| There | Here | To know |\n|---|---|---|\n");
            foreach (OpenField field in fields.Where(field => field.Home.Length > 0))
            {
                text.Append($"| `{field.Key}` | {field.Home} | {field.Why} |\n");
            }

            foreach (IGrouping<string, OpenField> left in fields.Where(field => field.Home.Length == 0).GroupBy(field => field.Why))
            {
                text.Append($"| {string.Join(", ", left.Select(field => $"`{field.Key}`"))} | | {left.Key} |\n");
            }
        }

        return text.Append('\n').ToString();
    }
}
