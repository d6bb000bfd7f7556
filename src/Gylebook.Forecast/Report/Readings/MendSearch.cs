using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report.Beer;
using Gylebook.Forecast.Report.Doubt;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Readings;
using Gylebook.Science.Numerics;
using Gylebook.Science.Numerics.Distributions;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Report.Readings;

/// <summary>Looks for corrections that bring a brew back to its plan, from the last stage that was read.</summary>
/// <remarks>
/// Each is the recipe with one thing changed, laid out with the liquor that is in it already and run at the medians that the readings left; its
/// amount is a search for the planned gravity, bitterness, gas, cells or pH of the mash. How far off it lands is told in what the models leave
/// open (<see cref="FromPlan"/>). One that makes a vessel too small, where it was not before, is left out. Which corrections are tried, and
/// their ends, is our choice.
/// </remarks>
/// <param name="planned">The brew as planned.</param>
/// <param name="plan">Its likely run, as planned.</param>
/// <param name="after">What the readings left.</param>
/// <param name="water">The liquor it was laid out with, and what is at hand for it; null when liquor counts as pure.</param>
/// <param name="fit">All that does not fit, or only just, of a brew and its run.</param>
internal sealed class MendSearch(BrewPlan planned, RunOutcome plan, AfterReadings after, WaterOutcome? water, Func<BrewPlan, RunOutcome, IEnumerable<Finding>> fit)
{
    private const double GravityClose = 2e-6, IbuClose = 0.02, VolumesClose = 1e-3, CellsClose = 1e-3;
    private const double ShortestBoil = 20, MostMinutesMore = 120, MostShare = 0.5, MostTimes = 4, WorthDoing = 0.9, Half = 0.5;
    private const int MostTold = 5;

    private static readonly Readout[] Told =
        [BeerReadouts.OriginalGravity, BeerReadouts.PackagedLitres, BeerReadouts.Bitterness, BeerReadouts.FinalGravity, BeerReadouts.AlcoholByVolume];

    private readonly Dictionary<string, double> _medians = after.Brew.Plan!.Parameters.ToDictionary(parameter => parameter.Id, parameter => parameter.Median, StringComparer.Ordinal);

    /// <summary>The corrections worth a look, the one that lands nearest to the plan first, and letting it be.</summary>
    public static IReadOnlyList<Mend> Of(BrewPlan planned, RunOutcome plan, AfterReadings after, WaterOutcome? water, Func<BrewPlan, RunOutcome, IEnumerable<Finding>> fit, string seed) =>
        after.Latest is { } latest ? new MendSearch(planned, plan, after, water, fit).From(latest, seed) : [];

    private IReadOnlyList<Mend> From(ReadingPoint latest, string seed)
    {
        Trial asIs = Tried(Mend.LetBe, 0, WithLiquorAsPoured(planned.Recipe));
        if (asIs.Run is null)
        {
            return [];
        }

        FromPlan letBe = FromPlan.Of(plan, asIs.Run);
        IEnumerable<Trial> better = Candidates(latest, asIs)
            .Where(trial => trial.Run is not null && Fits(trial, asIs) && IsWorthDoing(FromPlan.Of(plan, trial.Run), letBe))
            .OrderBy(trial => Off(trial.Run!)).Take(MostTold - 1);
        return [.. better.Append(asIs).Select(trial => Landed(trial, asIs, seed)).OrderBy(mend => mend.Off)];
    }

    /// <summary>Nearer in all; or nearer in gas, pH or cells, which nothing else mends, where that is off by as much as the models leave open.</summary>
    private static bool IsWorthDoing(FromPlan then, FromPlan letBe)
    {
        return then.Off < WorthDoing * letBe.Off || Mends(then.Gas, letBe.Gas) || Mends(then.MashPh, letBe.MashPh) || Mends(then.Cells, letBe.Cells);

        static bool Mends(double then, double now) => Math.Abs(now) >= 1 && Math.Abs(then) < Half * Math.Abs(now);
    }

