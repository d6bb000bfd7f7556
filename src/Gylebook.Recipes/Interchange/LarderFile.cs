using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;

namespace Gylebook.Recipes.Interchange;

/// <summary>Sheets of the larder: what a brewer knows of a malt, a hop, a yeast, a food or anything on the shelf, with the lots at hand; see <c>docs/guide/files.md</c>.</summary>
public static class LarderFile
{
    /// <summary>What the <c>format</c> key of a malt says.</summary>
    public const string MaltFormat = "gylebook-malt/1";

    /// <summary>What the <c>format</c> key of a hop says.</summary>
    public const string HopFormat = "gylebook-hop/1";

    /// <summary>What the <c>format</c> key of a yeast says.</summary>
    public const string YeastFormat = "gylebook-yeast/1";

    /// <summary>What the <c>format</c> key of anything else on the shelf says.</summary>
    public const string ShelfFormat = "gylebook-shelf/1";

    /// <summary>The table of a malt's fields.</summary>
    public static FileForm<MaltSheet> Malt => LarderForms.Malt;

    /// <summary>The table of a hop's fields.</summary>
    public static FileForm<HopSheet> Hop => LarderForms.Hop;

    /// <summary>The table of a yeast's fields.</summary>
    public static FileForm<YeastSheet> Yeast => LarderForms.Yeast;

    /// <summary>The table of a shelf sheet's fields.</summary>
    public static FileForm<ShelfSheet> Shelf => LarderForms.Shelf;

    /// <summary>All that may lie in a larder; food sheets among them.</summary>
    public static IReadOnlyList<FileForm> Forms { get; } = [Malt, Hop, Yeast, Shelf, FoodFile.Form];

    /// <summary>Reads a sheet of any of these forms from an open file; the stream stays open.</summary>
    public static Reading<LarderSheet> Read(Stream stream)
    {
        FindingList findings = new();
        Node? file = NodeText.Read(stream, findings);
        string? format = (file as ObjectNode)?["format"] is TextNode { Text: var stated } ? stated : null;
        return format switch
        {
            MaltFormat => Any(Malt.Read(file, findings)),
            HopFormat => Any(Hop.Read(file, findings)),
            YeastFormat => Any(Yeast.Read(file, findings)),
            ShelfFormat => Any(Shelf.Read(file, findings)),
            FoodFile.Format => Any(FoodFile.Form.Read(file, findings)),
            _ => Other(file, format, findings),
        };
    }

    /// <summary>The text of a sheet's file.</summary>
    public static string Write(LarderSheet sheet) => sheet switch
    {
        MaltSheet malt => Malt.Write(malt),
        HopSheet hop => Hop.Write(hop),
        YeastSheet yeast => Yeast.Write(yeast),
        ShelfSheet shelf => Shelf.Write(shelf),
        FoodSheet food => FoodFile.Write(food),
        _ => throw new ArgumentOutOfRangeException(nameof(sheet), sheet, "No such sheet."),
    };

    private static Reading<LarderSheet> Any<T>(Reading<T> read)
        where T : LarderSheet => new(read.Value, read.Findings);

    private static Reading<LarderSheet> Other(Node? file, string? format, FindingList findings)
    {
        if (file is not null)
        {
            string forms = string.Join(", ", Forms.Select(form => form.Format));
            findings.Error("format.wrong", "format", format is null ? $"this key is missing; must be one of {forms}" : $"\"{FindingList.Shorten(format)}\"; must be one of {forms}", format, forms);
        }

        return new(null, findings.All);
    }
}
