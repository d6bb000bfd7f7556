using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Forms;
using Gylebook.Science.Foods.Labels;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>The fields of a food sheet, in the order of its file.</summary>
internal static class FoodForm
{
    private static readonly WordTable<PanelStyle> Styles = new((PanelStyle.Us, "US"), (PanelStyle.Eu, "EU"));

    private static readonly Form<LabelPanel> Label = new Form<LabelPanel>(new LabelPanel { Style = default }) { About = "The nutrition panel as printed, each figure with its unit; \"< 1 g\" is fine. Carbohydrate is in the style's own sense: of US panels fibre is part of it." }
        .Need("style", "style", Leaves.Word(Styles), l => l.Style, (l, v) => l with { Style = v }, new("US: for a serving. EU: for 100 g."))
        .May("serving", "serving size", Leaves.Of<Mass>(), l => l.Serving, (l, v) => l with { Serving = v }, new("What the figures are for; 100 g when left out."))
        .Add(Printed("energy", "energy", Spelled.Energy, l => l.EnergyKilocalories, (l, v) => l with { EnergyKilocalories = v }, _ => true))
        .Add(Printed("fat", "fat", PrintedForm.Only, l => l.Fat, (l, v) => l with { Fat = v }, _ => true))
        .Add(Printed("saturated", "saturated fat", PrintedForm.Only, l => l.Saturated, (l, v) => l with { Saturated = v }, _ => true))
        .Add(Printed("sodium", "sodium", PrintedForm.Only, l => l.Sodium, (l, v) => l with { Sodium = v }, IsUs))
        .Add(Printed("salt", "salt", PrintedForm.Only, l => l.Salt, (l, v) => l with { Salt = v }, l => !IsUs(l)))
        .Add(Printed("carbohydrate", "carbohydrate", PrintedForm.Only, l => l.Carbohydrate, (l, v) => l with { Carbohydrate = v }, _ => true))
        .Add(Printed("fibre", "fibre", PrintedForm.Only, l => l.Fibre, (l, v) => l with { Fibre = v }, _ => true))
        .Add(Printed("sugars", "sugars", PrintedForm.Only, l => l.Sugars, (l, v) => l with { Sugars = v }, _ => true))
        .Add(Printed("addedSugars", "added sugars", PrintedForm.Only, l => l.AddedSugars, (l, v) => l with { AddedSugars = v }, IsUs))
        .Add(Printed("sugarAlcohols", "sugar alcohols", PrintedForm.Only, l => l.SugarAlcohols, (l, v) => l with { SugarAlcohols = v }, _ => true))
        .Add(Printed("starch", "starch", PrintedForm.Only, l => l.Starch, (l, v) => l with { Starch = v }, _ => false))
        .Add(Printed("protein", "protein", PrintedForm.Only, l => l.Protein, (l, v) => l with { Protein = v }, _ => true))
        .Add(Printed("potassium", "potassium", PrintedForm.Only, l => l.Potassium, (l, v) => l with { Potassium = v }, _ => false))
        .Agree((label, at) =>
        {
            if (label.Serving is { } serving && serving.Value.Kilograms == 0)
            {
                at.Error("label.serving", "serving", $"{serving}; must be above 0 g, or its figures are for nothing", serving.Text, "above 0 g");
            }
        });

