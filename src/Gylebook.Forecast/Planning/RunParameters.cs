using Gylebook.Engine.Parameters;
using Gylebook.Engine.Running;
using Gylebook.Engine.Stages;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Boiling;
using Gylebook.Science.Conditioning;

namespace Gylebook.Forecast.Planning;

/// <summary>Fills in the parameters of a run, from the kit, the recipe and the starting values.</summary>
internal static class RunParameters
{
    /// <summary>Id of the mash's pH by the water plan.</summary>
    public const string MashPhId = "mash.ph";

    /// <summary>Sets all parameters that every run has.</summary>
    public static void SetAll(ParameterList parameters, Recipe recipe, Kit kit, RestCourse rests)
    {
        StartingParameters.SetAll(parameters);
        SetKit(parameters, recipe, kit);
        parameters.Set(Known.LimitOfAttenuation, StartingParameters.New(
            "mash.limitOfAttenuation", rests.PlannedLimitPercent, "%",
            new("limit of attenuation against mash temperature, docs/science/mashing.md", "seen")));
        parameters.Set(Known.MashWarmer, StartingParameters.New("mash.warmer", 0, "K", new("as warm as it was meant", "computed")));
        parameters.Set(Known.PhBoilDropOfSourWort, StartingParameters.New("ph.boilDropOfSourWort", 0, "pH", new("not known; counted as none", "computed")));
        parameters.Set(Known.StandWarmer, StartingParameters.New("stand.warmer", 0, "K", new("as warm as it was meant", "computed")));
        if (!CellarSteps.Crashes(recipe))
        {
            parameters.Set(Known.CrashGain, StartingParameters.New("sludge.crashGain", 0, "kg/kg", new("no crash in this recipe", "computed")) with { Prior = Prior.Point });
        }
    }

    /// <summary>The yeast of a portion: the one whose attenuation its brewer told, or the hungriest of those that go in; none at all when none does.</summary>
    public static FermentStep Yeast(ParameterList parameters, Recipe recipe, Kit kit, IEnumerable<PlannedLine> yeasts)
    {
        double warmest = recipe.Ferment.Count == 0 ? 20 : recipe.Ferment.Max(r => r.Temperature.Value.Celsius);
        Provenance table = ResidualCarbonDioxide.IsWithinPublishedRange(warmest)
            ? new("residual table at the warmest rest, under the air of the kit's height", "seen")
            : new("residual table carried on to the warmest rest by Weiss 1974, under the air of the kit's height", "computed");
        Slot gas = parameters.Of(StartingParameters.New(
            "ferment.residualGas", ResidualCarbonDioxide.VolumesAt(warmest, BoilingPoint.PressureKilopascals(kit.MetresAboveSea)), "volumes", table));
        List<PlannedLine> pitched = [.. yeasts];
        YeastStyle? yeast = pitched
            .OrderByDescending(l => l.Line.Attenuation is not null)
            .ThenByDescending(l => l.Yeast!.MaltotrioseShare.Ratio + l.Yeast.DextrinShare.Ratio + l.Yeast.MaltoseShare.Ratio)
            .FirstOrDefault()?.Yeast;
        return new FermentStep(
            yeast is null ? null : new YeastShares(
                parameters.Of(StartingParameters.New($"yeast.{yeast.Id}.maltose", yeast.MaltoseShare.Ratio, "kg/kg", yeast.Provenance)),
                parameters.Of(StartingParameters.New($"yeast.{yeast.Id}.maltotriose", yeast.MaltotrioseShare.Ratio, "kg/kg", yeast.Provenance)),
                parameters.Of(StartingParameters.New($"yeast.{yeast.Id}.dextrin", yeast.DextrinShare.Ratio, "kg/kg", yeast.Provenance, yeast.DextrinShare.Ratio > 0 ? "diastatic" : ""))),
            gas)
        {
            Tires = pitched.Count == 0 || pitched.Exists(l => l.Line.Attenuation is not null)
                ? null
                : parameters.Of(TiresOf(pitched.MaxBy(l => l.Yeast!.AlcoholTolerance.High)!.Yeast!)),
        };
    }

    /// <summary>The alcohol at which a yeast stops, in the middle of where it usually tires; of several the one that bears most.</summary>
    public static Parameter TiresOf(YeastStyle yeast) => StartingParameters.New(
        $"yeast.{yeast.Id}.tires", (yeast.AlcoholTolerance.Low + yeast.AlcoholTolerance.High) / 2, "% vol",
        new("middle of where it usually tires, data/yeasts.csv", "memory"));

