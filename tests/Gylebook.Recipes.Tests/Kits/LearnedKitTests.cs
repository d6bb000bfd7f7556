using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Tests.Shared;

namespace Gylebook.Recipes.Tests.Kits;

/// <summary>The history of a kit: what its gyles taught and its brewer accepted.</summary>
public sealed class LearnedKitTests
{
    private const string Line = """{ "on": "2026-03-01", "figure": "kettle.evaporation", "from": "3.6 L/h", "to": "4.0 L/h", "low": "3.8 L/h", "high": "4.2 L/h", "gyles": ["a Saturday"] }""";

    [Fact]
    public void A_kit_with_a_history_is_read_written_and_of_its_schema()
    {
        Kit kit = Read(Line).Value!;
        Assert.Equal("3.6 L/h", kit.LearnedOf(KitFigure.Find("kettle.evaporation")!)!.From);
        Assert.Null(kit.LearnedOf(KitFigure.Find("conversion")!));
        Assert.Empty(PublishedSchema.Objections("kit", KitFile.Write(kit)));
        Assert.Equal(KitFile.Write(kit), KitFile.Write(KitFile.Read(KitFile.Write(kit)).Value!));
        Assert.DoesNotContain("learned", KitFile.Write(BuiltInKit.LanternShed), StringComparison.Ordinal);
    }

    [Fact]
    public void The_last_line_of_a_figure_stands_and_only_while_the_kit_says_so()
    {
        KitFigure evaporation = KitFigure.Find("kettle.evaporation")!;
        Assert.Null(Read(Line.Replace("4.0 L/h", "4.1 L/h", StringComparison.Ordinal)).Value!.LearnedOf(evaporation));
        Assert.Equal("2026-04-01", Read($"{Line}, {Line.Replace("-03-", "-04-", StringComparison.Ordinal)}").Value!.LearnedOf(evaporation)!.On.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
    }

    [Theory]
    [InlineData("\"kettle.evaporation\"", "\"kettle.evaporated\"", "figure.unknown", "learned[0].figure")]
    [InlineData("\"3.6 L/h\"", "\"3.6 L\"", "learned.noNumber", "learned[0].from")]
    [InlineData("\"3.8 L/h\"", "\"4.3 L/h\"", "learned.order", "learned[0].low")]
    [InlineData("\"2026-03-01\"", "\"1 March\"", "date.wrong", "learned[0].on")]
    [InlineData(", \"to\": \"4.0 L/h\"", "", "key.missing", "learned[0].to")]
    public void A_line_that_cannot_be_is_refused_at_its_place(string was, string wrong, string code, string where)
    {
        string faulty = Line.Replace(was, wrong, StringComparison.Ordinal);
        Assert.NotEqual(Line, faulty);
        Assert.Contains(Read(faulty).Findings, finding => finding.Code == code && finding.Where == where && finding.Severity == Severity.Error);
    }

    [Theory]
    [InlineData("kettle.evaporation", 4.6251, "1 US gal/hr", "1.22 US gal/h")]
    [InlineData("kettle.evaporation", 4.6251, "4.0 L/h", "4.63 L/h")]
    [InlineData("conversion", 0.92345, "95 %", "92.3 %")]
    [InlineData("bag.liquorKept", 0.61239, "0.55 L/kg", "0.612 L/kg")]
    public void A_figure_is_written_in_the_unit_its_kit_has(string path, double number, string like, string written) =>
        Assert.Equal(written, KitFigure.Find(path)!.Written(number, like));

    [Fact]
    public void Every_figure_can_be_put_into_a_kit_that_has_its_part()
    {
        Kit tun = KitFile.Read(Samples.Text("samples", "kits", "tun-and-kettle.json")).Value!, bag = BuiltInKit.LanternShed;
        foreach (KitFigure figure in KitFigure.All)
        {
            Kit kit = figure.TextIn(bag) is null ? tun : bag;
            string text = figure.Written(figure.NumberOf(figure.TextIn(kit)!)!.Value * 0.9, figure.TextIn(kit)!);
            Kit changed = figure.In(kit, text);
            Assert.Equal(text, figure.TextIn(changed));
            Assert.All(KitFigure.All.Where(other => other != figure), other => Assert.Equal(other.TextIn(kit), other.TextIn(changed)));
            Assert.NotNull(KitFile.Form.At(figure.Path));
        }

        Assert.Throws<ArgumentException>(() => KitFigure.Find("tun.deadSpace")!.In(bag, "1 L"));
    }

    private static Gylebook.Recipes.Forms.Reading<Kit> Read(string lines) =>
        KitFile.Read(KitFile.Write(BuiltInKit.LanternShed).TrimEnd().TrimEnd('}').TrimEnd() + $",\n  \"learned\": [ {lines} ]\n}}\n");
}
