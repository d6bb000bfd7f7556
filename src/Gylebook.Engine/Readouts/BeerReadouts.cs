using Gylebook.Engine.Makeups;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Science.Boiling;
using Gylebook.Science.Fermenting;
using Gylebook.Science.Liquids;
using Gylebook.Science.Quantities;

namespace Gylebook.Engine.Readouts;

/// <summary>What can be told of any brew as a whole.</summary>
public static class BeerReadouts
{
    /// <summary>Gravity in the fermenter, before yeast.</summary>
    public static Readout CastGravity { get; } = new(
        "castGravity", "gravity in the fermenter", "SG", 4, new(Stage.Cast), static (in run) => run.Gravity(Stage.Cast));

    /// <summary>Original gravity, all in.</summary>
    public static Readout OriginalGravity { get; } = new(
        "originalGravity", "original gravity, all in", "SG", 4, new(Stage.Ferment), static (in run) => run.Mean(static (in r, p) => OriginalGravityOf(r, p)));

    /// <summary>Gravity when fermentation ends.</summary>
    public static Readout FinalGravity { get; } = new(
        "finalGravity", "final gravity", "SG", 4, new(Stage.Ferment), static (in run) => run.Mean(static (in r, p) => FinalGravityOf(r, p)));

    /// <summary>(OE − AE) / OE, per cent.</summary>
    public static Readout ApparentAttenuation { get; } = new(
        "apparentAttenuation", "apparent attenuation", "%", 1, new(Stage.Ferment), static (in run) => run.Mean(static (in r, p) => ApparentAttenuationOf(r, p)));

    /// <summary>(OE − RE) / OE, per cent.</summary>
    public static Readout RealAttenuation { get; } = new(
        "realAttenuation", "real attenuation", "%", 1, new(Stage.Ferment), static (in run) => run.Mean(static (in r, p) => RealAttenuationOf(r, p)));

    /// <summary>Alcohol by volume when racked, per cent.</summary>
    public static Readout AlcoholAtRacking { get; } = new(
        "alcoholAtRacking", "alcohol by volume, when racked", "%", 2, new(Stage.Rack),
        static (in run) => run.Mean(static (in r, p) => r.Wort(Stage.Rack, p).AlcoholByVolumePercentOf(r.Litres(Stage.Rack, p))));

    /// <summary>Alcohol by volume as served, per cent.</summary>
    public static Readout AlcoholByVolume { get; } = new(
        "alcoholByVolume", "alcohol by volume, in the glass", "%", 2, new(Stage.Pour),
        static (in run) => run.Mean(static (in r, p) => PerLitre(r, p, 100 * r.Wort(Stage.Pour, p)[Component.Ethanol] / State.Wort.PureEthanolKilogramsPerLitre)));

    /// <summary>Bitterness as served by the model that is shown, IBU.</summary>
    public static Readout Bitterness { get; } = new(
        "bitterness", "bitterness", "IBU", 1, new(Stage.Pour),
        static (in run) => BitternessBy(run, run.Plan.Bitterness));

    /// <summary>Bitterness as served by the model that is not shown, IBU.</summary>
    public static Readout OtherBitterness { get; } = new(
        "otherBitterness", "bitterness by the other model", "IBU", 1, new(Stage.Pour),
        static (in run) => BitternessBy(run, run.Plan.Bitterness == BitternessModel.TimeGravity ? BitternessModel.Isomerisation : BitternessModel.TimeGravity));

    /// <summary>Colour as served, SRM.</summary>
    public static Readout Colour { get; } = new(
        "colourSrm", "colour", "SRM", 1, new(Stage.Pour),
        static (in run) => run.Mean(static (in r, p) => Poured(r, p) is > 0 and var litres ? WortColour.SrmOfAbsorbance(r.Wort(Stage.Pour, p)[Component.Colour] / litres) : 0));

    /// <summary>Colour as served by the law of straight lines: carried from knock-out to the glass as the other is, SRM.</summary>
    public static Readout StraightLineSrm { get; } = new(
        "straightLineSrm", "colour by the law of straight lines", "SRM", 1, new(Stage.Pour), static (in run) => StraightLineSrmOf(run));

