using Gylebook.Recipes.Forms;
using Gylebook.Recipes;
using Gylebook.Recipes.Data;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Science.Foods.Labels;

namespace Gylebook.Terminal;

/// <summary>A food from a file, or a row of the tables by id or name; or findings that say why not.</summary>
/// <param name="Id">Its id; what was asked for when nothing was found.</param>
/// <param name="Name">Its name.</param>
/// <param name="Food">The food, with everything that was found; its makeup is null when it cannot be reckoned with.</param>
internal sealed record OpenedFood(string Id, string Name, MadeUpFood Food)
{
    /// <summary>Bench trials that its file keeps.</summary>
    public IReadOnlyList<KeptTrial> Trials { get; private init; } = [];

    /// <summary>Opens a food.</summary>
    /// <param name="asked">A food file, or an id or name of the tables.</param>
    /// <param name="mode">How far a packet may lie from its panel.</param>
    public static OpenedFood Open(string asked, LabelMode mode)
    {
        if (File.Exists(asked))
        {
            return FromFile(asked, mode);
        }

        Found<Food> found = FoodTable.Find(asked);
        if (found.Match is { } row)
        {
            return new(row.Id, row.Name, FoodMakeups.From(row));
        }

        string nearest = string.Join(", ", found.Nearest);
        return Nothing(asked, new Finding(
            "food.unknown", Severity.Error, "food", $"{asked}; neither a food file nor a food of the tables. Nearest: {nearest}", asked, nearest));
    }

    private static OpenedFood FromFile(string path, LabelMode mode)
    {
        List<Finding> findings = [];
        if (!OpenedFiles.TryOpen(path, findings, out FileStream? stream))
        {
            return Nothing(path, [.. findings]);
        }

        using (stream)
        {
            Reading<FoodSheet> reading = FoodFile.Read(stream!);
            if (reading.Value is not { } sheet)
            {
                return Nothing(path, [.. reading.Findings]);
            }

            MadeUpFood made = FoodMakeups.From(sheet, mode);
            return new(sheet.Id, sheet.Name, made with { Findings = [.. reading.Findings, .. made.Findings] }) { Trials = sheet.Trials };
        }
    }

    private static OpenedFood Nothing(string asked, params Finding[] findings) => new(asked, asked, new MadeUpFood(null, findings));
}
