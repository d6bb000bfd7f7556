using Gylebook.Engine.State;
using System.Globalization;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Foods;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Fermenting;
using Gylebook.Science.Liquids;

namespace Gylebook.Forecast.Report.Pitching;

/// <summary>Where a recipe asks much of its yeast: cells, strength, alcohol; and care with starters and oxygen.</summary>
internal static class YeastCautions
{
    private const double AirGives = 8;

    /// <summary>All of them.</summary>
    public static IEnumerable<Caution> Of(BrewPlan brew, RunOutcome figures, PitchAdvice? pitch, TiringYeast? tiring) => pitch is null
        ? []
        : [
            .. Told(brew), .. Cells(pitch), .. Nitrogen(brew, figures), .. Tolerance(brew, figures, tiring), .. Strength(figures), .. Handling(pitch),
            .. Harvest(pitch), .. Stray(brew, figures, tiring),
        ];

    private static IEnumerable<Caution> Told(BrewPlan brew) =>
        from line in brew.Lines
        where line is { Yeast: not null, Line.Attenuation: not null }
        let dextrin = line.Yeast!.DextrinShare.Ratio > 0 ? " It takes more than the sugars this mash is counted to give, so some dextrin: the mash may have given more than the forecast thinks." : ""
        select new Caution("yeast.told", Stage.Ferment, $"{line.Name}: {line.Line.Attenuation!.Value.Text} is your own figure, solved for this grist as {Number(100 * line.Yeast!.MaltotrioseShare.Ratio, "%")} of the maltotriose; change malts or mash and the attenuation moves.{dextrin}", "the recipe");

    private static IEnumerable<Caution> Cells(PitchAdvice pitch)
    {
        string needed = Number(pitch.CellsNeededBillions, "billion cells");
        if (pitch.CellsHighBillions is double high && high < pitch.CellsNeededBillions)
        {
            yield return new("pitch.under", Place.Pitch, $"{Number(high, "billion")} at most are pitched; {needed} are wanted. Make a starter or pitch more.", "pitch rates from Fix, from memory");
        }
        else if (pitch.CellsLowBillions is double low && low < pitch.CellsNeededBillions)
        {
            yield return new("pitch.doubtful", Place.Pitch, $"By the harsher of two rules of ageing only {Number(low, "billion")} of the cells live; {needed} are wanted.", Words.Trade);
        }
        else if (pitch.CellsBillions is null)
        {
            yield return new("pitch.unknown", Place.Pitch, $"{needed} are wanted; the recipe does not say how many its yeast holds. Write them as \"cells\".", Words.Trade);
        }
    }

    /// <summary>Free amino nitrogen that yeast wants, mg/L at 12 °P: O'Connor-Cox and Ingledew 1989, second hand; and the most that a wort all of malt holds there, from memory.</summary>
    private const double NitrogenWanted = 150, NitrogenOfMaltAtMost = 250, NitrogenAtPlato = 12;

    /// <summary>Sugar and honey bring next to no nitrogen: told where even the richest malt could not make up for it.</summary>
    private static IEnumerable<Caution> Nitrogen(BrewPlan brew, RunOutcome figures)
    {
        List<PlannedLine> fed = [.. brew.Lines.Where(line => line.Line.At.Point <= AdditionPoint.Ferment)];
        double all = fed.Sum(ExtractOf), malt = fed.Where(line => line.Makeup[Component.MaltBuffer] > 0).Sum(ExtractOf);
        if (!(all > 0) || malt / all * NitrogenOfMaltAtMost >= NitrogenWanted)
        {
            yield break;
        }

        double times = SucroseSolution.PlatoAt(figures[BeerReadouts.OriginalGravity]) / NitrogenAtPlato;
        string wants = Number(NitrogenWanted * times, "mg/L", "0"), has = Number(malt / all * NitrogenOfMaltAtMost * times, "mg/L", "0");
        string foods = brew.Lines.Any(line => line.Food is not null) ? " What foods bring is not counted." : "";
        yield return new(
            "pitch.nitrogen", Place.Pitch,
            $"Malt brings {Number(100 * malt / all, "%", "0")} of what goes in. Sugar and honey hold next to no nitrogen, on which yeast grows: about {wants} of free amino nitrogen are wanted here, and the malt brings {has} at most.{foods} Without it a fermentation sticks and smells. Give yeast nutrient by its maker's dose, and oxygen; grow no starter on sugar.",
            "O'Connor-Cox and Ingledew 1989, second hand: 150 mg/L at 12 °P; malt worts to 250 mg/L, from memory")
        {
            Severity = malt > 0 ? Severity.Note : Severity.Warning,
        };
    }

    private static double ExtractOf(PlannedLine line) => line.Makeup.ExtractMass + line.Makeup[Component.Starch];