    /// <summary>Litres at 20 °C before the boil.</summary>
    public static Readout CopperUpLitres { get; } = new(
        "copperUpLitres", "wort at copper-up", "L at 20 °C", 2, new(Stage.CopperUp), static (in run) => run.Litres(Stage.CopperUp));

    /// <summary>Gravity before the boil.</summary>
    public static Readout CopperUpGravity { get; } = new(
        "copperUpGravity", "gravity at copper-up", "SG", 4, new(Stage.CopperUp), static (in run) => run.Gravity(Stage.CopperUp));

    /// <summary>Litres at 20 °C when the flame goes off.</summary>
    public static Readout KnockOutLitres { get; } = new(
        "knockOutLitres", "wort at knock-out", "L at 20 °C", 2, new(Stage.KnockOut), static (in run) => run.Litres(Stage.KnockOut));

    /// <summary>Gravity when the flame goes off.</summary>
    public static Readout KnockOutGravity { get; } = new(
        "knockOutGravity", "gravity at knock-out", "SG", 4, new(Stage.KnockOut), static (in run) => run.Gravity(Stage.KnockOut));

    /// <summary>Litres at 20 °C in the fermenter.</summary>
    public static Readout CastLitres { get; } = new(
        "castLitres", "wort in the fermenter", "L at 20 °C", 2, new(Stage.Cast), static (in run) => run.Litres(Stage.Cast));

    /// <summary>Litres of sludge, solids and the beer they hold.</summary>
    public static Readout SludgeLitres { get; } = new(
        "sludgeLitres", "sludge bed", "L", 2, new(Stage.Rack),
        static (in run) => run.Sum(static (in r, p) => Rack.SludgeLitres(r.Wort(Stage.Ferment, p), r.Litres(Stage.Ferment, p), r.Draw)));

    /// <summary>Litres at 20 °C packaged.</summary>
    public static Readout PackagedLitres { get; } = new(
        "packagedLitres", "beer packaged", "L at 20 °C", 2, new(Stage.Package),
        static (in run) => run.Sum(static (in r, p) => r.Litres(Stage.Package, p)));

    /// <summary>Energy as served, kcal per 100 mL.</summary>
    public static Readout Energy { get; } = new(
        "energyKcalPer100ml", "energy", "kcal/100 mL", 0, new(Stage.Pour), static (in run) => run.Mean(static (in r, p) => EnergyOf(r, p)));

    /// <summary>Carbohydrate as served, g per 100 mL.</summary>
    public static Readout Carbohydrate { get; } = new(
        "carbohydrateGPer100ml", "carbohydrate", "g/100 mL", 1, new(Stage.Pour), static (in run) => run.Mean(static (in r, p) => CarbohydrateOf(r, p)));

    /// <summary>Sodium as served that foods, liquor and salts brought, mg/L.</summary>
    public static Readout Sodium { get; } = new(
        "sodiumMgPerL", "sodium from foods and salts", "mg/L", 0, new(Stage.Pour),
        static (in run) => run.Mean(static (in r, p) => PerLitre(r, p, r.Wort(Stage.Pour, p)[Component.Sodium])));

    /// <summary>Fat of foods that is still in the beer as served, mg/L.</summary>
    public static Readout Fat { get; } = new(
        "fatMgPerL", "fat in the beer", "mg/L", 0, new(Stage.Pour),
        static (in run) => run.Mean(static (in r, p) => 1e6 * PerLitre(r, p, r.Wort(Stage.Pour, p)[Component.Fat])));

    /// <summary>Extract over grist, per cent, when all wort has run off; 0 without a grist.</summary>
    public static Readout MashYield { get; } = new(
        "mashYield", "extract from the grist", "%", 1, new(Stage.RunOff), MashYieldOf);

    /// <summary>What of the malts' laboratory extract is in the wort when all has run off, per cent; 0 without malt in a mash.</summary>
    public static Readout LaboratoryShare { get; } = new(
        "laboratoryShare", "of the malts' laboratory extract", "%", 1, new(Stage.RunOff), LaboratoryShareOf);