    private static readonly Form<FoodComposition> Composition = new Form<FoodComposition>(new FoodComposition()) { About = "An analysis, for 100 g of the food as it is; what it says goes before the label. No mass is above 100 g." }
        .May("water", "water", InHundred.Grams, c => c.Water, (c, v) => c with { Water = v })
        .May("protein", "protein", InHundred.Grams, c => c.Protein, (c, v) => c with { Protein = v })
        .May("fat", "fat", InHundred.Grams, c => c.Fat, (c, v) => c with { Fat = v })
        .May("ash", "ash", InHundred.Grams, c => c.Ash, (c, v) => c with { Ash = v }, new("What is left of it when burnt, mostly minerals."))
        .May("carbohydrate", "carbohydrate", InHundred.Grams, c => c.Carbohydrate, (c, v) => c with { Carbohydrate = v }, new("By difference, 100 g less water, protein, fat, ash and ethanol: fibre and sugar alcohols are in it."))
        .May("fibre", "fibre", InHundred.Grams, c => c.Fibre, (c, v) => c with { Fibre = v })
        .May("starch", "starch", InHundred.Grams, c => c.Starch, (c, v) => c with { Starch = v })
        .May("sugars", "sugars", InHundred.Grams, c => c.Sugars, (c, v) => c with { Sugars = v }, new("All of them together."))
        .May("sucrose", "sucrose", InHundred.Grams, c => c.Sucrose, (c, v) => c with { Sucrose = v })
        .May("glucose", "glucose", InHundred.Grams, c => c.Glucose, (c, v) => c with { Glucose = v })
        .May("fructose", "fructose", InHundred.Grams, c => c.Fructose, (c, v) => c with { Fructose = v })
        .May("maltose", "maltose", InHundred.Grams, c => c.Maltose, (c, v) => c with { Maltose = v })
        .May("lactose", "lactose", InHundred.Grams, c => c.Lactose, (c, v) => c with { Lactose = v })
        .May("polyols", "polyols", InHundred.Grams, c => c.Polyols, (c, v) => c with { Polyols = v }, new("Sugar alcohols."))
        .May("ethanol", "ethanol", InHundred.Grams, c => c.Ethanol, (c, v) => c with { Ethanol = v })
        .May("sodium", "sodium", InHundred.Milligrams, c => c.SodiumMilligrams, (c, v) => c with { SodiumMilligrams = v })
        .May("potassium", "potassium", InHundred.Milligrams, c => c.PotassiumMilligrams, (c, v) => c with { PotassiumMilligrams = v })
        .May("energy", "energy", Spelled.Energy, c => c.EnergyKilocalories, (c, v) => c with { EnergyKilocalories = v })
        .May("source", "source", Leaves.Name, c => c.Source, (c, v) => c with { Source = v }, new("Who measured or stated this."))
        .Agree((composition, at) =>
        {
            if (composition.Source is null)
            {
                at.Warning("composition.source", "source", "no source; say who measured or stated this, so that others can check it");
            }
        });

    private static readonly Form<FoodAssume> Assume = new Form<FoodAssume>(new FoodAssume(null, null)) { About = "What you know better than the family does." }
        .May("insolubleShare", "insoluble", Leaves.Of<Fraction>(), a => a.InsolubleShare, (a, v) => a with { InsolubleShare = v }, new("Insolubles by mass of the food as it is, starch not among them.") { IsAlwaysWritten = true })
        .May("heldLitresPerKg", "holds, L/kg", Leaves.Number(0, 1000), a => a.HeldLitresPerKg, (a, v) => a with { HeldLitresPerKg = v }, new("Litres of beer or wort that a kilogram holds.") { IsAlwaysWritten = true });

    /// <summary>The whole.</summary>
    public static readonly FileForm<FoodSheet> File = new(
        FoodFile.Format,
        "A Gylebook food",
        new Form<FoodSheet>(new FoodSheet { Id = "", Name = "", Family = "" }) { About = "A food as its label prints it." }
            .Titled()
            .Need("family", "family", Leaves.Name, f => f.Family, (f, v) => f with { Family = v }, new("What sort of food it is, by name: what the label does not say is borrowed from it."))
            .May("label", "label", Label, f => f.Label, (f, v) => f with { Label = v }, new() { IsAlwaysWritten = true })
            .May("composition", "analysis", Composition, f => f.Composition, (f, v) => f with { Composition = v }, new() { IsAlwaysWritten = true })
            .May("ingredients", "ingredients", Leaves.Prose, f => f.Ingredients, (f, v) => f with { Ingredients = v }, new("The list as printed, to the letter: allergens are read from it.") { IsAlwaysWritten = true })
            .May("mayContain", "may contain", Leaves.Prose, f => f.MayContain, (f, v) => f with { MayContain = v }, new("The line as printed, to the letter.") { IsAlwaysWritten = true })
            .May("acidity", "acidity", TitrationForm.Whole, f => f.Acidity, (f, v) => f with { Acidity = v }, new("Measured on a mash of the food alone in distilled water."))
            .Add(new Field<FoodSheet, FoodAssume>("assume", "assume", Assume, f => (true, f.Assume), (f, v) => f with { Assume = v }))
            .WithLots(Composition, AmountForm.WeighedOrPoured)
            .WithTrials()
            .Agree((food, at) =>
            {
                if (food.Label is null && food.Composition is null)
                {
                    at.Warning("food.bare", "label", "neither a label nor a composition; everything is borrowed from the family");
                }
            }));

    private static bool IsUs(LabelPanel label) => label.Style == PanelStyle.Us;

    /// <summary>A line of the panel; the lines that panels of its style have are written even when nothing is printed there.</summary>
    private static PanelLine<T> Printed<T>(string key, string words, ValueForm<T> value, Func<LabelPanel, T?> of, Func<LabelPanel, T?, LabelPanel> with, Func<LabelPanel, bool> isShown)
        where T : struct => new(key, words, value, of, with, isShown);
}
