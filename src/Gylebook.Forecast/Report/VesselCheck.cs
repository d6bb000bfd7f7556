using Gylebook.Engine.Readouts;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Foods;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report.Beer;
using Gylebook.Forecast.Report.Mashing;
using Gylebook.Forecast.Report.Stages;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;

namespace Gylebook.Forecast.Report;

/// <summary>Does it fit? Kettle with grain and with foam, fermenter with foam, package with its gas.</summary>
internal static class VesselCheck
{
    /// <summary>All that does not fit, or only just.</summary>
    public static IEnumerable<Finding> Findings(BrewPlan brew, RunOutcome figures, IReadOnlyList<StageRow> stages, PackageOutlook package) =>
    [
        .. Mash(brew, stages),
        .. Kettle(brew, stages),
        .. Fermenter(brew, figures),
        .. Package(brew, figures),
        .. Keg(brew, package),
        .. Yeast(brew),
        .. Enzyme(figures),
    ];

    private static IEnumerable<Finding> Mash(BrewPlan brew, IReadOnlyList<StageRow> stages)
    {
        if (stages.FirstOrDefault(s => s.Stage == Stage.Mash) is not { } mash)
        {
            yield break;
        }

        double litres = mash.VesselLitres;
        bool tun = RunParameters.UsesTun(brew.Recipe, brew.Kit);
        double brim = (tun ? brew.Kit.Tun!.Brim : brew.Kit.Kettle.Brim).Value.Litres;
        string where = tun ? "kit.tun.brim" : "kit.kettle.brim";
        if (litres > brim)
        {
            yield return Over("mash.brim", Severity.Error, where, "grain and liquor together stand above the brim", litres, brim);
        }
        else if (!tun && litres > brew.Kit.Kettle.Usable.Value.Litres)
        {
            yield return Over("mash.headspace", Severity.Warning, "kit.kettle.usable", "grain and liquor together leave less room than you allow", litres, brew.Kit.Kettle.Usable.Value.Litres);
        }
    }

    /// <summary>Foam at the boil wants a tenth of the usable litres, and a litre more for each 10 g/L of powder: no source.</summary>
    private static IEnumerable<Finding> Kettle(BrewPlan brew, IReadOnlyList<StageRow> stages)
    {
        if (brew.Recipe.Boil is null || stages.FirstOrDefault(s => s.Stage == Stage.CopperUp) is not { } copperUp)
        {
            yield break;
        }

        Kettle kettle = brew.Kit.Kettle;
        double boiling = copperUp.LitresAt20C * 1.04;
        double powder = brew.Lines
            .Where(l => l.Food is { } food && FoodCautions.IsPowder(food) && l.Line.At.Point is AdditionPoint.CopperUp or AdditionPoint.Boil or AdditionPoint.KnockOut)
            .Sum(l => l.Kilograms * 1000);
        double foam = powder / copperUp.LitresAt20C * TradeRules.PowderHeadroom;
        double room = kettle.Usable.Value.Litres * TradeRules.FoamShare;
        if (boiling > kettle.Brim.Value.Litres)
        {
            yield return Over("kettle.brim", Severity.Error, "kit.kettle.brim", "the wort boils over: it stands above the brim", boiling, kettle.Brim.Value.Litres);
        }
        else if (boiling + foam > room)
        {
            yield return Over("kettle.headspace", Severity.Warning, "kit.kettle.usable", "little room for foam when the boil breaks; stand by, or boil in two parts", boiling + foam, room);
        }
    }

    private static IEnumerable<Finding> Fermenter(BrewPlan brew, RunOutcome figures)
    {
        Fermenter fermenter = brew.Kit.Fermenter;
        double litres = figures[BeerReadouts.FermenterLitresWithSolids];
        bool sweetened = brew.Lines.Any(l => l.Line.At.Point == AdditionPoint.Ferment && (l.Food is not null || l.Sugar is not null));
        double empty = sweetened ? TradeRules.HeadspaceWithFruit : TradeRules.Headspace;
        double room = fermenter.Brim.Value.Litres * (1 - empty);
        if (litres > fermenter.Usable.Value.Litres)
        {
            Severity severity = litres > fermenter.Brim.Value.Litres ? Severity.Error : Severity.Warning;
            yield return Over("fermenter.tooSmall", severity, "kit.fermenter.usable", "the fermenter is too small", litres, fermenter.Usable.Value.Litres);
        }
        else if (litres > room)
        {
            yield return Over("fermenter.headspace", Severity.Note, "kit.fermenter.brim", "the foam may climb into the airlock: fit a blow-off tube", litres, room);
        }
    }

