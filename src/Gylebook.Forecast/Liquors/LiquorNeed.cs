using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Mashing;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Liquors;

/// <summary>For what the liquor is treated: litres, grist, and the salts and acids a recipe puts into the mash itself.</summary>
/// <param name="StrikeLitres">At 20 °C.</param>
/// <param name="SpargeLitres">At 20 °C; 0 for none.</param>
/// <param name="Grist">What is mashed; empty when unknown or none.</param>
/// <param name="Salts">Salts the recipe's own lines put into the mash.</param>
/// <param name="Acids">Acids the recipe's own lines put into the mash.</param>
public sealed record LiquorNeed(
    double StrikeLitres,
    double SpargeLitres,
    IReadOnlyList<GristLine> Grist,
    IReadOnlyList<(BrewingSalt Salt, Mass Amount)> Salts,
    IReadOnlyList<MashPhAcid> Acids)
{
    /// <summary>Litres packaged, for salts into the package; null when nobody says.</summary>
    public double? PackageLitres { get; init; }

    /// <summary>L/kg below which grain cannot be stirred into liquor. Common practice, no source.</summary>
    internal const double Thickest = 0.5;

    /// <summary>Less liquor than this is none: nothing could be weighed for it.</summary>
    internal const double LeastKilograms = 0.01;

    /// <summary>What the plan says by itself; null, with a finding, when it lacks the litres.</summary>
    public static LiquorNeed? Of(WaterPlan plan, List<Finding> findings)
    {
        if (plan.Strike is not { } strike)
        {
            findings.Add(new("key.missing", Severity.Error, "strike", "this key is missing, and no recipe says how much liquor there is"));
            return null;
        }

        return new(strike.Value.Litres, plan.Sparge?.Value.Litres ?? 0, plan.Grist, [], []) { PackageLitres = plan.Package?.Value.Litres };
    }

    /// <summary>What a recipe laid out on its kit asks for; null when it cannot be planned.</summary>
    public static LiquorNeed? Of(BrewPlan brew)
    {
        if (brew.Plan is not { } plan || plan.Liquors[0] < LeastKilograms)
        {
            return null;
        }

        List<PlannedLine> mashed = [.. brew.Lines.Where(line => line.Line.At.Point == AdditionPoint.Mash)];
        return new(
            plan.Liquors[0] / Wort.WaterKilogramsPerLitre,
            plan.Rinse.Kilograms / Wort.WaterKilogramsPerLitre,
            [.. mashed.Where(IsGrist).Select(Grain)],
            [.. mashed.Where(line => line.Salt is not null).Select(line => (line.Salt!, Mass.FromKilograms(line.Kilograms)))],
            [.. mashed.Select(line => line.Acid).OfType<MashPhAcid>()])
        {
            PackageLitres = brew.Outcome.PackagedLitres is > 0 and < double.MaxValue and var litres ? litres : null,
        };
    }

    /// <summary>The same with the brewer's own titrations instead of the table's; one for a malt that is not there is told.</summary>
    /// <remarks>A grist line that brings a titration of its own keeps it; a curvature in the table stays.</remarks>
    internal LiquorNeed With(IReadOnlyList<TitratedMalt> malts, List<Finding> findings)
    {
        Dictionary<string, MaltTitration> own = malts.ToDictionary(malt => malt.Malt.Id, malt => malt.Titration);
        for (int i = 0; i < malts.Count; i++)
        {
            if (Grist.All(line => line.Malt?.Id != malts[i].Malt.Id))
            {
                string grist = string.Join(", ", Grist.Select(line => line.Name));
                findings.Add(new("malts.notInGrist", Severity.Warning, Invariant($"malts[{i}].malt"), $"{malts[i].Malt.Name} is not in the grist, so its titration does nothing: {(grist.Length > 0 ? grist : "there is none")}", malts[i].Malt.Name, grist));
            }
        }

        return this with
        {
            Grist = [.. Grist.Select(line => line.Malt is { } malt && line.Titration?.Provenance.Status != Provenance.Entered.Status && own.TryGetValue(malt.Id, out MaltTitration? titration)
                ? line with { Titration = titration with { Curvature = line.Titration?.Curvature ?? 0 } } : line)],
        };
    }

    private static bool IsGrist(PlannedLine line) => line.Line.Kind is IngredientKind.Malt or IngredientKind.Food;

    private static GristLine Grain(PlannedLine line) => new(
        line.Name, Mass.FromKilograms(line.Kilograms),
        line.Malt is { } malt ? malt.TitrationAt(line.Line.Colour?.Value ?? malt.Colour) : line.Food?.Acidity, line.Malt);
}
