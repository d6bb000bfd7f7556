using System.Globalization;
using Gylebook.Forecast.LayingOut;
using Gylebook.Forecast.Running;
using Gylebook.Forecast.State;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Boiling;
using Gylebook.Science.Mashing;

namespace Gylebook.Forecast.Telling;

/// <summary>Hazards at the step that has them, and limits of the models that were used.</summary>
internal static class Cautions
{
    private const string Trade = "common practice, no source";

    /// <summary>All cautions, in the order of the run.</summary>
    public static IReadOnlyList<Caution> Of(LaidOut laidOut, RunRecord record, HeadlineFigures figures) =>
    [
        .. HotSide(laidOut, record),
        .. Boil(laidOut),
        .. ColdSide(laidOut),
        .. Packaging(laidOut, record),
        .. Models(laidOut, figures),
        new("alcohol", Severity.Note, "pour", "Beer is for adults. Home production and sale are ruled by local law.", "local law"),
    ];

    private static IEnumerable<Caution> HotSide(LaidOut laidOut, RunRecord record)
    {
        if (laidOut.Recipe.Mash is { Method: not MashMethod.None } mash)
        {
            yield return new("scald.liquor", Severity.Warning, "strike", "Hot liquor scalds. Keep children and animals away, wear boots, and move it in small amounts.", Trade);
            if (mash.Method is MashMethod.Bag or MashMethod.Part)
            {
                string kg = WetBag(record).ToString("0.#", CultureInfo.InvariantCulture);
                yield return new("lift.heavy", Severity.Warning, "lift", $"The bag weighs about {kg} kg wet and hot. Use a pulley or a second pair of hands; let it drip over the kettle.", Trade);
            }
        }

        foreach (LaidLine line in laidOut.Lines.Where(l => l.Line.Kind == IngredientKind.Acid))
        {
            yield return new("acid.handle", Severity.Warning, Words.Of(line.Line.At), $"{line.Name}: goggles and gloves; acid into water, never water into acid; a little at a time.", Trade);
        }
    }

    /// <summary>The bag as it comes up: its solids, and half as much wort again as it holds once drained.</summary>
    private static double WetBag(RunRecord record)
    {
        Wort bed = record.Losses.Where(l => l.Loss == Loss.HeldInGrain).Select(l => l.What).FirstOrDefault();
        double liquid = bed.LiquidMass;
        return bed.Mass - liquid + (liquid * StartingValues.Of("mash.liftHeldFactor").Value);
    }

    private static IEnumerable<Caution> Boil(LaidOut laidOut)
    {
        foreach (LaidLine line in laidOut.Lines.Where(l => l.Line.At.Point is AdditionPoint.CopperUp or AdditionPoint.Boil or AdditionPoint.KnockOut or AdditionPoint.Stand))
        {
            string at = Words.Of(line.Line.At);
            if (line.Line.Kind == IngredientKind.Hop && line.Line.At.Point is AdditionPoint.Boil or AdditionPoint.CopperUp)
            {
                yield return new("boilover.hops", Severity.Warning, at, "Foam rises when hops go in. Stand back, stir, turn down.", Trade);
            }
            else if (line.Food is { Water: < 0.2 } || (line.Sugar is not null && line.Line.Kind != IngredientKind.Hop))
            {
                yield return FoodCautions.Powder(line.Name, at);
            }
        }
    }

    private static IEnumerable<Caution> ColdSide(LaidOut laidOut)
    {
        foreach (LaidLine line in laidOut.Lines.Where(l => l.Line.At.Point >= AdditionPoint.Ferment && (l.Food is not null || l.Sugar is not null)))
        {
            string at = Words.Of(line.Line.At);
            if (line.Line.At.Point == AdditionPoint.Ferment)
            {
                yield return FoodCautions.Foam(line.Name, at);
            }

            if (line.Food is { Insoluble: > 0 })
            {
                yield return FoodCautions.Raw(line.Name, at);
            }
        }

        yield return new("co2.room", Severity.Warning, "ferment", "Fermentation fills low and closed rooms with carbon dioxide. Ventilate, and never work alone in a pit or a chest.", "exposure limit 5 000 ppm over 8 h (OSHA PEL)");
    }

    private static IEnumerable<Caution> Packaging(LaidOut laidOut, RunRecord record)
    {
        if (LayOut.IsGassed(laidOut.Recipe, laidOut.Kit))
        {
            yield return new("pressure.keg", Severity.Warning, "package", "The weakest rated part sets the pressure. Use a relief valve, and keep the gas cylinder upright, chained and in an aired room.", Trade);
        }
        else
        {
            yield return new("pressure.glass", Severity.Warning, "package", "Bottle only when the gravity has stood still for three days: one point left to ferment is half a volume more in glass. Use sound bottles made for pressure, and keep them in a closed box.", "stoichiometry; resting time common practice, no source");
        }

        if (record.Stages.Any(s => s.Stage == Stage.Package && s.State.Wort[Component.HazeStarch] > 0))
        {
            yield return new("starch.later", Severity.Warning, "package", "Starch that met no enzyme hangs in the beer as haze. A diastatic or wild yeast could still eat it in the package and raise the pressure.", Trade);
        }
    }

    private static IEnumerable<Caution> Models(LaidOut laidOut, HeadlineFigures figures)
    {
        if (laidOut.Lines.Any(l => l.Line.Kind == IngredientKind.Hop && l.Line.At.Point is AdditionPoint.Mash or AdditionPoint.KnockOut or AdditionPoint.Stand))
        {
            yield return new("bitterness.lowerBound", Severity.Note, "knock-out", "The time-and-gravity table knows only the boil. Hops in the mash or after knock-out add bitterness that is not counted.", "Tinseth 1997: table from 0 to 120 minutes of boil");
        }

        if (laidOut.Lines.Any(l => (l.Food is not null && l.Line.Kind == IngredientKind.Food) || (l.Sugar is not null && (l.Sugar.Colour is null || l.Line.At.Point >= AdditionPoint.KnockOut))))
        {
            yield return new("colour.lowerBound", Severity.Note, "knock-out", "A food of unknown colour is counted as colourless: the beer is at least this dark.", "no published colour for these foods");
        }

        if (!WortColour.IsWithinPublishedRange(figures[Figure.Colour]))
        {
            yield return new("colour.range", Severity.Note, "knock-out", "Darker than the colour law was fitted to (50 SRM).", "Morey's fit, valid below 50 SRM");
        }

        if (figures[Figure.Sodium] > 0)
        {
            yield return new("sodium.lowerBound", Severity.Note, "package", "Sodium from foods and salts only: your liquor's own comes on top.", "mass balance");
        }

        if (figures[Figure.OriginalGravity] > 1.083)
        {
            yield return new("gravity.strong", Severity.Note, "ferment", "Above 20 °P the two published ways to a beer's gravity part by up to 0.002.", "Balling against Tabarié, docs/science/extract-and-gravity.md");
        }

        double rest = RunParameters.ConvertingCelsius(laidOut.Recipe);
        if (laidOut.Plan!.Mash.GristKilograms > 0 && !AttenuationLimit.IsWithinPublishedRange(rest))
        {
            yield return new("attenuation.range", Severity.Note, "mash", "The published series of attenuation against mash temperature runs from 65 to 80 °C; below it the limit is from memory.", "docs/science/mashing.md");
        }
    }
}
