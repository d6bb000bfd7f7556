using System.Text;
using Gylebook.Gyles.Days;
using Gylebook.Pictures;
using Gylebook.Pictures.Sheets;
using Gylebook.Site.Publications;

namespace Gylebook.Site.Leaves;

/// <summary>A published recipe as plain text to paste into a letter or a forum.</summary>
public static class LeafText
{
    /// <summary>In one sentence: <c>6.1 % alcohol, 28 IBU, 20.0 L: …</c>.</summary>
    public static string OneLine(Leaf leaf)
    {
        ArgumentNullException.ThrowIfNull(leaf);
        string figures = string.Join(", ", leaf.Metric.Figures.Select(figure => $"{figure.Title.ToLowerInvariant()} {figure.Value}"));
        return $"{leaf.Published.Name}: {figures}. {string.Join(' ', leaf.Metric.Allergens)}".Replace(Shown.Space, " ", StringComparison.Ordinal);
    }

    /// <summary>What goes in, and the numbers: no more than a screen.</summary>
    public static string Brief(Leaf leaf)
    {
        StringBuilder text = Begun(leaf);
        Goods(text, leaf);
        return Plain(text);
    }

    /// <summary>All of the page in words.</summary>
    public static string Whole(Leaf leaf)
    {
        StringBuilder text = Begun(leaf);
        if (leaf.Inputs.Recipe.Story is { } story)
        {
            text.Append('\n').Append(Story.Plain(story)).Append('\n');
        }

        foreach (Erratum erratum in leaf.Published.Errata)
        {
            text.Append(Invariant($"\nPut right {LeafHtml.Told(erratum.Day)}: {erratum.Text}\n"));
        }

        Goods(text, leaf);
        text.Append("\nHow\n");
        int number = 0;
        foreach (var step in leaf.Steps)
        {
            Step(text, ++number, $"{step.Title}. {step.Say}", step.Items.Select(item => $"{item.Amount} {item.What}"), step.Cautions.Select(caution => caution.Message));
        }

        foreach (GyleDay day in leaf.Later)
        {
            Step(text, ++number, Invariant($"Day {day.AfterPitch:0.##}. {day.Sentence}"), [], day.Cautions);
        }

        return Plain(text);
    }

    private static StringBuilder Begun(Leaf leaf)
    {
        StringBuilder text = new();
        text.Append(leaf.Published.By.Length > 0 ? $"{leaf.Published.Name}, by {leaf.Published.By}\n" : $"{leaf.Published.Name}\n");
        foreach ((SheetFigure metric, SheetFigure other) in leaf.Metric.Figures.Zip(leaf.Other.Figures))
        {
            text.Append(Invariant($"{metric.Title}: {metric.Value}{(other.Value == metric.Value ? "" : $" ({other.Value})")}{(metric.Ends.Length > 0 ? $", {metric.Ends}" : "")}\n"));
        }

        foreach (string allergens in leaf.Metric.Allergens)
        {
            text.Append(allergens).Append('\n');
        }

        return text;
    }

    private static void Goods(StringBuilder text, Leaf leaf)
    {
        foreach ((SheetPart metric, SheetPart other) in leaf.Parts)
        {
            text.Append(Invariant($"\n{metric.Name}{(metric.Aside.Length > 0 ? $": {ToldText.Both(metric.Aside)}" : "")}\n"));
            foreach ((SheetRow row, SheetRow theirs) in metric.Rows.Zip(other.Rows))
            {
                text.Append(Invariant($"- {row.Amount}{(theirs.Amount == row.Amount || theirs.Amount.Length == 0 ? "" : $" ({theirs.Amount})")} {row.What}{(row.When.Length > 0 ? $", {ToldText.Both(row.When)}" : "")}\n"));
            }
        }
    }

    private static void Step(StringBuilder text, int number, string say, IEnumerable<string> items, IEnumerable<string> cautions)
    {
        string all = string.Join(", ", items);
        text.Append(Invariant($"{number}. {ToldText.Both(say)}{(all.Length > 0 ? $" {ToldText.Both(all)}." : "")}\n"));
        foreach (string caution in cautions)
        {
            text.Append(Invariant($"   Take care: {ToldText.Both(caution)}\n"));
        }
    }

    private static string Plain(StringBuilder text) => text.ToString().Replace(Shown.Space, " ", StringComparison.Ordinal);
}
