using System.Collections.Concurrent;
using Gylebook.Engine.Makeups;
using Gylebook.Engine.Parameters;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Ingredients;

/// <summary>Parameters as they start, before kit, recipe or reading says better: the one place that asks the table of starting values by name.</summary>
internal static class StartingParameters
{
    /// <summary>Where each parameter that every run has starts; those that kit or recipe always set are not in it.</summary>
    private static readonly (Known Place, string Id)[] Ids =
    [
        (Known.RinsingShare, "mash.rinse.pour"),
        (Known.TowardsPlateau, "mash.limit.towardsPlateau"),
        (Known.SpectrumMaltose, "mash.spectrum.maltose"),
        (Known.SpectrumMaltotriose, "mash.spectrum.maltotriose"),
        (Known.SpectrumGlucose, "mash.spectrum.glucose"),
        (Known.FinesThroughBag, "mash.finesThroughBag"),
        (Known.FatWithGrain, "mash.fatWithGrain"),
        (Known.BreakShare, "break.share"),
        (Known.YeastHold, "sludge.yeast"),
        (Known.BreakHold, "sludge.break"),
        (Known.HopHold, "sludge.hops"),
        (Known.RawStarchHold, "sludge.rawStarch"),
        (Known.CrashGain, "sludge.crashGain"),
        (Known.FatDispersed, "ferment.fatStays"),
        (Known.UtilisationFactor, "bitterness.utilisation"),
        (Known.HopSolids, "hops.solids"),
        (Known.GrainDensity, "solids.grain"),
        (Known.FoodDensity, "solids.food"),
        (Known.HopDensity, "solids.hop"),
        (Known.BreakDensity, "solids.break"),
        (Known.YeastDensity, "solids.yeast"),
        (Known.FatDensity, "solids.fat"),
        (Known.MaltSolubleProtein, "malt.solubleProtein"),
        (Known.MaltCoagulable, "malt.coagulable"),
        (Known.MaltMinerals, "malt.minerals"),
        (Known.OwnSugarOfBase, "malt.ownSugar.base"),
        (Known.OwnSugarOfRaw, "malt.ownSugar.raw"),
        (Known.RawGrainOpens, "mash.rawGrainOpens"),
        (Known.OwnSugarOfCaramel, "malt.ownSugar.caramel"),
        (Known.OwnSugarOfRoast, "malt.ownSugar.roast"),
        (Known.OwnFermentableOfBase, "malt.ownFermentable.base"),
        (Known.OwnFermentableOfLightCaramel, "malt.ownFermentable.lightCaramel"),
        (Known.OwnFermentableOfAmberCaramel, "malt.ownFermentable.amberCaramel"),
        (Known.OwnFermentableOfDarkCaramel, "malt.ownFermentable.darkCaramel"),
        (Known.OwnFermentableOfDextrinMalt, "malt.ownFermentable.dextrinMalt"),
        (Known.OwnFermentableOfRoast, "malt.ownFermentable.roast"),
        (Known.CongressLimit, "mash.limit.congress"),
        (Known.HopWater, "hops.water"),
        (Known.HopSoluble, "hops.soluble"),
        (Known.ExtractAsMalt, "ph.extractAsMalt"),
        (Known.SlakingKelvins, "mash.slakingKelvins"),
        (Known.HeatShare, "kettle.heatShare"),
        (Known.LiftHeldFactor, "mash.liftHeldFactor"),
        (Known.PhOfMaltWort, "ph.maltWort"),
        (Known.PhOfOrdinaryWort, "ph.ordinaryWort"),
        (Known.PhBoilDrop, "ph.boilDrop"),
        (Known.WortBuffering, "ph.buffer.wort"),
        (Known.MashBuffering, "ph.buffer.mash"),
        (Known.BeerBuffering, "ph.buffer.beer"),
        (Known.DryHopBase, "ph.dryHopBase"),
        (Known.MaltPotassium, "malt.ions.potassium"),
        (Known.MaltMagnesium, "malt.ions.magnesium"),
        (Known.MaltCalcium, "malt.ions.calcium"),
        (Known.MaltSodium, "malt.ions.sodium"),
        (Known.MaltPhosphorus, "malt.ions.phosphorus"),
        (Known.MaltChloride, "malt.ions.chloride"),
        (Known.MaltSulphate, "malt.ions.sulphate"),
        (Known.PhOfTopFermented, "ph.beer.top"),
        (Known.PhOfBottomFermented, "ph.beer.bottom"),
        (Known.SlurryCellsPerMillilitre, "yeast.slurryCellsPerMillilitre"),
        (Known.PitchCellsPerGram, "yeast.dryCellsPerGram"),
    ];

