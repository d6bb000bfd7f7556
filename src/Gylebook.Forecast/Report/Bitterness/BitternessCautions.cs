using System.Globalization;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Boiling;

namespace Gylebook.Forecast.Report.Bitterness;

/// <summary>Where a bitterness should not be taken at its word.</summary>
internal static class BitternessCautions
{
    /// <summary>A twentieth less is worth a word; no taster finds less (common practice, no source).</summary>
    private const double WorthAWord = 0.95;

    /// <summary>All of them.</summary>
    public static IEnumerable<Caution> Of(BrewPlan brew, RunOutcome figures)
    {
        List<PlannedLine> hops = [.. brew.Lines.Where(l => l.Line.Kind == IngredientKind.Hop)];
        bool table = brew.Plan!.Bitterness == BitternessModel.TimeGravity;
        return table
            ? [.. TimeGravity(hops, figures), .. Range(brew, hops, figures), .. Height(brew, hops), .. Solubility(hops, figures, table), .. DryHops(hops, figures)]
            : [.. Kinetics(brew, hops), .. Solubility(hops, figures, table), .. DryHops(hops, figures)];
    }

    private static IEnumerable<Caution> TimeGravity(List<PlannedLine> hops, RunOutcome figures)
    {
        if (hops.Exists(l => l.Line.At.Point is AdditionPoint.Mash or AdditionPoint.KnockOut or AdditionPoint.Stand))
        {
            string other = Number(figures[BeerReadouts.OtherBitterness], "0");
            yield return new("bitterness.lowerBound", Stage.KnockOut, $"The time-and-gravity table knows only the boil. Hops in the mash or after knock-out add bitterness that is not counted. Isomerisation kinetics, which count it, come to {other} IBU for the whole beer.", "Tinseth 1997: table from 0 to 120 minutes of boil; Malowicki and Shellhammer 2005");
        }
    }

    private static IEnumerable<Caution> Range(BrewPlan brew, List<PlannedLine> hops, RunOutcome figures)
    {
        double gravity = (figures[BeerReadouts.CopperUpGravity] + figures[BeerReadouts.KnockOutGravity]) / 2;
        double boil = brew.Recipe.Boil?.Time.Value.Minutes ?? 0;
        if (hops.Exists(l => l.Line.At.Point is AdditionPoint.CopperUp or AdditionPoint.Boil && !TimeAndGravityBitterness.IsWithinPublishedRange(
            l.Line.At.Point == AdditionPoint.Boil ? l.Line.At.Count : boil, gravity)))
        {
            yield return new("bitterness.range", Stage.Boil, $"The time-and-gravity table runs to 120 min of boil and from 1.030 to 1.130; hops here boil longer, or in wort of {Number(gravity, "0.000")}, and its law is carried on.", "Tinseth 1997");
        }
    }

    /// <summary>The table is of kettles near sea level; kinetics say how much less an hour makes where wort boils cooler.</summary>
    private static IEnumerable<Caution> Height(BrewPlan brew, List<PlannedLine> hops)
    {
        double boils = BoilingPoint.CelsiusAt(brew.Kit.MetresAboveSea);
        double share = IsomerisationKinetics.IsoAlphaAcid(60, boils) / IsomerisationKinetics.IsoAlphaAcid(60, 100);
        if (share < WorthAWord && hops.Exists(l => l.Line.At.Point is AdditionPoint.CopperUp or AdditionPoint.Boil))
        {
            yield return new("bitterness.height", Stage.Boil, $"The time-and-gravity table knows no height. Wort boils at {Number(boils, "0.0")} °C here, where by kinetics an hour makes {Number(100 * share, "0")} % of the iso-alpha acid it makes at sea level: the beer may be less bitter by as much.", "Malowicki and Shellhammer 2005; ISO 2533");
        }
    }

    private static IEnumerable<Caution> Kinetics(BrewPlan brew, List<PlannedLine> hops)
    {
        if (brew.Recipe.Stand is { } stand && !IsomerisationKinetics.IsWithinPublishedRange(stand.Temperature.Value.Celsius) && hops.Exists(l => l.Line.At.Point <= AdditionPoint.Stand))
        {
            yield return new("bitterness.cool", Stage.Stand, "The rates were measured from 90 to 130 °C; below that they are carried on. Measured bitterness there is higher than the iso-alpha acid alone.", "Malowicki and Shellhammer 2005");
        }

        if (hops.Exists(l => l.Line.At.Point == AdditionPoint.Mash))
        {
            yield return new("bitterness.mashHops", Stage.Mash, "How much of the mash hops' alpha acid reaches the boil is known from one brewery only: a fifth.", "Justus 2018, MBAA TQ 55(3):67-74");
        }
    }

    /// <summary>More alpha acid than dissolves: the kinetics stop there, the table of time and gravity does not know it.</summary>
    private static IEnumerable<Caution> Solubility(List<PlannedLine> hops, RunOutcome figures, bool table)
    {
        double litres = figures[BeerReadouts.KnockOutLitres];
        double added = hops.Where(l => l.Line.At.Point is > AdditionPoint.Mash and <= AdditionPoint.Stand).Sum(l => l.Kilograms * l.Alpha * 1e6);
        if (!(litres > 0) || added / litres <= AlphaAcidSolubility.AllDissolvesUpTo)
        {
            yield break;
        }

        string beyond = AlphaAcidSolubility.IsWithinPublishedRange(added / litres) ? "" : " Nobody has measured so much.";
        string dissolved = Number(AlphaAcidSolubility.Dissolved(added / litres), "0"), other = Number(figures[BeerReadouts.OtherBitterness], "0");
        string counts = table
            ? $"The time-and-gravity table does not know it, and counts them all: its number is too high. Isomerisation kinetics, which know it, come to {other} IBU."
            : $"{dissolved} are counted.";
        yield return new(
            "bitterness.solubility", Stage.Boil,
            Invariant($"{Number(added / litres, "0")} mg/L of alpha acid go in; above {AlphaAcidSolubility.AllDissolvesUpTo:0} they do not all dissolve, and more hops give little more bitterness. {counts}{beyond}"),
            "hobby literature, one experimenter")
        {
            Severity = table ? Severity.Warning : Severity.Note,
        };
    }

    private static IEnumerable<Caution> DryHops(List<PlannedLine> hops, RunOutcome figures)
    {
        double grams = hops.Where(l => l.Line.At.Point >= AdditionPoint.Pitch).Sum(l => l.Kilograms * 1000);
        double litres = figures[BeerReadouts.PackagedLitres];
        if (grams > 0 && litres > 0)
        {
            string most = Number(grams / litres * TradeRules.DryHopMost, "0.0");
            yield return new("bitterness.dryHops", Stage.Ferment, $"Dry hops are counted as no bitterness. Their humulinone can add at most about {most} mg/L, as iso-alpha acid, to a beer of little bitterness; a bitter beer loses iso-alpha acid to them instead. The IBU method over-states both.", "Maye and Smith 2018, Brauwelt International; Parkin and Shellhammer 2017, JASBC 75:363-368");
        }
    }

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
