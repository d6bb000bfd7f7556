using System.Text;
using CsCheck;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Tests.Interchange;

public sealed class RecipeFileTests
{
    [Theory]
    [MemberData(nameof(Samples.Recipes), MemberType = typeof(Samples))]
    public void A_sample_reads_without_a_finding_and_is_laid_out_as_we_write(string path)
    {
        var text = Samples.Text(path);
        var reading = RecipeFile.Read(text);
        Assert.Empty(reading.Findings);
        Assert.Equal(text, RecipeFile.Write(reading.Value!));
    }

    [Theory]
    [MemberData(nameof(Samples.Recipes), MemberType = typeof(Samples))]
    public void A_sample_has_no_error_in_it(string path) =>
        Assert.DoesNotContain(RecipeCheck.Findings(RecipeFile.Read(Samples.Text(path)).Value!), finding => finding.Severity == Severity.Error);

    [Fact]
    public void Every_line_of_a_recipe_is_read()
    {
        var recipe = RecipeFile.Read(Samples.Text("samples", "recipes", "hedgerow-brown.json")).Value!;
        Assert.Equal("Hedgerow Brown", recipe.Name);
        Assert.Equal(20, recipe.Package.Volume.Value.Litres);
        Assert.Equal(2.3, recipe.Package.Carbonation!.Value.Value.Volumes, 1e-12);
        Assert.Equal(SpargeMethod.Pour, recipe.Mash!.Sparge.Method);
        Assert.Equal(60, recipe.Boil!.Time.Value.Minutes);
        Assert.Equal(12, recipe.Ferment[0].Time.Value.Days);
        Assert.Equal(10, recipe.Ingredients.Count);
        Assert.Equal(new AdditionTime(AdditionPoint.Mash), recipe.Ingredients[0].At);
        var hop = recipe.Ingredients[5];
        Assert.Equal((IngredientKind.Hop, "Fuggle", IngredientForm.Whole), (hop.Kind, hop.Of, hop.Form));
        Assert.Equal(4.8, hop.Alpha!.Value.Value.Percent, 1e-12);
        Assert.Equal(56, hop.Amount.Mass!.Value.Value.Grams, 1e-12);
        Assert.Equal(new AdditionTime(AdditionPoint.Boil, 60), hop.At);
        Assert.Equal("Buckwheat honey", recipe.Ingredients[8].As);
        Assert.Equal(new AdditionTime(AdditionPoint.Ferment, 3), recipe.Ingredients[8].At);
    }

    [Fact]
    public void Liquor_stand_and_portions_are_read()
    {
        var fixedStrike = RecipeFile.Read(Samples.Text("samples", "recipes", "edges", "fixed-strike.json")).Value!;
        Assert.Equal(24, fixedStrike.Liquor!.Strike!.Value.Value.Litres);
        Assert.Equal(4, fixedStrike.Liquor.TopUp!.Value.Value.Litres);
        var noBoil = RecipeFile.Read(Samples.Text("samples", "recipes", "edges", "no-boil.json")).Value!;
        Assert.Null(noBoil.Boil);
        Assert.Equal(80, noBoil.Stand!.Temperature.Value.Celsius);
        var wheat = RecipeFile.Read(Samples.Text("samples", "recipes", "apricot-cardamom-wheat.json")).Value!;
        Assert.Equal(["fruit", "plain"], wheat.Portions.Select(portion => portion.Name));
        Assert.Equal("fruit", wheat.Ingredients[^1].Portion);
    }