    /// <summary>Souring: a boil behind it drives all gas off; without one the wort keeps what it holds at its temperature.</summary>
    public static SourStep Souring(ParameterList parameters, Recipe recipe, LacticCulture culture)
    {
        SouringPlan plan = recipe.Souring!;
        double kept = recipe.Boil is null ? CarbonDioxideInWater.VolumesUnderOneAtmosphere(plan.Temperature.Value.Celsius) : 0;
        return new SourStep(
            plan.Ph.Value,
            culture.IsMixed,
            parameters.Of(StartingParameters.New("sour.gasKept", kept, "volumes", new("Weiss 1974 at the souring's temperature; 0 when it is boiled", "seen"))));
    }

    /// <summary>Acidity: the mash's pH by the water plan, and what an ordinary beer of each portion's yeast reads.</summary>
    public static AcidityPlan Acidity(
        ParameterList parameters, Recipe recipe, CastPortions portions, IReadOnlyList<PlannedLine> lines, PlannedLiquors? liquors)
    {
        Slot? mash = liquors?.MashPh is { } planned
            ? parameters.Of(StartingParameters.New(MashPhId, planned.Likely, "pH", new("forecast of the water plan, docs/science/mash-ph.md", "computed")))
            : null;
        return new AcidityPlan(mash, mash is null ? 0 : liquors!.StrikeLitres, recipe.Boil is not null, [.. portions.All.Select(UsualOf)]);

        Known? UsualOf(CastPortion portion)
        {
            List<PlannedLine> yeasts = [.. lines.Where(l => l.Yeast is not null && (l.Line.Portion is null || l.Line.Portion == portion.Name))];
            return yeasts.Count == 0 ? null : yeasts.TrueForAll(l => l.Yeast!.IsBottomFermenting) ? Known.PhOfBottomFermented : Known.PhOfTopFermented;
        }
    }

    private static void SetKit(ParameterList parameters, Recipe recipe, Kit kit)
    {
        Provenance own = new($"kit {kit.Name}", "entered");
        bool tun = UsesTun(recipe, kit);
        void Set(Known place, string id, double median, string unit) => parameters.Set(place, KitParameter.AsLearned(StartingParameters.New(id, median, unit, own), kit, tun));
        double kept = tun ? kit.Tun!.LiquorKept.Value.LitresPerKilogram : kit.Bag?.LiquorKept.Value.LitresPerKilogram ?? 1;
        Set(Known.Conversion, "kit.conversion", kit.Conversion.Value.Ratio, "kg/kg");
        Set(Known.WortHeld, "kit.wortHeld", WortHeld.FromLiquorKept(kept), "kg/kg");
        SetRinsing(parameters, recipe, kit, own);
        Set(Known.TunDeadSpace, "kit.tun.deadSpace", tun ? kit.Tun!.DeadSpace.Value.Litres : 0, "L");
        Set(Known.Evaporation, "kit.kettle.evaporation", kit.Kettle.Evaporation.Value.LitresPerHour, "L/h");
        Set(Known.KettleLeftBehind, "kit.kettle.leftBehind", kit.Kettle.LeftBehind.Value.Litres, "L");
        Set(Known.KettleSolidsLeft, "kit.kettle.solidsLeft", kit.Kettle.SolidsLeft.Value.Ratio, "kg/kg");
        Set(Known.HeldBySpentHops, "kit.kettle.heldBySpentHops", kit.Kettle.HeldBySpentHops.Value.LitresPerKilogram, "L/kg");
        Set(Known.RackingLeftBehind, "kit.racking.leftBehind", kit.RackingLeftBehind.Value.Litres, "L");
    }

    /// <summary>A poured rinse mixes as this brewer's bag lets it; every other way has its own starting value.</summary>
    private static void SetRinsing(ParameterList parameters, Recipe recipe, Kit kit, Provenance own)
    {
        string? start = recipe.Mash?.Sparge.Method switch
        {
            SpargeMethod.Dunk => "mash.rinse.dunk",
            SpargeMethod.Batch => "mash.rinse.batch",
            SpargeMethod.Continuous => "mash.rinse.continuous",
            _ => null,
        };
        if (start is not null)
        {
            parameters.Set(Known.RinsingShare, StartingParameters.Of(start));
        }
        else if (kit.Bag is Bag bag)
        {
            parameters.Set(Known.RinsingShare, KitParameter.AsLearned(StartingParameters.New("kit.rinsingShare", bag.RinsingShare.Value.Ratio, "kg/kg", own), kit, UsesTun(recipe, kit)));
        }
    }

    /// <summary>The rests of a recipe's mash; none without one.</summary>
    internal static RestCourse RestsOf(Recipe recipe) =>
        new(
            [.. (recipe.Mash?.Rests ?? []).Select(rest => new RestStep(rest.Temperature.Value.Celsius, rest.Time.Value.Minutes))],
            StartingParameters.Medians[(int)Known.TowardsPlateau]);

    /// <summary>Whether the mash stands in a tun.</summary>
    internal static bool UsesTun(Recipe recipe, Kit kit) => recipe.Mash?.Method == MashMethod.Tun && kit.Tun is not null;
}
