
namespace Gylebook.Science.Foods.Labels;

/// <summary>Something odd on a panel that does not make it impossible.</summary>
/// <param name="Code">Stable name: <c>label.energy</c>.</param>
/// <param name="Lines">The lines it concerns.</param>
/// <param name="Message">What to look at again.</param>
public sealed record LabelCaution(string Code, IReadOnlyList<LabelLine> Lines, string Message);

/// <summary>Collects what is odd about a panel.</summary>
internal static class LabelCautions
{
    // Our choice, only for when to speak up: zeros that still allow a tenth of the food are worth a word.
    private const double LooseZeroGrams = 10;

    /// <summary>All cautions; the energy is judged only against parts that fit together.</summary>
    public static IReadOnlyList<LabelCaution> For(PrintedPanel panel, LabelMode mode, Interval[]? parts)
    {
        List<LabelCaution> found = [];
        AddLinesOfTheOtherStyle(panel, found);
        if (panel.ServingGrams > 0 && double.IsFinite(panel.ServingGrams))
        {
            AddLooseZeros(panel, mode, found);
            AddStyle(panel, found);
        }

        if (parts is not null)
        {
            found.AddRange(LabelEnergy.Check(panel, parts));
        }

        return found;
    }

    private static void AddLinesOfTheOtherStyle(PrintedPanel panel, List<LabelCaution> found)
    {
        foreach (LabelLine line in Enum.GetValues<LabelLine>())
        {
            bool energyBesideKilocalories = line == LabelLine.EnergyKilojoules && panel.Style == PanelStyle.Us;
            if (panel[line].IsPrinted && !PanelReading.Prints(panel.Style, line) && !energyBesideKilocalories)
            {
                found.Add(new(
                    "label.lineNotRead",
                    [line],
                    $"A {(panel.Style == PanelStyle.Us ? "US" : "EU")} panel has no line {line}: it was left out."));
            }
        }
    }

    private static void AddLooseZeros(PrintedPanel panel, LabelMode mode, List<LabelCaution> found)
    {
        LabelLine[] loose =
        [
            .. PanelReading.ReadableMassLines(panel).Where(line =>
                line is not (LabelLine.Sodium or LabelLine.Salt or LabelLine.Potassium)
                && panel[line].Number == 0
                && PanelReading.Per100Grams(panel, line, mode).High > LooseZeroGrams),
        ];
        if (loose.Length > 0)
        {
            double high = loose.Max(line => PanelReading.Per100Grams(panel, line, mode).High);
            string upTo = double.IsInfinity(high)
                ? "any amount"
                : Invariant($"up to {high:0.#} g per 100 g");
            found.Add(new(
                "label.looseZero",
                loose,
                Invariant($"A zero on a serving of {panel.ServingGrams:0.##} g still allows {upTo}; look for a larger basis.")));
        }
    }

    private static void AddStyle(PrintedPanel panel, List<LabelCaution> found)
    {
        if (panel.Style == PanelStyle.Us && PanelStyleGuess.Of(panel) is { Style: PanelStyle.Eu } guess)
        {
            found.Add(new("label.style", guess.Lines, guess.Reason));
        }
    }
}