    [Fact]
    public void Text_bytes_and_stream_read_the_same()
    {
        var text = Samples.Text("samples", "recipes", "plain-bitter.json");
        byte[] marked = [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text)];
        using var stream = new MemoryStream(marked);
        Assert.Equal(text, RecipeFile.Write(RecipeFile.Read(stream).Value!));
        Assert.Equal(text, RecipeFile.Write(RecipeFile.Read(marked.AsMemory()).Value!));
    }

    [Theory]
    [InlineData("250 mL", true)]
    [InlineData("350 g", false)]
    public void A_food_may_be_measured_in_a_jug_or_weighed(string amount, bool inAJug)
    {
        var text = Samples.Text("samples", "recipes", "hedgerow-brown.json").Replace("\"500 g\", \"at\": \"ferment day 3\"", $"\"{amount}\", \"at\": \"rack\"", StringComparison.Ordinal);
        var honey = RecipeFile.Read(text).Value!.Ingredients[8];
        Assert.Equal((inAJug, !inAJug), (honey.Amount.Volume.HasValue, honey.Amount.Mass.HasValue));
        Assert.Equal(amount, honey.Amount.Text);
    }

    [Fact]
    public void Nothing_of_something_is_allowed() =>
        Assert.NotNull(RecipeFile.Read(Samples.Text("samples", "recipes", "plain-bitter.json").Replace("45 g", "0 g", StringComparison.Ordinal)).Value);

    [Fact]
    public void Writing_what_was_read_changes_nothing() => RandomRecipes.Any.Sample(
        recipe =>
        {
            var text = RecipeFile.Write(recipe);
            var reading = RecipeFile.Read(text);
            Assert.Empty(reading.Findings);
            Assert.Equal(text, RecipeFile.Write(reading.Value!));
            Assert.Equal(recipe.Ingredients, reading.Value!.Ingredients);
            Assert.Equal(recipe.Ferment, reading.Value.Ferment);
            Assert.Equal(recipe.Portions, reading.Value.Portions);
            Assert.Equal((recipe.Name, recipe.Notes, recipe.Package, recipe.Boil, recipe.Liquor), (reading.Value.Name, reading.Value.Notes, reading.Value.Package, reading.Value.Boil, reading.Value.Liquor));
        },
        iter: 500,
        seed: "0N0XIzNsQ0O2");

    [Fact]
    public void A_random_recipe_has_no_error_in_it() => RandomRecipes.Any.Sample(
        recipe => Assert.DoesNotContain(RecipeCheck.Findings(recipe), finding => finding.Severity == Severity.Error),
        iter: 500,
        seed: "0N0XIzNsQ0O2");

    // International pound 0.45359237 kg, US gallon 3.785411784 L, imperial pint 1/8 of 4.54609 L: exact by definition.
    [Theory]
    [InlineData("10 lb", 4.5359237)]
    [InlineData("8 oz", 0.226796185)]
    public void Pounds_and_ounces_are_weights(string amount, double kilograms)
    {
        var text = Samples.Text("samples", "recipes", "plain-bitter.json").Replace("\"45 g\"", $"\"{amount}\"", StringComparison.Ordinal);
        Assert.Equal(kilograms, RecipeFile.Read(text).Value!.Ingredients[2].Amount.Mass!.Value.Value.Kilograms, 1e-12);
    }

    [Theory]
    [InlineData("5 US gal", 18.92705892)]
    [InlineData("5 imp gal", 22.73045)]
    [InlineData("36 imp pt", 20.457405)]
    public void Gallons_and_pints_are_volumes(string volume, double litres)
    {
        var text = Samples.Text("samples", "recipes", "plain-bitter.json").Replace("\"20 L\"", $"\"{volume}\"", StringComparison.Ordinal);
        Assert.Equal(litres, RecipeFile.Read(text).Value!.Package.Volume.Value.Litres, 1e-12);
        Assert.Equal(text, RecipeFile.Write(RecipeFile.Read(text).Value!));
    }

    [Fact]
    public void A_gallon_of_no_country_is_refused_with_both()
    {
        var text = Samples.Text("samples", "recipes", "plain-bitter.json").Replace("\"20 L\"", "\"5 gal\"", StringComparison.Ordinal);
        var finding = Assert.Single(RecipeFile.Read(text).Findings);
        Assert.Contains("5 US gal or 5 imp gal", finding.Message, StringComparison.Ordinal);
    }
}
