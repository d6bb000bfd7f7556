using Gylebook.Engine.State;
using Gylebook.Forecast.Report;

namespace Gylebook.Pictures.Tests;

/// <summary>The table is the picture's twin.</summary>
public sealed class RunTableTests
{
    public static TheoryData<string> Brewable() => SampleForecasts.Brewable();

    [Theory]
    [MemberData(nameof(Brewable))]
    public void Has_a_row_for_each_step_and_leaves_nothing_out(string recipe)
    {
        RunPicture picture = RunPicture.Of(SampleForecasts.Of(recipe));
        RunTable table = RunTable.Of(picture);
        Assert.Equal(picture.Steps.Count(), table.Rows.Count);
        Assert.All(table.Rows, row => Assert.Equal(table.Header.Count, row.Count));
        Assert.All(picture.Steps.Zip(table.Rows), pair =>
        {
            string row = string.Join('|', pair.Second);
            Assert.StartsWith(pair.First.Name, row, StringComparison.Ordinal);
            Assert.All(pair.First.Additions, a => Assert.Contains(a.Text(picture.Shown), row, StringComparison.Ordinal));
            Assert.All(pair.First.Losses, l => Assert.Contains(l.Text(picture.Shown), row, StringComparison.Ordinal));
            Assert.All(pair.First.Cautions, c => Assert.Contains(c.Says, row, StringComparison.Ordinal));
            Assert.Contains(picture.Shown.Litres(pair.First.Litres), row, StringComparison.Ordinal);
        });
    }

    [Theory]
    [MemberData(nameof(Brewable))]
    public void Every_caution_has_words_of_its_own(string recipe) => Assert.All(
        RunPicture.Of(SampleForecasts.Of(recipe)).Steps.SelectMany(s => s.Cautions).Where(c => c.Code.Contains('.', StringComparison.Ordinal)),
        c => Assert.NotEqual(c.Code.Replace('.', ' '), c.Says));

    [Theory]
    [InlineData("hard-well.json")]
    [InlineData("soft-blend.json")]
    [InlineData("measured-mash.json")]
    [InlineData("glass-and-kettle.json")]
    public void Cautions_of_the_water_have_words_and_a_stage_of_their_own(string water)
    {
        RunPicture picture = RunPicture.Of(SampleForecasts.Of("hedgerow-brown.json", water: water));
        Assert.All(picture.Steps, step =>
        {
            Assert.Equal(step.Cautions.Count, step.Cautions.Select(c => c.Says).Distinct().Count());
            Assert.All(step.Cautions.Where(c => c.Code.Contains('.', StringComparison.Ordinal)), c => Assert.NotEqual(c.Code.Replace('.', ' '), c.Says));
        });
        RunStep[] acid = [.. picture.Steps.Where(step => step.Cautions.Any(c => c.Code == "acid.handle"))];
        Assert.NotEmpty(acid);
        Assert.All(acid, step => Assert.NotEqual(Stage.Strike, step.Stage));
    }

    [Fact]
    public void Names_the_portion_only_where_the_cast_was_parted()
    {
        Assert.DoesNotContain("Portion", RunTable.Of(RunPicture.Of(SampleForecasts.Of("plain-bitter.json"))).Header);
        RunTable parted = RunTable.Of(RunPicture.Of(SampleForecasts.Of(SampleForecasts.Parted)));
        int column = parted.Header.ToList().IndexOf("Portion");
        Assert.Equal(["fruit", "main", "plain"], parted.Rows.Select(r => r[column]).Distinct().Order());
    }

    [Fact]
    public void Is_in_the_reader_s_units()
    {
        BrewForecast forecast = SampleForecasts.Of("hedgerow-brown.json");
        string cells = string.Join('|', RunTable.Of(RunPicture.Of(forecast, ReaderUnits.UnitedStates)).Rows.SelectMany(r => r));
        Assert.Contains("US gal", cells, StringComparison.Ordinal);
        Assert.Contains("°F", cells, StringComparison.Ordinal);
        Assert.DoesNotContain("°C", cells, StringComparison.Ordinal);
        Assert.DoesNotContain(Shown.Space + "kg", cells, StringComparison.Ordinal);
    }
}
