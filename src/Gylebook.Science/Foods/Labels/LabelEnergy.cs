using Gylebook.Science.Foods.Labels.Rounding;

namespace Gylebook.Science.Foods.Labels;

/// <summary>Holds the printed energy against what the other lines can give.</summary>
/// <remarks>
/// <para>What: a soft check; it never narrows a bound.</para>
/// <para>Symbols: P protein, C carbohydrate with fibre, B fibre, Y sugar alcohols, F fat, g per 100 g; E kcal per 100 g.</para>
/// <para>Source: 21 CFR 101.9(c)(1)(i): (B) 4P + 4C + 9F; (C) 4P + 4(C − B − Y) + 9F, to which soluble fibre adds 2 kcal/g
/// and sugar alcohols their own 0 to 3.0 kcal/g. The factors of Regulation (EU) 1169/2011, Annex XIV, lie within
/// the last.</para>
/// <para>Valid for: foods without alcohol, which brings 7 kcal/g. Specific factors and bomb calorimetry are lawful too
/// and may lie outside: cocoa powder is 433, 301 or, by specific factors, 228 kcal.</para>
/// <para>Accuracy: a caution is given when E lies outside all three by more than 20 % (the third-group limit of 21 CFR
/// 101.9(g)(5)).</para>
/// </remarks>
public static class LabelEnergy
{
    /// <summary>kJ in a kcal: the thermochemical calorie, 4.184 J by definition (from memory).</summary>
    public const double KilojoulesPerKilocalorie = 4.184;

    private const double Slack = 0.2;

    // kJ over kcal of every pair of factors in Regulation (EU) 1169/2011, Annex XIV: from 8/2 (fibre) to 13/3 (acids).
    private static readonly Interval FactorRatio = new(8.0 / 2, 13.0 / 3);

    /// <summary>Energies, kcal per 100 g, of the three formulae for those parts.</summary>
    internal static Interval[] Formulae(Interval[] parts)
    {
        Interval rest = (parts[(int)MassPart.Protein].Scale(4)) + parts[(int)MassPart.Fat].Scale(9);
        Interval all = rest + parts[(int)MassPart.Carbohydrate].Scale(4);
        Interval digestible = (parts[(int)MassPart.Sugars] + parts[(int)MassPart.StarchAndOther])
            .Intersect(parts[(int)MassPart.AvailableCarbohydrate] - parts[(int)MassPart.Polyols]);
        Interval deducted = rest + digestible.Scale(4);
        Interval soluble = deducted
            + new Interval(0, 2 * parts[(int)MassPart.Fibre].High)
            + new Interval(0, 3 * parts[(int)MassPart.Polyols].High);
        return [all, deducted, soluble];
    }

    internal static IEnumerable<LabelCaution> Check(PrintedPanel panel, Interval[] parts)
    {
        Interval[] formulae = Formulae(parts);
        if (Readable(panel.EnergyKilocalories))
        {
            LabelLine[] lines = [LabelLine.EnergyKilocalories];
            Interval printed = PanelReading.Per100Grams(panel, LabelLine.EnergyKilocalories, LabelMode.Rounding);
            if (!Agrees(printed, formulae))
            {
                yield return Agrees(printed.DivideBy(KilojoulesPerKilocalorie), formulae)
                    ? new("label.kilojoulesAsKilocalories", lines, "The energy fits the other lines if it is kJ, not kcal.")
                    : new("label.energy", lines, Outside(printed, formulae));
            }
        }
        else if (panel.Style == PanelStyle.Eu && Readable(panel.EnergyKilojoules))
        {
            LabelLine[] lines = [LabelLine.EnergyKilojoules];
            Interval printed = PanelReading.Per100Grams(panel, LabelLine.EnergyKilojoules, LabelMode.Rounding);
            if (!Agrees(printed.DivideBy(KilojoulesPerKilocalorie), formulae))
            {
                yield return Agrees(printed, formulae)
                    ? new("label.kilocaloriesAsKilojoules", lines, "The energy fits the other lines if it is kcal, not kJ.")
                    : new("label.energy", lines, Outside(printed.DivideBy(KilojoulesPerKilocalorie), formulae));
            }
        }

        if (Readable(panel.EnergyKilocalories) && Readable(panel.EnergyKilojoules) && !RatioIsPossible(panel))
        {
            yield return new(
                "label.energyRatio",
                [LabelLine.EnergyKilocalories, LabelLine.EnergyKilojoules],
                "The kJ are not about 4.2 times the kcal: one of the two was misread.");
        }
    }

    private static bool Readable(PrintedValue printed) => printed is { Form: PrintedForm.Number, Number: >= 0 };

    private static bool Agrees(Interval printed, Interval[] formulae) => formulae.Any(formula =>
        !printed.Intersect(new(formula.Low * (1 - Slack), formula.High * (1 + Slack))).IsEmpty);

    private static bool RatioIsPossible(PrintedPanel panel)
    {
        Interval kilocalories = PanelReading.Per100Grams(
            panel, LabelLine.EnergyKilocalories, LabelMode.Rounding);
        Interval kilojoules = EuLabelRounding.TrueInterval(LabelLine.EnergyKilojoules, panel.EnergyKilojoules)
            .Scale(100).DivideBy(panel.ServingGrams);
        var possible = new Interval(kilocalories.Low * FactorRatio.Low, kilocalories.High * FactorRatio.High);
        return !possible.Intersect(kilojoules).IsEmpty;
    }

    private static string Outside(Interval printed, Interval[] formulae) => Invariant($"The printed energy, {printed.Low:0} to {printed.High:0} kcal per 100 g, is more than 20 % away from what the other lines give: {formulae.Min(f => f.Low):0} to {formulae.Max(f => f.High):0}. Specific factors, or alcohol, may explain it.");
}
