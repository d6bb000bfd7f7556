using Gylebook.Science.Foods.Labels.Rounding;

namespace Gylebook.Science.Foods.Labels;

/// <summary>Turns the lines of a panel into parts of the mass, each by itself.</summary>
internal static class PanelReading
{
    /// <summary>Lines that say something about the mass of the food.</summary>
    private static readonly LabelLine[] MassLines =
    [
        LabelLine.Protein, LabelLine.Fat, LabelLine.SaturatedFat, LabelLine.Carbohydrate, LabelLine.Fibre,
        LabelLine.Sugars, LabelLine.AddedSugars, LabelLine.Polyols, LabelLine.Starch, LabelLine.Sodium, LabelLine.Salt,
        LabelLine.Potassium,
    ];

    /// <summary>Lines that are printed, belong to the style and are not negative.</summary>
    public static List<LabelLine> ReadableMassLines(PrintedPanel panel) =>
        [.. MassLines.Where(line => panel[line].IsPrinted && panel[line].Number >= 0 && Prints(panel.Style, line))];

    /// <summary>Whether a panel of that style has that line.</summary>
    public static bool Prints(PanelStyle style, LabelLine line) =>
        style == PanelStyle.Us ? UsLabelRounding.Prints(line) : EuLabelRounding.Prints(line);

    /// <summary>True values of one line per 100 g, in its own unit.</summary>
    public static Interval Per100Grams(PrintedPanel panel, LabelLine line, LabelMode mode)
    {
        PrintedValue printed = panel[line];
        Interval perServing = panel.Style == PanelStyle.Us
            ? UsLabelRounding.TrueInterval(line, printed)
            : EuLabelRounding.TrueInterval(line, printed);
        if (mode == LabelMode.Legal)
        {
            perServing = panel.Style == PanelStyle.Us
                ? UsLabelTolerance.Widen(line, perServing)
                : EuLabelTolerance.Widen(line, printed, perServing);
        }

        return perServing.Scale(100).DivideBy(panel.ServingGrams);
    }

    /// <summary>The parts as those lines alone give them, before any is held against another.</summary>
    public static Interval[] Parts(PrintedPanel panel, IEnumerable<LabelLine> lines, LabelMode mode)
    {
        Interval[] parts = MassBalance.Unknown();
        foreach (LabelLine line in lines)
        {
            Narrow(parts, panel.Style, line, Per100Grams(panel, line, mode));
        }

        if (!panel.PolyolsGrams.IsPrinted)
        {
            // Sugar alcohols that are not declared stay in "starch and other"; only declared ones are split off.
            parts[(int)MassPart.Polyols] = Interval.Exactly(0);
        }

        return parts;
    }

    /// <summary>Narrows the part that a line speaks of.</summary>
    public static void Narrow(Interval[] parts, PanelStyle style, LabelLine line, Interval per100Grams)
    {
        Interval grams = line switch
        {
            LabelLine.Sodium or LabelLine.Potassium => per100Grams.DivideBy(1000),
            LabelLine.Salt => per100Grams.DivideBy(EuLabelRounding.SaltPerSodium),
            _ => per100Grams,
        };
        ref Interval part = ref parts[(int)Part(style, line)];
        part = part.Intersect(grams);
    }

    /// <summary>The part of the mass that a line speaks of.</summary>
    public static MassPart Part(PanelStyle style, LabelLine line) => line switch
    {
        LabelLine.Protein => MassPart.Protein,
        LabelLine.Fat => MassPart.Fat,
        LabelLine.SaturatedFat => MassPart.SaturatedFat,
        LabelLine.Carbohydrate when style == PanelStyle.Us => MassPart.Carbohydrate,
        LabelLine.Carbohydrate => MassPart.AvailableCarbohydrate,
        LabelLine.Fibre => MassPart.Fibre,
        LabelLine.Sugars => MassPart.Sugars,
        LabelLine.AddedSugars => MassPart.AddedSugars,
        LabelLine.Polyols => MassPart.Polyols,
        LabelLine.Starch => MassPart.Starch,
        LabelLine.Sodium or LabelLine.Salt => MassPart.Sodium,
        LabelLine.Potassium => MassPart.Potassium,
        _ => throw new ArgumentOutOfRangeException(nameof(line), line, "That line is no part of the mass."),
    };
}
