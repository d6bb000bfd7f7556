using System.Globalization;
using Gylebook.Science.Foods.Labels;
using Gylebook.Science.Foods.Labels.Rounding;

namespace Gylebook.Science.Tests.Foods;

/// <summary>A row of data/foods.csv; null means not measured. g per 100 g, sodium in mg.</summary>
public sealed record CompositionRow(
    string Name, double Water, double Protein, double Fat, double Ash, double Carbohydrate, double? Fibre, double? Sugars, double? Sodium)
{
    /// <summary>What the panel's own definitions make of the row: all that is not protein, fat or carbohydrate.</summary>
    public double Remainder => 100 - Protein - Fat - Carbohydrate;

    public double? StarchAndOther => Carbohydrate - Fibre - Sugars;

    public PrintedPanel PrintUs(double servingGrams)
    {
        PrintedValue Line(LabelLine line, double? per100) =>
            per100 is { } amount ? UsLabelRounding.Print(line, amount * servingGrams / 100) : PrintedValue.Absent;
        return new()
        {
            Style = PanelStyle.Us,
            ServingGrams = servingGrams,
            FatGrams = Line(LabelLine.Fat, Fat),
            CarbohydrateGrams = Line(LabelLine.Carbohydrate, Carbohydrate),
            FibreGrams = Line(LabelLine.Fibre, Fibre),
            SugarsGrams = Line(LabelLine.Sugars, Sugars),
            ProteinGrams = Line(LabelLine.Protein, Protein),
            SodiumMilligrams = Line(LabelLine.Sodium, Sodium),
        };
    }

    public PrintedPanel PrintEu(double basisGrams)
    {
        PrintedValue Line(LabelLine line, double? per100) =>
            per100 is { } amount ? EuLabelRounding.Print(line, amount * basisGrams / 100) : PrintedValue.Absent;
        return new()
        {
            Style = PanelStyle.Eu,
            ServingGrams = basisGrams,
            FatGrams = Line(LabelLine.Fat, Fat),
            CarbohydrateGrams = Line(LabelLine.Carbohydrate, Carbohydrate - Fibre),
            FibreGrams = Line(LabelLine.Fibre, Fibre),
            SugarsGrams = Line(LabelLine.Sugars, Sugars),
            ProteinGrams = Line(LabelLine.Protein, Protein),
            SaltGrams = Line(LabelLine.Salt, Sodium / 1000 * EuLabelRounding.SaltPerSodium),
        };
    }

    public static IReadOnlyList<CompositionRow> All { get; } = Read();

    private static List<CompositionRow> Read()
    {
        string[] lines = [.. File.ReadLines(RepositoryFile("data/foods.csv")).Where(line => !line.StartsWith('#'))];
        List<string> names = Cells(lines[0]);

        // Produce of which nobody's figures were within reach has a row without any: it has no label to print.
        return [.. lines.Skip(1).Select(Cells).Where(cells => cells[names.IndexOf("water_g")].Length > 0).Select(cells =>
        {
            double? Cell(string name) => cells[names.IndexOf(name)] is { Length: > 0 } text
                ? double.Parse(text, CultureInfo.InvariantCulture)
                : null;
            return new CompositionRow(
                cells[names.IndexOf("name")], Cell("water_g")!.Value, Cell("protein_g")!.Value, Cell("fat_g")!.Value, Cell("ash_g")!.Value,
                Cell("carb_by_diff_g")!.Value, Cell("fibre_g"), Cell("sugars_g"), Cell("sodium_mg"));
        })];
    }

    private static List<string> Cells(string line)
    {
        // Quoted cells may hold commas, and none holds a quotation mark: every second piece is inside quotes.
        string[] byQuote = line.Split('"');
        List<string> cells = [""];
        for (int i = 0; i < byQuote.Length; i++)
        {
            string[] pieces = i % 2 == 1 ? [byQuote[i]] : byQuote[i].Split(',');
            cells[^1] += pieces[0];
            cells.AddRange(pieces.Skip(1));
        }

        return cells;
    }

    public static string RepositoryFile(string path)
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Gylebook.slnx")))
        {
            folder = folder.Parent;
        }

        return Path.Combine(folder!.FullName, path);
    }
}