    private IEnumerable<Trial> Candidates(ReadingPoint latest, Trial asIs)
    {
        List<Trial> strength = [.. Boiled(latest, asIs.Brew.Recipe), .. Strengthened(latest, asIs)];
        IEnumerable<Trial> hopped = latest > ReadingPoint.CopperUp ? strength
            : strength.Append(asIs).Select(trial => Hopped(trial).Append(trial).MinBy(either => either.Run is { } run ? Off(run) : double.MaxValue)!).Where(trial => trial != asIs);
        return [.. hopped, .. Soured(latest, asIs), .. Pitched(latest, asIs), .. Primed(asIs)];
    }

    /// <summary>A longer boil, or a shorter one; once it is over, boiling on.</summary>
    private IEnumerable<Trial> Boiled(ReadingPoint latest, Recipe recipe)
    {
        if (recipe.Boil is not { } boil || latest > ReadingPoint.KnockOut)
        {
            return [];
        }

        bool isOver = latest == ReadingPoint.KnockOut;
        double now = boil.Time.Value.Minutes;
        Bracket bounds = new(isOver ? now : Math.Min(now, ShortestBoil), now + MostMinutesMore);
        return Solved(
            minutes => Boiled(recipe, minutes, isOver), BeerReadouts.OriginalGravity, plan[BeerReadouts.OriginalGravity], bounds, now, 0,
            minutes => BoilWords(minutes - now, isOver), minutes => minutes - now);
    }

    /// <summary>Sugar or dry extract where the beer would be too weak, water where it would be too strong.</summary>
    private IEnumerable<Trial> Strengthened(ReadingPoint latest, Trial asIs)
    {
        if (latest > ReadingPoint.Cast)
        {
            return [];
        }

        // Less water is more gravity: the search is for what rises.
        Recipe recipe = asIs.Brew.Recipe;
        double og = plan[BeerReadouts.OriginalGravity];
        AdditionTime at = new(latest <= ReadingPoint.CopperUp ? AdditionPoint.CopperUp : latest <= ReadingPoint.Chill ? AdditionPoint.KnockOut : AdditionPoint.Pitch);
        double litres = asIs.Run![StageReadouts.Of(Stage.Cast, 0).Litres], most = Math.Round(MostShare * litres, 1);
        return asIs.Run![BeerReadouts.OriginalGravity] < og
            ? [.. Added("white sugar", IngredientKind.Sugar), .. Added("dry malt extract light", IngredientKind.Extract)]
            : Solved(kept => Watered(recipe, most - kept, at), BeerReadouts.OriginalGravity, og, new(0, most), 0.9 * most, 1, kept => Invariant($"add {most - kept:0.0} L of boiled water at {Words.Of(at)}"), _ => null);

        IEnumerable<Trial> Added(string what, IngredientKind kind) => Solved(
            kilograms => With(recipe, new IngredientLine { Kind = kind, Of = what, At = at, Amount = Weighed(kilograms) }),
            BeerReadouts.OriginalGravity, og, new(0, 0.1 * litres), 0.2, 2, kilograms => Invariant($"add {1000 * kilograms:0} g of {what} at {Words.Of(at)}"), _ => null);
    }

    /// <summary>Acid or an alkaline salt for the mash, by the water plan and what it offers.</summary>
    private IEnumerable<Trial> Soured(ReadingPoint latest, Trial asIs)
    {
        if (latest > ReadingPoint.Mash || water is null || after.MashPh is not { } read
            || WaterTreatment.MendOf(water, read.Ph, read.Sample) is not { } mend)
        {
            return [];
        }

        (string name, string unit) = mend.Acid is { } acid ? (acid.Name, mend.Amount.Unit) : (mend.Salt!.Name, "g");
        RunPlan laid = asIs.Brew.Plan!;
        BrewPlan soured = asIs.Brew with
        {
            Plan = laid with { Medians = [.. laid.Parameters.Select((parameter, place) => parameter.Id == RunParameters.MashPhId ? mend.Ph.Likely : laid.Medians[place])] },
        };
        return [new(Invariant($"stir {mend.Units:0.0} {unit} of {name} into the mash"), null, soured, RunOutcome.Likely(soured.Plan!)) { Ph = mend.Ph }];
    }

