using Gylebook.Recipes;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Liquors;

/// <summary>The waters of a plan blended, before anything goes in.</summary>
/// <param name="Ions">mg/L by ion.</param>
/// <param name="TotalCarbonate">CO2, bicarbonate and carbonate together, mmol/L.</param>
public sealed record SourceLiquor(IonProfile Ions, double TotalCarbonate)
{
    /// <summary>pH taken where a report gives none: common practice, no source.</summary>
    private const double UnstatedPh = 7.5;

    /// <summary>Constants as the mash's balance uses them.</summary>
    internal static readonly CarbonateConstants Constants = CarbonateConstants.At(20, 0.005);

    /// <summary>pH in a closed vessel at 20 °C.</summary>
    public double Ph => CarbonateSystem.ClosedPh(Constants, Ions.AlkalinityMilliequivalents, TotalCarbonate);

    /// <summary>The same with a share of it replaced by distilled water.</summary>
    public SourceLiquor Diluted(double share) => new(Ions.Diluted(share), TotalCarbonate * (1 - share));

    /// <summary>The plan's waters, each read against itself, then blended by their shares.</summary>
    public static SourceLiquor Of(WaterPlan plan, List<Finding> findings)
    {
        IonProfile ions = IonProfile.Distilled;
        double carbonate = 0;
        double shares = plan.Sources.Sum(source => source.Share.Ratio);
        for (int i = 0; i < plan.Sources.Count; i++)
        {
            WaterSource source = plan.Sources[i];
            string where = Invariant($"sources[{i}].report");
            findings.AddRange(source.Report is null ? [] : WaterReportCheck.Diagnose(source.Report).Select(d => LiquorFinding.Of(d, where)));
            SourceLiquor one = Of(source, where, findings);
            double share = source.Share.Ratio / shares;
            ions += one.Ions * share;
            carbonate += one.TotalCarbonate * share;
        }

        return new SourceLiquor(ions, carbonate);
    }

    private static SourceLiquor Of(WaterSource source, string where, List<Finding> findings)
    {
        if (source.Report is null)
        {
            return new SourceLiquor(IonProfile.Distilled, 0);
        }

        if (source.Report.Ph is null && !source.Boiled)
        {
            findings.Add(new("default.taken", Severity.Note, $"{where}.ph", Invariant($"not given; taken as {UnstatedPh}"), "7.5"));
        }

        IonProfile raw = source.Report.ToProfile();
        return source.Boiled
            ? Boiled(raw, source)
            : WithPh(raw, source.Report.Ph ?? UnstatedPh);
    }

    /// <summary>Boiled, settled, and at rest with the air again.</summary>
    private static SourceLiquor Boiled(IonProfile raw, WaterSource source)
    {
        IonProfile ions = source.BoiledTo is { } measured
            ? Decarbonation.ToAlkalinity(raw, measured.MilliequivalentsPerLitre)
            : Decarbonation.Boiled(raw);
        double ph = CarbonateSystem.OpenPh(Constants, ions.AlkalinityMilliequivalents, CarbonateSystem.AirCarbonDioxide);
        return WithPh(ions, ph);
    }

    private static SourceLiquor WithPh(IonProfile ions, double ph) =>
        new(ions, CarbonateSystem.TotalCarbonate(Constants, ions.AlkalinityMilliequivalents, ph));
}
