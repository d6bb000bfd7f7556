using Gylebook.Recipes;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Numerics;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Liquors;

/// <summary>Salts for the sparge liquor, then acid for its pH.</summary>
internal static class SpargeTreatment
{
    private const double CloseEnough = 0.05;

    /// <summary>mol/L; the activity law goes no further, and no liquor does.</summary>
    private const double StrongestLiquor = 0.5;

    /// <summary>Where its pH is looked for; a liquor that none of them balances has that of the end, and is told as missed.</summary>
    private static readonly Bracket PhScale = new(0, 14);

    /// <summary>The treated liquor.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="source">The water before.</param>
    /// <param name="litres">How much of it.</param>
    /// <param name="acidUsed">mL of the acid that the mash has taken already.</param>
    /// <param name="findings">Takes what is found.</param>
    public static TreatedLiquor Treat(WaterPlan plan, SourceLiquor source, double litres, double acidUsed, List<Finding> findings)
    {
        if (litres < LiquorNeed.LeastKilograms)
        {
            return TreatedLiquor.None;
        }

        OfferedSalt[] offers = [.. plan.Salts.Where(offer =>
            offer.Into == LiquorPlace.Sparge || (offer.Into == LiquorPlace.Liquor && offer.Salt.AlkalinityPerMole == 0))];
        SaltSolution solution = DoseFinder.Find(plan, source.Ions, litres, offers, mayDilute: true);
        findings.AddRange(DoseFinder.Findings(solution, "sparge"));
        SourceLiquor diluted = source.Diluted(solution.ShareDiluted);
        double carbonate = diluted.TotalCarbonate + solution.Salts.Sum(salt => salt.GramsPerLitre * salt.Salt.CarbonatePerGram);
        return Soured(plan, solution, litres, carbonate, acidUsed, findings);
    }

    private static TreatedLiquor Soured(
        WaterPlan plan, SaltSolution solution, double litres, double carbonate, double acidUsed, List<Finding> findings)
    {
        IonProfile ions = solution.Ions;
        CarbonateConstants constants = CarbonateConstants.At(20, Math.Min(StrongestLiquor, ions.IonicStrength));
        double alkalinity = ions.AlkalinityMilliequivalents;
        double units = 0;
        OfferedAcid? acid = plan.Acids.Count > 0 ? plan.Acids[0] : null;
        if (plan.SpargePh is double wanted)
        {
            double lacking = alkalinity - CarbonateSystem.Charge(constants, carbonate, wanted);
            double most = Math.Max(0, (acid?.MostMillilitres ?? double.MaxValue) - acidUsed);
            units = acid is null ? 0 : DoseFinder.Rounded(Math.Min(most, Math.Max(0, acid.Acid.UnitsFor(lacking * litres, wanted))), most);
        }

        double taken = acid is null ? 0 : units / litres;
        double ph = PhScale.Halved(
            each => alkalinity - (taken * (acid?.Acid.MilliequivalentsPerUnit(each) ?? 0)) - CarbonateSystem.Charge(constants, carbonate, each),
            times: 60).Middle;
        IonProfile soured = acid is null ? ions
            : DoseFinder.WithAnion(ions, acid.Acid, units, litres).With(
                Ion.Bicarbonate,
                ions.Bicarbonate - (taken * acid.Acid.MilliequivalentsPerUnit(ph) * Ion.Bicarbonate.EquivalentWeight()));
        Tell(plan, ph, findings);
        IReadOnlyList<AcidDose> acids = units > 0 ? [new AcidDose(acid!, units)] : [];
        return new TreatedLiquor(litres, solution.ShareDiluted, DoseFinder.Doses(solution, litres), acids, ions, soured, ph) { Misses = solution.Misses };
    }

    private static void Tell(WaterPlan plan, double ph, List<Finding> findings)
    {
        if (plan.SpargePh is double wanted && ph - wanted > CloseEnough)
        {
            findings.Add(LiquorFinding.PhNotReached("sparge", ph, wanted, "acid"));
        }
    }
}
