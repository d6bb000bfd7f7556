using System.Text.Json.Nodes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.Json;
using Gylebook.Science.Foods.Labels;

namespace Gylebook.Recipes.Interchange;

/// <summary>A food sheet as the keys of its file, in the order of the guide.</summary>
internal static class FoodWriter
{
    internal static JsonObject Write(FoodSheet food) => new ObjectWriter()
        .Put("format", FoodFile.Format)
        .Put("id", food.Id)
        .Put("name", food.Name)
        .Put("family", food.Family)
        .PutAlways("label", food.Label is { } label ? Label(label) : null)
        .PutAlways("composition", food.Composition is { } composition ? Composition(composition) : null)
        .PutAlways("ingredients", food.Ingredients)
        .PutAlways("mayContain", food.MayContain)
        .Put("acidity", food.Acidity is { } acidity ? Acidity(acidity) : null)
        .Put("assume", Assume(food.Assume))
        .Done;

    /// <summary>The keys that panels of its style have are written even when nothing is printed there.</summary>
    private static JsonObject Label(LabelPanel label)
    {
        var isUs = label.Style == PanelStyle.Us;
        var at = new ObjectWriter()
            .Put("style", FoodReader.Styles.Word(label.Style))
            .Put("serving", label.Serving)
            .PutAlways("energy", EnergyText.Write(label.EnergyKilocalories))
            .PutAlways("fat", label.Fat?.Text)
            .PutAlways("saturated", label.Saturated?.Text);
        at = isUs ? at.PutAlways("sodium", label.Sodium?.Text) : at.Put("sodium", label.Sodium?.Text);
        at = isUs ? at.Put("salt", label.Salt?.Text) : at.PutAlways("salt", label.Salt?.Text);
        at = at
            .PutAlways("carbohydrate", label.Carbohydrate?.Text)
            .PutAlways("fibre", label.Fibre?.Text)
            .PutAlways("sugars", label.Sugars?.Text);
        at = isUs ? at.PutAlways("addedSugars", label.AddedSugars?.Text) : at.Put("addedSugars", label.AddedSugars?.Text);
        return at
            .PutAlways("sugarAlcohols", label.SugarAlcohols?.Text)
            .Put("starch", label.Starch?.Text)
            .PutAlways("protein", label.Protein?.Text)
            .Put("potassium", label.Potassium?.Text)
            .Done;
    }

    private static JsonObject Composition(FoodComposition food) => new ObjectWriter()
        .Put("water", Grams(food.Water))
        .Put("protein", Grams(food.Protein))
        .Put("fat", Grams(food.Fat))
        .Put("ash", Grams(food.Ash))
        .Put("carbohydrate", Grams(food.Carbohydrate))
        .Put("fibre", Grams(food.Fibre))
        .Put("starch", Grams(food.Starch))
        .Put("sugars", Grams(food.Sugars))
        .Put("sucrose", Grams(food.Sucrose))
        .Put("glucose", Grams(food.Glucose))
        .Put("fructose", Grams(food.Fructose))
        .Put("maltose", Grams(food.Maltose))
        .Put("lactose", Grams(food.Lactose))
        .Put("polyols", Grams(food.Polyols))
        .Put("ethanol", Grams(food.Ethanol))
        .Put("sodium", Text(food.SodiumMilligrams, "mg"))
        .Put("potassium", Text(food.PotassiumMilligrams, "mg"))
        .Put("energy", EnergyText.Write(food.EnergyKilocalories))
        .Put("source", food.Source)
        .Done;

    private static JsonObject Acidity(MaltTitration acidity) => new ObjectWriter()
        .PutAlways("distilledPh", acidity.DistilledPh)
        .PutAlways("buffer", acidity.Buffer)
        .Done;

    private static JsonObject Assume(FoodAssume assume) => new ObjectWriter()
        .PutAlways("insolubleShare", assume.InsolubleShare?.Text)
        .PutAlways("heldLitresPerKg", assume.HeldLitresPerKg)
        .Done;

    private static string? Grams(double? grams) => Text(grams, "g");

    private static string? Text(double? number, string unit) =>
        number is { } given ? Invariant($"{given:0.#########} {unit}") : null;
}
