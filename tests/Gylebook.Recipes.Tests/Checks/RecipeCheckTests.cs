using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Tests.Checks;

public sealed class RecipeCheckTests
{
    private static readonly string Bitter = Samples.Text("samples", "recipes", "plain-bitter.json");
    private static readonly string Wheat = Samples.Text("samples", "recipes", "apricot-cardamom-wheat.json");
    private static readonly string Extract = Samples.Text("samples", "recipes", "edges", "extract-only.json");
    private static readonly string Sour = Samples.Text("samples", "recipes", "edges", "kettle-sour.json");
    private static readonly string NoBoil = Samples.Text("samples", "recipes", "edges", "no-boil.json");

    [Fact]
    public void The_age_of_dry_yeast_is_passed_over_and_says_so() => Assert.Equal(
        "yeast.dryAge", Assert.Single(Check(Bitter.Replace("\"form\": \"dry\"", "\"form\": \"dry\", \"age\": \"300 d\"", StringComparison.Ordinal))).Code);

    [Fact]
    public void Hops_kept_nobody_knows_how_are_taken_as_kept_badly() => Assert.Equal(
        "hop.storageUnsaid", Assert.Single(Check(Bitter.Replace("\"whole\", \"amount\": \"45 g\"", "\"whole\", \"age\": \"90 d\", \"amount\": \"45 g\"", StringComparison.Ordinal))).Code);