    /// <summary>Yeast for what there is to ferment now, so that each litre and degree gets the cells it was to get.</summary>
    private IEnumerable<Trial> Pitched(ReadingPoint latest, Trial asIs)
    {
        Recipe recipe = asIs.Brew.Recipe;
        int[] yeast = recipe.YeastLines();
        double was = PitchedCells.ShareOf(plan), now = PitchedCells.ShareOf(asIs.Run!);
        if (latest > ReadingPoint.Cast || yeast.Length == 0 || !double.IsFinite(was / now) || Math.Abs((was / now) - 1) < CellsClose)
        {
            return [];
        }

        Recipe pitched = recipe.Times(yeast, was / now, AmountText.Of);
        string words = string.Join(" and ", yeast.Select(line => $"{pitched.Ingredients[line].Amount.Text} of {asIs.Brew.Lines.First(own => own.Number == line).Name} rather than {recipe.Ingredients[line].Amount.Text}"));
        return [Tried($"pitch {words}", null, pitched)];
    }

    /// <summary>Priming sugar that a line weighs, for the beer there is now.</summary>
    private IEnumerable<Trial> Primed(Trial asIs)
    {
        Recipe recipe = asIs.Brew.Recipe;
        int[] priming = recipe.PrimingLines();
        double volumes = plan[BeerReadouts.CarbonationVolumes];
        return priming.Length == 0 || !double.IsFinite(volumes) ? [] : Solved(
            times => recipe.Times(priming, times, static (_, amount) => amount), BeerReadouts.CarbonationVolumes, volumes, new(0, MostTimes), 1, 2,
            times => Invariant($"weigh {100 * (times - 1):+0;−0} % of priming sugar"), _ => null);
    }

    /// <summary>The same with the hops that are still to be boiled weighed anew for the planned bitterness.</summary>
    private IEnumerable<Trial> Hopped(Trial trial)
    {
        double ibu = plan[BeerReadouts.Bitterness];
        Recipe recipe = trial.Brew.Recipe;
        if (trial.Run is null || !(ibu > 1) || Math.Abs(trial.Run[BeerReadouts.Bitterness] - ibu) < 1 || !recipe.Ingredients.Any(IsBoiledHop))
        {
            return [];
        }

        string first = trial.Words == Mend.LetBe ? "" : $"{trial.Words}, and ";
        return Solved(
            times => recipe with { Ingredients = [.. recipe.Ingredients.Select(line => IsBoiledHop(line) ? line with { Amount = line.Amount.Times(times) } : line)] },
            BeerReadouts.Bitterness, ibu, new(1 / MostTimes, MostTimes), 1, 2, times => Invariant($"{first}weigh the hops of the boil {100 * (times - 1):+0;−0} %"), _ => trial.Minutes);
    }

    private IEnumerable<Trial> Solved(Func<double, Recipe> recipe, Readout aim, double wish, Bracket bounds, double start, int decimals, Func<double, string> words, Func<double, double?> minutes)
    {
        double close = aim == BeerReadouts.Bitterness ? IbuClose : aim == BeerReadouts.CarbonationVolumes ? VolumesClose : GravityClose;
        SecantResult found = BracketedSecant.Search(amount => RunOf(recipe(amount)) is { } run && double.IsFinite(run[aim]) ? run[aim] : null, wish, bounds, start, close);

        // What is told is what a clock, a scale or a jug shows; one that ends at a bound may still come nearer.
        double shown = Math.Round(found.At, decimals);
        return double.IsFinite(found.Reached) ? [Tried(words(shown), minutes(shown), recipe(shown))] : [];
    }

    private Trial Tried(string words, double? minutes, Recipe recipe)
    {
        BrewPlan mended = Laid(recipe);
        return new(words, minutes, mended, mended.Plan is { } laid ? RunOutcome.Likely(laid) : null);
    }

    private RunOutcome? RunOf(Recipe recipe) => Laid(recipe).Plan is { } laid ? RunOutcome.Likely(laid) : null;

    /// <summary>Laid out with what is known by now.</summary>
    private BrewPlan Laid(Recipe recipe)
    {
        BrewPlan mended = BrewPlanner.Plan(recipe, planned.Kit, planned.Larder, planned.Liquors);
        return mended.Plan is not { } laid ? mended : mended with
        {
            Plan = laid with { Bitterness = planned.Plan!.Bitterness, Medians = [.. laid.Parameters.Select(parameter => _medians.GetValueOrDefault(parameter.Id, parameter.Median))] },
        };
    }

