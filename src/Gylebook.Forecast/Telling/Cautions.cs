using System.Globalization;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Dosing;
using Gylebook.Forecast.LayingOut;
using Gylebook.Forecast.Treating;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Boiling;
using Gylebook.Science.Liquids;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Telling;

/// <summary>Hazards at the step that has them, and limits of the models that were used.</summary>
internal static class Cautions
{
    private const string Trade = "common practice, no source";

    /// <summary>All cautions, in the order of the run.</summary>
    public static IReadOnlyList<Caution> Of(
        LaidOut laidOut, RunRecord record, RunOutcome figures, WaterOutcome? water, PitchAdvice? pitch, Chilling? chilling, PhTold ph) =>
        [.. All(laidOut, record, figures, water, pitch, chilling, ph).Distinct().OrderBy(caution => RunOrder.Of(caution.Where))];

    private static IEnumerable<Caution> All(
        LaidOut laidOut, RunRecord record, RunOutcome figures, WaterOutcome? water, PitchAdvice? pitch, Chilling? chilling, PhTold ph) =>
    [
        .. HotSide(laidOut, record, water is not null),
        .. AcidityCautions.Of(laidOut, record, ph),
        .. Boil(laidOut, figures),
        .. BitternessCautions.Of(laidOut, figures),
        .. ChillCautions.Of(chilling),
        .. YeastCautions.Of(laidOut, figures, pitch),
        .. Foods(laidOut, figures),
        .. ColdSide(laidOut, figures),
        .. Packaging(laidOut, record, figures),
        .. Models(laidOut, figures),
        .. MashCautions.Of(laidOut),
        .. IonsOf(figures, water is not null),
        .. water?.Cautions ?? [],
        new("alcohol", Severity.Note, "pour", "Beer is for adults. Home production and sale are ruled by local law.", "local law"),
    ];

    private static IEnumerable<Caution> HotSide(LaidOut laidOut, RunRecord record, bool isTreated)
    {
        if (laidOut.Recipe.Mash is { Method: not MashMethod.None } mash)
        {
            if (!isTreated)
            {
                // Whoever treats the liquor is told the same, and when to do it, with the treatment.
                yield return new("scald.liquor", Severity.Warning, "strike", "Hot liquor scalds. Keep children and animals away, wear boots, and move it in small amounts.", Trade);
            }

            if (mash.Method is MashMethod.Bag or MashMethod.Part)
            {
                string kg = WetBag(record).ToString("0.#", CultureInfo.InvariantCulture);
                yield return new("lift.heavy", Severity.Warning, "lift", $"The bag weighs about {kg} kg wet and hot. Use a pulley or a second pair of hands; let it drip over the kettle.", Trade);
            }
        }

        foreach (LaidLine line in laidOut.Lines.Where(l => l.Salt is { Caution.Length: > 0 }))
        {
            yield return new("salt.handle", Severity.Warning, Words.Of(line.Line.At), $"{Words.Sentence(line.Name)}: {line.Salt!.Caution}", Trade);
        }

        foreach (LaidLine line in laidOut.Lines.Where(l => l.Line.Kind == IngredientKind.Acid))
        {
            yield return TreatmentCautions.ForAcid(line.Acid!.Acid.Acid, Words.Of(line.Line.At));
        }
    }

    /// <summary>The bag as it comes up: its solids, and half as much wort again as it holds once drained.</summary>
    private static double WetBag(RunRecord record)
    {
        Wort bed = record.Losses.Where(l => l.Loss == Loss.HeldInGrain).Select(l => l.What).FirstOrDefault();
        double liquid = bed.LiquidMass;
        return bed.Mass - liquid + (liquid * StartingValues.Of("mash.liftHeldFactor").Value);
    }

    private static IEnumerable<Caution> Boil(LaidOut laidOut, RunOutcome figures)
    {
        foreach (LaidLine line in laidOut.Lines.Where(l => l.Line.At.Point is AdditionPoint.CopperUp or AdditionPoint.Boil or AdditionPoint.KnockOut or AdditionPoint.Stand))
        {
            if (line.Line.Kind == IngredientKind.Hop && line.Line.At.Point is AdditionPoint.Boil or AdditionPoint.CopperUp)
            {
                yield return new("boilover.hops", Severity.Warning, Words.Of(line.Line.At), "Foam rises when hops go in. Stand back, stir, turn down.", Trade);
            }
            else if (line.Sugar is not null)
            {
                yield return FoodCautions.BoilOver(line.Name, DoseOf(laidOut, line, figures));
            }
        }
    }

    /// <summary>Every food's own hazards, wherever it goes in.</summary>
    private static IEnumerable<Caution> Foods(LaidOut laidOut, RunOutcome figures) => laidOut.Lines
        .Where(line => line.Food is not null && DoseOf(laidOut, line, figures).Into.Litres > 0)
        .SelectMany(line => FoodCautions.Of(line.Food! with { Name = line.Name }, DoseOf(laidOut, line, figures)))
        .Where(caution => caution.Code != "starch.later");

