using System.Text.Json.Nodes;
using System.Xml;
using Gylebook.Site.Leaves;

namespace Gylebook.Site.Tests;

/// <summary>What search engines read: the properties of schema.org/Recipe, of the finished beer.</summary>
public sealed class LeafJsonLdTests
{
    public static TheoryData<string> Samples() => [.. Given.Samples];

    [Theory]
    [MemberData(nameof(Samples))]
    public void It_has_name_author_ingredients_instructions_yield_times_and_nutrition(string sample)
    {
        Leaf leaf = Given.Leaf(sample);
        JsonObject recipe = Read(leaf, null);
        Assert.Equal("https://schema.org", (string?)recipe["@context"]);
        Assert.Equal("Recipe", (string?)recipe["@type"]);
        Assert.Equal(leaf.Published.Name, (string?)recipe["name"]);
        Assert.Equal("Lantern Shed", (string?)recipe["author"]!["name"]);
        Assert.Equal("2027-03-01", (string?)recipe["datePublished"]);
        Assert.Equal(leaf.Metric.Parts.Sum(part => part.Rows.Count(row => row.Amount.Length > 0)), ((JsonArray)recipe["recipeIngredient"]!).Count);
        JsonObject[] sections = [.. ((JsonArray)recipe["recipeInstructions"]!).OfType<JsonObject>()];
        Assert.All(sections, section => Assert.Equal("HowToSection", (string?)section["@type"]));
        JsonObject[] steps = [.. sections.SelectMany(section => (JsonArray)section["itemListElement"]!).OfType<JsonObject>()];
        Assert.Equal(leaf.Steps.Count + leaf.Later.Count, steps.Length);
        Assert.All(steps, step => Assert.NotEmpty((string)step["text"]!));
        Assert.EndsWith(" L", (string)recipe["recipeYield"]!, StringComparison.Ordinal);
        Assert.Equal(Math.Round(leaf.BrewMinutes), XmlConvert.ToTimeSpan((string)recipe["cookTime"]!).TotalMinutes);
        Assert.Equal(leaf.CellarDays!.Value, XmlConvert.ToTimeSpan((string)recipe["totalTime"]!).TotalDays, 1.0);
        Assert.Matches("^[0-9]+ calories$", (string)recipe["nutrition"]!["calories"]!);
        Assert.Contains("barley", (string)recipe["description"]!, StringComparison.Ordinal);
    }

    [Fact]
    public void Nutrition_is_of_the_beer_in_the_glass()
    {
        Leaf leaf = Given.Leaf("plain-bitter");
        double per100 = leaf.Forecast.Headline.Single(headline => headline.Name == "energyKcalPer100ml").Band!.Likely;
        JsonNode nutrition = Read(leaf, null)["nutrition"]!;
        Assert.Equal("330 mL", (string?)nutrition["servingSize"]);
        Assert.Equal(per100 * 3.3, double.Parse(((string)nutrition["calories"]!).Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), 0.51);
    }

    [Fact]
    public void No_diet_is_promised_and_nothing_in_it_ends_a_script()
    {
        Leaf leaf = Given.Leaf("plain-bitter", recipe => recipe with { Name = "</script><b>" });
        string text = LeafJsonLd.Write(leaf, null);
        Assert.DoesNotContain("suitableForDiet", text, StringComparison.Ordinal);
        Assert.DoesNotContain("<", text, StringComparison.Ordinal);
        Assert.Equal("</script><b>", (string?)JsonNode.Parse(text)!["name"]);
    }

    [Fact]
    public void Where_the_address_is_known_page_and_picture_have_theirs()
    {
        JsonObject recipe = Read(Given.Leaf("plain-bitter"), new Uri("https://example.org/beer/plain-bitter/"));
        Assert.Equal("https://example.org/beer/plain-bitter/", (string?)recipe["url"]);
        Assert.Equal("https://example.org/beer/plain-bitter/run.svg", (string?)recipe["image"]);
    }

    private static JsonObject Read(Leaf leaf, Uri? address) => (JsonObject)JsonNode.Parse(LeafJsonLd.Write(leaf, address))!;
}
