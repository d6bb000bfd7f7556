using System.Xml;
using System.Xml.Linq;
using Gylebook.Pictures.Sheets;

namespace Gylebook.Pictures.Tests;

/// <summary>The brew-day sheet as markup: nothing typed becomes any, and what goes first where there is little room.</summary>
public sealed class BrewSheetTests
{
    private const string Grave = "Glass bursts, and whoever stands near it bleeds.", Warning = "Foam rises when hops go in.", Notes = "Stir well.";

    [Fact]
    public void Each_step_and_each_thing_has_a_box_and_each_reading_its_plan_and_a_blank()
    {
        XDocument page = Parsed(BrewSheetHtml.File(Sheet(3)));
        Assert.Equal(3, page.Descendants("tr").Count(row => row.Elements("td").Any()));
        Assert.Equal(3 * 2, page.Descendants("i").Count(box => (string?)box.Attribute("class") == "box"));
        Assert.All(page.Descendants("td").Where(cell => (string?)cell.Attribute("class") == "read"), cell => Assert.Equal("gravity (1.040 to 1.050)", cell.Descendants("span").Single().Value));
        Assert.Single(page.Descendants("style"));
    }

    [Fact]
    public void What_was_typed_never_becomes_markup()
    {
        const string Hostile = "<script>alert(1)</script>\"'&<img src=x onerror=alert(2)>";
        BrewSheet sheet = Sheet(1) with { Name = Hostile, Notes = Hostile, Steps = [Step with { Say = Hostile, Items = [new(Hostile, Hostile)] }] };
        XDocument page = Parsed(BrewSheetHtml.Page(sheet, "style.css\"><script>", "icon.svg", Hostile));
        Assert.DoesNotContain(page.Descendants(), element => element.Name.LocalName is "script" or "img" || element.Attributes().Any(a => a.Name.LocalName is "onerror" or "style"));
        Assert.Equal(Hostile, page.Descendants("h1").Single().Value);
        Assert.Empty(page.Descendants("style"));
    }

    /// <summary>Longer and longer: notes are the first to go, then cautions that are not grave; grave ones never.</summary>
    [Fact]
    public void Notes_go_before_cautions_and_grave_cautions_stay()
    {
        (bool Notes, bool Warning)[] kept = [.. Enumerable.Range(1, 60).Select(steps => BrewSheetHtml.File(Sheet(steps))).Select(html =>
        {
            Assert.Contains(Grave, html, StringComparison.Ordinal);
            return (html.Contains(Notes, StringComparison.Ordinal), html.Contains(Warning, StringComparison.Ordinal));
        })];
        Assert.Equal((true, true), kept[0]);
        Assert.Equal((false, false), kept[^1]);
        Assert.Contains((false, true), kept);
        Assert.DoesNotContain((true, false), kept);
        Assert.Contains("Mind: Boil-over.", BrewSheetHtml.File(Sheet(60)), StringComparison.Ordinal);
    }

    private static BrewSheetStep Step { get; } = new(
        "Boil", "Turn down, then add.", [new("Fuggle", "56 g")], [new("gravity", "1.040 to 1.050")], [new(new("Boil-over", Warning), false), new(new("Glass", Grave), true)]);

    private static BrewSheet Sheet(int steps) => new() { Name = "First", Under = "Brew-day sheet", Steps = [.. Enumerable.Repeat(Step, steps)], Notes = Notes };

    /// <summary>What we write is XML too, so that any unescaped sign fails here.</summary>
    private static XDocument Parsed(string html)
    {
        using XmlReader reader = XmlReader.Create(new StringReader(html), new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore });
        return XDocument.Load(reader);
    }
}
