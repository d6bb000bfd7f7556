using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml;
using Gylebook.Gyles.BrewDay;
using Gylebook.Pictures;

namespace Gylebook.Site.Leaves;

/// <summary>A published recipe as schema.org <c>Recipe</c> in JSON-LD. It has no word for alcohol or allergens: those stand in the description.</summary>
public static class LeafJsonLd
{
    /// <summary>What nutrition is told for: a bottle or a glass.</summary>
    private const double ServingMillilitres = 330;

    private static readonly string[] Keywords = ["beer", "home brewing"];

    /// <summary>The document; safe within a page, since no <c>&lt;</c> is left in it.</summary>
    /// <param name="leaf">What it tells.</param>
    /// <param name="address">Where the page will be found, ending in a slash; null where nobody knows yet.</param>
    public static string Write(Leaf leaf, Uri? address)
    {
        ArgumentNullException.ThrowIfNull(leaf);
        JsonObject recipe = new()
        {
            ["@context"] = "https://schema.org",
            ["@type"] = "Recipe",
            ["name"] = leaf.Published.Name,
            ["author"] = new JsonObject { ["@type"] = "Person", ["name"] = leaf.Published.By.Length > 0 ? leaf.Published.By : "A home brewer" },
            ["datePublished"] = leaf.Published.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            ["description"] = LeafText.OneLine(leaf),
            ["recipeCategory"] = "Beer",
            ["recipeYield"] = leaf.Metric.Figures.FirstOrDefault(figure => figure.Title == "Beer")?.Value.Replace(Shown.Space, " ", StringComparison.Ordinal),
            ["keywords"] = string.Join(", ", Keywords.Concat(leaf.Inputs.Recipe.Ingredients.Where(line => line.Kind == Recipes.Ingredients.IngredientKind.Food).Select(line => line.As ?? line.Of))),
            ["cookTime"] = XmlConvert.ToString(TimeSpan.FromMinutes(Math.Round(leaf.BrewMinutes))),
            ["recipeIngredient"] = new JsonArray([.. leaf.Ingredients.Select(line => (JsonNode)line.Replace(Shown.Space, " ", StringComparison.Ordinal))]),
            ["recipeInstructions"] = Instructions(leaf),
            ["nutrition"] = Nutrition(leaf),
        };
        if (leaf.CellarDays is { } days)
        {
            recipe["totalTime"] = XmlConvert.ToString(TimeSpan.FromMinutes(Math.Round(leaf.BrewMinutes)) + TimeSpan.FromDays(days));
        }

        if (address is not null)
        {
            recipe["url"] = address.AbsoluteUri;
            recipe["image"] = new Uri(address, LeafFiles.Run).AbsoluteUri;
        }

        return recipe.ToJsonString(new JsonSerializerOptions { Encoder = JavaScriptEncoder.Default, TypeInfoResolver = null });
    }

    private static JsonArray Instructions(Leaf leaf) =>
    [
        Section("Brew day", leaf.Steps.Select(step => (step.Key, step.Title, Said(step)))),
        Section("After it", leaf.Later.Select(day => (day.Key, Invariant($"Day {day.AfterPitch:0.##}"), string.Join(' ', [day.Sentence, .. day.Cautions])))),
    ];

    private static string Said(BrewStep step)
    {
        string items = string.Join(", ", step.Items.Select(item => $"{item.Amount} {item.What}"));
        return string.Join(' ', new[] { step.Say, items.Length > 0 ? items + "." : "" }.Concat(step.Cautions.Select(caution => caution.Message)).Where(words => words.Length > 0));
    }

    private static JsonObject Section(string name, IEnumerable<(string Key, string Title, string Text)> steps) => new()
    {
        ["@type"] = "HowToSection",
        ["name"] = name,
        ["itemListElement"] = new JsonArray(
        [
            .. steps.Select(step => (JsonNode)new JsonObject
            {
                ["@type"] = "HowToStep", ["name"] = step.Title, ["text"] = step.Text.Replace(Shown.Space, " ", StringComparison.Ordinal), ["url"] = $"#step-{step.Key}",
            }),
        ]),
    };

    /// <summary>Of the finished beer, not of what went in.</summary>
    private static JsonObject? Nutrition(Leaf leaf)
    {
        double? Of(string name) => leaf.Forecast.Headline.FirstOrDefault(headline => headline.Name == name)?.Band?.Likely;
        return Of("energyKcalPer100ml") is not { } energy ? null : new JsonObject
        {
            ["@type"] = "NutritionInformation",
            ["servingSize"] = Invariant($"{ServingMillilitres:0} mL"),
            ["calories"] = Invariant($"{energy * ServingMillilitres / 100:0} calories"),
            ["sodiumContent"] = Of("sodiumMgPerL") is { } sodium ? Invariant($"{sodium * ServingMillilitres / 1000:0} mg") : null,
        };
    }
}
