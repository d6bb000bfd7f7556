using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Acidity;
using Gylebook.Science.Mashing;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Liquors;

/// <summary>Mash and sparge liquor together, with salts and acid for the kettle.</summary>
internal sealed class KettleTreatment(WaterPlan plan, LiquorNeed need, List<Finding> findings)
{
    private const double CloseEnough = 0.02;

    private readonly OfferedAcid? _acid = plan.Acids.Count > 0 ? plan.Acids[0] : null;

    /// <summary>The treated kettle.</summary>
    /// <param name="mash">What came of the mash.</param>
    /// <param name="sparge">The sparge liquor.</param>
    /// <param name="acidUsed">mL of the acid that mash and sparge have taken already.</param>
    public (TreatedLiquor Liquor, WortSouring? Wort) Treat(TreatedMash mash, TreatedLiquor sparge, double acidUsed)
    {
        TreatedLiquor kettle = Salted(mash.Liquor, sparge);
        WortSouring? wort = plan.WortPh is double wanted ? Souring(wanted, mash, kettle.Litres, acidUsed) : null;
        return wort is { Units: > 0 } ? (Soured(kettle, wort), wort) : (kettle, wort);
    }

    private TreatedLiquor Salted(TreatedLiquor mash, TreatedLiquor sparge)
    {
        double litres = mash.Litres + sparge.Litres;
        IonProfile together = Together(mash.Ions, sparge.Ions, mash.Litres / litres);
        IonProfile unsoured = Together(mash.Unsoured, sparge.Unsoured, mash.Litres / litres);
        OfferedSalt[] offers = [.. plan.Salts.Where(offer => offer.Into == LiquorPlace.Kettle)];
        if (offers.Length == 0)
        {
            return new(litres, 0, [], [], unsoured, together, null);
        }

        SaltSolution solution = DoseFinder.Find(plan, together, litres, offers, mayDilute: false);

        // Acid that the mash has been given is no free acid: the grain takes it.
        findings.AddRange(DoseFinder.Findings(solution, "kettle").Where(finding => finding.Code != "liquor.freeAcid"));
        IReadOnlyList<SaltDose> salts = DoseFinder.Doses(solution, litres);
        IonProfile added = salts.Aggregate(IonProfile.Distilled, (sum, dose) =>
            sum + dose.Salt.Added(Mass.FromGrams(dose.Grams), VolumeAt20C.FromLitres(litres)));
        return new(litres, 0, salts, [], unsoured + added, together + added, null) { Misses = solution.Misses };
    }

    private static IonProfile Together(IonProfile mash, IonProfile sparge, double share) => (mash * share) + (sparge * (1 - share));

    private WortSouring? Souring(double wanted, TreatedMash mash, double litres, double acidUsed)
    {
        Mass grist = Mass.FromKilograms(need.Grist.Sum(line => line.Amount.Kilograms));
        if (PhBefore(mash) is not { } before || grist.Kilograms <= 0)
        {
            findings.Add(new("wort.noStart", Severity.Warning, "wortPh", "neither a meter's reading of the wort nor a mash whose pH is known; nothing is counted for it"));
            return null;
        }

        if (wanted - before.Likely > CloseEnough)
        {
            string now = LiquorFinding.Number(before.Likely, ""), asked = LiquorFinding.Number(wanted, "");
            findings.Add(new("wort.sourAlready", Severity.Note, "wortPh", $"the wort is at {now} before any acid, below the {asked} wanted; acid only lowers it", now, asked));
        }

        (double Low, double High) buffer = StartingParameters.EndsOf(Known.WortBuffering);
        double likely = StartingParameters.Medians[(int)Known.WortBuffering];
        AcidLoad nothing = default(AcidLoad) with { Litres = litres };
        double Units(double from, double each) => _acid?.Acid.UnitsFor(
            WortAcidity.MilliequivalentsTo(nothing, each * grist.Kilograms, from, wanted), wanted) ?? 0;
        Band amount = new(
            Units(before.Low, buffer.Low), Units(before.Likely, likely), Units(before.High, buffer.High),
            _acid?.Acid.UnitSymbol ?? "mL", BandKind.Bounds);
        double most = Math.Max(0, (_acid?.MostMillilitres ?? double.MaxValue) - acidUsed);
        double units = DoseFinder.Rounded(Math.Min(amount.Likely, most), most);
        AcidLoad given = nothing with { Strong = units * (_acid?.Acid.MilliequivalentsPerUnit(wanted) ?? 0) };
        double reached = WortAcidity.PhOf(given, likely * grist.Kilograms, before.Likely);
        if (reached - wanted > CloseEnough)
        {
            findings.Add(LiquorFinding.PhNotReached("wort", reached, wanted, "acid"));
        }

        return new WortSouring(before, plan.WortReading is not null, wanted, amount, units);
    }

    /// <summary>As a meter read it; without one the mash's pH stands for it, and that is said.</summary>
    private Band? PhBefore(TreatedMash mash)
    {
        if (plan.WortReading is { } meter)
        {
            double room = MashPhTemperature.ToRoom(meter.Ph, meter.Sample.Value);
            return new Band(room, room, room, Words.PhAt20C, BandKind.Bounds);
        }

        Band? taken = mash.Mend?.Ph ?? mash.Ph;
        if (taken is not null)
        {
            string likely = LiquorFinding.Number(taken.Likely, "");
            findings.Add(new("default.taken", Severity.Note, "wortReading", $"not given; the wort's pH is taken as the mash's, {likely}: no model goes from one to the other", likely));
        }

        return taken;
    }

    private TreatedLiquor Soured(TreatedLiquor kettle, WortSouring wort)
    {
        double taken = wort.Units * _acid!.Acid.MilliequivalentsPerUnit(wort.To) / kettle.Litres * Ion.Bicarbonate.EquivalentWeight();
        IonProfile ions = DoseFinder.WithAnion(kettle.Ions, _acid.Acid, wort.Units, kettle.Litres);
        return kettle with
        {
            Acids = [new AcidDose(_acid, wort.Units)],
            Ions = ions.With(Ion.Bicarbonate, ions.Bicarbonate - taken),
        };
    }
}