    [Theory]
    [InlineData("\"3.4\"", "\"2.9\"", "souring.ph", "souring.ph", "2.9", "3.0 to 5.0")]
    [InlineData("\"3.4\"", "5.1", "souring.ph", "souring.ph", "5.1", "3.0 to 5.0")]
    [InlineData("\"3.4\"", "\"4,7\"", "souring.phHigh", "souring.ph", "4,7", "4.6")]
    [InlineData("\"40 °C\"", "\"9 °C\"", "souring.temperature", "souring.temperature", "9 °C", "10 °C to 55 °C")]
    [InlineData("\"40 °C\"", "\"56 °C\"", "souring.temperature", "souring.temperature", "56 °C", "10 °C to 55 °C")]
    [InlineData("\"30 h\"", "\"8 d\"", "souring.long", "souring.time", "8 d", "7 d")]
    [InlineData("\"boil 20 min\"", "\"copper-up\"", "souring.hops", "ingredients[2].at", "Saaz", "boil or later")]
    public void Souring_that_cannot_be_meant_names_field_value_and_limit(string was, string wrong, string code, string where, string value, string limit)
    {
        var finding = Assert.Single(Check(Replaced(Sour, was, wrong)));
        Assert.Equal((code, where, value, limit), (finding.Code, finding.Where, finding.Value, finding.Limit));
        Assert.Contains(value, finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_brewers_own_attenuation_is_let_pass() =>
        Assert.Empty(Check(Bitter.Replace("\"form\": \"dry\"", "\"form\": \"dry\", \"attenuation\": \"74 %\"", StringComparison.Ordinal)));

    [Theory]
    [InlineData("\"3.4\"", "\"3\"")]
    [InlineData("\"3.4\"", "4.6")]
    [InlineData("\"40 °C\"", "\"10 °C\"")]
    [InlineData("\"30 h\"", "\"7 d\"")]
    public void Souring_just_within_is_let_pass(string was, string other) => Assert.Empty(Check(Replaced(Sour, was, other)));

    [Fact]
    public void A_sound_recipe_has_no_findings() => Assert.Empty(Check(Bitter));

    [Theory]
    [InlineData("\"66 °C\"", "\"400 °C\"", "mash.rest", "mash.rests[0].temperature", "400 °C", "30 °C to 85 °C")]
    [InlineData("\"66 °C\"", "\"29.9 °C\"", "mash.rest", "mash.rests[0].temperature", "29.9 °C", "30 °C to 85 °C")]
    [InlineData("\"77 °C\"", "\"120 °C\"", "sparge.temperature", "mash.sparge.temperature", "120 °C", "0 °C to 100 °C")]
    [InlineData("\"19 °C\"", "\"46 °C\"", "ferment.temperature", "ferment[0].temperature", "46 °C", "-2 °C to 45 °C")]
    [InlineData("\"10 d\"", "\"401 d\"", "ferment.long", "ferment", "401 d", "400 d")]
    [InlineData("{ \"time\": \"60 min\" }", "{ \"time\": \"7 h\" }", "boil.long", "boil.time", "7 h", "6 h")]
    [InlineData("\"2.0 volumes\"", "\"6.1 volumes\"", "package.carbonation", "package.carbonation", "6.1 volumes", "6 volumes")]
    [InlineData("\"whole\", \"amount\": \"45 g\"", "\"whole\", \"amount\": \"2.1 kg\"", "amount.absurd", "ingredients[2].amount", "2.1 kg", "2 kg")]
    [InlineData("\"3.6 kg\"", "\"39.9 kg\"", "amount.together", "ingredients", "40.15 kg", "40 kg")]
    [InlineData("\"boil 60 min\"", "\"boil 61 min\"", "at.beforeBoil", "ingredients[2].at", "boil 61 min", "60 min")]
    [InlineData("\"boil 60 min\"", "\"stand 5 min\"", "at.noStand", "ingredients[2].at", "stand 5 min", "a stand")]
    [InlineData("\"boil 60 min\"", "\"ferment day 11\"", "at.afterFerment", "ingredients[2].at", "ferment day 11", "day 10")]
    [InlineData("\"whole\", \"amount\": \"45 g\"", "\"whole\", \"age\": \"10000 d\", \"amount\": \"45 g\"", "hop.age", "ingredients[2].age", "10000 d", "3650 d")]
    [InlineData("\"form\": \"dry\"", "\"form\": \"dry\", \"attenuation\": \"4 %\"", "yeast.attenuation", "ingredients[5].attenuation", "4 %", "5 % to 100 %")]
    [InlineData("\"form\": \"dry\"", "\"form\": \"slurry\", \"age\": \"200 d\"", "yeast.age", "ingredients[5].age", "200 d", "142 d")]
    [InlineData("{ \"yeast\": \"English ale\", \"form\": \"dry\"", "{ \"food\": \"honey\"", "yeast.none", "ingredients", "none", "a yeast")]
    public void What_cannot_be_meant_names_field_value_and_limit(string was, string wrong, string code, string where, string value, string limit)
    {
        var finding = Assert.Single(Check(Replaced(Bitter, was, wrong)));
        Assert.Equal((code, where, value, limit), (finding.Code, finding.Where, finding.Value, finding.Limit));
        Assert.Contains(value, value == "none" ? "none" : finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"5.2 %\"", "\"30 %\"")]
    [InlineData("\"66 °C\"", "\"30 °C\"")]
    [InlineData("\"66 °C\"", "\"85 °C\"")]
    [InlineData("\"19 °C\"", "\"-2 °C\"")]
    [InlineData("\"2.0 volumes\"", "\"6 volumes\"")]
    [InlineData("{ \"time\": \"60 min\" }", "{ \"time\": \"6 h\" }")]
    [InlineData("\"boil 60 min\"", "\"ferment day 10\"")]
    [InlineData("\"3.6 kg\"", "\"0 kg\"")]
    public void What_is_just_within_is_let_pass(string was, string other) => Assert.Empty(Check(Replaced(Bitter, was, other)));

    [Theory]
    [InlineData("\"20 L\"", "\"0.09 L\"")]
    [InlineData("\"20 L\"", "\"2001 L\"")]
    public void A_package_of_another_size_of_world_is_told(string was, string wrong) =>
        Assert.Contains(Check(Replaced(Bitter, was, wrong)), finding => finding is { Code: "package.volume", Limit: "0.1 L to 2000 L" });

    [Fact]
    public void Malt_without_a_mash_is_told()
    {
        var forgotten = Check(Replaced(Extract, "\"extract\": \"dry malt extract light\"", "\"malt\": \"pale ale malt\""));
        Assert.Equal(["mash.missing", "malt.late"], forgotten.Select(finding => finding.Code));
        var none = Check(Replaced(Bitter, "\"bag\"", "\"none\""));
        Assert.Equal("mash.method", Assert.Single(none).Where);
    }

    [Theory]
    [InlineData("\"rests\": [ { \"temperature\": \"66 °C\", \"time\": \"60 min\" } ],", "", "mash.rests")]
    [InlineData("\"volume\": \"5 L\", ", "", "sparge.volume")]
    [InlineData("\"pour\"", "\"none\"", "sparge.unused")]
    [InlineData("\"77 °C\"", "\"95 °C\"", "sparge.hot")]
    public void A_mash_that_could_not_work_is_told(string was, string wrong, string code) =>
        Assert.Equal(code, Assert.Single(Check(Replaced(Bitter, was, wrong))).Code);

    [Fact]
    public void An_empty_mash_is_told() =>
        Assert.Equal("mash.empty", Assert.Single(Check(Replaced(Extract, "\"boil\": {", "\"mash\": { \"method\": \"bag\", \"rests\": [ { \"temperature\": \"66 °C\", \"time\": \"1 h\" } ] }, \"boil\": {"))).Code);

    [Fact]
    public void An_addition_to_a_boil_there_is_not_is_told()
    {
        var finding = Assert.Single(Check(Replaced(NoBoil, "\"stand 20 min\"", "\"boil 20 min\"")));
        Assert.Equal(("at.noBoil", "ingredients[2].at"), (finding.Code, finding.Where));
    }

    [Fact]
    public void An_addition_before_the_stand_begins_is_told() =>
        Assert.Equal("at.beforeStand", Assert.Single(Check(Replaced(NoBoil, "\"stand 20 min\"", "\"stand 21 min\""))).Code);

    [Fact]
    public void An_addition_to_a_mash_there_is_not_is_told() =>
        Assert.Equal("at.noMash", Assert.Single(Check(Replaced(Extract, "\"copper-up\"", "\"mash\""))).Code);

    [Theory]
    [InlineData("\"share\": \"50 %\"", "\"share\": \"49.9 %\"", "portions.sum", "portions")]
    [InlineData("\"name\": \"plain\"", "\"name\": \"fruit\"", "portion.twice", "portions[1].name")]
    [InlineData("\"portion\": \"fruit\"", "\"portion\": \"friut\"", "portion.unknown", "ingredients[5].portion")]
    [InlineData("\"ferment day 5\"", "\"knock-out\"", "portion.early", "ingredients[5].portion")]
    public void Portions_that_do_not_fit_are_told(string was, string wrong, string code, string where)
    {
        var finding = Assert.Single(Check(Replaced(Wheat, was, wrong)));
        Assert.Equal((code, where), (finding.Code, finding.Where));
    }

    [Fact]
    public void Three_portions_may_be_rounded_so_that_they_add_up() => Assert.Empty(Check(Replaced(
        Replaced(Wheat, "\"share\": \"50 %\"", "\"share\": \"33.4 %\""),
        "{ \"name\": \"plain\", \"share\": \"50 %\", \"from\": \"cast\" }",
        "{ \"name\": \"plain\", \"share\": \"33.3 %\" }, { \"name\": \"third\", \"share\": \"33.3 %\" }")));

    private static IReadOnlyList<Finding> Check(string text)
    {
        var reading = RecipeFile.Read(text);
        Assert.Empty(reading.Findings);
        return RecipeCheck.Findings(reading.Value!);
    }

    private static string Replaced(string text, string was, string wrong)
    {
        var at = text.IndexOf(was, StringComparison.Ordinal);
        Assert.True(at >= 0, was);
        return text.Remove(at, was.Length).Insert(at, wrong);
    }
}
