using System.Text.Json.Nodes;
using Gylebook.Forecast.Solving;
using Gylebook.Gyles.Plans;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;
using Gylebook.Site.Publications;
using Gylebook.Site.Recasting;

namespace Gylebook.Site.Tests;

/// <summary>A published recipe weighed anew: the solver's own answer, for what a follower typed, and nothing typed is lost without a word.</summary>
public sealed class RecastTests
{
    public static TheoryData<string> Samples() => [.. Given.Samples];

    [Theory]
    [MemberData(nameof(Samples))]
    public void It_is_what_the_solver_weighs_for_that_kit(string sample)
    {
        Publication publication = Given.Of(sample);
        Recast recast = Of(publication, "?beer=10+L&kettle=25+L&boils=3+L%2Fh&left=0.5+L&height=300+m");
        Recipe published = RecipeFile.Read(publication.Files.Recipe).Value!;
        Kit kit = KitFile.Read(publication.Files.Kit).Value!;
        Kit theirs = KitFile.Read(recast.KitText).Value!;
        Assert.Equal((25, 3, 0.5, 300), (theirs.Kettle.Brim.Value.Litres, theirs.Kettle.Evaporation.Value.LitresPerHour, theirs.Kettle.LeftBehind.Value.Litres, theirs.MetresAboveSea));
        SolvedRecipe solved = new RecipeSolver(theirs, GyleInputs.Of(publication.Files)!.Larder).Solve(published, new BeerWish { Package = new Entered<VolumeAt20C>(VolumeAt20C.FromLitres(10), "10 L") }, kit);
        Assert.True(solved.IsMet);
        Assert.Equal(solved.Recipe.Ingredients.Select(line => line.Amount.Text), recast.Recipe.Ingredients.Select(line => line.Amount.Text));
        Assert.Equal(solved.Recipe.Ingredients.Select(line => line.Amount.Text), RecipeFile.Read(recast.RecipeText).Value!.Ingredients.Select(line => line.Amount.Text));
        Assert.Equal("10 L", recast.Recipe.Package.Volume.Text);
    }

    [Fact]
    public void With_nothing_typed_it_is_the_recipe_that_was_published()
    {
        Publication publication = Given.Of("plain-bitter");
        Recast recast = Of(publication, "");
        Assert.True(recast.CanBeBrewed);
        Recipe published = RecipeFile.Read(publication.Files.Recipe).Value!;
        foreach ((var line, var was) in recast.Recipe.Ingredients.Zip(published.Ingredients))
        {
            // What the recipe says is kept; the solver may round a weight to what a scale shows.
            Assert.InRange(line.Amount.Mass!.Value.Value.Kilograms / was.Amount.Mass!.Value.Value.Kilograms, 0.99, 1.01);
        }
    }

    [Fact]
    public void Stronger_hops_are_weighed_lighter_for_the_bitterness_that_was_published()
    {
        Publication publication = Given.Of("plain-bitter");
        Recipe published = RecipeFile.Read(publication.Files.Recipe).Value!;
        int hop = published.Ingredients.Index().First(entry => entry.Item.Kind == Recipes.Ingredients.IngredientKind.Hop).Index;
        Recast usual = Of(publication, ""), strong = Of(publication, $"alpha{hop}=9.6 %");
        Assert.True(strong.CanBeBrewed, string.Join("; ", strong.Findings));
        Assert.Equal(IbuOf(usual), IbuOf(strong), 0.5);
        Assert.True(Grams(strong, hop) < Grams(usual, hop));
    }

    [Fact]
    public void A_malt_in_the_place_of_another_is_weighed_for_the_gravity_that_was_published()
    {
        Publication publication = Given.Of("hedgerow-brown");
        Recast usual = Of(publication, ""), swapped = Of(publication, "without1=0&instead1=vienna malt");
        Assert.Equal("vienna malt", swapped.Recipe.Ingredients[0].Of);
        Assert.Equal(GravityOf(usual), GravityOf(swapped), 0.0005);
    }