    private double Off(RunOutcome run) => FromPlan.Of(plan, run).Off;

    private bool Fits(Trial trial, Trial asIs)
    {
        HashSet<string> before = [.. Tight(asIs)];
        return Tight(trial).All(before.Contains);
    }

    private IEnumerable<string> Tight(Trial trial) =>
        fit(trial.Brew, trial.Run!).Where(finding => finding.Severity >= Severity.Warning).Select(finding => finding.Code);

    private Mend Landed(Trial trial, Trial asIs, string seed)
    {
        Ensemble landed = DrawnBrew.Of(trial.Brew, trial.Run!, seed, after.Ensemble.Draws.Count, [], after.Ensemble.Draws, Told);
        IEnumerable<Landing> ph = trial.Ph is { } reached ? [new(PhReadouts.MashPh, plan[PhReadouts.MashPh], reached)] : [];
        return new(trial.Words, trial.Minutes, [.. ph, .. Told.Where(readout => double.IsFinite(trial.Run![readout])).Select(Of)], Off(trial.Run!))
        {
            Cost = BeerCost.Between(asIs.Brew, trial.Brew),
            KilowattHours = planned.Kit.Kettle.Power is { } flame && trial.Minutes is { } minutes ? flame.Value.Kilowatts * minutes / 60 : null,
        };

        Landing Of(Readout readout)
        {
            Quantiles band = landed.QuantilesOf(readout);
            return new(readout, plan[readout], new Band(band.Low, trial.Run![readout], band.High, readout.Unit, BandKind.Quantiles) { Middle = band.Middle });
        }
    }

    /// <summary>What was poured is poured: no correction plans the liquor anew.</summary>
    private Recipe WithLiquorAsPoured(Recipe recipe)
    {
        double[] liquors = planned.Plan!.Liquors;
        return recipe with { Liquor = new LiquorPlan(Litres(liquors[0] / Wort.WaterKilogramsPerLitre), liquors.Length > 1 ? Litres(liquors[1] / Wort.WaterKilogramsPerLitre) : null) };
    }

    private static Recipe Boiled(Recipe recipe, double minutes, bool isOver)
    {
        double more = minutes - recipe.Boil!.Time.Value.Minutes;
        return recipe with
        {
            Boil = new BoilPlan(new Entered<Duration>(Duration.FromMinutes(minutes), Invariant($"{minutes:0} min"))),
            Ingredients = [.. recipe.Ingredients.Select(line => line.At.Point != AdditionPoint.Boil ? line : line with { At = line.At with { Count = isOver ? line.At.Count + more : Math.Min(line.At.Count, minutes) } })],
        };
    }

    private static string BoilWords(double minutes, bool isOver) =>
        isOver ? Invariant($"boil on for {minutes:0} min") : minutes < 0 ? Invariant($"boil {-minutes:0} min less") : Invariant($"boil {minutes:0} min longer before the first hops");

    private static Recipe Watered(Recipe recipe, double litres, AdditionTime at) => litres > 0
        ? With(recipe, new IngredientLine { Kind = IngredientKind.Water, Of = "water", At = at, Amount = new(null, Litres(litres)) }) : recipe;

    private static Recipe With(Recipe recipe, IngredientLine line) => recipe with { Ingredients = [.. recipe.Ingredients, line] };

    private static bool IsBoiledHop(IngredientLine line) => line.Kind == IngredientKind.Hop && line.At.Point == AdditionPoint.Boil;

    private static Amount Weighed(double kilograms) => new(new Entered<Mass>(Mass.FromKilograms(kilograms), Invariant($"{kilograms} kg")), null);

    private static Entered<VolumeAt20C> Litres(double litres) => new(VolumeAt20C.FromLitres(litres), Invariant($"{litres} L"));

    private sealed record Trial(string Words, double? Minutes, BrewPlan Brew, RunOutcome? Run)
    {
        /// <summary>pH of the mash that it brings; null where it brings none.</summary>
        public Band? Ph { get; init; }
    }
}
