using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Recipes;
using Gylebook.Web.Widgets;

namespace Gylebook.Web.Tests.Widgets;

/// <summary>Bands, findings and cautions.</summary>
public sealed class SmallWidgetTests : GylebookTestContext
{
    [Fact]
    public void Cautions_of_a_stage_are_marks_unless_grave_and_what_is_so_every_day_has_no_mark()
    {
        Caution[] cautions =
        [
            new("pressure.glass", Stage.Package, "Glass bursts.", "source"),
            new("lift.heavy", Stage.Lift, "The bag is heavy.", "source"),
            new("scald.liquor", Stage.Strike, "Hot liquor scalds.", "source"),
            new("nutmeg.dose", Stage.Package, "Poison.", "source") { Severity = Severity.Error },
        ];
        var marks = Render<CautionMarks>(p => p.Add(x => x.Cautions, cautions));
        Assert.Equal(["Take care. Glass bursts. source", "Do not go on like this. Poison. source"], marks.FindAll(".caution:not(details *)").Select(note => note.TextContent));
        Assert.Equal(["▲ heavy bag", "read"], marks.FindAll("summary > span").Select(mark => mark.TextContent));
        Assert.Equal(2, marks.FindAll("details .caution").Count);
        marks.Render(p => p.Add(x => x.Cautions, [cautions[2]]));
        Assert.Equal(["what is usual here"], marks.FindAll("summary > span").Select(mark => mark.TextContent));
    }

    [Fact]
    public void A_band_lies_on_its_scale_from_low_to_high()
    {
        IRenderedComponent<BandLine> line = Line(new Band(1.054, 1.057, 1.060, "SG", BandKind.Quantiles), 1.000, 1.100);
        IElement range = line.Find(".range");
        Assert.Equal(54, Number(range, "x"), 2);
        Assert.Equal(6, Number(range, "width"), 2);
        IElement likely = line.Find(".likely");
        Assert.Equal(57, Number(likely, "x") + (Number(likely, "width") / 2), 2);
        Assert.Equal("Original gravity 1.057", line.Find("svg").GetAttribute("aria-label"));
    }

    [Fact]
    public void A_point_has_no_width()
    {
        IRenderedComponent<BandLine> line = Line(Band.Point(28, "IBU"), 0, 100);
        Assert.Empty(line.FindAll(".range"));
        Assert.Single(line.FindAll(".likely"));
    }

    [Fact]
    public void What_is_off_the_scale_stays_on_the_paper_and_what_is_no_number_is_not_drawn()
    {
        IElement likely = Line(Band.Point(500, "IBU"), 0, 100).Find(".likely");
        Assert.Equal(100, Number(likely, "x") + Number(likely, "width"), 2);
        Assert.Empty(Line(Band.Point(double.NaN, "IBU"), 0, 100).FindAll(".likely"));
    }

    [Fact]
    public void Findings_say_their_weight_in_words()
    {
        Finding[] findings =
        [
            new("a.b", Severity.Error, "kettle.brim", "too small"),
            new("c.d", Severity.Warning, "", "odd"),
            new("e.f", Severity.Note, "", "taken"),
        ];
        IRenderedComponent<FindingList> list = Render<FindingList>(p => p.Add(l => l.Findings, findings).Add(l => l.ShowsWhere, true));
        string[] lines = [.. list.FindAll("li").Select(line => string.Join(' ', line.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)))];
        Assert.Equal(["Cannot be: kettle, to the brim: too small", "Doubtful: odd", "Note: taken"], lines);
        Assert.Empty(Render<FindingList>(p => p.Add(l => l.Findings, [])).FindAll("ul"));
    }

    [Fact]
    public void A_caution_tells_its_source()
    {
        Caution caution = new("scald.liquor", Stage.Strike, "Hot liquor scalds.", "common practice, no source");
        IElement note = Render<CautionNote>(p => p.Add(n => n.Caution, caution)).Find("[role=note]");
        Assert.Contains("Take care. Hot liquor scalds.", note.TextContent, StringComparison.Ordinal);
        Assert.Contains("common practice, no source", note.TextContent, StringComparison.Ordinal);
    }

    private static double Number(IElement element, string name) => double.Parse(element.GetAttribute(name)!, CultureInfo.InvariantCulture);

    private IRenderedComponent<BandLine> Line(Band band, double from, double to) => Render<BandLine>(parameters => parameters
        .Add(l => l.Label, "Original gravity 1.057").Add(l => l.Band, band).Add(l => l.From, from).Add(l => l.To, to));
}
