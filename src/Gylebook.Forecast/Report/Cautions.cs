using System.Globalization;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Foods;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Records;
using Gylebook.Forecast.Report.Acidity;
using Gylebook.Forecast.Report.Beer;
using Gylebook.Forecast.Report.Bitterness;
using Gylebook.Forecast.Report.Cooling;
using Gylebook.Forecast.Report.Mashing;
using Gylebook.Forecast.Report.Pitching;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Boiling;
using Gylebook.Science.Liquids;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Report;

/// <summary>Hazards at the step that has them, and limits of the models that were used.</summary>
internal static class Cautions
{
    /// <summary>All cautions, in the order of the run.</summary>
    public static IReadOnlyList<Caution> Of(
        BrewPlan brew, RunRecord record, RunOutcome figures, WaterOutcome? water, PitchAdvice? pitch, TiringYeast? tiring, Chilling? chilling, PhReport ph) =>
        [.. All(brew, record, figures, water, pitch, tiring, chilling, ph).Distinct().OrderBy(caution => caution.Place)];

    private static IEnumerable<Caution> All(
        BrewPlan brew, RunRecord record, RunOutcome figures, WaterOutcome? water, PitchAdvice? pitch, TiringYeast? tiring, Chilling? chilling, PhReport ph) =>
    [
        .. HotSide(brew, record, water is not null),
        .. AcidityCautions.Of(brew, record.Outcome, ph),
        .. Boil(brew, figures),
        .. BitternessCautions.Of(brew, figures),
        .. ChillCautions.Of(chilling),
        .. YeastCautions.Of(brew, figures, pitch, tiring),
        .. Foods(brew, figures),
        .. ColdSide(brew, figures),
        .. Packaging(brew, record, figures),
        .. FatAdvice.For(figures[BeerReadouts.Fat]).Cautions,
        .. Models(brew, figures),
        .. MashCautions.Of(brew),
        .. StarchCautions.Of(brew, figures),
        .. IonsOf(figures, water is not null),
        .. water?.Cautions ?? [],
        new("alcohol", Stage.Pour, "Beer is for adults. Home production and sale are ruled by local law.", "local law"),
    ];

    /// <summary>
    /// A wet bag from which its weight is worth a word, kg. Our choice, well below the 9 kg that the revised NIOSH lifting equation
    /// (1993: 23 kg · 25 cm / 63 cm) gives for a load at arm's length, since this one is hot and drips. Equation from memory.
    /// </summary>
    private const double HeavyBag = 5;

    private static IEnumerable<Caution> HotSide(BrewPlan brew, RunRecord record, bool isTreated)
    {
        if (brew.Recipe.Mash is { Method: not MashMethod.None } mash)
        {
            if (!isTreated)
            {
                // Whoever treats the liquor is told the same, and when to do it, with the treatment.
                yield return new("scald.liquor", Stage.Strike, "Hot liquor scalds. Keep children and animals away, wear boots, and move it in small amounts.", Words.Trade);
            }

            double lifted = record.Outcome[Heat.LiftKilograms];
            if (mash.Method is MashMethod.Bag or MashMethod.Part && lifted >= HeavyBag)
            {
                string kg = lifted.ToString("0.#", CultureInfo.InvariantCulture);
                yield return new("lift.heavy", Stage.Lift, $"The bag weighs about {kg} kg wet and hot. Use a pulley or a second pair of hands; let it drip over the kettle.", Words.Trade);
            }
        }

        foreach (PlannedLine line in brew.Lines.Where(l => l.Salt is { Caution.Length: > 0 }))
        {
            yield return new("salt.handle", line.Line.At.ToPlace(), $"{Words.Sentence(line.Name)}: {line.Salt!.Caution}", Words.Trade);
        }

        foreach (PlannedLine line in brew.Lines.Where(l => l.Line.Kind == IngredientKind.Acid))
        {
            yield return TreatmentCautions.ForAcid(line.Acid!.Acid.Acid, line.Line.At.ToPlace());
        }
    }

    private static IEnumerable<Caution> Boil(BrewPlan brew, RunOutcome figures)
    {
        foreach (PlannedLine line in brew.Lines.Where(l => l.Line.At.Point is AdditionPoint.CopperUp or AdditionPoint.Boil or AdditionPoint.KnockOut or AdditionPoint.Stand))
        {
            if (line.Line.Kind == IngredientKind.Hop && line.Line.At.Point is AdditionPoint.Boil or AdditionPoint.CopperUp)
            {
                yield return new("boilover.hops", line.Line.At.ToPlace(), "Foam rises when hops go in. Stand back, stir, turn down.", Words.Trade);
            }
            else if (line.Sugar is not null)
            {
                yield return FoodCautions.BoilOver(line.Name, DoseOf(brew, line, figures), line.Sugar.Water > FoodMakeup.MostCrystalWater);
            }
        }
    }

