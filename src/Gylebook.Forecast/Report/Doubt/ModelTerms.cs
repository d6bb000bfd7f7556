using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Boiling;
using Gylebook.Science.Fermenting;
using Gylebook.Science.Liquids;

namespace Gylebook.Forecast.Report.Doubt;

/// <summary>What models leave open, headline by headline: <c>model.*</c> in <c>data/priors.csv</c>, as terms to be added after a run.</summary>
/// <remarks>
/// The term of a gravity moves what is reckoned from gravities too, along the straight line at the likely run: attenuation and alcohol by
/// Balling. Numbers without a row (energy, sludge, losses, ions) have no term, so their bands hold what is drawn and no more.
/// </remarks>
internal static class ModelTerms
{
    private const double SmallStep = 1e-5;

    /// <summary>Within these the colour law is better founded, SRM.</summary>
    private const double Palest = 5, Darkest = 30;

    /// <summary>All terms of a brew.</summary>
    public static IReadOnlyList<ModelTerm> Of(BrewPlan brew, RunOutcome likely)
    {
        Parameter original = Term("originalGravity"), final = Term("finalGravity"), alcohol = Term("alcoholByVolume"), package = Term("packagedLitres");
        Parameter colour = Factor("colour", likely[BeerReadouts.Colour] is >= Palest and <= Darkest ? "" : "outside");
        Parameter table = Factor("bitterness.timeGravity", AlphaMilligramsPerLitre(likely) > AlphaAcidSolubility.AllDissolvesUpTo ? "muchAlpha" : "");
        Parameter kinetics = Factor("bitterness.isomerisation", "");
        bool byTable = brew.Plan!.Bitterness == BitternessModel.TimeGravity;
        return
        [
            .. Worts(brew).Select(wort => new ModelTerm(original, wort)),
            .. StagesOf(brew, Stage.CopperUp, Stage.Split).Where(stage => likely[stage.Gravity] > 1).Select(stage => new ModelTerm(original, stage.Plato, PlatoPerGravity(likely[stage.Gravity]))),
            .. Beers(brew).Select(beer => new ModelTerm(final, beer)),
            .. Carried(likely, original, final),
            new(alcohol, BeerReadouts.AlcoholByVolume),
            new(alcohol, BeerReadouts.AlcoholAtRacking),
            new(byTable ? table : kinetics, BeerReadouts.Bitterness, Multiplies: true),
            new(byTable ? kinetics : table, BeerReadouts.OtherBitterness, Multiplies: true),
            new(colour, BeerReadouts.Colour, Multiplies: true),
            new(Term("beerPh"), PhReadouts.BeerPh),
            .. Packages(brew).Select(litres => new ModelTerm(package, litres)),
        ];
    }

    private static Parameter Term(string name) => Named(name, 0, "");

    private static Parameter Factor(string name, string kind) => Named(name, 1, kind);

    private static Parameter Named(string name, double median, string kind)
    {
        string id = $"model.{name}";
        PriorWidth width = Priors.Find(id, PriorLevel.Between, kind) ?? throw new InvalidOperationException($"{id} has no row in data/priors.csv.");
        return StartingParameters.New(id, median, width.Unit, width.Provenance, kind);
    }

    /// <summary>The same gravity may stand in several rows: as a headline, and as its stage's.</summary>
    private static IEnumerable<Readout> Worts(BrewPlan brew) =>
    [
        BeerReadouts.OriginalGravity, BeerReadouts.CastGravity, BeerReadouts.CopperUpGravity, BeerReadouts.KnockOutGravity,
        .. StagesOf(brew, Stage.CopperUp, Stage.Split).Select(stage => stage.Gravity),
    ];

    private static IEnumerable<Readout> Beers(BrewPlan brew) =>
        [BeerReadouts.FinalGravity, .. StagesOf(brew, Stage.Ferment, Stage.Pour).Select(stage => stage.Gravity)];

    private static IEnumerable<Readout> Packages(BrewPlan brew) =>
        [BeerReadouts.PackagedLitres, .. brew.Plan!.Packaged.Length > 1 ? [] : StagesOf(brew, Stage.Package, Stage.Package).Select(stage => stage.Litres)];

    private static IEnumerable<StageReadouts> StagesOf(BrewPlan brew, Stage from, Stage to) =>
        brew.Readouts!.Stages.Where(stage => stage.Place.Stage >= from && stage.Place.Stage <= to);

    private static IEnumerable<ModelTerm> Carried(RunOutcome likely, Parameter original, Parameter final)
    {
        double og = likely[BeerReadouts.OriginalGravity], fg = likely[BeerReadouts.FinalGravity];
        (Readout Readout, Func<double, double, double> Of)[] carried =
        [
            (BeerReadouts.AlcoholByVolume, Alcohol),
            (BeerReadouts.AlcoholAtRacking, Alcohol),
            (BeerReadouts.ApparentAttenuation, (og, fg) => 100 * (Plato(og) - Plato(fg)) / Plato(og)),
            (BeerReadouts.RealAttenuation, (og, fg) => 100 * (Plato(og) - Balling.RealExtractOf(Plato(og), Plato(fg))) / Plato(og)),
        ];
        if (!(og > 1 && double.IsFinite(og + fg)))
        {
            yield break;
        }

        foreach ((Readout readout, Func<double, double, double> of) in carried)
        {
            yield return new(original, readout, (of(og + SmallStep, fg) - of(og - SmallStep, fg)) / (2 * SmallStep));
            yield return new(final, readout, (of(og, fg + SmallStep) - of(og, fg - SmallStep)) / (2 * SmallStep));
        }
    }

    private static double PlatoPerGravity(double gravity) => (Plato(gravity + SmallStep) - Plato(gravity - SmallStep)) / (2 * SmallStep);

    private static double Plato(double gravity) => SucroseSolution.PlatoAt(gravity);

    private static double Alcohol(double original, double final) =>
        Balling.AlcoholOf(Plato(original), Balling.RealExtractOf(Plato(original), Plato(final)))
        * SucroseSolution.KilogramsPerLitreOfGravity(final) / Wort.PureEthanolKilogramsPerLitre;

    private static double AlphaMilligramsPerLitre(RunOutcome likely) =>
        likely.Plan.Additions.Where(row => row.Hop.Grams > 0).Sum(row => row.Share * row.Hop.Grams * 1000 * row.Hop.Alpha(likely.Draw)) / likely[BeerReadouts.KnockOutLitres];
}