    /// <summary>A line as a dose: into the cast up to fermentation, into the packaged beer after it, or into its portion of either.</summary>
    private static Dose DoseOf(LaidOut laidOut, LaidLine line, RunOutcome figures)
    {
        double litres = figures[line.Line.At.Point >= AdditionPoint.Rack ? BeerReadouts.PackagedLitres : BeerReadouts.CastLitres];
        double share = laidOut.Recipe.Portions.FirstOrDefault(p => p.Name == line.Line.Portion)?.Share.Value.Ratio ?? 1;
        return new(Mass.FromKilograms(line.Kilograms), line.Line.At, VolumeAt20C.FromLitres(litres * share)) { Height = laidOut.Kit.Altitude };
    }

    private static IEnumerable<Caution> ColdSide(LaidOut laidOut, RunOutcome figures)
    {
        foreach (LaidLine line in laidOut.Lines.Where(l => l.Line.At.Point == AdditionPoint.Ferment && l.Sugar is not null))
        {
            yield return FoodCautions.FermenterFoam(line.Name, DoseOf(laidOut, line, figures));
        }

        yield return new("co2.room", Severity.Warning, "ferment", "Fermentation fills low and closed rooms with carbon dioxide. Ventilate, and never work alone in a pit or a chest.", "exposure limit 5 000 ppm over 8 h (OSHA PEL)");
    }

    /// <summary>Alcohol below which a beer with sugar left is a food that spoils, % by volume. Common practice, no source.</summary>
    private const double LittleAlcohol = 2.5;

    private static IEnumerable<Caution> Packaging(LaidOut laidOut, RunRecord record, RunOutcome figures)
    {
        if (figures[BeerReadouts.AlcoholByVolume] < LittleAlcohol)
        {
            yield return new("alcohol.little", Severity.Warning, "package", "So little alcohol protects nothing: germs that make people ill can grow in it. Bring it below pH 4.6, keep it at fridge temperature, drink it soon, and pasteurise what is to keep.", Trade);
        }

        if (LayOut.IsGassed(laidOut.Recipe, laidOut.Kit))
        {
            yield return new("pressure.keg", Severity.Warning, "package", "The weakest rated part sets the pressure. Use a relief valve, and keep the gas cylinder upright, chained and in an aired room.", Trade);
        }
        else
        {
            yield return new("pressure.glass", Severity.Warning, "package", "Bottle only when the gravity has stood still for three days: one point left to ferment is half a volume more in glass. Use sound bottles made for pressure, and keep them in a closed box.", "stoichiometry; resting time common practice, no source");
        }

        foreach (Wort beer in record.Stages.Where(s => s.Stage == Stage.Package).Select(s => s.State.Wort))
        {
            double haze = 1000 * beer[Component.HazeStarch] / beer.Litres;
            if (haze > FoodCautions.StarchWorthAWord)
            {
                yield return FoodCautions.StarchLater(haze);
            }
        }
    }

    private static IEnumerable<Caution> IonsOf(RunOutcome figures, bool knowsLiquor)
    {
        if (knowsLiquor)
        {
            yield return new("ions.lowerBound", Severity.Note, "package", "Ions are those of liquor, salts and acids, and sodium and potassium also of foods whose label or analysis states them: malt brings its own on top, in a 12 °P wort about 550 mg/L of potassium, 100 of magnesium, 35 of calcium, 30 of sodium.", "Holzmann and Piendl, as cited in trade literature");
        }
        else if (figures[BeerReadouts.Sodium] > 0)
        {
            yield return new("sodium.lowerBound", Severity.Note, "package", "Sodium from foods and salts only: your liquor's own comes on top. A water plan tells it.", "mass balance");
        }
    }

    private static IEnumerable<Caution> Models(LaidOut laidOut, RunOutcome figures)
    {
        if (BeerColourTold.IsLowerBound(laidOut))
        {
            yield return new("colour.lowerBound", Severity.Note, "knock-out", "A food of unknown colour is counted as colourless: the beer is at least this dark.", "no published colour for these foods");
        }

        if (!WortColour.IsWithinPublishedRange(figures[BeerReadouts.Colour]))
        {
            yield return new("colour.range", Severity.Note, "knock-out", "Darker than the colour law was fitted to (50 SRM).", "Morey's fit, valid below 50 SRM");
        }

        if (!SucroseSolution.IsWithinPublishedRange(SucroseSolution.PlatoAt(figures[BeerReadouts.OriginalGravity])))
        {
            yield return new("gravity.range", Severity.Note, "ferment", "Stronger than the sugar table that gravity is read by (30 °P, 1.129): its curve is carried on.", "NBS Circular C440, docs/science/extract-and-gravity.md");
        }

        if (figures[BeerReadouts.OriginalGravity] > 1.083)
        {
            yield return new("gravity.strong", Severity.Note, "ferment", "Above 20 °P the two published ways to a beer's gravity part by up to 0.002.", "Balling against Tabarié, docs/science/extract-and-gravity.md");
        }
    }
}
