using Gylebook.Recipes.Foods;
using Gylebook.Science.Quantities;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>Puts the text of a field into a panel; null empties it.</summary>
/// <returns>What is wrong with the text, in plain words; empty when nothing.</returns>
public delegate string PutText(LabelPanel before, string? text, out LabelPanel after);

/// <summary>A line of a nutrition panel as a field.</summary>
/// <param name="Key">Its key in a food file: <c>fat</c>.</param>
/// <param name="Name">What the packet calls it.</param>
/// <param name="Units">Its units, the usual one first.</param>
/// <param name="MayBeLess">Whether packets print it as "less than".</param>
/// <param name="Text">What stands in a panel: <c>2 g</c>, <c>&lt;1 g</c>; null for nothing.</param>
/// <param name="Put">Puts a text into a panel.</param>
public sealed record PanelField(
    string Key, string Name, IReadOnlyList<string> Units, bool MayBeLess, Func<LabelPanel, string?> Text, PutText Put)
{
    /// <summary>What the figures are for.</summary>
    internal static PanelField Serving(string name) => new("serving", name, ["g", "mg"], false, panel => panel.Serving?.Text, PutServing);

    /// <summary>The energy.</summary>
    internal static PanelField Energy(string name, string unit, string other) =>
        new("energy", name, [unit, other], false, panel => EnergyFigure.Text(panel.EnergyKilocalories), PutEnergy);

    /// <summary>A mass.</summary>
    internal static PanelField Mass(
        string key, string name, Func<LabelPanel, PrintedMass?> of, Func<LabelPanel, PrintedMass?, LabelPanel> with, bool isSmall = false) =>
        new(key, name, isSmall ? ["mg", "g"] : ["g", "mg"], true, panel => of(panel)?.Text, (LabelPanel before, string? text, out LabelPanel after) =>
        {
            string problem = TryReadMass(text, out PrintedMass? printed);
            after = problem.Length == 0 ? with(before, printed) : before;
            return problem;
        });

    private static string TryReadMass(string? text, out PrintedMass? printed)
    {
        printed = null;
        if (text is null)
        {
            return "";
        }

        bool isLess = text.StartsWith('<');
        if (!UnitTable.TryParse(isLess ? text[1..] : text, out Entered<Mass> entered, out string problem))
        {
            return problem;
        }

        printed = isLess ? PrintedMass.LessThan(entered.Value, text) : PrintedMass.Of(entered);
        return "";
    }

    private static string PutServing(LabelPanel before, string? text, out LabelPanel after)
    {
        after = before;
        if (text is null)
        {
            after = before with { Serving = null };
            return "";
        }

        if (!UnitTable.TryParse(text, out Entered<Mass> entered, out string problem))
        {
            return problem;
        }

        // A file with such a serving could not be opened again.
        if (entered.Value.Grams <= 0)
        {
            return $"{text}; must be above 0 g, or its figures are for nothing";
        }

        after = before with { Serving = entered };
        return "";
    }

    private static string PutEnergy(LabelPanel before, string? text, out LabelPanel after)
    {
        after = before;
        double kilocalories = 0;
        if (text is not null && !EnergyFigure.TryRead(text, out kilocalories))
        {
            return $"{text}; must be a number from 0 with kcal or kJ";
        }

        after = before with { EnergyKilocalories = text is null ? null : kilocalories };
        return "";
    }
}