    /// <summary>Every food's own hazards, wherever it goes in.</summary>
    private static IEnumerable<Caution> Foods(BrewPlan brew, RunOutcome figures) => brew.Lines
        .Where(line => line.Food is not null)
        .Select(line => (Food: line.NamedFood!, Dose: DoseOf(brew, line, figures)))
        .Where(dosed => dosed.Dose.Into.Litres > 0)
        .SelectMany(dosed => FoodCautions.Of(dosed.Food, dosed.Dose))
        .Where(caution => caution.Code != "starch.later");

    /// <summary>A line as a dose: into the cast up to fermentation, into the packaged beer after it, or into its portion of either.</summary>
    private static Dose DoseOf(BrewPlan brew, PlannedLine line, RunOutcome figures)
    {
        double litres = figures[line.Line.At.Point >= AdditionPoint.Rack ? BeerReadouts.PackagedLitres : BeerReadouts.CastLitres];
        double share = brew.Recipe.Portions.FirstOrDefault(p => p.Name == line.Line.Portion)?.Share.Value.Ratio ?? 1;
        return new(Mass.FromKilograms(line.Kilograms), line.Line.At, VolumeAt20C.FromLitres(litres * share)) { Height = brew.Kit.Altitude };
    }

    private static IEnumerable<Caution> ColdSide(BrewPlan brew, RunOutcome figures)
    {
        foreach (PlannedLine line in brew.Lines.Where(l => l.Line.At.Point == AdditionPoint.Ferment && l.Sugar is not null))
        {
            yield return FoodCautions.FermenterFoam(line.Name, DoseOf(brew, line, figures));
        }

        yield return new("co2.room", Stage.Ferment, "Fermentation fills low and closed rooms with carbon dioxide. Ventilate, and never work alone in a pit or a chest.", "exposure limit 5 000 ppm over 8 h (OSHA PEL)");
    }

    /// <summary>Alcohol below which a beer with sugar left is a food that spoils, % by volume. Common practice, no source.</summary>
    private const double LittleAlcohol = 2.5;

    private static IEnumerable<Caution> Packaging(BrewPlan brew, RunRecord record, RunOutcome figures)
    {
        if (figures[BeerReadouts.AlcoholByVolume] < LittleAlcohol)
        {
            yield return new("alcohol.little", Stage.Package, "So little alcohol protects nothing: germs that make people ill can grow in it. Bring it below pH 4.6, keep it at fridge temperature, drink it soon, and pasteurise what is to keep.", Words.Trade);
        }

        if (BrewPlanner.IsGassed(brew.Recipe, brew.Kit))
        {
            yield return new("pressure.keg", Stage.Package, "The weakest rated part sets the pressure. Use a relief valve, and keep the gas cylinder upright, chained and in an aired room.", Words.Trade);
        }
        else
        {
            yield return new("pressure.glass", Stage.Package, "Bottle only when the gravity has stood still for three days: one point left to ferment is half a volume more in glass. Use sound bottles made for pressure, and keep them in a closed box.", "stoichiometry; resting time common practice, no source");
        }

        foreach (Wort beer in record.Stages.Where(s => s.Stage == Stage.Package).Select(s => s.Wort))
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
            yield return new("ions.malt", Stage.Package, "Ions in the glass are those of liquor, salts, acids and foods, and what malt brings: from published worts and beers, in which some liquor is counted too. What break, hops and yeast take away is not known, and of whole fruit all is counted as given up.", "docs/science/liquor.md");
        }
        else if (figures[BeerReadouts.Sodium] > 0)
        {
            yield return new("sodium.lowerBound", Stage.Package, "Sodium from foods and salts only: your liquor's own and malt's come on top. A water plan tells them.", "mass balance");
        }
    }

    private static IEnumerable<Caution> Models(BrewPlan brew, RunOutcome figures)
    {
        if (ServedColour.IsLowerBound(brew))
        {
            yield return new("colour.lowerBound", Stage.KnockOut, "A food of unknown colour is counted as colourless: the beer is at least this dark.", "no published colour for these foods");
        }

        if (!WortColour.IsWithinPublishedRange(figures[BeerReadouts.Colour]))
        {
            yield return new("colour.range", Stage.KnockOut, "Darker than the colour law was fitted to (50 SRM).", "Morey's fit, valid below 50 SRM");
        }

        if (!SucroseSolution.IsWithinPublishedRange(SucroseSolution.PlatoAt(figures[BeerReadouts.OriginalGravity])))
        {
            yield return new("gravity.range", Stage.Ferment, "Stronger than the sugar table that gravity is read by (30 °P, 1.129): its curve is carried on.", "NBS Circular C440, docs/science/extract-and-gravity.md");
        }

        if (figures[BeerReadouts.OriginalGravity] > 1.083)
        {
            yield return new("gravity.strong", Stage.Ferment, "Above 20 °P the two published ways to a beer's gravity part by up to 0.002.", "Balling against Tabarié, docs/science/extract-and-gravity.md");
        }
    }
}