    /// <summary>Volumes of gas as served.</summary>
    public static Readout CarbonationVolumes { get; } = new(
        "carbonationVolumes", "carbonation", "volumes", 2, new(Stage.Pour), static (in run) => run.Mean(static (in r, p) => CarbonationOf(r, p)));

    /// <summary>Volumes of gas that sugar makes in the package.</summary>
    public static Readout RefermentableVolumes { get; } = new(
        "refermentableVolumes", "gas made in the package", "volumes", 2, new(Stage.Package), static (in run) => run.Mean(static (in r, p) => RefermentableOf(r, p)));

    /// <summary>Apparent limit of attenuation of a pale malt's wort of this mash, per cent; what a forced ferment tells.</summary>
    public static Readout LimitOfAttenuation { get; } = new(
        "limitOfAttenuation", "limit of attenuation of the mash", "%", 1, new(Stage.Mash),
        static (in run) => run.Trace.Has(Stage.Mash) ? run.Plan.Mash.Rests.LimitPercent(run.Draw) : double.NaN);

    /// <summary>Litres in the mash with the grain.</summary>
    public static Readout MashLitresWithSolids { get; } = new(
        "mashLitresWithSolids", "mash with its grain", "L", 2, new(Stage.Mash),
        static (in run) => Suspension.Litres(run.Wort(Stage.Mash), run.Litres(Stage.Mash), run.Draw));

    /// <summary>Litres in the fullest fermenter with all solids, before any is racked off.</summary>
    public static Readout FermenterLitresWithSolids { get; } = new(
        "fermenterLitresWithSolids", "fermenter with its solids", "L", 2, new(Stage.Ferment),
        static (in run) => run.Most(static (in r, p) => Suspension.Litres(r.Wort(Stage.Ferment, p), r.Litres(Stage.Ferment, p), r.Draw)));

    /// <summary>The headline, in the order in which it is told.</summary>
    public static IReadOnlyList<Readout> Headline { get; } =
    [
        CastGravity, OriginalGravity, FinalGravity, ApparentAttenuation, RealAttenuation, AlcoholAtRacking, AlcoholByVolume,
        Bitterness, Colour, CopperUpLitres, CopperUpGravity, CastLitres, SludgeLitres, PackagedLitres, Energy, Carbohydrate,
        Sodium, MashYield, LaboratoryShare,
    ];

    /// <summary>All that is told of any brew as a whole, the headline first.</summary>
    public static IReadOnlyList<Readout> All { get; } =
    [
        .. Headline, Fat, OtherBitterness, StraightLineSrm, KnockOutLitres, KnockOutGravity, CarbonationVolumes, RefermentableVolumes, LimitOfAttenuation, MashLitresWithSolids, FermenterLitresWithSolids,
    ];

    /// <summary>Bitterness of the whole beer by a model, IBU.</summary>
    public static double BitternessBy(in RunView run, BitternessModel model) => model == BitternessModel.TimeGravity
        ? run.Mean(static (in r, p) => PerLitre(r, p, r.Wort(Stage.Pour, p)[Component.Bitterness]))
        : run.Mean(static (in r, p) => PerLitre(r, p, r.Wort(Stage.Pour, p)[Component.IsoAlphaAcid]));

    /// <summary>Volumes of gas in a portion as served.</summary>
    public static double CarbonationOf(in RunView run, int portion) => Poured(run, portion) is > 0 and var litres
        ? run.Wort(Stage.Pour, portion)[Component.CarbonDioxide] * 1000 / Carbonation.GramsPerLitreInOneVolume / litres : 0;

    private static double StraightLineSrmOf(in RunView run)
    {
        double promised = 0, litres = run.Litres(Stage.KnockOut);
        foreach (Addition addition in run.Plan.Additions)
        {
            promised += run.Trace.Makeup(addition.Makeup)[Component.MaltColour] * addition.Share;
        }

        double units = WortColour.MaltColourUnits(promised, litres);
        return promised > 0 && litres > 0
            ? Colour.Of(run) * StraightLineColour.SrmOfMaltColourUnits(units) / WortColour.SrmOfMaltColourUnits(units) : double.NaN;
    }

    private static double OriginalGravityOf(in RunView run, int portion) => run.Trace.Unfermented(portion).Gravity;

