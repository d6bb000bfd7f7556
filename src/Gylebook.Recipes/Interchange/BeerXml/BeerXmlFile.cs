using System.Text;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Interchange.OpenFormats.Arriving.Books;
using Gylebook.Recipes.Interchange.OpenFormats;
using Gylebook.Recipes.Interchange.OpenFormats.Arriving;
using Gylebook.Recipes.Interchange.OpenFormats.Leaving;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Interchange.OpenFormats.Tables;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;

namespace Gylebook.Recipes.Interchange.BeerXml;

/// <summary>BeerXML 1.0, in and out; see <c>docs/guide/open-formats.md</c>.</summary>
public static class BeerXmlFile
{
    /// <summary>What the standard is called.</summary>
    public const string Standard = "BeerXML 1.0";

    /// <summary>The recipe as a BeerXML document, and what does not travel as it stands.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="larder">Where its lines are looked up before the tables.</param>
    /// <param name="figures">What it comes to on a kit; null when nobody has reckoned it.</param>
    /// <param name="author">Whose it is; empty for nobody's.</param>
    /// <param name="water">The water it is brewed with; null when nobody planned it.</param>
    public static (string Text, IReadOnlyList<Travel> Travels) Write(Recipe recipe, Larder larder, BrewedFigures? figures = null, string author = "", WaterPlan? water = null)
    {
        TravelList travels = new();
        OpenRecipe open = LeavingRecipe.Of(recipe, larder, figures, author, water, travels);
        XmlRecipe xml = BeerXmlRecipes.Leave(open, figures, travels);
        xml = xml with { Open = xml.Open with { Notes = OpenNotes.With(recipe.Notes, travels.All) } };
        ObjectNode record = (ObjectNode)BeerXmlForms.Recipe.Write(xml, new OpenCursor("RECIPES[0]", travels));
        // Where the standard wants its style; it stands behind the type.
        ObjectNode whole = record.Inserted(record.Pairs.ToList().FindIndex(pair => pair.Key == "TYPE") + 1, "STYLE", BeerXmlForms.Style);
        return (XmlText.Write("RECIPES", [whole], travels), travels.All);
    }

    /// <summary>What a BeerXML document becomes here.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="wishes">What is known here that the file does not say; null for nothing.</param>
    public static Arrival Read(ReadOnlyMemory<byte> bytes, ArrivalWishes? wishes = null)
    {
        FindingList findings = new();
        TravelList travels = new();
        if (bytes.Length > FileInHand.MostBytes)
        {
            NodeText.TooLarge(bytes.Length, findings);
        }
        else if (XmlNodes.Read(XmlEncoding.Text(bytes.Span, travels), travels, findings) is { } file && Sets(file, travels, findings) is { } sets)
        {
            BeerXmlForms.Book.TryRead(sets, new OpenCursor("", travels), out XmlBook xml);
            OpenBook book = BeerXmlRecipes.Arrive(xml, travels);
            IReadOnlyList<ArrivedFile> files = LandedBook.Files(book, new Landing(travels, wishes ?? new ArrivalWishes()));
            return new Arrival { Standard = Standard, Files = files, Travels = [.. travels.All.Select(travel => travel with { Where = BeerXmlTags.Path(travel.Where) })] };
        }

        return new Arrival { Standard = Standard, Findings = findings.All };
    }

    /// <summary>Whether a file begins as XML does.</summary>
    internal static bool Is(ReadOnlySpan<byte> bytes)
    {
        ReadOnlySpan<byte> text = bytes.StartsWith(Encoding.UTF8.Preamble) ? bytes[Encoding.UTF8.Preamble.Length..] : bytes;
        return text.TrimStart(" \t\r\n"u8).StartsWith("<"u8) || bytes is [0xFF, 0xFE, (byte)'<', 0, ..] or [0xFE, 0xFF, 0, (byte)'<', ..];
    }

    /// <summary>The sets of a document: records without one are put into theirs.</summary>
    private static ObjectNode? Sets(ObjectNode file, TravelList travels, FindingList findings)
    {
        List<KeyValuePair<string, Node>> sets = [];
        foreach ((string tag, Node value) in file.Pairs)
        {
            if (BeerXmlTags.SetOf.TryGetValue(tag, out string? set) && value is ObjectNode)
            {
                travels.Repair(tag, $"a {tag} alone; read as if it stood in {set}");
                sets.Add(new(set, new ListNode([value])));
            }
            else
            {
                sets.Add(new(tag, value));
            }
        }

        if (sets.Exists(set => BeerXmlTags.Sets.ContainsKey(set.Key)))
        {
            return new ObjectNode([.. sets]);
        }

        string wanted = string.Join(", ", BeerXmlTags.Sets.Keys.Where(tag => tag != "MASH_STEPS").Order(StringComparer.Ordinal));
        string found = string.Join(", ", file.Pairs.Take(5).Select(pair => FindingList.Shorten(pair.Key)));
        findings.Error("beerxml.root", "", $"a BeerXML document holds sets of records, {wanted}; this one has {(found.Length > 0 ? found : "nothing")}", found, wanted);
        return null;
    }
}
