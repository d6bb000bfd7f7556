using Gylebook.Science.Foods.Labels;
using Gylebook.Science.Foods.Words;

namespace Gylebook.Recipes.Foods;

/// <summary>A food made up for the balance, and what was doubtful about it.</summary>
/// <param name="Makeup">The makeup; null when next to nothing is known of the food.</param>
/// <param name="Findings">What was wrong or doubtful.</param>
public sealed record MadeUpFood(FoodMakeup? Makeup, IReadOnlyList<Finding> Findings)
{
    /// <summary>Grams per 100 g, gaps open: of the label, the analysis or the table; null when nothing is known.</summary>
    public FoodComposition? Composition { get; init; }

    /// <summary>What the label guarantees; null without one.</summary>
    public LabelBounds? Bounds { get; init; }

    /// <summary>The makeups at the ends of what the label allows; the makeup alone where nothing has a width.</summary>
    public IReadOnlyList<FoodMakeup> Ends { get; init; } = [];
}

/// <summary>Turns a food sheet or a row of the food table into a makeup.</summary>
/// <remarks>
/// What: protein, fibre, ash and other carbohydrate each part into what dissolves and what never does; starch is kept apart.
/// Symbols, kg/kg: insoluble = protein·(1 − s_p) + fibre·f_ins + ash·f_ash + other·r; s_p, f_ins, f_ash, r from the family.
/// Source: the split is our own estimate; see <c>docs/science/foods.md</c> for what it rests on.
/// Valid for: any food with a family; weak for mixtures. Accuracy: insolubles ± 15 % for nut flours, worse elsewhere.
/// Notes: acids count as carbohydrate in every table, so they are taken out of it, unnamed matter first.
/// </remarks>
public static class FoodMakeups
{
    /// <summary>The makeup of a row of the food table.</summary>
    public static MadeUpFood From(Food food)
    {
        var notes = new MakeupNotes(food.Id);
        if (food.Provenance.Status == "seen-suspect")
        {
            notes.Find("food.suspect", Severity.Warning, "composition",
                "The published figures contradict each other or another table; prefer a label or another food.", food.Provenance.Source);
        }
        if (food.Composition is { Water: null, Carbohydrate: null })
        {
            notes.Find("food.noFigures", Severity.Warning, "composition",
                $"Nobody's figures for it were within reach: it is reckoned as {food.Family.Name} usually are. Write a food sheet with what your label says.", food.Name);
        }
        var makeup = Make(food.Id, food.Name, food.Composition, food.Family, notes) with
        {
            Stimulant = Stimulants.Of(food.Name),
            Words = [.. IngredientWords.In(food.Name), .. IngredientWords.In(string.Join("; ", food.Allergens))],
        };
        return Done(makeup, new FoodAssume(null, null), notes, food.Composition);
    }

