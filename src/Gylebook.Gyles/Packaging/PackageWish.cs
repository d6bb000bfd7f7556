using System.Text.Json.Nodes;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Report;
using Gylebook.Gyles.Cellar;
using Gylebook.Gyles.Plans;
using Gylebook.Gyles.Portions;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Boiling;
using Gylebook.Science.Quantities;

namespace Gylebook.Gyles.Packaging;

/// <summary>How a brewer wants to package a gyle.</summary>
public sealed record PackageWish
{
    /// <summary>Kinds of the kit's packages, with how many of each; null for as many as the beer fills.</summary>
    public required IReadOnlyList<(string Kind, int? Count)> Into { get; init; }

    /// <summary>Volumes of gas; null for the recipe's.</summary>
    public double? Volumes { get; init; }

    /// <summary>Sugar or food to prime with; null for the usual one in bottles, and for gas from a cylinder in kegs.</summary>
    public string? Priming { get; init; }

    /// <summary>How much of it is weighed already, g.</summary>
    public double? PrimingGrams { get; init; }

    /// <summary>The warmest it has stood since the yeast stopped, °C; null for the warmest that was read or planned.</summary>
    public double? WarmestSince { get; init; }

    /// <summary>The warmest it may come to stand, °C.</summary>
    public double WarmestStore { get; init; } = UsualStore;

    /// <summary>Rating of a keg's weakest part, bar; null for the keg's own.</summary>
    public double? WeakestPart { get; init; }

    /// <summary>Pressure of a burst, bar above the air; null for the usual one.</summary>
    public double? BurstBar { get; init; }

    /// <summary>A warm room in summer: judged.</summary>
    public const double UsualStore = 28;

    /// <summary>A fridge, °C: judged.</summary>
    private const double UsualKeg = 4;

    /// <summary>The question it comes to.</summary>
    /// <param name="inputs">What the gyle was brewed from.</param>
    /// <param name="live">Its forecast with all that was read.</param>
    /// <param name="portion">The portion that is packaged, as the forecast tells it.</param>
    /// <param name="fermentation">How it ferments; null before the pitch.</param>
    /// <param name="hasForced">Whether a forced ferment was read.</param>
    /// <returns>The question, or what is wrong with the wish.</returns>
    public (PackageQuestion? Asked, string? Wrong) Of(GyleInputs inputs, BrewForecast live, PortionView portion, Fermentation? fermentation, bool hasForced)
    {
        ArgumentNullException.ThrowIfNull(portion);
        ArgumentNullException.ThrowIfNull(inputs);
        ArgumentNullException.ThrowIfNull(live);
        foreach ((string kind, int? count) in Into)
        {
            if (!inputs.Kit.Packages.Any(package => package.Kind == kind))
            {
                return (null, $"in: \"{kind}\"; must be one of the kit's: {string.Join(", ", inputs.Kit.Packages.Select(package => package.Kind))}");
            }

            if (count is < 1 or > 1000)
            {
                return (null, Invariant($"in: {count} × {kind}; must be from 1 to 1000"));
            }
        }

        PackageFill[] fills = [.. Into.Select(into => new PackageFill(inputs.Kit.Packages.First(package => package.Kind == into.Kind), into.Count))];
        bool isPrimed = Priming is not null || fills.Any(fill => !fill.IsKeg);
        IReadOnlyList<PlannedLine> sweet = Sweet(inputs, portion);
        string primed = Priming ?? (sweet.FirstOrDefault(line => line.Line.Kind == IngredientKind.Sugar)?.Name ?? PrimingSource.Usual);
        PrimingSource? source = isPrimed ? PrimingSource.Of(primed, inputs.Larder) : null;
        double volumes = Volumes ?? inputs.Recipe.Package.Carbonation?.Value.Volumes ?? live.Package?.Co2Volumes ?? double.NaN;
        return isPrimed && source is null ? (null, $"prime: \"{Priming}\"; must be a sugar or a food with sugar that yeast takes")
            : portion.Litres(live) is not { } litres ? (null, "litres: nobody can tell how much beer there is")
            : !(volumes is >= 0 and <= 8) ? (null, Invariant($"volumes: {volumes}; must be from 0 to 8"))
            : !(WarmestStore is >= -2 and <= 80) ? (null, Invariant($"store: {WarmestStore} °C; must be from −2 to 80 °C"))
            : WarmestSince is not null and not (>= -2 and <= 40) ? (null, Invariant($"warmest: {WarmestSince} °C; must be from −2 to 40 °C"))
            : BurstBar is not null and not (> 0 and <= 10) ? (null, Invariant($"burst: {BurstBar} bar; must be above 0 and at most 10 bar"))
            : PrimingGrams is not null and not (>= 0 and <= 5000) ? (null, Invariant($"sugar: {PrimingGrams} g; must be from 0 to 5000 g"))
            : (new PackageQuestion
            {
                Finished = fermentation?.Finished ?? new FinishedAnswer(FinishedVerdict.NotRead, "It was not pitched yet.", []),
                Litres = litres, Fills = fills, Volumes = volumes, Priming = source, PrimingGrams = PrimingGrams,
                WarmestSince = WarmestSince ?? Warmest(inputs, fermentation), WarmestStore = WarmestStore,
                AirBar = BoilingPoint.PressureKilopascals(inputs.Kit.MetresAboveSea) / 100, FoodVolumes = FoodVolumes(inputs, portion, sweet.Where(line => line.Name != source?.Name), litres.Likely), Unending = Unending(inputs, portion), HasForced = hasForced,
                WeakestPart = WeakestPart, BurstBar = BurstBar, KegCelsius = live.Package?.Keg?.Celsius ?? UsualKeg,
            }, null);
    }

