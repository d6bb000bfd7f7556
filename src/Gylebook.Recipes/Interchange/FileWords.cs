using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Boiling;

namespace Gylebook.Recipes.Interchange;

/// <summary>The words our files have for the choices in a recipe.</summary>
internal static class FileWords
{
    internal static readonly WordTable<IngredientKind> Kinds = new(
        (IngredientKind.Malt, "malt"),
        (IngredientKind.Extract, "extract"),
        (IngredientKind.Sugar, "sugar"),
        (IngredientKind.Food, "food"),
        (IngredientKind.Hop, "hop"),
        (IngredientKind.Spice, "spice"),
        (IngredientKind.Yeast, "yeast"),
        (IngredientKind.Fining, "fining"),
        (IngredientKind.Salt, "salt"),
        (IngredientKind.Acid, "acid"),
        (IngredientKind.Water, "water"));

    internal static readonly WordTable<MashMethod> MashMethods = new(
        (MashMethod.Bag, "bag"), (MashMethod.Tun, "tun"), (MashMethod.Part, "part"), (MashMethod.None, "none"));

    internal static readonly WordTable<SpargeMethod> SpargeMethods = new(
        (SpargeMethod.None, "none"),
        (SpargeMethod.Pour, "pour"),
        (SpargeMethod.Dunk, "dunk"),
        (SpargeMethod.Batch, "batch"),
        (SpargeMethod.Continuous, "continuous"));

    internal static readonly WordTable<IngredientForm> HopForms = new(
        (IngredientForm.Whole, "whole"), (IngredientForm.Pellet, "pellet"));

    internal static readonly WordTable<IngredientForm> YeastForms = new(
        (IngredientForm.Dry, "dry"), (IngredientForm.Liquid, "liquid"), (IngredientForm.Slurry, "slurry"));

    /// <summary>The forms of all that comes in several.</summary>
    internal static readonly WordTable<IngredientForm> AllForms = new([.. HopForms.Rows, .. YeastForms.Rows]);

    internal static readonly WordTable<HopPack> HopPacks = new(
        (HopPack.Open, "open"), (HopPack.SomeAir, "some air"), (HopPack.Airless, "airless"));

    internal static readonly WordTable<VesselKind> VesselKinds = new(
        (VesselKind.Fermenter, "fermenter"), (VesselKind.Keg, "keg"));

    /// <summary>How the form of that kind is written; null for kinds that come in one form only.</summary>
    internal static WordTable<IngredientForm>? FormsOf(IngredientKind kind) => kind switch
    {
        IngredientKind.Hop => HopForms,
        IngredientKind.Yeast => YeastForms,
        _ => null,
    };

    /// <summary>What a line of that kind is of.</summary>
    internal static string Meant(string kind) => kind switch
    {
        "malt" => "malt or mashed grain",
        "extract" => "malt extract, dry or syrup",
        "sugar" => "sugar or syrup",
        "food" => "anything else to eat, with a food sheet",
        "hop" => "a hop cultivar",
        "spice" => "a spice, in grams",
        "yeast" => "a yeast style-type",
        "fining" => "something that helps beer to clear",
        "salt" => "a brewing salt",
        "acid" => "an acid",
        _ => "plain liquor",
    };
}
