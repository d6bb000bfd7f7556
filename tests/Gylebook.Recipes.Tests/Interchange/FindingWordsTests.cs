using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Tests.Interchange;

/// <summary>What the findings say: path, what was written, what it ran into.</summary>
public sealed class FindingWordsTests
{
    private static readonly string Good = Samples.Text("samples", "recipes", "plain-bitter.json");

    [Fact]
    public void An_amount_below_nothing_names_path_value_and_limit()
    {
        var finding = Only("\"45 g\"", "\"-1 kg\"");
        Assert.Equal(("ingredients[2].amount", Severity.Error, "-1 kg"), (finding.Where, finding.Severity, finding.Value));
        Assert.Contains("-1 kg", finding.Message, StringComparison.Ordinal);
        Assert.Contains("0 kg", finding.Message, StringComparison.Ordinal);
        Assert.StartsWith("0 kg", finding.Limit, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"45 g\"", "\"2 L\"", "kg")]
    [InlineData("\"66 °C\"", "\"66 kg\"", "°C")]
    [InlineData("\"60 min\"", "\"60\"", "min")]
    [InlineData("\"2.0 volumes\"", "\"2.0 EBC\"", "volumes")]
    public void A_wrong_unit_names_those_that_fit(string was, string wrong, string unit) =>
        Assert.Contains(unit, Only(was, wrong).Message, StringComparison.Ordinal);

    [Fact]
    public void Litres_below_nothing_are_told_of_as_litres()
    {
        var text = Samples.Text("samples", "recipes", "edges", "salts-and-water.json").Replace("\"2 L\"", "\"-2 L\"", StringComparison.Ordinal);
        var finding = Assert.Single(RecipeFile.Read(text).Findings);
        Assert.Contains("-2 L", finding.Message, StringComparison.Ordinal);
        Assert.Contains("0 L", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bare_number_is_told_to_bring_a_unit()
    {
        var finding = Only("\"45 g\"", "45");
        Assert.Equal(("quantity.bare", "45"), (finding.Code, finding.Value));
        Assert.Contains("unit", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_share_over_the_whole_is_refused_with_both_ends()
    {
        var finding = Only("\"alpha\": \"5.2 %\", \"form\": \"whole\", \"amount\": \"45 g\"", "\"alpha\": \"300 %\", \"form\": \"whole\", \"amount\": \"45 g\"");
        Assert.Equal(("ingredients[2].alpha", "0 % to 100 %"), (finding.Where, finding.Limit));
        Assert.Contains("300 %", finding.Message, StringComparison.Ordinal);
        Assert.Contains("100 %", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"colour\"", "\"colur\"", "colour")]
    [InlineData("\"colour\"", "\"color\"", "colour")]
    [InlineData("\"notes\"", "\"ntoes\"", "notes")]
    [InlineData("\"notes\"", "\"Notes\"", "notes")]
    [InlineData("\"carbonation\"", "\"carbination\"", "carbonation")]
    public void An_unknown_key_names_the_nearest(string key, string typed, string nearest)
    {
        var finding = Only(key, typed);
        Assert.Equal("key.unknown", finding.Code);
        Assert.Contains($"\"{nearest}\"", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_a_later_form_names_the_one_that_is_read()
    {
        var finding = Only("gylebook-recipe/1", "gylebook-recipe/2");
        Assert.Equal(("format.wrong", "gylebook-recipe/2", "gylebook-recipe/1"), (finding.Code, finding.Value, finding.Limit));
    }

    [Fact]
    public void Everything_wrong_is_told_at_once()
    {
        var text = Good.Replace("\"45 g\"", "\"-1 kg\"", StringComparison.Ordinal)
            .Replace("\"bag\"", "\"sack\"", StringComparison.Ordinal)
            .Replace("\"colour\"", "\"colur\"", StringComparison.Ordinal)
            .Replace("\"name\"", "\"title\"", StringComparison.Ordinal);
        Assert.Equal(
            ["name", "mash.method", "ingredients[1].colur", "ingredients[2].amount", "title"],
            RecipeFile.Read(text).Findings.Select(finding => finding.Where));
    }

    private static Finding Only(string was, string wrong)
    {
        var at = Good.IndexOf(was, StringComparison.Ordinal);
        Assert.True(at >= 0);
        return Assert.Single(RecipeFile.Read(Good.Remove(at, was.Length).Insert(at, wrong)).Findings);
    }
}
