using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Forecast.Report;
using Gylebook.Pictures.Drawing;
using Gylebook.Tests.Shared;

namespace Gylebook.Pictures.Tests;

/// <summary>The drawing is whole, legible, and the same every time.</summary>
public sealed partial class RunSvgTests
{
    private const string Hostile = "<script>alert(\"1\")</script> & 'so' ]]> \u0001\uD800 a name much too long for any drawing of a run, and then some more";

    public static TheoryData<string> Brewable() => SampleForecasts.Brewable();

    [Theory]
    [MemberData(nameof(Brewable))]
    public void Is_well_formed_and_says_what_it_is(string recipe)
    {
        RunPicture picture = RunPicture.Of(SampleForecasts.Of(recipe));
        Assert.All(Both(picture), svg =>
        {
            XElement root = XDocument.Parse(svg).Root!;
            Assert.Equal("svg", root.Name.LocalName);
            Assert.Equal("img", root.Attribute("role")!.Value);
            Assert.Contains(picture.Recipe, root.Attribute("aria-label")!.Value, StringComparison.Ordinal);
            Assert.Equal(["title", "desc"], root.Elements().Take(2).Select(e => e.Name.LocalName));
            Assert.DoesNotContain("NaN", svg, StringComparison.Ordinal);
            Assert.DoesNotContain("style=", svg, StringComparison.Ordinal);
        });
    }

    [Theory]
    [MemberData(nameof(Brewable))]
    public void Names_every_addition_every_loss_and_every_caution(string recipe)
    {
        RunPicture picture = RunPicture.Of(SampleForecasts.Of(recipe));
        Assert.All(Both(picture), svg =>
        {
            string words = string.Join('\n', XDocument.Parse(svg).Root!.Elements().Skip(2).SelectMany(e => e.DescendantNodesAndSelf().OfType<XText>()).Select(t => t.Value));
            Assert.All(picture.Steps.SelectMany(s => s.Additions), a => Assert.Contains(a.Text(picture.Shown), words, StringComparison.Ordinal));
            Assert.All(picture.Steps.SelectMany(s => s.Losses), l => Assert.Contains(l.Text(picture.Shown), words, StringComparison.Ordinal));
            Assert.All(picture.Steps.SelectMany(s => s.Cautions), c => Assert.Contains(c.Message, words, StringComparison.Ordinal));
        });
    }

    [Theory]
    [MemberData(nameof(Brewable))]
    public void No_words_meet_and_none_are_too_small_or_leave_the_paper(string recipe)
    {
        foreach (ReaderUnits units in new[] { ReaderUnits.Metric, ReaderUnits.UnitedStates with { Gravity = GravityUnit.Plato } })
        {
            RunPicture picture = RunPicture.Of(SampleForecasts.Of(recipe), units);
            AssertLegible(RunSvg.Narrow(picture), 360);
            AssertLegible(RunSvg.Wide(picture), 545);
        }
    }

    [Theory]
    [InlineData("hedgerow-brown.json")]
    [InlineData(SampleForecasts.Parted)]
    public void No_stage_s_name_is_cut_to_make_room_for_a_band(string recipe)
    {
        BrewForecast forecast = SampleForecasts.Of(recipe);
        BrewForecast unsure = forecast with
        {
            Headline = [.. forecast.Headline.Select(h => h.Band is { Unit: "L at 20 °C" } b
                ? h with { Band = b with { Low = b.Likely * 0.9, High = b.Likely * 1.1, Kind = BandKind.Quantiles } }
                : h)],
        };
        RunPicture picture = RunPicture.Of(unsure, ReaderUnits.UnitedStates);
        Assert.Contains(picture.Steps, s => s.Litres.Kind == BandKind.Quantiles);
        Assert.All([(RunSvg.Narrow(picture), 360), (RunSvg.Wide(picture), 545)], drawing =>
        {
            AssertLegible(drawing.Item1, drawing.Item2);
            string[] words = [.. DrawnText.In(drawing.Item1).Select(w => w.Text)];
            Assert.All(picture.Steps, s => Assert.Contains(s.Name, words));
            Assert.All(picture.Steps.Where(s => s.Litres.Kind == BandKind.Quantiles), s =>
                Assert.Contains(words, w => w.Contains(picture.Shown.Ends(s.Litres), StringComparison.Ordinal)));
        });
    }

