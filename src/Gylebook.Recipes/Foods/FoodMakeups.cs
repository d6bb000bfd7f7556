using Gylebook.Science.Foods.Words;

namespace Gylebook.Recipes.Foods;

/// <summary>A food made up for the balance, and what was doubtful about it.</summary>
/// <param name="Makeup">The makeup; null when next to nothing is known of the food.</param>
/// <param name="Findings">What was wrong or doubtful.</param>
public sealed record MadeUpFood(FoodMakeup? Makeup, IReadOnlyList<Finding> Findings);

/// <summary>Turns a food sheet or a row of the food table into a makeup.</summary>
/// <remarks>
/// What: protein, fibre, ash and other carbohydrate each part into what dissolves and what never does; starch is kept apart.
/// Symbols, kg/kg: insoluble = protein·(1 − s_p) + fibre·f_ins + ash·f_ash + other·r; s_p, f_ins, f_ash, r from the family.
/// Source: the split is our own estimate; see <c>docs/science/foods.md</c> for what it rests on.
/// Valid for: any food with a family; weak for mixtures. Accuracy: insolubles ± 15 % for nut flours, worse elsewhere.
/// Notes: minerals never weigh less than the salt their sodium stands for (2.5 times its mass).
/// </remarks>
public static class FoodMakeups
{
    private const double SaltPerSodium = 2.5;

    /// <summary>The makeup of a row of the food table.</summary>
    public static MadeUpFood From(Food food)
    {
        var notes = new MakeupNotes(food.Id);
        if (food.Provenance.Status == "seen-suspect")
        {
            notes.Find("food.suspect", Severity.Warning, "composition",
                "The published figures contradict each other or another table; prefer a label or another food.", food.Provenance.Source);
        }
        var makeup = Make(food.Id, food.Name, food.Composition, food.Family, 0, notes) with { Allergens = food.Allergens };
        return Done(makeup, new FoodAssume(null, null), notes);
    }

    /// <summary>The makeup of a food sheet: its composition first, then its label, then its family.</summary>
    public static MadeUpFood From(FoodSheet sheet)
    {
        var notes = new MakeupNotes(sheet.Id);
        var family = Family(sheet, notes);
        var label = sheet.Label is { } panel ? LabelReading.Read(panel, family, notes) : null;
        var known = sheet.Composition is { } composition ? composition.OrElse(label ?? new()) : label;
        if (known is not ({ Carbohydrate: not null } or { Water: not null }))
        {
            notes.Find("food.nothingKnown", Severity.Error, "label",
                "Neither a label nor a composition says how much of the food is carbohydrate or water; nothing can be reckoned from it.");
            return new MadeUpFood(null, notes.Findings);
        }
        var slack = sheet.Label is null ? 0 : LabelReading.RoundingOfSum(sheet.Label);
        var makeup = Make(sheet.Id, sheet.Name, known, family, slack, notes) with
        {
            Allergens = Allergens(sheet, notes),
            Preservatives = Preservatives(sheet.Ingredients),
        };
        return Done(makeup, sheet.Assume, notes);
    }

    private static FoodFamily Family(FoodSheet sheet, MakeupNotes notes)
    {
        var found = FoodFamilies.Find(sheet.Family);
        if (found.Match is { } family)
        {
            return family;
        }
        notes.Find("food.familyUnknown", Severity.Error, "family",
            $"No such family of foods; reckoned as {FoodFamilies.Of("other").Name}. Nearest: {string.Join("; ", found.Nearest)}.", sheet.Family);
        return FoodFamilies.Of("other");
    }

    private static IReadOnlyList<string> Allergens(FoodSheet sheet, MakeupNotes notes)
    {
        var words = AllergenWords.In(sheet.Ingredients);
        notes.Find("food.allergensRead", Severity.Note, "ingredients",
            sheet.Ingredients is null
                ? "No ingredient list: allergens are unknown, not absent. Read the pack."
                : "Allergens were looked for by a word list, which may miss one: read the pack, its traces too.",
            words.Count == 0 ? null : string.Join(", ", words));
        return words;
    }

    private static IReadOnlyList<IngredientKind> Preservatives(string? ingredients) => ingredients is null
        ? []
        : [.. IngredientWords.In(ingredients).Where(hit => !hit.MayContainOnly).Select(hit => hit.Kind).Distinct().Where(kind => kind
            is IngredientKind.Sorbate or IngredientKind.Benzoate or IngredientKind.Sulphite or IngredientKind.Natamycin
            or IngredientKind.DimethylDicarbonate)];

    private static MadeUpFood Done(FoodMakeup makeup, FoodAssume assume, MakeupNotes notes)
    {
        var own = BrewersWord.Apply(makeup, assume, notes);
        return new MadeUpFood(own with { Assumed = notes.Assumed }, notes.Findings);
    }

    private static FoodMakeup Make(
        string id, string name, FoodComposition food, FoodFamily family, double slack, MakeupNotes notes)
    {
        var main = Balanced.Fill(food, family, slack, notes);
        var parts = CarbohydrateParts.Of(food, main.Carbohydrate, family, notes);
        var sodium = food.SodiumMilligrams ?? notes.Borrow("sodium", 0, "mg/100 g", family);
        var solubleProtein = main.Protein * notes.Borrow("solubleProtein", family.SolubleProtein, "1", family);
        var solidFibre = parts.Fibre * notes.Borrow("insolubleFibre", family.InsolubleFibre, "1", family);
        var salt = Math.Min(main.Ash, SaltPerSodium * sodium / 1000);
        var minerals = Math.Max(salt, main.Ash * (1 - notes.Borrow("insolubleAsh", family.InsolubleAsh, "1", family)));
        var solidOther = parts.Other * notes.Borrow("insolubleOther", family.InsolubleOther, "1", family);
        notes.Assume("starchIsOpen", family.StarchIsOpen ? "yes" : "no", $"family: {family.Name}");
        return new FoodMakeup
        {
            Id = id,
            Name = name,
            Family = family.Name,
            Water = main.Water / 100,
            Sucrose = parts.Sugars.Sucrose / 100,
            Glucose = parts.Sugars.Glucose / 100,
            Fructose = parts.Sugars.Fructose / 100,
            Maltose = parts.Sugars.Maltose / 100,
            Lactose = parts.Sugars.Lactose / 100,
            Polyols = parts.Polyols / 100,
            Starch = parts.Starch / 100,
            StarchIsOpen = family.StarchIsOpen,
            Dextrin = (parts.Sugars.Dextrin + parts.Fibre - solidFibre + parts.Other - solidOther) / 100,
            SolubleProtein = solubleProtein / 100,
            Minerals = minerals / 100,
            Ethanol = main.Ethanol / 100,
            Fat = main.Fat / 100,
            Insoluble = (main.Protein - solubleProtein + solidFibre + main.Ash - minerals + solidOther) / 100,
            SodiumMilligramsPerKilogram = sodium * 10,
            SettledHold = notes.Borrow("settledHold", family.SettledHold, "kg/kg", family),
            BagHold = notes.Borrow("bagHold", family.BagHold, "kg/kg", family),
        };
    }
}
