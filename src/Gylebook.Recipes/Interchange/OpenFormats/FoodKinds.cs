using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Science.Mashing;

namespace Gylebook.Recipes.Interchange.OpenFormats;

/// <summary>Which word of the open standards a thing of ours goes under. Our choice where they leave one.</summary>
internal static class FoodKinds
{
    /// <summary>A food that brings less extract than this goes beside the spices, not beside the malts. Our choice.</summary>
    private const double LeastExtract = 0.1;

    private static readonly (FermentableType Type, string[] Families)[] Types =
    [
        (FermentableType.Honey, ["honey"]),
        (FermentableType.Juice, ["fruit-juice", "sour-juice"]),
        (FermentableType.Fruit, ["berries", "cherries", "stone-fruit", "tropical-fruit", "banana", "tamarind", "dates", "dried-fruit", "pome-fruit", "citrus-fruit", "melon", "rhubarb"]),
        (FermentableType.Sugar, ["sugar", "maple", "agave-syrup", "molasses", "cane-syrup", "glucose-syrup", "malt-syrup", "maltodextrin", "caramel", "candy"]),
    ];

    private static readonly (MiscType Type, string[] Families)[] Others =
    [
        (MiscType.Spice, ["spice", "potent-spice", "chilli", "fresh-root-spice", "citrus-peel"]),
        (MiscType.Herb, ["herb-fresh", "flower-dried", "flower-sour", "conifer", "tea-leaf"]),
        (MiscType.Wood, ["wood"]),
        (MiscType.Flavor, ["vanilla-bean", "extract-in-alcohol", "ground-coffee", "instant-coffee", "brewed-coffee", "cocoa-powder", "cocoa-nibs"]),
    ];

    /// <summary>What sort of fermentable a food is; null when it brings too little to be one.</summary>
    public static FermentableType? Fermentable(FoodMakeup food)
    {
        foreach ((FermentableType type, string[] families) in Types)
        {
            if (families.Contains(food.FamilyId))
            {
                return type;
            }
        }

        return Extract(food, isMashed: true) >= LeastExtract && !Others.Any(row => row.Families.Contains(food.FamilyId)) ? FermentableType.Other : null;
    }

    /// <summary>The family a fermentable of that type is most like; null where the type says too little.</summary>
    public static string? Family(FermentableType? type) => type switch
    {
        FermentableType.Honey => "honey",
        FermentableType.Juice => "fruit-juice",
        FermentableType.Fruit => "berries",
        FermentableType.Sugar => "sugar",
        _ => null,
    };

    /// <summary>The family anything else of that type is most like.</summary>
    public static string Family(MiscType? type) => Others.FirstOrDefault(row => row.Type == type).Families?[0] ?? "other";

    /// <summary>Share of a food as it is that dissolves; its starch only where it is mashed.</summary>
    public static double Extract(FoodMakeup food, bool isMashed) =>
        food.Sucrose + food.Glucose + food.Fructose + food.Maltose + food.Lactose + food.Polyols + food.Dextrin + food.SolubleProtein + food.Minerals + food.Acids
        + (isMashed ? food.Starch : 0);

    /// <summary>What sort of thing anything else is.</summary>
    public static MiscType Miscellaneous(IngredientKind kind, FoodMakeup? food) => kind switch
    {
        IngredientKind.Fining => MiscType.Fining,
        IngredientKind.Salt or IngredientKind.Acid or IngredientKind.Water => MiscType.WaterAgent,
        _ when Others.FirstOrDefault(row => row.Families.Contains(food?.FamilyId)) is { Families: not null } found => found.Type,
        IngredientKind.Spice => MiscType.Spice,
        _ => MiscType.Other,
    };

    /// <summary>What sort of grain a malt is.</summary>
    public static GrainGroup Group(Malt malt) => malt.Family switch
    {
        _ when malt.Id == "smoked-malt" => GrainGroup.Smoked,
        MaltFamily.Base => GrainGroup.Base,
        MaltFamily.Caramel => GrainGroup.Caramel,
        MaltFamily.Roast => GrainGroup.Roasted,
        MaltFamily.Raw => malt.Id.EndsWith("flakes", StringComparison.Ordinal) ? GrainGroup.Flaked : GrainGroup.Adjunct,
        _ => GrainGroup.Specialty,
    };

    /// <summary>What sort of culture a yeast is.</summary>
    public static CultureType Culture(YeastStyle? yeast) => yeast switch
    {
        null => CultureType.Other,
        { Id: "kveik" } => CultureType.Kveik,
        { Id: "brettanomyces" } => CultureType.Brett,
        { Id: "weissbier" or "witbier" } => CultureType.Wheat,
        { IsBottomFermenting: true } => CultureType.Lager,
        _ => CultureType.Ale,
    };
}