    /// <summary>What happens on the way into a stage stands under that stage's name, as it stands in its row of the table.</summary>
    [Theory]
    [InlineData("hedgerow-brown.json")]
    [InlineData("plain-bitter.json")]
    public void Picture_and_table_put_an_event_at_the_same_stage(string recipe)
    {
        RunPicture picture = RunPicture.Of(SampleForecasts.Of(recipe));
        Assert.All(Both(picture), svg =>
        {
            List<(string Words, double Y)> drawn = [.. XDocument.Parse(svg).Descendants().Where(e => e.Name.LocalName == "text")
                .Select(e => (e.Value, double.Parse(e.Attribute("y")!.Value, System.Globalization.CultureInfo.InvariantCulture)))];
            double At(string words) => drawn.First(d => d.Words.Contains(words, StringComparison.Ordinal)).Y;
            for (int i = 0; i < picture.Trunk.Count; i++)
            {
                double from = At(picture.Trunk[i].Name), to = i + 1 < picture.Trunk.Count ? At(picture.Trunk[i + 1].Name) : double.MaxValue;
                Assert.All(picture.Trunk[i].Losses, loss => Assert.InRange(At("− " + loss.Name), from, to));
            }
        });
    }

    [Fact]
    public void Hostile_and_endless_names_change_nothing_about_that()
    {
        BrewForecast forecast = SampleForecasts.Of(SampleForecasts.Parted);
        string Name(string portion) => portion == "main" ? portion : portion + Hostile;
        BrewForecast hostile = forecast with
        {
            Recipe = Hostile,
            Stages = [.. forecast.Stages.Select(s => s with { Portion = Name(s.Portion) })],
            Losses = [.. forecast.Losses.Select(l => l with { Portion = Name(l.Portion) }), new(Stage.Cast, "main", Loss.Kettle, 1, 1, 0)],
            Additions = [.. forecast.Additions.Select(a => a with { Portion = Name(a.Portion), What = Hostile })],
            Cautions = [.. CautionKinds.All.Where(kind => kind.Weight != CautionWeight.Reminder).DistinctBy(kind => kind.Mark).Take(20).Select(kind => new Caution(kind.Code, Stage.Strike, Hostile, Hostile))],
        };
        RunPicture picture = RunPicture.Of(hostile);
        Assert.Equal(20, picture.Steps.Sum(s => s.Cautions.Count));
        AssertLegible(RunSvg.Narrow(picture), 360);
        AssertLegible(RunSvg.Wide(picture), 545);
        Assert.All(Both(picture), svg =>
        {
            Assert.DoesNotContain("<script", svg, StringComparison.OrdinalIgnoreCase);
            Assert.StartsWith("<script>alert(\"1\")</script> & 'so' ]]> ?", XDocument.Parse(svg).Root!.Attribute("aria-label")!.Value, StringComparison.Ordinal);
        });
    }

    [Theory]
    [InlineData("hedgerow-brown.json")]
    [InlineData(SampleForecasts.Parted)]
    public void A_hundredth_and_ten_times_as_much_are_drawn_as_wide(string recipe)
    {
        BrewForecast forecast = SampleForecasts.Of(recipe);
        IReadOnlyList<double> usual = RibbonWidths(RunSvg.Wide(RunPicture.Of(forecast)));
        foreach (double times in new[] { 0.01, 0.1, 10.0 })
        {
            BrewForecast other = forecast with { Stages = [.. forecast.Stages.Select(s => s with { LitresAt20C = s.LitresAt20C * times })] };
            IReadOnlyList<double> widths = RibbonWidths(RunSvg.Wide(RunPicture.Of(other)));

            // Coordinates are written to a hundredth.
            Assert.All(usual.Zip(widths), pair => Near.Equal(pair.First, pair.Second, 0.02));
        }
    }

