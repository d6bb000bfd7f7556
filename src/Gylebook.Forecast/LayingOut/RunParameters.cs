using Gylebook.Forecast.Running;
using Gylebook.Forecast.Stages;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Boiling;
using Gylebook.Science.Conditioning;
using Gylebook.Science.Mashing;

namespace Gylebook.Forecast.LayingOut;

/// <summary>Fills in the parameters every run has, from the kit, the recipe and the starting values.</summary>
internal static class RunParameters
{
    /// <summary>Where no mash is written down, extract is taken to have been mashed like this. Common practice, no source.</summary>
    private const double OrdinaryRest = 66;

    /// <summary>Sets all the known parameters.</summary>
    public static void SetAll(ParameterList parameters, Recipe recipe, Kit kit)
    {
        SetKit(parameters, recipe, kit);
        SetMash(parameters, recipe);
        parameters.Start(Known.BreakShare, "break.share");
        parameters.Start(Known.YeastHold, "sludge.yeast");
        parameters.Start(Known.BreakHold, "sludge.break");
        parameters.Start(Known.HopHold, "sludge.hops");
        parameters.Start(Known.RawStarchHold, "sludge.rawStarch");
        parameters.Start(Known.FatDispersed, "ferment.fatStays");
        if (CellarSteps.Crashes(recipe))
        {
            parameters.Start(Known.CrashGain, "sludge.crashGain");
        }
        else
        {
            parameters.Set(Known.CrashGain, "sludge.crashGain", 0, "kg/kg", new("no crash in this recipe", "computed"));
        }

        parameters.Start(Known.UtilisationFactor, "bitterness.utilisation");
        parameters.Start(Known.HopSolids, "hops.solids");
        parameters.Start(Known.GrainDensity, "solids.grain");
        parameters.Start(Known.FoodDensity, "solids.food");
        parameters.Start(Known.HopDensity, "solids.hop");
        parameters.Start(Known.BreakDensity, "solids.break");
        parameters.Start(Known.YeastDensity, "solids.yeast");
        parameters.Start(Known.FatDensity, "solids.fat");
    }

    /// <summary>The yeast of a portion: the hungriest of those that go in; none at all when none does.</summary>
    public static FermentStep Yeast(ParameterList parameters, Recipe recipe, Kit kit, IEnumerable<LaidLine> yeasts)
    {
        double warmest = recipe.Ferment.Count == 0 ? 20 : recipe.Ferment.Max(r => r.Temperature.Value.Celsius);
        int gas = parameters.Of(
            "ferment.residualGas", ResidualCarbonDioxide.VolumesAt(warmest, BoilingPoint.PressureKilopascals(kit.MetresAboveSea)), "volumes",
            new("residual table at the warmest rest, under the air of the kit's height", "seen"));
        YeastStyle? yeast = yeasts.Select(l => l.Yeast!).OrderByDescending(y => y.MaltotrioseShare.Ratio + y.DextrinShare.Ratio + y.MaltoseShare.Ratio).FirstOrDefault();
        return yeast is null
            ? new FermentStep(-1, -1, -1, gas)
            : new FermentStep(
                parameters.Of($"yeast.{yeast.Id}.maltose", yeast.MaltoseShare.Ratio, "kg/kg", yeast.Provenance),
                parameters.Of($"yeast.{yeast.Id}.maltotriose", yeast.MaltotrioseShare.Ratio, "kg/kg", yeast.Provenance),
                parameters.Of($"yeast.{yeast.Id}.dextrin", yeast.DextrinShare.Ratio, "kg/kg", yeast.Provenance),
                gas);
    }

    /// <summary>Souring: a boil behind it drives all gas off; without one the wort keeps what it holds at its temperature.</summary>
    public static SourStep Souring(ParameterList parameters, Recipe recipe, LacticCulture culture, MaltWort wort)
    {
        SouringPlan plan = recipe.Souring!;
        double kept = recipe.Boil is null ? CarbonDioxideInWater.VolumesUnderOneAtmosphere(plan.Temperature.Value.Celsius) : 0;
        return new SourStep(
            plan.Ph.Value,
            culture.IsMixed,
            parameters.Of("sour.startPh", wort.LikelyAlone, "pH", new("pH of the malt's wort, docs/science/beer-ph.md", "computed")),
            parameters.Starting("ph.buffer.wort"),
            parameters.Of("sour.gasKept", kept, "volumes", new("Weiss 1974 at the souring's temperature; 0 when it is boiled", "seen")));
    }