    /// <summary>The file is read once for each id, not at every key.</summary>
    private static readonly ConcurrentDictionary<(string Id, string Kind), Prior> Widths = new();

    private static readonly Dictionary<Known, (double Low, double High)> Ends = Ids.ToDictionary(row => row.Place, row =>
    {
        StartingValue value = StartingValues.Of(row.Id);
        return (value.Low ?? value.Value, value.High ?? value.Value);
    });

    private static readonly (Known Place, Parameter Parameter)[] Started = [.. Ids.Select(row => (row.Place, Of(row.Id)))];

    /// <summary>A draw with each of these where it starts, and nothing of any kit or recipe: for what is taken apart before there is a brew.</summary>
    public static double[] Medians { get; } = MediansOf(Started);

    /// <summary>What malts' extracts are made of there.</summary>
    public static MaltExtracts Extracts { get; } = new(Medians);

    /// <summary>Puts them all into a list.</summary>
    public static void SetAll(ParameterList parameters)
    {
        foreach ((Known place, Parameter parameter) in Started)
        {
            parameters.Set(place, parameter);
        }
    }

    /// <summary>The ends in print of a starting value.</summary>
    public static (double Low, double High) EndsOf(Known place) => Ends[place];

    /// <summary>The parameter of a starting value.</summary>
    public static Parameter Of(string id)
    {
        StartingValue value = StartingValues.Of(id);
        return new Parameter(id, value.Value, PriorOf(id, KindOf(id)), value.Unit, value.Provenance.Source, value.Provenance.Status);
    }

    /// <summary>Hops are counted as pellets, of which the width of water is told, and a crash is one wherever its gain is asked for.</summary>
    private static string KindOf(string id) => id switch
    {
        "hops.water" => "pellet",
        "sludge.crashGain" => "crash",
        _ => "",
    };

    /// <summary>A parameter with the width that is known of its id.</summary>
    public static Parameter New(string id, double median, string unit, Provenance from, string kind = "") =>
        new(id, median, PriorOf(id, kind), unit, from.Source, from.Status);

    /// <summary>A parameter that a certificate or an assay of the lot states: as narrow as the file of priors has it, docs/how-a-number-is-made.md.</summary>
    public static Parameter Certified(string id, double median, string unit, Provenance from, string kind = "") =>
        New(id, median, unit, from, kind) is { Prior: Prior.Spread between } table && Priors.Find(id, PriorLevel.Known, kind) is { } known
            ? table with { Prior = new Prior.Spread(known.Width, between.Within, between.Tie) }
            : New(id, median, unit, from, kind);

    /// <summary>How wide a parameter of that id is, whoever set it.</summary>
    /// <param name="id">The parameter's id, without the number of its lot.</param>
    /// <param name="kind">Which of its sort, where the file of priors tells several; empty for any.</param>
    public static Prior PriorOf(string id, string kind = "") => Widths.GetOrAdd((id, kind), static asked =>
    {
        PriorWidth? between = Priors.Find(asked.Id, PriorLevel.Between, asked.Kind);
        return between is null || (between.Width.Family == Family.Point && between.Tie == Tie.None)
            ? Prior.Point
            : new Prior.Spread(between.Width, Priors.Find(asked.Id, PriorLevel.Within, asked.Kind)?.Width, between.Tie);
    });

    private static double[] MediansOf((Known Place, Parameter Parameter)[] started)
    {
        double[] medians = new double[ParameterList.KnownCount];
        foreach ((Known place, Parameter parameter) in started)
        {
            medians[(int)place] = parameter.Median;
        }

        return medians;
    }
}
