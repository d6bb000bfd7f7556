using System.Globalization;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;

namespace Gylebook.Gyles.Cellar;

/// <summary>Yeast taken out of a fermenter, as somebody typed it.</summary>
/// <param name="Amount">How much slurry, a volume or a mass: "400 mL".</param>
/// <param name="Day">On which day.</param>
public sealed record TypedHarvest(string Amount, DateOnly Day)
{
    /// <summary>No more cells fit into a millilitre: from memory, of cells of 100 to 150 µm³.</summary>
    public const double MostBillionsPerMillilitre = 10;

    private const string Lot = "lots[0]", Per = "1 mL";

    private static readonly (string Path, string Field)[] Fields =
    [
        ($"{Lot}.amount", "amount"), ($"{Lot}.lot", "called"), ($"{Lot}.assay.cells", "cells"), ($"{Lot}.assay.harvest.day", "on"),
    ];

    /// <summary>Living cells that were counted: "1.2 billion/mL"; blank when nobody has counted.</summary>
    public string Cells { get; init; } = "";

    /// <summary>What stands on the jar; blank for the gyle's name.</summary>
    public string Called { get; init; } = "";

    /// <summary>Which of several yeasts, by its name; blank for the only one.</summary>
    public string Of { get; init; } = "";

    /// <summary>The file of a sheet that has this jar as its only lot.</summary>
    /// <param name="sheet">The sheet the lot belongs to; lots it has already are left out.</param>
    /// <param name="called">What stands on the jar.</param>
    /// <param name="harvest">Where it comes from.</param>
    /// <returns>The text; null, and why, where something typed cannot be right.</returns>
    public (string? Sheet, IReadOnlyList<Finding> Findings) Written(YeastSheet sheet, string called, YeastHarvest harvest)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(harvest);
        List<Finding> findings = [];
        if (string.IsNullOrWhiteSpace(Amount))
        {
            findings.Add(new("harvest.amount", Severity.Error, "amount", "say how much slurry: \"400 mL\", or by weight \"400 g\"", null, "a volume or a mass"));
        }

        string? cells = CellsText(findings);
        FileDraft<YeastSheet> draft = FileDraft.Of(LarderFile.Yeast, LarderFile.Write(sheet with { Lots = [new() { Name = called, Assay = new YeastFigures { Harvest = harvest } }] }));
        draft = draft.InTurn(
            lot => lot.Put($"{Lot}.amount", Amount), lot => lot.Put($"{Lot}.assay.form", "slurry"),
            lot => cells is null ? null : lot.Put($"{Lot}.assay.cells", cells), lot => cells is null ? null : lot.Put($"{Lot}.assay.per", Per))!.After;
        findings.AddRange(draft.Findings.Where(finding => finding.Severity == Severity.Error).Select(finding => finding with
        {
            Where = Fields.FirstOrDefault(field => field.Path == finding.Where) is { Field: { } typed } ? typed : finding.Where,
        }));
        return (findings.Count > 0 ? null : draft.Text, findings);
    }

    /// <summary>Cells in a millilitre as a sheet has them; null for none, and where they cannot be read.</summary>
    private string? CellsText(List<Finding> findings)
    {
        string typed = Cells.Trim();
        if (typed.Length == 0)
        {
            return null;
        }

        string number = Without(Without(typed.Replace(" ", "", StringComparison.Ordinal), "/mL"), "billion").Replace(',', '.');
        if (double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double billions) && billions is > 0 and <= MostBillionsPerMillilitre)
        {
            return $"{number} billion";
        }

        string limit = Invariant($"above 0 and at most {MostBillionsPerMillilitre} billion/mL");
        findings.Add(new("harvest.cells", Severity.Error, "cells", $"{typed}; write \"1.2 billion/mL\", {limit}: no more cells fit into a millilitre", typed, limit));
        return null;

        static string Without(string text, string end) => text.EndsWith(end, StringComparison.OrdinalIgnoreCase) ? text[..^end.Length] : text;
    }
}