    private static IEnumerable<Finding> Package(BrewPlan brew, RunOutcome figures)
    {
        PackageKind package = BrewPlanner.PackageOf(brew.Recipe, brew.Kit)!;
        double volumes = figures[BeerReadouts.CarbonationVolumes];
        double? wished = brew.Recipe.Package.Carbonation?.Value.Volumes;
        if (wished is double wish && Math.Abs(volumes - wish) > 0.2)
        {
            yield return new Finding(
                "carbonation.differs", Severity.Warning, "package.carbonation",
                Invariant($"{wish:0.0} volumes wished; the sugar in the package makes {volumes:0.0}"),
                Number(volumes, "volumes"), Number(wish, "volumes"));
        }

        if (package.MaxVolumes?.Value.Volumes is double most && volumes > most)
        {
            yield return new Finding(
                "package.overpressure", Severity.Error, "kit.packages",
                Invariant($"{package.Kind}: {volumes:0.0} volumes of gas; made for {most:0.0}. It may burst"),
                Number(volumes, "volumes"), Number(most, "volumes"));
        }
    }

    private static IEnumerable<Finding> Keg(BrewPlan brew, PackageOutlook package)
    {
        if (package.Keg is { } keg && BrewPlanner.PackageOf(brew.Recipe, brew.Kit)!.MaxPressure is { } rated && keg.GaugeBar > rated.Value.Bar)
        {
            yield return new Finding(
                "package.pressure", Severity.Error, "kit.packages",
                $"{package.In}: {Number(keg.GaugeBar, "bar")} on the gauge at {Number(keg.Celsius, "°C")}; rated for {Number(rated.Value.Bar, "bar")}",
                Number(keg.GaugeBar, "bar"), Number(rated.Value.Bar, "bar"));
        }
    }

    private static IEnumerable<Finding> Yeast(BrewPlan brew)
    {
        foreach (PlannedLine line in brew.Lines.Where(l => l.Yeast is not null))
        {
            double celsius = brew.Recipe.Ferment[0].Temperature.Value.Celsius;
            if (celsius < line.Yeast!.Low.Celsius || celsius > line.Yeast.High.Celsius)
            {
                string usual = Invariant($"{line.Yeast.Low.Celsius:0} to {line.Yeast.High.Celsius:0} °C");
                yield return new Finding(
                    "yeast.temperature", Severity.Warning, "ferment[0].temperature",
                    Invariant($"{celsius:0.#} °C; {line.Name} is usually kept at {usual}"), Number(celsius, "°C"), usual);
            }
        }
    }

    private static IEnumerable<Finding> Enzyme(RunOutcome run)
    {
        double share = run.Plan.Mash.EnzymeShare(run.Draw, StarchCautions.MashedStarch(run));
        if (share < 1)
        {
            string has = Number(share * MashStep.EnoughDiastaticPower, "°Lintner");
            yield return new Finding(
                "mash.enzyme", Severity.Warning, "ingredients",
                Invariant($"the malts bring {has} for the starch in the mash; {MashStep.EnoughDiastaticPower:0} over a pale malt's worth of it are wanted, so {share * 100:0} % of the starch is counted as converted"),
                has, Number(MashStep.EnoughDiastaticPower, "°Lintner"));
        }
    }

    private static Finding Over(string code, Severity severity, string where, string message, double litres, double limit) => new(
        code, severity, where, $"{Number(litres, "L")}; limit {Number(limit, "L")}; {message}", Number(litres, "L"), Number(limit, "L"));

    private static string Number(double value, string unit) => Invariant($"{value:0.0} {unit}");
}