    private static double Warmest(GyleInputs inputs, Fermentation? fermentation)
    {
        double[] read = [.. (fermentation?.Series.Points ?? []).Where(point => point.TemperatureC is not null && !point.Flags.HasFlag(Oddities.TemperatureSpike)).Select(point => point.TemperatureC!.Value)];
        double[] planned = [.. inputs.Recipe.Ferment.Select(rest => rest.Temperature.Value.Celsius)];
        double[] all = read.Length > 0 ? read : planned;
        return all.Length > 0 ? all.Max() : 20;
    }

    /// <summary>What the recipe puts in after fermentation that is sweet: its own priming, syrups, fruit.</summary>
    private static PlannedLine[] Sweet(GyleInputs inputs, PortionView portion) =>
        [.. Forecaster.Plan(inputs.Recipe, inputs.Kit, inputs.Larder, inputs.Water).Brew.Lines.Where(line => line.Line.At.Point is AdditionPoint.Rack or AdditionPoint.Package && portion.Takes(line) && (line.Sugar ?? (object?)line.Food) is not null)];

    /// <summary>What that makes in the package besides what it is primed with, volumes.</summary>
    private static double FoodVolumes(GyleInputs inputs, PortionView portion, IEnumerable<PlannedLine> sweet, double litres) =>
        sweet.Sum(line => 1000 * portion.KilogramsOf(line) * (PrimingSource.Of(line.Name, inputs.Larder)?.GasGramsPerGram ?? 0)) / Math.Max(0.1, litres) / Carbonation.GramsPerLitreInOneVolume;

    private static string[] Unending(GyleInputs inputs, PortionView portion) =>
        [.. Forecaster.Plan(inputs.Recipe, inputs.Kit, inputs.Larder, inputs.Water).Brew.Lines.Where(line => line.Yeast is { FermentsWhatOthersLeave: true } && portion.Takes(line)).Select(line => line.Name).Distinct()];
}

/// <summary>What was packaged, as the log keeps it.</summary>
public static class PackagedDetail
{
    /// <summary>As JSON.</summary>
    public static string Write(PackagePlan plan, PackageQuestion asked)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(asked);
        return new JsonObject
        {
            ["packages"] = new JsonArray([.. plan.Filled.Select(filled => new JsonObject { ["kind"] = filled.Kind, ["count"] = filled.Count, ["litres"] = Math.Round(filled.Litres, 3) })]),
            ["volumes"] = plan.Volumes is { } volumes ? Math.Round(volumes, 2) : null,
            ["priming"] = plan.PrimingGrams is { } grams ? new JsonObject { ["what"] = asked.Priming!.Name, ["grams"] = Math.Round(grams, 1) } : null,
            ["warmest"] = asked.WarmestSince, ["store"] = asked.WarmestStore,
        }.ToJsonString(DetailText.Plain);
    }

    /// <summary>What was packaged, of an entry of the log; null where it cannot be read.</summary>
    public static IReadOnlyList<FilledPackages>? Read(string? detail) => DetailText.Parsed(detail)?["packages"] is not JsonArray packages ? null
        : [.. packages.OfType<JsonObject>().Select(one => new FilledPackages((string?)one["kind"] ?? "", (int?)one["count"] ?? 0, (double?)one["litres"] ?? 0, 0))];
}
