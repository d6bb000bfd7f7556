using System.Globalization;
using Gylebook.Science.Foods.Labels.Rounding;

namespace Gylebook.Science.Foods.Labels;

/// <summary>Finds small sets of lines that contradict each other.</summary>
internal static class LabelConflicts
{
    /// <summary>Numbers that no panel can print: a serving of nothing, anything negative.</summary>
    public static List<LabelContradiction> OutOfRange(PrintedPanel panel)
    {
        List<LabelContradiction> found = [];
        if (!(panel.ServingGrams > 0) || double.IsInfinity(panel.ServingGrams))
        {
            found.Add(new(
                [LabelLine.Serving],
                Invariant($"A serving of {panel.ServingGrams} g says nothing about the food; give its weight in grams."),
                panel.ServingGrams,
                0));
        }

        foreach (LabelLine line in Enum.GetValues<LabelLine>())
        {
            if (panel[line] is { IsPrinted: true, Number: < 0 and var number })
            {
                found.Add(new([line], Invariant($"{Name(line, true)} cannot be negative ({number})."), number, 0));
            }
        }

        return found;
    }

    /// <summary>Sets of lines that do not fit together, each as small as dropping lines one by one makes it.</summary>
    public static List<LabelContradiction> Find(PrintedPanel panel, LabelMode mode)
    {
        List<LabelContradiction> found = [];
        List<LabelLine> lines = PanelReading.ReadableMassLines(panel);
        while (!Fits(panel, lines, mode, null))
        {
            List<LabelLine> conflict = [.. lines];
            foreach (LabelLine line in lines)
            {
                List<LabelLine> without = [.. conflict.Where(other => other != line)];
                conflict = Fits(panel, without, mode, null) ? conflict : without;
            }

            found.Add(Describe(panel, conflict, mode));
            lines.RemoveAll(conflict.Contains);
        }

        return found;
    }

    private static bool Fits(PrintedPanel panel, List<LabelLine> lines, LabelMode mode, LabelLine? withoutUpperEnd)
    {
        Interval[] parts = PanelReading.Parts(panel, lines.Where(line => line != withoutUpperEnd), mode);
        if (withoutUpperEnd is { } line)
        {
            Interval whole = PanelReading.Per100Grams(panel, line, mode);
            PanelReading.Narrow(parts, panel.Style, line, new(whole.Low, double.PositiveInfinity, whole.LowIsOpen));
        }

        return MassBalance.TryTighten(parts);
    }

    // In sums of amounts that are not negative, a conflict is always: these are too much for that. "That" is the line
    // whose upper end stands in the way, or the whole serving.
    private static LabelContradiction Describe(PrintedPanel panel, List<LabelLine> conflict, LabelMode mode)
    {
        LabelLine? whole = null;
        foreach (LabelLine line in conflict)
        {
            whole = Fits(panel, conflict, mode, line) ? line : whole;
        }

        LabelLine[] tooMuch = [.. conflict.Where(line => line != whole)];
        double value = tooMuch.Sum(line => Grams(panel, line, mode).Low);
        double limit = whole is { } w ? Grams(panel, w, mode).High : panel.ServingGrams;
        string names = string.Join(" + ", tooMuch.Select(line => Name(line, false)));
        string room = whole is { } named
            ? $"{Name(named, false)} leaves room for {limit.ToString("0.##", CultureInfo.InvariantCulture)} g at most"
            : $"the serving weighs {limit.ToString("0.##", CultureInfo.InvariantCulture)} g";
        return new(
            whole is null ? [.. tooMuch, LabelLine.Serving] : [.. tooMuch, whole.Value],
            Invariant($"{Capital(names)} of at least {value:0.##} g cannot be: {room}."),
            value,
            limit);
    }

    private static Interval Grams(PrintedPanel panel, LabelLine line, LabelMode mode)
    {
        Interval perServing = PanelReading.Per100Grams(panel, line, mode).Scale(panel.ServingGrams).DivideBy(100);
        return line switch
        {
            LabelLine.Sodium or LabelLine.Potassium => perServing.DivideBy(1000),
            LabelLine.Salt => perServing.DivideBy(EuLabelRounding.SaltPerSodium),
            _ => perServing,
        };
    }

    private static string Name(LabelLine line, bool first)
    {
        string name = line switch
        {
            LabelLine.EnergyKilocalories or LabelLine.EnergyKilojoules => "energy",
            LabelLine.SaturatedFat => "saturated fat",
            LabelLine.AddedSugars => "added sugars",
            LabelLine.Salt => "sodium of the salt",
#pragma warning disable CA1308 // A name in running text, not a key
            _ => line.ToString().ToLowerInvariant(),
#pragma warning restore CA1308
        };
        return first ? Capital(name) : name;
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
