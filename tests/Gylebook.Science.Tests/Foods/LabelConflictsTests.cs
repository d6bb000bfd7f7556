using CsCheck;
using Gylebook.Science.Foods.Labels;

namespace Gylebook.Science.Tests.Foods;

/// <summary>Any panel at all, likely or not: what is reported as a contradiction is one, and a smallest one.</summary>
public class LabelConflictsTests
{
    private static readonly Gen<PrintedValue> AnyLine =
        Gen.Select(Gen.Int[0, 3], Gen.Int[0, 40]).Select((form, grams) => form == 0 ? default : PrintedValue.Of(grams));

    private static readonly Gen<PrintedPanel> AnyPanel =
        Gen.Select(AnyLine.Array[9], Gen.Double[5, 60], Gen.Bool).Select((lines, serving, us) => new PrintedPanel
        {
            Style = us ? PanelStyle.Us : PanelStyle.Eu,
            ServingGrams = serving,
            FatGrams = lines[0],
            SaturatedFatGrams = lines[1],
            CarbohydrateGrams = lines[2],
            FibreGrams = lines[3],
            SugarsGrams = lines[4],
            AddedSugarsGrams = us ? lines[5] : default,
            PolyolsGrams = lines[6],
            ProteinGrams = lines[7],
            StarchGrams = us ? default : lines[8],
        });

    [Fact]
    public void A_set_contradicts_itself_and_not_without_any_one_of_its_lines() => AnyPanel.Sample(panel =>
    {
        foreach (LabelContradiction found in LabelBounds.From(panel).Contradictions)
        {
            LabelLine[] lines = [.. found.Lines.Where(line => line != LabelLine.Serving)];
            Assert.NotEmpty(LabelBounds.From(Only(panel, lines)).Contradictions);
            Assert.All(lines, line => Assert.Empty(LabelBounds.From(Only(panel, [.. lines.Where(l => l != line)])).Contradictions));
            Assert.True(found.Value >= found.Limit, found.Message);
        }
    });

    [Fact]
    public void A_possible_panel_has_no_empty_bound_and_an_impossible_one_says_why() => AnyPanel.Sample(panel =>
    {
        LabelBounds bounds = LabelBounds.From(panel);
        return bounds.IsPossible
            ? LabelBoundsTests.All(bounds).All(interval => !interval.IsEmpty)
            : bounds.Contradictions.All(found => found.Lines.Count > 0 && found.Message.Length > 0);
    });

    private static PrintedPanel Only(PrintedPanel panel, IReadOnlyCollection<LabelLine> lines)
    {
        PrintedValue Keep(LabelLine line) => lines.Contains(line) ? panel[line] : default;
        return panel with
        {
            FatGrams = Keep(LabelLine.Fat),
            SaturatedFatGrams = Keep(LabelLine.SaturatedFat),
            CarbohydrateGrams = Keep(LabelLine.Carbohydrate),
            FibreGrams = Keep(LabelLine.Fibre),
            SugarsGrams = Keep(LabelLine.Sugars),
            AddedSugarsGrams = Keep(LabelLine.AddedSugars),
            PolyolsGrams = Keep(LabelLine.Polyols),
            ProteinGrams = Keep(LabelLine.Protein),
            StarchGrams = Keep(LabelLine.Starch),
        };
    }
}
