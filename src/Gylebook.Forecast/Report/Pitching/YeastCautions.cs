using Gylebook.Engine.State;
using System.Globalization;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Fermenting;

namespace Gylebook.Forecast.Report.Pitching;

/// <summary>Where a recipe asks much of its yeast: cells, strength, alcohol; and care with starters and oxygen.</summary>
internal static class YeastCautions
{
    private const double AirGives = 8;

    /// <summary>All of them.</summary>
    public static IEnumerable<Caution> Of(BrewPlan brew, RunOutcome figures, PitchAdvice? pitch) =>
        pitch is null ? [] : [.. Told(brew), .. Cells(pitch), .. Strength(brew, figures), .. Handling(pitch), .. Harvest(pitch)];

    private static IEnumerable<Caution> Told(BrewPlan brew) =>
        from line in brew.Lines
        where line is { Yeast: not null, Line.Attenuation: not null }
        let dextrin = line.Yeast!.DextrinShare.Ratio > 0 ? " It takes more than the sugars this mash is counted to give, so some dextrin: the mash may have given more than the forecast thinks." : ""
        select new Caution("yeast.told", Severity.Note, Stage.Ferment, $"{line.Name}: {line.Line.Attenuation!.Value.Text} is your own figure, solved for this grist as {Number(100 * line.Yeast!.MaltotrioseShare.Ratio, "%")} of the maltotriose; change malts or mash and the attenuation moves.{dextrin}", "the recipe");

    private static IEnumerable<Caution> Cells(PitchAdvice pitch)
    {
        string needed = Number(pitch.CellsNeededBillions, "billion cells");
        if (pitch.CellsHighBillions is double high && high < pitch.CellsNeededBillions)
        {
            yield return new("pitch.under", Severity.Warning, Place.Pitch, $"{Number(high, "billion")} at most are pitched; {needed} are wanted. Make a starter or pitch more.", "pitch rates from Fix, from memory");
        }
        else if (pitch.CellsLowBillions is double low && low < pitch.CellsNeededBillions)
        {
            yield return new("pitch.doubtful", Severity.Note, Place.Pitch, $"By the harsher of two rules of ageing only {Number(low, "billion")} of the cells live; {needed} are wanted.", Words.Trade);
        }
        else if (pitch.CellsBillions is null)
        {
            yield return new("pitch.unknown", Severity.Note, Place.Pitch, $"{needed} are wanted; the recipe does not say how many its yeast holds. Write them as \"cells\".", Words.Trade);
        }
    }

    private static IEnumerable<Caution> Strength(BrewPlan brew, RunOutcome figures)
    {
        double alcohol = figures[BeerReadouts.AlcoholByVolume];
        foreach (PlannedLine line in brew.Lines.Where(l => l.Yeast is not null).DistinctBy(l => l.Yeast!.Id))
        {
            UsualRange tires = line.Yeast!.AlcoholTolerance;
            if (alcohol > tires.Low)
            {
                Severity severity = alcohol > tires.High ? Severity.Warning : Severity.Note;
                yield return new("yeast.tolerance", severity, Stage.Ferment, $"{line.Name} tires between {Number(tires.Low, "")}and {Number(tires.High, "%")} of alcohol; this beer would come to {Number(alcohol, "%")}. It may stop early, and wake again in the package.", "data/yeasts.csv, from memory");
            }
        }

        if (figures[BeerReadouts.OriginalGravity] > PitchAdvice.StrongGravity)
        {
            yield return new("yeast.strongWort", Severity.Note, Place.Pitch, $"Wort above {PitchAdvice.StrongGravity.ToString("0.000", CultureInfo.InvariantCulture)} is hard on yeast: pitch a third more, give more oxygen, and feed sugars late.", Words.Trade);
        }
    }

    private static IEnumerable<Caution> Handling(PitchAdvice pitch)
    {
        if (pitch.Starters.Count > 0)
        {
            yield return new("starter.hot", Severity.Warning, Place.Pitch, "Starter wort boils over easily, and hot glass cracks: boil in a pot, cool, then pour into a clean flask. Cover it loosely: it makes gas.", Words.Trade);
        }

        if (pitch.Starters.Any(starter => starter.Handling == StarterHandling.Still
            && starter.Steps.Any(step => !StarterGrowth.IsWithinPublishedRange(step.StartBillions, step.Litres))))
        {
            yield return new("starter.range", Severity.Note, Place.Pitch, "The table of still starters begins at 5 and ends at 200 million cells per mL; a step here lies outside it, and its growth is that of the nearest row.", "White and Zainasheff 2010, Yeast, in part from memory");
        }

        if (pitch.OxygenMgPerL > AirGives)
        {
            yield return new("oxygen.fire", Severity.Warning, Place.Pitch, $"{Number(pitch.OxygenMgPerL.Value, "mg/L")} of oxygen is more than air gives. Pure oxygen feeds fire: no flame, no grease on the fittings, an open window.", Words.Trade);
        }
    }

    // At the racking: only then is the yeast in hand.
    private static IEnumerable<Caution> Harvest(PitchAdvice pitch) => pitch.HarvestDoubts.Count == 0
        ? []
        : [new("yeast.harvest", Severity.Note, Stage.Rack, $"Better not pitch this beer's yeast again: {string.Join("; ", pitch.HarvestDoubts)}.", Words.Trade)];

    private static string Number(double value, string unit) => Invariant($"{value:0.#} {unit}");
}
