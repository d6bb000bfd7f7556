using Gylebook.Recipes.Forms;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Liquors;

namespace Gylebook.Terminal;

/// <summary>A water plan read from its file and carried out, for the recipe beside it or for the litres in it.</summary>
/// <param name="Outcome">What came of it; null when it could not be carried out.</param>
/// <param name="Findings">All that was found on the way.</param>
internal sealed record OpenedWater(WaterOutcome? Outcome, IReadOnlyList<Finding> Findings)
{
    /// <summary>Reads and carries out.</summary>
    public static OpenedWater From(string path, string? kit)
    {
        List<Finding> findings = [];
        if (!OpenedFiles.TryOpen(path, findings, out FileStream? stream))
        {
            return new(null, findings);
        }

        Reading<WaterPlan> read;
        using (stream)
        {
            read = WaterFile.Read(stream!);
        }

        findings.AddRange(read.Findings);
        LiquorNeed? need = read.Value is null ? null : NeedOf(read.Value, path, kit, findings);
        if (need is null)
        {
            return new(null, findings);
        }

        WaterOutcome? outcome = WaterTreatment.TryOf(read.Value!, need, findings);
        return new(outcome, [.. findings, .. outcome?.Findings ?? []]);
    }

    private static LiquorNeed? NeedOf(WaterPlan plan, string path, string? kit, List<Finding> findings)
    {
        if (plan.Recipe is null)
        {
            return LiquorNeed.Of(plan, findings);
        }

        string beside = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path))!, plan.Recipe);
        OpenedFiles files = OpenedFiles.Open(beside, kit);
        findings.AddRange(files.Findings.Select(finding => finding with { Where = $"recipe.{finding.Where}" }));
        if (files.Recipe is null || files.Kit is null)
        {
            return null;
        }

        BrewPlan planned = BrewPlanner.Plan(files.Recipe, files.Kit, files.Larder);
        findings.AddRange(planned.Findings.Where(finding => finding.Severity == Severity.Error).Select(finding => finding with { Where = $"recipe.{finding.Where}" }));
        return LiquorNeed.Of(planned) is { } need
            ? need with
            {
                StrikeLitres = plan.Strike?.Value.Litres ?? need.StrikeLitres,
                SpargeLitres = plan.Sparge?.Value.Litres ?? need.SpargeLitres,
                PackageLitres = plan.Package?.Value.Litres ?? need.PackageLitres,
            }
            : null;
    }
}
