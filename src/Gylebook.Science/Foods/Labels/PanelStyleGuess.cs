using Gylebook.Science.Foods.Labels.Rounding;

namespace Gylebook.Science.Foods.Labels;

/// <summary>Whether the numbers of a panel give away whose rules it follows.</summary>
/// <remarks>
/// <para>What: a US carbohydrate includes the fibre, so fibre can never exceed carbohydrate less sugars. If it does, after
/// rounding, the panel must be in the EU style.</para>
/// <para>Source: 21 CFR 101.9(c)(6); Regulation (EU) 1169/2011, Annex I, point 6 (from memory).</para>
/// <para>Valid for: panels with carbohydrate and fibre.</para>
/// <para>Accuracy: a guess of EU is certain for makers who round by the rules; otherwise nothing is said, since an EU
/// panel need not show it.</para>
/// </remarks>
/// <param name="Style">The style, or null when the numbers fit both.</param>
/// <param name="Lines">The lines that give it away.</param>
/// <param name="Reason">Why, in plain words.</param>
public sealed record PanelStyleGuess(PanelStyle? Style, IReadOnlyList<LabelLine> Lines, string Reason)
{
    /// <summary>Judges the numbers, whatever style the panel claims.</summary>
    public static PanelStyleGuess Of(PrintedPanel panel)
    {
        LabelLine[] lines = panel.SugarsGrams.IsPrinted
            ? [LabelLine.Fibre, LabelLine.Carbohydrate, LabelLine.Sugars]
            : [LabelLine.Fibre, LabelLine.Carbohydrate];
        bool readable = panel.FibreGrams.IsPrinted && panel.CarbohydrateGrams.IsPrinted
            && lines.All(line => panel[line].Number >= 0);
        if (readable)
        {
            Interval room = Us(panel, LabelLine.Carbohydrate) - Us(panel, LabelLine.Sugars);
            Interval excess = Us(panel, LabelLine.Fibre) - room;
            if (excess.Low > 0 || (excess.Low == 0 && excess.LowIsOpen))
            {
                return new(
                    PanelStyle.Eu,
                    lines,
                    "There is more fibre than carbohydrate less sugars: carbohydrate is stated without fibre, as in the EU.");
            }
        }

        return new(null, [], "The numbers fit either style.");
    }

    private static Interval Us(PrintedPanel panel, LabelLine line) => UsLabelRounding.TrueInterval(line, panel[line]);
}