    [Fact]
    public void Ribbons_are_as_wide_as_their_litres()
    {
        RunPicture picture = RunPicture.Of(SampleForecasts.Of("hedgerow-brown.json"));
        IReadOnlyList<double> widths = RibbonWidths(RunSvg.Wide(picture));
        double widest = widths.Max();
        Assert.Equal(picture.Trunk.Count, widths.Count);
        Assert.All(picture.Trunk.Zip(widths), pair =>
            Near.Equal(pair.First.Litres.Likely / picture.WidestLitres, pair.Second / widest, 0.02 / widest * 2));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-5)]
    [InlineData(0)]
    [InlineData(1e300)]
    public void Absurd_litres_still_make_a_drawing(double litres)
    {
        BrewForecast forecast = SampleForecasts.Of(SampleForecasts.Parted);
        BrewForecast absurd = forecast with { Stages = [.. forecast.Stages.Select((s, i) => i % 3 == 0 ? s with { LitresAt20C = litres } : s)] };
        Assert.All(Both(RunPicture.Of(absurd)), svg =>
        {
            XDocument.Parse(svg);
            Assert.DoesNotMatch("NaN|Infinity|∞", svg);
        });
    }

    [Fact]
    public void Is_the_same_every_time_and_in_every_country()
    {
        RunPicture picture = RunPicture.Of(SampleForecasts.Of("hedgerow-brown.json"));
        string here = RunSvg.Wide(picture);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(here, RunSvg.Wide(RunPicture.Of(SampleForecasts.Of("hedgerow-brown.json"))));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Two_drawings_in_a_page_share_no_id_and_a_file_of_its_own_has_both_themes()
    {
        RunPicture picture = RunPicture.Of(SampleForecasts.Of("hedgerow-brown.json"));
        string[] ids = [.. Both(picture).SelectMany(svg => XDocument.Parse(svg).Descendants().Attributes("id")).Select(a => a.Value)];
        Assert.NotEmpty(ids);
        Assert.Distinct(ids);
        Assert.DoesNotContain("<style", RunSvg.Wide(picture), StringComparison.Ordinal);
        Assert.Contains("prefers-color-scheme:dark", RunSvg.Wide(picture, standalone: true), StringComparison.Ordinal);
    }

    private static string[] Both(RunPicture picture) => [RunSvg.Wide(picture), RunSvg.Narrow(picture)];

    private static void AssertLegible(string svg, double width)
    {
        IReadOnlyList<DrawnText> words = DrawnText.In(svg);
        Assert.NotEmpty(words);
        Assert.All(words, w => Assert.True(w.Size >= 12, $"{w.Text} has {w.Size} px"));
        Assert.All(words, w => Assert.True(w.Left >= -0.5 && w.Right <= width + 0.5, $"{w.Text} runs from {w.Left} to {w.Right}"));
        for (int i = 0; i < words.Count; i++)
        {
            Assert.All(words.Skip(i + 1), other => Assert.False(words[i].Meets(other), $"{words[i]} meets {other}"));
        }
    }

    /// <summary>Widths of the ribbons at their lower ends, read from the drawn paths: the two numbers about the L.</summary>
    private static IReadOnlyList<double> RibbonWidths(string svg) =>
    [
        .. XDocument.Parse(svg).Descendants().Where(e => e.Attribute("class")?.Value == "ribbon").Select(e =>
        {
            Match ends = LowerEnd().Match(e.Attribute("d")!.Value);
            return double.Parse(ends.Groups[2].Value, CultureInfo.InvariantCulture) - double.Parse(ends.Groups[1].Value, CultureInfo.InvariantCulture);
        }),
    ];

    [GeneratedRegex(@"([\d.]+) [\d.]+ L([\d.]+) ")]
    private static partial Regex LowerEnd();
}