    /// <summary>Says what the headline's bounds are between.</summary>
    private static IEnumerable<Caution> Tolerance(BrewPlan brew, RunOutcome figures, TiringYeast? tiring)
    {
        double would = (tiring?.Never ?? figures)[BeerReadouts.AlcoholByVolume];
        foreach (PlannedLine line in brew.Lines.Where(l => l.Yeast is not null).DistinctBy(l => l.Yeast!.Id))
        {
            UsualRange tires = line.Yeast!.AlcoholTolerance;
            if (would > tires.Low)
            {
                string bounds = tiring is null ? "" : $" Gravity and alcohol are told as bounds: from a yeast that stops at {Number(tires.Low, "%")} to one that never does.";
                yield return new(
                    "yeast.tolerance", Stage.Ferment,
                    $"{line.Name} tires between {Number(tires.Low, "")}and {Number(tires.High, "%")} of alcohol; fermented out this beer would come to {Number(would, "%")}, and {Number(figures[BeerReadouts.AlcoholByVolume], "%")} is counted.{bounds} It may stop early, and wake again in the package. Pitch more, give oxygen, feed sugars late, or take a yeast that bears more.",
                    "data/yeasts.csv, from memory")
                {
                    Severity = would > tires.High ? Severity.Warning : Severity.Note,
                };
            }
        }
    }

    /// <summary>Sugar that every brewer's yeast takes and this one has left, in glass.</summary>
    private static IEnumerable<Caution> Stray(BrewPlan brew, RunOutcome figures, TiringYeast? tiring)
    {
        List<PlannedLine> leaves = [.. brew.Lines.Where(l => l.Yeast is { MaltoseShare.Ratio: < 1 })];
        double likely = figures[PackageReadouts.StrayVolumes];
        double volumes = Math.Max(likely, tiring?.Early[PackageReadouts.StrayVolumes] ?? 0);
        if (BrewPlanner.IsGassed(brew.Recipe, brew.Kit) || (leaves.Count == 0 && tiring is null) || volumes < WorthAWord)
        {
            yield break;
        }

        string how = leaves.Count > 0
            ? $"{leaves[0].Name} leaves sugar that any other yeast eats: a few cells, from the air, the hose or a fruit,"
            : "A yeast that tired leaves sugar. Awake again, or joined by another, it";
        double primed = figures[BeerReadouts.CarbonationVolumes];
        double limit = BrewPlanner.PackageOf(brew.Recipe, brew.Kit)?.MaxVolumes?.Value.Volumes ?? YeastHazards.BottleLimit;
        yield return new(
            "bottle.strayYeast", Stage.Package,
            $"{how} could make up to {Number(volumes, "volumes")} more in the bottle, {Number(volumes + primed, "in all")}; it is made for {Number(limit, "volumes")}. Glass bursts, weeks later too. Keep this beer in a keg, cold, under a relief valve; bottles want pasteurising by a practised hand, or a fermentation that ends.",
            "stoichiometry of the sugars it leaves; limit of bottles by the kit, else " + Words.Trade)
        {
            Severity = likely + primed > limit ? Severity.Error : Severity.Warning,
        };
    }

    /// <summary>Volumes of gas from which a word is worth saying: what a tenth of a point makes. Our choice.</summary>
    private const double WorthAWord = 0.05;

    private static IEnumerable<Caution> Strength(RunOutcome figures)
    {
        if (figures[BeerReadouts.OriginalGravity] > PitchAdvice.StrongGravity)
        {
            yield return new("yeast.strongWort", Place.Pitch, $"Wort above {PitchAdvice.StrongGravity.ToString("0.000", CultureInfo.InvariantCulture)} is hard on yeast: pitch a third more, give more oxygen, and feed sugars late.", Words.Trade);
        }
    }

    private static IEnumerable<Caution> Handling(PitchAdvice pitch)
    {
        if (pitch.Starters.Count > 0)
        {
            yield return new("starter.hot", Place.Pitch, "Starter wort boils over easily, and hot glass cracks: boil in a pot, cool, then pour into a clean flask. Cover it loosely: it makes gas.", Words.Trade);
        }

        if (pitch.Starters.Any(starter => starter.Handling == StarterHandling.Still
            && starter.Steps.Any(step => !StarterGrowth.IsWithinPublishedRange(step.StartBillions, step.Litres))))
        {
            yield return new("starter.range", Place.Pitch, "The table of still starters begins at 5 and ends at 200 million cells per mL; a step here lies outside it, and its growth is that of the nearest row.", "White and Zainasheff 2010, Yeast, in part from memory");
        }

        if (pitch.OxygenMgPerL > AirGives)
        {
            yield return new("oxygen.fire", Place.Pitch, $"{Number(pitch.OxygenMgPerL.Value, "mg/L")} of oxygen is more than air gives. Pure oxygen feeds fire: no flame, no grease on the fittings, an open window.", Words.Trade);
        }
    }

    // At the racking: only then is the yeast in hand.
    private static IEnumerable<Caution> Harvest(PitchAdvice pitch) => pitch.HarvestDoubts.Count == 0
        ? []
        : [new("yeast.harvest", Stage.Rack, $"Better not pitch this beer's yeast again: {string.Join("; ", pitch.HarvestDoubts)}.", Words.Trade)];

    private static string Number(double value, string unit, string format = "0.#") => $"{value.ToString(format, CultureInfo.InvariantCulture)} {unit}";
}
