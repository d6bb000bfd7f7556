
namespace Gylebook.Science.Water;

/// <summary>Reads a water report against itself and says what is doubtful.</summary>
/// <remarks>
/// <para>Source: charge balance and conductivity by Standard Methods 1030 E; the misreadings are tried one by one, and
/// one is named only if the report fails as it stands and passes when so read.</para>
/// <para>Valid for: drinking water. A water may fail for reasons no single misreading explains; then only
/// <c>water.chargeBalance</c> is given.</para>
/// </remarks>
public static class WaterReportCheck
{
    private const double HardnessTolerance = 0.10;
    private const double SmallestHardness = 0.2;
    private const double ConductivityTolerance = 0.10;

    /// <summary>Everything doubtful, or an empty list.</summary>
    public static IReadOnlyList<WaterDiagnosis> Diagnose(WaterReport report)
    {
        List<WaterDiagnosis> found = [];
        Missing(report, found);
        IonProfile profile = report.ToProfile();
        Charge(report, profile, found);
        Hardness(report, profile, found);
        StatedTwice(report, found);
        Conduct(report, profile, found);
        CarbonateAtLowPh(report, found);
        return found;
    }

    private static void Missing(WaterReport report, List<WaterDiagnosis> found)
    {
        bool alkalinity = report.Alkalinity is not null || report.Bicarbonate is not null || report.Carbonate is not null;
        bool sulphate = report.Sulphate is not null || report.SulphateSulphur is not null;
        bool hardnessLeavesOne = report.Hardness is not null && (report.Calcium is not null || report.Magnesium is not null);
        (bool Present, string Name)[] needed =
        [
            (report.Calcium is not null || hardnessLeavesOne, "calcium"),
            (report.Magnesium is not null || hardnessLeavesOne, "magnesium"),
            (report.Sodium is not null, "sodium"), (alkalinity, "alkalinity"),
            (sulphate, "sulphate"), (report.Chloride is not null, "chloride"),
        ];
        string[] missing = [.. needed.Where(each => !each.Present).Select(each => each.Name)];
        if (missing.Length > 0)
        {
            found.Add(new("water.missing", $"Not stated, and counted as none: {string.Join(", ", missing)}.",
                missing.Length, 0, "ions"));
        }
    }

    private static void Charge(WaterReport report, IonProfile profile, List<WaterDiagnosis> found)
    {
        ChargeBalance balance = ChargeBalance.Of(profile);
        if (balance.IsAccepted)
        {
            return;
        }

        double limit = 100 * balance.AcceptedDifference / (balance.Cations + balance.Anions);
        found.Add(new("water.chargeBalance", Invariant(
            $"Cations {balance.Cations:0.00} and anions {balance.Anions:0.00} mEq/L do not cancel: {balance.ErrorPercent:+0.0;-0.0} %."),
            balance.ErrorPercent, limit, "%"));
        foreach ((string code, string message, IonProfile reread) in WaterMisreadings.Of(report, profile))
        {
            ChargeBalance other = ChargeBalance.Of(reread);
            if (other.IsAccepted)
            {
                found.Add(new(code, Invariant($"{message} Read so, the charges cancel to {other.ErrorPercent:+0.0;-0.0} %."),
                    balance.ErrorPercent, limit, "%"));
            }
        }
    }

    private static void Hardness(WaterReport report, IonProfile profile, List<WaterDiagnosis> found)
    {
        if (report.Hardness is not { } stated)
        {
            return;
        }

        double difference = profile.HardnessMilliequivalents - stated.MilliequivalentsPerLitre;
        double limit = Math.Max(SmallestHardness, HardnessTolerance * Math.Abs(stated.MilliequivalentsPerLitre));
        if (Math.Abs(difference) > limit)
        {
            found.Add(new("water.hardnessMismatch", Invariant(
                $"Calcium and magnesium make {profile.HardnessMilliequivalents:0.00} mEq/L, the stated hardness is {stated.MilliequivalentsPerLitre:0.00}: check its unit."),
                difference, limit, "mEq/L"));
        }
    }

    private static void StatedTwice(WaterReport report, List<WaterDiagnosis> found)
    {
        if (report.Alkalinity is not { } alkalinity || report.Bicarbonate is null)
        {
            return;
        }

        double fromIons = (report with { Alkalinity = null }).AlkalinityMilliequivalents;
        double difference = fromIons - alkalinity.MilliequivalentsPerLitre;
        double limit = Math.Max(SmallestHardness, HardnessTolerance * Math.Abs(alkalinity.MilliequivalentsPerLitre));
        if (Math.Abs(difference) > limit)
        {
            found.Add(new("water.alkalinityMismatch", Invariant(
                $"Bicarbonate makes {fromIons:0.00} mEq/L, the stated alkalinity is {alkalinity.MilliequivalentsPerLitre:0.00}."),
                difference, limit, "mEq/L"));
        }
    }

    private static void Conduct(WaterReport report, IonProfile profile, List<WaterDiagnosis> found)
    {
        if (report.ConductivityMicrosiemens is not > 0)
        {
            return;
        }

        double measured = report.ConductivityMicrosiemens.Value;
        double ratio = Conductivity.MicrosiemensPerCentimetre(profile) / measured;
        if (Math.Abs(ratio - 1) > ConductivityTolerance)
        {
            found.Add(new("water.conductivityMismatch", Invariant(
                $"These ions would conduct {ratio * measured:0} µS/cm, the report says {measured:0}: an ion is missing or misread."),
                ratio, ratio < 1 ? 1 - ConductivityTolerance : 1 + ConductivityTolerance, "ratio"));
        }
    }

    private static void CarbonateAtLowPh(WaterReport report, List<WaterDiagnosis> found)
    {
        // At pH 8.3 CO3 is 1 % of HCO3 (pK2 10.33): below it, more CO3 than a tenth of the alkalinity cannot be.
        const double highest = 0.1;
        if (report is { Alkalinity: null, Carbonate: { } carbonate, Ph: < 8.3 })
        {
            double share = carbonate.MilligramsPerLitre * 2 / AtomicMass.Carbonate
                / Math.Max(1e-12, report.AlkalinityMilliequivalents);
            if (share > highest)
            {
                found.Add(new("water.carbonateAtLowPh",
                    "So much carbonate cannot be below pH 8.3: the number is bicarbonate, or alkalinity in other words.",
                    share, highest, "share of alkalinity"));
            }
        }
    }
}