    [Fact]
    public void Another_way_to_mash_takes_the_usual_tun_where_the_published_kit_has_none()
    {
        Recast recast = Of(Given.Of("plain-bitter"), "mash=tun&tun=40 L&under=1 L");
        Assert.True(recast.CanBeBrewed, string.Join("; ", recast.Findings));
        Assert.Equal(MashMethod.Tun, recast.Recipe.Mash!.Method);
        Assert.Equal((40, 1, 0.9), (recast.Kit.Tun!.Brim.Value.Litres, recast.Kit.Tun.DeadSpace.Value.Litres, recast.Kit.Tun.LiquorKept.Value.LitresPerKilogram));
    }

    [Theory]
    [InlineData("kettle=wide", "kit.kettle.brim", "wide")]
    [InlineData("beer=-3 L", "package.volume", "-3 L")]
    [InlineData("beer=soon", "package.volume", "soon")]
    [InlineData("height=high", "kit.altitude", "high")]
    [InlineData("without1=0&instead1=no such malt", "ingredients[0]", "no such malt")]
    public void What_cannot_be_read_is_told_with_field_and_value(string typed, string where, string value)
    {
        Recast recast = Of(Given.Of("plain-bitter"), typed);
        Assert.False(recast.CanBeBrewed);
        Assert.Contains(recast.Findings, finding => finding.Where.StartsWith(where, StringComparison.Ordinal) && $"{finding.Message} {finding.Value}".Contains(value, StringComparison.Ordinal));
    }

    [Fact]
    public void A_kettle_too_small_says_how_much_would_fit()
    {
        Publication publication = Given.Of("plain-bitter");
        Recast recast = Of(publication, "beer=20 L&kettle=15 L");
        Assert.False(recast.CanBeBrewed);
        Assert.Contains(recast.Findings, finding => finding.Severity == Severity.Error && finding.Where.Contains("kettle", StringComparison.Ordinal));
        double most = Assert.NotNull(recast.MostLitres);
        Assert.InRange(most, 0.5, 19.5);
        Assert.True(Of(publication, Invariant($"beer={most - 0.5} L&kettle=15 L")).CanBeBrewed, "half a litre less than the most must fit");
        Assert.Contains("at most about", RecastHtml.Write(recast, null), StringComparison.Ordinal);
    }

    [Fact]
    public void The_desk_answers_with_the_page_and_both_files()
    {
        RecastDesk desk = RecastDesk.Open(PublicationFile.Write(Given.Of("hedgerow-brown")))!;
        JsonNode answer = JsonNode.Parse(desk.Answer("?beer=10+L"))!;
        Assert.True((bool)answer["brews"]!);
        Recipe recipe = RecipeFile.Read((string)answer["recipe"]!).Value!;
        Assert.Equal(10, recipe.Package.Volume.Value.Litres);
        Assert.NotNull(KitFile.Read((string)answer["kit"]!).Value);
        string html = (string)answer["html"]!;
        Assert.All(recipe.Ingredients, line => Assert.Contains($"{new Pictures.Shown(Pictures.ReaderUnits.Metric).Kilograms(line.Amount.Mass!.Value.Value.Kilograms)}<", html, StringComparison.Ordinal));
        Assert.Null(RecastDesk.Open("{}"));
    }

    [Fact]
    public void An_address_is_read_as_forms_write_it()
    {
        ReaderWords words = ReaderWords.Read("?beer=10+L&boils=3%20L%2Fh&empty=&=none&plain");
        Assert.Equal(("10 L", "3 L/h", null, null), (words["beer"], words["boils"], words["empty"], words["plain"]));
        Assert.Null(ReaderWords.Read("beer=" + new string('9', 500))["beer"]);
    }

    private static Recast Of(Publication publication, string typed) => Assert.IsType<Recast>(Recast.Of(publication.Files, ReaderWords.Read(typed)));

    private static double IbuOf(Recast recast) => recast.Forecast!.Headline.Single(headline => headline.Name == "bitterness").Band!.Likely;

    private static double GravityOf(Recast recast) => recast.Forecast!.Headline.Single(headline => headline.Name == "originalGravity").Band!.Likely;

    private static double Grams(Recast recast, int line) => recast.Recipe.Ingredients[line].Amount.Mass!.Value.Value.Kilograms * 1000;
}
