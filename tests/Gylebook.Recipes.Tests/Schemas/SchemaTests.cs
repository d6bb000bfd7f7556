using System.Text.Json;
using CsCheck;
using Gylebook.Recipes.Interchange;
using Gylebook.Tests.Shared;

namespace Gylebook.Recipes.Tests.Schemas;

public sealed class SchemaTests
{
    // Well-formed and of the right shape: what is wrong with these is written twice, or does not make sense.
    private static readonly string[] BeyondASchema = ["key-twice.json", "absurd.json", "hops-absurd.json", "kit-absurd.json", "souring-absurd.json", "water-absurd.json", "larder-yeast-wrong.json"];

    /// <summary>Every broken file that is JSON at all, and whose fault is one of form.</summary>
    public static TheoryData<string> BadForms() =>
        [.. Samples.Files("samples", "bad").Where(path => IsJson(path) && !BeyondASchema.Contains(Path.GetFileName(path)))];

    [Theory]
    [MemberData(nameof(Samples.Recipes), MemberType = typeof(Samples))]
    public void A_sample_recipe_is_valid(string path) => Assert.Empty(PublishedSchema.Objections("recipe", Samples.Text(path)));

    [Theory]
    [MemberData(nameof(Samples.Kits), MemberType = typeof(Samples))]
    public void A_sample_kit_is_valid(string path)
    {
        Assert.Empty(PublishedSchema.Objections("kit", Samples.Text(path)));
        Assert.Empty(PublishedSchema.Objections("kit", KitFile.Write(KitFile.Read(Samples.Text(path)).Value!)));
    }

    [Theory]
    [MemberData(nameof(Samples.Foods), MemberType = typeof(Samples))]
    public void A_sample_food_is_valid(string path) => Assert.Empty(PublishedSchema.Objections("food", Samples.Text(path)));

    [Theory]
    [MemberData(nameof(Samples.Larder), MemberType = typeof(Samples))]
    public void A_sample_sheet_is_valid(string path)
    {
        using FileStream stream = File.OpenRead(Samples.Folder(path));
        var sheet = LarderFile.Read(stream).Value!;
        string form = JsonDocument.Parse(Samples.Text(path)).RootElement.GetProperty("format").GetString()!.Split('-', '/')[1];
        Assert.Empty(PublishedSchema.Objections(form, Samples.Text(path)));
        Assert.Empty(PublishedSchema.Objections(form, LarderFile.Write(sheet)));
    }

    [Theory]
    [MemberData(nameof(Samples.Waters), MemberType = typeof(Samples))]
    public void A_sample_water_plan_is_valid(string path) => Assert.Empty(PublishedSchema.Objections("water", Samples.Text(path)));

    [Theory]
    [MemberData(nameof(BadForms))]
    public void A_broken_file_is_refused(string path) => Assert.NotEmpty(PublishedSchema.Objections(
        Path.GetFileName(path).Split('-') switch { ["kit", ..] => "kit", ["water", ..] => "water", ["larder", var form, ..] => form, _ => "recipe" }, Samples.Text(path)));

    [Fact]
    public void What_we_write_is_valid() => RandomRecipes.Any.Sample(
        recipe => Assert.Empty(PublishedSchema.Objections("recipe", RecipeFile.Write(recipe))),
        iter: 200,
        seed: "0N0XIzNsQ0O2");

    [Theory]
    [InlineData("\"amount\": \"56 g\", ", "")]
    [InlineData(", \"at\": \"knock-out\"", "")]
    [InlineData("\"at\": \"boil 10 min\"", "\"at\": \"boil\"")]
    [InlineData("\"hop\": \"Fuggle\"", "\"hop\": \"\"")]
    [InlineData("\"malt\": \"munich malt\"", "\"malt\": \"munich malt\", \"alpha\": \"5 %\"")]
    [InlineData("\"malt\": \"munich malt\"", "\"malt\": \"munich malt\", \"attenuation\": \"74 %\"")]
    [InlineData("\"amount\": \"3.6 kg\"", "\"amount\": \"3.6 L\"")]
    [InlineData("\"form\": \"dry\"", "\"form\": \"whole\"")]
    [InlineData("\"20 L\"", "20")]
    [InlineData("\"66 °C\"", "\"66 °\"")]
    public void A_recipe_with_one_fault_is_refused_by_schema_and_reader_alike(string was, string wrong)
    {
        var text = Samples.Text("samples", "recipes", "hedgerow-brown.json").Replace("\"ferment day 3\"", "\"knock-out\"", StringComparison.Ordinal);
        Assert.Empty(PublishedSchema.Objections("recipe", text));
        var faulty = text.Replace(was, wrong, StringComparison.Ordinal);
        Assert.NotEqual(text, faulty);
        Assert.NotEmpty(PublishedSchema.Objections("recipe", faulty));
        Assert.NotEmpty(RecipeFile.Read(faulty).Findings);
    }

    [Theory]
    [InlineData("forecast", "{\"format\":\"gylebook-forecast/1\"}")]
    [InlineData("label", "{\"format\":\"gylebook-label/1\"}")]
    [InlineData("food", "{\"format\":\"gylebook-food/1\",\"id\":\"x\",\"name\":\"x\",\"family\":\"other food\",\"extra\":1}")]
    [InlineData("food", "{\"format\":\"gylebook-food/1\",\"id\":\"x\",\"name\":\"x\",\"family\":\"other food\",\"label\":{\"style\":\"UK\"}}")]
    [InlineData("food", "{\"format\":\"gylebook-food/1\",\"id\":\"x\",\"name\":\"x\",\"family\":\"other food\",\"label\":{\"style\":\"US\",\"fat\":3}}")]
    public void What_lacks_keys_or_has_wrong_ones_is_refused(string form, string text) =>
        Assert.NotEmpty(PublishedSchema.Objections(form, text));

    [Theory]
    [InlineData("forecast")]
    [InlineData("label")]
    public void A_form_of_output_takes_its_example(string form) =>
        Assert.Empty(PublishedSchema.Objections(form, Samples.Text("docs", "schema", $"{form}.example.json")));

    private static bool IsJson(string path)
    {
        try
        {
            using var document = JsonDocument.Parse(Samples.Text(path));
            return true;
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
