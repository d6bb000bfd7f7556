using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Interchange.OpenFormats.Arriving.Books;
using Gylebook.Recipes.Interchange.OpenFormats;
using Gylebook.Recipes.Interchange.OpenFormats.Arriving;
using Gylebook.Recipes.Interchange.OpenFormats.Leaving;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Interchange.OpenFormats.Tables;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;

namespace Gylebook.Recipes.Interchange.BeerJson;

/// <summary>BeerJSON 1.0, in and out; see <c>docs/guide/open-formats.md</c>.</summary>
public static class BeerJsonFile
{
    /// <summary>What the standard is called.</summary>
    public const string Standard = "BeerJSON 1.0";

    private const string Root = "beerjson";

    /// <summary>Versions that files in circulation state; they differ in nothing that we read.</summary>
    private static readonly string[] Versions = ["1", "1.0", "1.1", "2.01", "2.06"];

    /// <summary>The recipe as a BeerJSON document, and what does not travel as it stands.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="larder">Where its lines are looked up before the tables.</param>
    /// <param name="figures">What it comes to on a kit; null when nobody has reckoned it.</param>
    /// <param name="author">Whose it is; empty for nobody's.</param>
    /// <param name="water">The water it is brewed with; null when nobody planned it.</param>
    public static (string Text, IReadOnlyList<Travel> Travels) Write(Recipe recipe, Larder larder, BrewedFigures? figures = null, string author = "", WaterPlan? water = null)
    {
        TravelList travels = new();
        OpenRecipe open = BeerJsonTimings.Leave(LeavingRecipe.Of(recipe, larder, figures, author, water, travels));
        open = open with { Cultures = [.. open.Cultures.Select(WithoutWheat)] };
        ObjectNode book = (ObjectNode)BeerJsonForms.Book.Write(new OpenBook { Recipes = [open] }, new OpenCursor("", travels));
        ObjectNode file = Node.Object((Root, book.Inserted(0, "version", new BareNode("1.0"))));
        return (NodeLayout.Write(file), travels.All);
    }

    /// <summary>What a BeerJSON document becomes here.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="wishes">What is known here that the file does not say; null for nothing.</param>
    public static Arrival Read(ReadOnlyMemory<byte> bytes, ArrivalWishes? wishes = null)
    {
        FindingList findings = new();
        if (NodeText.Read(bytes, findings) is not { } file || Book(file, findings) is not { } pairs)
        {
            return new Arrival { Standard = Standard, Findings = findings.All };
        }

        TravelList travels = new();
        Version(pairs, travels);
        BeerJsonForms.Book.TryRead(pairs, new OpenCursor("", travels), out OpenBook book);
        book = book with { Recipes = [.. book.Recipes.Select(recipe => BeerJsonTimings.Arrive(recipe, travels))] };
        IReadOnlyList<ArrivedFile> files = LandedBook.Files(book, new Landing(travels, wishes ?? new ArrivalWishes()));
        return new Arrival { Standard = Standard, Files = files, Travels = travels.All };
    }

    /// <summary>Whether a file of ours it is not, but a BeerJSON document.</summary>
    internal static bool Is(Node file) => file is ObjectNode pairs && pairs.Has(Root);

    private static ObjectNode? Book(Node file, FindingList findings)
    {
        if (file is not ObjectNode { Pairs: var pairs } || pairs.Length != 1 || pairs[0].Key != Root || pairs[0].Value is not ObjectNode book)
        {
            findings.Error("beerjson.root", "", $"a BeerJSON document is an object with one key, \"{Root}\", and an object behind it; this is {file.Sort}{(file is ObjectNode other ? $" with {Invariant($"{other.Pairs.Length}")} keys" : "")}", file.Sort, Root);
            return null;
        }

        if (FileDraft.HasKeyTwice(book))
        {
            findings.Error("key.duplicate", TwiceIn(book, ""), "this key is written twice; keep one");
            return null;
        }

        return book;
    }

    private static string TwiceIn(Node node, string path)
    {
        switch (node)
        {
            case ObjectNode pairs:
                HashSet<string> keys = new(StringComparer.Ordinal);
                return pairs.Pairs.Where(pair => !keys.Add(pair.Key)).Select(pair => Below(path, pair.Key)).FirstOrDefault()
                    ?? pairs.Pairs.Select(pair => TwiceIn(pair.Value, Below(path, pair.Key))).FirstOrDefault(found => found.Length > 0) ?? "";
            case ListNode list:
                return list.Items.Select((item, i) => TwiceIn(item, Invariant($"{path}[{i}]"))).FirstOrDefault(found => found.Length > 0) ?? "";
            default:
                return "";
        }
    }

    private static string Below(string path, string key) => path.Length == 0 ? FindingList.Shorten(key) : $"{path}.{FindingList.Shorten(key)}";

    private static void Version(ObjectNode book, TravelList travels)
    {
        string? version = book["version"] is BareNode bare ? bare.Written : null;
        if (version is null)
        {
            travels.Default("version", "taken for 1.0; the file does not say");
        }
        else if (!Versions.Contains(version))
        {
            travels.Repair("version", $"{FindingList.Shorten(version)} is none that is known, {string.Join(", ", Versions)}; read as 1.0");
        }
    }

    private static OpenCulture WithoutWheat(OpenCulture culture) => culture.Type == CultureType.Wheat ? culture with { Type = CultureType.Ale } : culture;
}
