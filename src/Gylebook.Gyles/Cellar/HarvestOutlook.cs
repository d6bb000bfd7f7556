using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Report;
using Gylebook.Gyles.Plans;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Larders;

namespace Gylebook.Gyles.Cellar;

/// <summary>A yeast that fermented a gyle, and may be taken out of it to be pitched again.</summary>
/// <param name="Name">What the plan calls it.</param>
/// <param name="Like">The row of the tables that it is, by id.</param>
/// <param name="SheetId">The sheet of the larder that it was pitched from; null when it was of the tables alone.</param>
/// <param name="Generation">How many beers it has fermented with this one; null when it was slurry that nobody has counted.</param>
public sealed record HarvestableYeast(string Name, string Like, string? SheetId, int? Generation);

/// <summary>What there is to know before yeast is taken out of a fermenter.</summary>
/// <param name="Yeasts">The yeasts in it, as the plan pitched them.</param>
/// <param name="Doubts">Why it had better not be pitched again; empty when nothing speaks against it.</param>
/// <param name="MayContain">Allergens of the beer, for the jar; null when none is known.</param>
public sealed record HarvestOutlook(IReadOnlyList<HarvestableYeast> Yeasts, IReadOnlyList<string> Doubts, string? MayContain)
{
    /// <summary>From this generation on many brewers begin with fresh yeast. Common practice, no source.</summary>
    public const int TiredGeneration = 5;

    private static readonly string[] Always =
    [
        "Whatever touches the yeast must be clean and sanitised: what else lives in the jar grows in the next beer (common practice).",
        "Yeast goes on making gas: lay the lid on loosely. A closed jar bursts, and glass cuts.",
        "Keep it in the fridge, at 1 to 4 °C, and pitch it within two weeks; after four make a starter of it (common practice).",
        "Take none from a beer that smells or tastes doubtful, or that has a skin on it.",
    ];

    /// <summary>The yeasts of a frozen plan; null where this program can no longer read its files, or nothing was pitched.</summary>
    public static HarvestOutlook? Of(GylePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (GyleInputs.Of(plan) is not { } inputs)
        {
            return null;
        }

        BrewForecast forecast = inputs.Forecast(plan.Seed, [], draws: 0);
        HarvestableYeast[] yeasts =
        [
            .. Forecaster.Plan(inputs.Recipe, inputs.Kit, inputs.Larder, inputs.Water).Brew.Lines
                .Where(line => line.Yeast is not null && line.Line.At.Point < AdditionPoint.Package).Select(Yeast).DistinctBy(yeast => (yeast.Name, yeast.SheetId)),
        ];
        return yeasts.Length == 0 ? null : new(yeasts, forecast.Pitch?.HarvestDoubts ?? [], AllergensOf(forecast));
    }

    /// <summary>What to take care of, the usual first, then what this beer adds.</summary>
    public IReadOnlyList<string> Cautions =>
    [
        .. Always,
        .. Yeasts.Count > 1 ? (string[])[$"{string.Join(" and ", Yeasts.Select(yeast => yeast.Name))} were pitched: unless they fermented apart, the jar holds all of them."] : [],
        .. Yeasts.Any(yeast => yeast.Generation >= TiredGeneration) ? (string[])[Invariant($"It would be generation {Yeasts.Max(yeast => yeast.Generation)}: from {TiredGeneration} on many brewers begin with fresh yeast (common practice).")] : [],
        .. Doubts.Count > 0 ? (string[])[$"Better not pitch this beer's yeast again: {string.Join("; ", Doubts)}."] : [],
        .. MayContain is null ? [] : (string[])[$"Traces of the beer stay in the yeast, and with them {MayContain}: write it on the jar. A beer it is pitched into says so too."],
    ];

    private static HarvestableYeast Yeast(PlannedLine line) => new(line.Name, line.Yeast!.Id, line.Hand?.Sheet?.Id, GenerationOf(line));

    private static int? GenerationOf(PlannedLine line) => line switch
    {
        _ when line.Hand?.Lot.Harvest() is { } harvest => (int?)harvest.Generation + 1,
        { Line.Form: IngredientForm.Slurry } => null,
        _ => 1,
    };

    /// <summary>By both lists, what the beer may itself only contain traces of among them. Cereals by their names alone: read again, "gluten" would mean wheat too.</summary>
    private static string? AllergensOf(BrewForecast forecast)
    {
        string[] all =
        [
            .. forecast.Allergens.Eu.Concat(forecast.Allergens.MayContainEu).Concat(forecast.Allergens.Us).Concat(forecast.Allergens.MayContainUs)
                .Select(name => name.ToLowerInvariant().Replace(" (gluten)", "", StringComparison.Ordinal)).Distinct(),
        ];
        return all.Length == 0 ? null : string.Join(", ", all);
    }
}
