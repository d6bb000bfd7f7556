using System.Text.Json;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange.Json;
using Gylebook.Science.Foods.Labels;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>The keys of a food sheet.</summary>
internal static class FoodReader
{
    internal static readonly WordTable<PanelStyle> Styles = new((PanelStyle.Us, "US"), (PanelStyle.Eu, "EU"));

    internal static FoodSheet Read(ObjectReader file)
    {
        var food = new FoodSheet
        {
            Id = Id(file),
            Name = file.Name("name"),
            Family = file.Name("family"),
            Label = file.OptionalObject("label", Label),
            Composition = file.OptionalObject("composition", CompositionReader.Read),
            Ingredients = file.Prose("ingredients"),
            MayContain = file.Prose("mayContain"),
            Acidity = file.OptionalObject("acidity", GristReader.Acidity),
            Assume = file.OptionalObject("assume", Assume) ?? new FoodAssume(null, null),
        };
        if (food.Label is null && food.Composition is null)
        {
            file.Findings.Warning("food.bare", "label", "neither a label nor a composition; everything is borrowed from the family");
        }

        return food;
    }

    private static string Id(ObjectReader file)
    {
        var id = file.Name("id");
        if (id.Length > 0 && !(id.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-') && id[0] != '-' && id[^1] != '-'))
        {
            const string Form = "small letters a to z, digits and hyphens between them";
            file.Findings.Error("id.wrong", file.PathOf("id"), $"\"{FindingList.Shorten(id)}\"; must be {Form}", id, Form);
        }

        return id;
    }

    private static LabelPanel Label(ObjectReader at) => new()
    {
        Style = at.Word("style", Styles),
        Serving = Serving(at),
        EnergyKilocalories = EnergyText.Read(at, "energy"),
        Fat = Printed(at, "fat"),
        Saturated = Printed(at, "saturated"),
        Sodium = Printed(at, "sodium"),
        Salt = Printed(at, "salt"),
        Potassium = Printed(at, "potassium"),
        Carbohydrate = Printed(at, "carbohydrate"),
        Fibre = Printed(at, "fibre"),
        Sugars = Printed(at, "sugars"),
        AddedSugars = Printed(at, "addedSugars"),
        SugarAlcohols = Printed(at, "sugarAlcohols"),
        Starch = Printed(at, "starch"),
        Protein = Printed(at, "protein"),
    };

    private static Entered<Mass>? Serving(ObjectReader at)
    {
        var serving = at.OptionalQuantity<Mass>("serving");
        if (serving is { } given && given.Value.Kilograms == 0)
        {
            at.Findings.Error("label.serving", at.PathOf("serving"), $"{given}; must be above 0 g, or its figures are for nothing", given.Text, "above 0 g");
        }

        return serving;
    }

    /// <summary>A printed figure, or "less than 1 g", "&lt; 1 g".</summary>
    private static PrintedMass? Printed(ObjectReader at, string key)
    {
        if (at.Take(key) is not { } cursor)
        {
            return null;
        }

        return LessThan(cursor) is { } bound && UnitTable.TryParse<Mass>(bound, out var most, out _)
            ? PrintedMass.LessThan(most.Value, cursor.Element.GetString()!)
            : cursor.Quantity<Mass>() is { } amount ? PrintedMass.Of(amount) : null;
    }

    private static string? LessThan(JsonCursor cursor)
    {
        if (cursor.Element.ValueKind != JsonValueKind.String)
        {
            return null;
        }

        var text = cursor.Element.GetString()!.Trim();
        return text.StartsWith('<') ? text[1..]
            : text.StartsWith("less than ", StringComparison.Ordinal) ? text["less than ".Length..]
            : null;
    }

    private static FoodAssume Assume(ObjectReader at)
    {
        const double MostHeld = 1000;
        return new FoodAssume(at.OptionalQuantity<Fraction>("insolubleShare"), at.Take("heldLitresPerKg")?.Number(0, MostHeld));
    }
}