    private static void SetKit(ParameterList parameters, Recipe recipe, Kit kit)
    {
        Provenance own = new($"kit {kit.Name}", "entered");
        bool tun = UsesTun(recipe, kit);
        double kept = tun ? kit.Tun!.LiquorKept.Value.LitresPerKilogram : kit.Bag?.LiquorKept.Value.LitresPerKilogram ?? 1;
        parameters.Set(Known.Conversion, "kit.conversion", kit.Conversion.Value.Ratio, "kg/kg", own);
        parameters.Set(Known.WortHeld, "kit.wortHeld", WortHeld.FromLiquorKept(kept), "kg/kg", own);
        SetRinsing(parameters, recipe, kit, own);
        parameters.Set(Known.TunDeadSpace, "kit.tun.deadSpace", tun ? kit.Tun!.DeadSpace.Value.Litres : 0, "L", own);
        parameters.Set(Known.Evaporation, "kit.kettle.evaporation", kit.Kettle.Evaporation.Value.LitresPerHour, "L/h", own);
        parameters.Set(Known.KettleLeftBehind, "kit.kettle.leftBehind", kit.Kettle.LeftBehind.Value.Litres, "L", own);
        parameters.Set(Known.KettleSolidsLeft, "kit.kettle.solidsLeft", kit.Kettle.SolidsLeft.Value.Ratio, "kg/kg", own);
        parameters.Set(Known.HeldBySpentHops, "kit.kettle.heldBySpentHops", kit.Kettle.HeldBySpentHops.Value.LitresPerKilogram, "L/kg", own);
        parameters.Set(Known.RackingLeftBehind, "kit.racking.leftBehind", kit.RackingLeftBehind.Value.Litres, "L", own);
    }

    /// <summary>A poured rinse mixes as this brewer's bag lets it; every other way has its own starting value.</summary>
    private static void SetRinsing(ParameterList parameters, Recipe recipe, Kit kit, Provenance own)
    {
        switch (recipe.Mash?.Sparge.Method)
        {
            case SpargeMethod.Dunk: parameters.Start(Known.RinsingShare, "mash.rinse.dunk"); break;
            case SpargeMethod.Batch: parameters.Start(Known.RinsingShare, "mash.rinse.batch"); break;
            case SpargeMethod.Continuous: parameters.Start(Known.RinsingShare, "mash.rinse.continuous"); break;
            default:
                if (kit.Bag is Bag bag)
                {
                    parameters.Set(Known.RinsingShare, "kit.rinsingShare", bag.RinsingShare.Value.Ratio, "kg/kg", own);
                }
                else
                {
                    parameters.Start(Known.RinsingShare, "mash.rinse.pour");
                }

                break;
        }
    }

    private static void SetMash(ParameterList parameters, Recipe recipe)
    {
        parameters.Set(
            Known.LimitOfAttenuation, "mash.limitOfAttenuation", LimitPercent(recipe), "%",
            new("limit of attenuation against mash temperature, docs/science/mashing.md", "seen"));
        parameters.Start(Known.SpectrumMaltose, "mash.spectrum.maltose");
        parameters.Start(Known.SpectrumMaltotriose, "mash.spectrum.maltotriose");
        parameters.Start(Known.SpectrumGlucose, "mash.spectrum.glucose");
        parameters.Start(Known.FinesThroughBag, "mash.finesThroughBag");
        parameters.Start(Known.FatWithGrain, "mash.fatWithGrain");
    }

    /// <summary>Limit of attenuation of a row of rests: each rest's own, weighed by the work beta-amylase does in it (decision 0013).</summary>
    internal static double LimitPercent(Recipe recipe)
    {
        IReadOnlyList<Rest> rests = recipe.Mash?.Rests ?? [];
        IReadOnlyList<double> work = EnzymeCourse.BetaWork(rests);
        double all = work.Sum();
        return all > 0
            ? rests.Zip(work, (rest, its) => its / all * AttenuationLimit.ApparentPercentAt(rest.Temperature.Value.Celsius)).Sum()
            : AttenuationLimit.ApparentPercentAt(ConvertingCelsius(recipe));
    }

    /// <summary>The rest in which beta-amylase does most of its work; the warmest when it does none.</summary>
    internal static double ConvertingCelsius(Recipe recipe)
    {
        IReadOnlyList<Rest> rests = recipe.Mash?.Rests ?? [];
        IReadOnlyList<double> work = EnzymeCourse.BetaWork(rests);
        int most = Enumerable.Range(0, rests.Count).OrderByDescending(i => work[i]).ThenByDescending(i => rests[i].Temperature.Value.Celsius).FirstOrDefault(-1);
        return most < 0 ? OrdinaryRest : rests[most].Temperature.Value.Celsius;
    }

    /// <summary>Whether the mash stands in a tun.</summary>
    internal static bool UsesTun(Recipe recipe, Kit kit) => recipe.Mash?.Method == MashMethod.Tun && kit.Tun is not null;
}