    /// <summary>The makeup of a food sheet: its composition first, then its label, then its family.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="mode">How far the packet may lie from its panel: by rounding alone, or by all that the law lets it.</param>
    public static MadeUpFood From(FoodSheet sheet, LabelMode mode = LabelMode.Rounding)
    {
        var notes = new MakeupNotes(sheet.Id);
        var family = Family(sheet, notes);
        var bounds = sheet.Label is { } panel ? LabelBounds.From(panel.AsPrinted(), mode) : null;
        // No label prints acid or pH: a sheet that bears the id of a row of the tables has that row's.
        var besides = new FoodComposition { Acids = FoodAcidTable.Find(sheet.Id), Ph = FoodPhTable.Find(sheet.Id) };
        var label = bounds is null ? null : LabelReading.Read(sheet.Label!, bounds, family, notes).OrElse(besides);
        var known = sheet.Composition is { } composition ? composition.OrElse(label ?? besides) : label;
        if (known is not ({ Carbohydrate: not null } or { Water: not null }))
        {
            notes.Find("food.nothingKnown", Severity.Error, "label",
                "Neither a label nor a composition says how much of the food is carbohydrate or water; nothing can be reckoned from it.");
            return new MadeUpFood(null, notes.Findings) { Composition = known, Bounds = bounds };
        }

        var makeup = Make(sheet.Id, sheet.Name, known, family, notes) with { Words = WordsOf(sheet, notes), Acidity = sheet.Acidity };
        var made = Done(makeup, sheet.Assume, notes, known);
        if (bounds is null)
        {
            return made;
        }

        IReadOnlyList<FoodMakeup> ends = Ends(sheet, made, label!, bounds, family);
        return made with { Makeup = made.Makeup! with { LabelEnds = ends }, Bounds = bounds, Ends = ends };
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

    /// <summary>The food at every corner of what its label allows; what an analysis states stays where it is.</summary>
    private static IReadOnlyList<FoodMakeup> Ends(
        FoodSheet sheet, MadeUpFood made, FoodComposition label, LabelBounds bounds, FoodFamily family)
    {
        if (!bounds.IsPossible || label.Carbohydrate is null)
        {
            return made.Ends;
        }

        var sodium = bounds.SodiumMilligrams;
        var potassium = bounds.PotassiumMilligrams;
        bool hasPotassium = label.PotassiumMilligrams is not null;

        // Nothing hangs on both, so that low with low and high with high are ends enough.
        (double Sodium, double? Potassium)[] ionEnds =
        [
            (label.SodiumMilligrams is null ? 0 : sodium.Low, hasPotassium ? potassium.Low : null),
            (label.SodiumMilligrams is null ? 0 : sodium.High, hasPotassium ? potassium.High : null),
        ];
        List<FoodMakeup> ends = [];
        foreach (var corner in bounds.Corners())
        {
            foreach (var ions in ionEnds.Distinct())
            {
                var unheard = new MakeupNotes(sheet.Id);
                var at = LabelReading.Corner(label, corner, ions.Sodium, ions.Potassium);
                var known = sheet.Composition is { } composition ? composition.OrElse(at) : at;
                var own = BrewersWord.Apply(Make(sheet.Id, sheet.Name, known, family, unheard), sheet.Assume, unheard);
                ends.Add(own with { Words = made.Makeup!.Words, Assumed = made.Makeup.Assumed });
            }
        }

        return ends;
    }

    private static IReadOnlyList<IngredientHit> WordsOf(FoodSheet sheet, MakeupNotes notes)
    {
        IReadOnlyList<IngredientHit> named = IngredientWords.In(sheet.Name), listed = IngredientWords.In(sheet.Ingredients ?? "");
        IReadOnlyList<IngredientHit> words = [.. named, .. listed, .. IngredientWords.InTraces(sheet.MayContain ?? "")];
        if (sheet.Ingredients is not null && NutsOf(named).FirstOrDefault(nut => !NutsOf(listed).Any(other => IsSameNut(nut, other))) is { } missing)
        {
            string told = string.Join(", ", NutsOf(listed).Distinct());
            notes.Find("food.nameDiffers", Severity.Warning, "ingredients",
                $"It is named after {missing}, and its ingredients name {(told.Length > 0 ? $"{told} and not that" : "no nut")}. All of them are told as allergens; read the pack, and name it after what is in it.", missing);
        }

        notes.Find("food.allergensRead", Severity.Note, "ingredients",
            sheet.Ingredients is null
                ? "No ingredient list: allergens are unknown, not absent. Read the pack."
                : "Allergens were looked for by a word list, which may miss one: read the pack, its traces too.",
            words.Count == 0 ? null : string.Join(", ", words.Select(hit => hit.Word).Distinct()));
        return words;
    }

    private static IEnumerable<string> NutsOf(IEnumerable<IngredientHit> words) => words
        .Where(hit => !hit.MayContainOnly && hit.Kind is IngredientKind.TreeNut or IngredientKind.TreeNutUsOnly or IngredientKind.NutNoLongerUs or IngredientKind.Peanut)
        .Select(hit => hit.Word);

    /// <summary>"almond butter" and "almond": the first word is the nut's, whatever was made of it; "nut" alone may be any.</summary>
    private static bool IsSameNut(string one, string other) =>
        one.Split(' ')[0] == other.Split(' ')[0] || one.Split(' ')[0] is "nut" or "mixed" or "tree";

    private static MadeUpFood Done(FoodMakeup makeup, FoodAssume assume, MakeupNotes notes, FoodComposition composition)
    {
        var own = BrewersWord.Apply(makeup, assume, notes) with { Assumed = notes.Assumed };
        return new MadeUpFood(own, notes.Findings) { Composition = composition, Ends = [own] };
    }

    private static FoodMakeup Make(
        string id, string name, FoodComposition food, FoodFamily family, MakeupNotes notes)
    {
        var main = Balanced.Fill(food, family, notes);
        var acids = AcidsIn.Of(food, notes);
        var parts = CarbohydrateParts.Of(food, main.Carbohydrate, acids.Grams, family, notes);
        var ash = AshParts.Of(food, main.Ash, family, notes);
        var solubleProtein = main.Protein * notes.Borrow("solubleProtein", family.SolubleProtein, "1", family);
        var solidFibre = parts.Fibre * notes.Borrow("insolubleFibre", family.InsolubleFibre, "1", family);
        var solidOther = parts.Other * notes.Borrow("insolubleOther", family.InsolubleOther, "1", family);
        var dextrin = parts.Sugars.Dextrin + parts.Fibre - solidFibre + parts.Other - solidOther;

        // Where fibre and sugars leave no room for the acid it is counted in what else dissolves, and then in the water.
        var fromDextrin = Math.Min(dextrin, acids.Grams - parts.Acid);
        var fromWater = Math.Min(main.Water, acids.Grams - parts.Acid - fromDextrin);
        acids = acids.Kept(parts.Acid + fromDextrin + fromWater);
        notes.Assume("starchIsOpen", family.StarchIsOpen ? "yes" : "no", $"family: {family.Name}");
        return new FoodMakeup
        {
            Id = id,
            Name = name,
            Family = family.Name,
            FamilyId = family.Id,
            Water = (main.Water - fromWater) / 100,
            Sucrose = parts.Sugars.Sucrose / 100,
            Glucose = parts.Sugars.Glucose / 100,
            Fructose = parts.Sugars.Fructose / 100,
            Maltose = parts.Sugars.Maltose / 100,
            Lactose = parts.Sugars.Lactose / 100,
            Polyols = parts.Polyols / 100,
            Starch = parts.Starch / 100,
            StarchIsOpen = family.StarchIsOpen,
            Dextrin = (dextrin - fromDextrin) / 100,
            SolubleProtein = solubleProtein / 100,
            Minerals = ash.Minerals / 100,
            Ethanol = main.Ethanol / 100,
            Lactic = acids.Of(a => a.Lactic),
            Acetic = acids.Of(a => a.Acetic),
            Citric = acids.Of(a => a.Citric),
            Malic = acids.Of(a => a.Malic),
            Tartaric = acids.Of(a => a.Tartaric),
            Quinic = acids.Of(a => a.Quinic),
            AcidEnds = acids.Ends,
            OwnPh = food.Ph,
            Fat = main.Fat / 100,
            Insoluble = (main.Protein - solubleProtein + solidFibre + main.Ash - ash.Minerals + solidOther) / 100,
            SodiumMilligramsPerKilogram = ash.Sodium * 10,
            PotassiumMilligramsPerKilogram = ash.Potassium * 10,
            CalciumMilligramsPerKilogram = ash.Calcium * 10,
            MagnesiumMilligramsPerKilogram = ash.Magnesium * 10,
            PhosphorusMilligramsPerKilogram = ash.Phosphorus * 10,
            ChlorideMilligramsPerKilogram = ash.Chloride * 10,
            StarchThatSettles = family.InsolubleOther,
            SettledHold = notes.BorrowRange("settledHold", family.SettledHold, family.SettledHoldLow, family.SettledHoldHigh, "kg/kg", family),
            SettledHoldLow = family.SettledHoldLow,
            SettledHoldHigh = family.SettledHoldHigh,
            BagHold = notes.Borrow("bagHold", family.BagHold, "kg/kg", family),
        };
    }
}