    private static double FinalGravityOf(in RunView run, int portion) => run.Gravity(Stage.Ferment, portion);

    private static double ApparentAttenuationOf(in RunView run, int portion)
    {
        double original = run.Trace.Unfermented(portion).RealExtractPlato;
        return original > 0 ? 100 * (original - SucroseSolution.PlatoAt(FinalGravityOf(run, portion))) / original : 0;
    }

    private static double RealAttenuationOf(in RunView run, int portion)
    {
        double original = run.Trace.Unfermented(portion).RealExtractPlato;
        return original > 0 ? 100 * (original - run.Wort(Stage.Ferment, portion).RealExtractPlato) / original : 0;
    }

    private static double MashYieldOf(in RunView run)
    {
        ref readonly Wort wort = ref RunOffOf(run);
        double grist = run.Plan.Mash.GristKilograms;
        return grist > 0 && run.Trace.Has(Stage.Lift) ? 100 * (wort.ExtractMass - wort.LiquorExtractMass + OfMashedFoods(run, wort)) / grist : 0;
    }

    /// <summary>The wort once all has run off.</summary>
    private static ref readonly Wort RunOffOf(in RunView run) => ref run.Wort(run.Trace.Has(Stage.Rinse) ? Stage.Rinse : Stage.Lift);

    /// <summary>Starch that was not converted is missing from what the laboratory finds, and so is what the grain held back.</summary>
    private static double LaboratoryShareOf(in RunView run)
    {
        double starch = 0;
        foreach (Addition addition in run.Plan.Additions)
        {
            starch += addition.Place.Stage == Stage.Mash ? run.Trace.Makeup(addition.Makeup)[Component.Starch] * addition.Share : 0;
        }

        double fromStarch = run.Plan.Mash.StarchShareOfExtract(run.Draw);
        if (fromStarch <= 0 || starch <= 0 || !run.Trace.Has(Stage.Lift))
        {
            return 0;
        }

        ref readonly Wort mash = ref run.Wort(Stage.Mash);
        ref readonly Wort wort = ref RunOffOf(run);
        return 100 * (1 - (fromStarch * mash[Component.Starch] / starch)) * wort.ExtractMass / mash.ExtractMass;
    }

    /// <summary>Ions and acids that mashed foods brought are extract of the grist; they run off in the share that malt's buffering does.</summary>
    private static double OfMashedFoods(in RunView run, in Wort wort)
    {
        double brought = 0;
        foreach (Addition addition in run.Plan.Additions)
        {
            if (addition.Place.Stage == Stage.Mash && run.Plan.Makeups[addition.Makeup] is FoodInPlace)
            {
                brought += run.Trace.Makeup(addition.Makeup).LiquorExtractMass * addition.Share;
            }
        }

        double malt = run.Wort(Stage.Mash)[Component.MaltBuffer];
        return malt > 0 ? brought * wort[Component.MaltBuffer] / malt : brought;
    }

    private static double EnergyOf(in RunView run, int portion)
    {
        ref readonly Wort beer = ref run.Wort(Stage.Pour, portion);
        double gravity = run.Gravity(Stage.Pour, portion);
        return Poured(run, portion) > 0 ? BeerEnergy.KilocaloriesPer100Millilitres(beer.AlcoholByMassPercent, beer.EdibleExtractPlato, gravity) : 0;
    }

    private static double CarbohydrateOf(in RunView run, int portion)
    {
        ref readonly Wort beer = ref run.Wort(Stage.Pour, portion);
        double gravity = run.Gravity(Stage.Pour, portion);
        return Poured(run, portion) > 0 ? BeerEnergy.CarbohydrateGramsPer100Millilitres(beer.EdibleExtractPlato, gravity) : 0;
    }

    private static double RefermentableOf(in RunView run, int portion) => Package.RefermentableVolumes(
        run.Wort(Stage.Package, portion), run.Plan.Ferments[run.Plan.RowOf(portion)], run.Plan.Reactions, run.Draw);

    private static double Poured(in RunView run, int portion) => run.Litres(Stage.Pour, portion);

    private static double PerLitre(in RunView run, int portion, double amount) => Poured(run, portion) is > 0 and var litres ? amount / litres : 0;
}
