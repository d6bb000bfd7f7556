using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Interchange.OpenFormats.Arriving.Things;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;
using Gylebook.Recipes.Lots;

namespace Gylebook.Recipes.Interchange.OpenFormats.Arriving.Books;

/// <summary>All that one file from elsewhere holds, as files of ours.</summary>
internal static class LandedBook
{
    /// <summary>The files: sheets first, for recipes name them.</summary>
    public static IReadOnlyList<ArrivedFile> Files(OpenBook book, Landing landing)
    {
        Records(book, landing);
        List<ArrivedFile> others = [], recipes = [];
        foreach (OpenRecipe open in book.Recipes)
        {
            Recipe recipe = new LandedRecipe(landing, open).Made();
            recipes.Add(File(RecipeFile.Form, RecipeFile.Write(recipe), recipe.Name, open.Path));
            if (LandedWaters.Of(open, recipe.Name, landing.Travels) is { } liquor)
            {
                others.Add(File(WaterFile.Form, WaterFile.Write(liquor), liquor.Name, open.Path));
            }

            if (open.Kit is { } kit)
            {
                others.Add(Kit(kit, landing));
            }
        }

        foreach (OpenWater open in book.Waters)
        {
            WaterSheet water = LandedWaters.Of(open, landing.Travels);
            others.Add(File(WaterFile.Form, WaterFile.Write(water), water.Name, open.Path));
        }

        others.AddRange(book.Kits.Select(kit => Kit(kit, landing)));
        return [.. landing.Sheets.Select(sheet => Sheet(sheet.Sheet, sheet.From)), .. others, .. recipes];
    }

    private static void Records(OpenBook book, Landing landing)
    {
        LandedMalts malts = new(landing);
        LandedFoods foods = new(landing);
        LandedShelf shelf = new(landing);
        foreach (OpenFermentable one in book.Fermentables)
        {
            string name = Name(one, "fermentable", landing);
            switch (one.Type)
            {
                case FermentableType.Sugar or FermentableType.Extract or FermentableType.DryExtract:
                    shelf.Sheet(one, name);
                    break;
                case FermentableType.Grain or null:
                    malts.Record(one, name);
                    break;
                default:
                    foods.Sheet(one, name);
                    break;
            }
        }

        LandedHops hops = new(landing);
        foreach (OpenHop one in book.Hops)
        {
            hops.Sheet(one, Name(one, "hop", landing));
        }

        LandedYeasts yeasts = new(landing);
        foreach (OpenCulture one in book.Cultures)
        {
            yeasts.Sheet(one, Name(one, "yeast", landing));
        }

        foreach (OpenMisc one in book.Miscellaneous)
        {
            string name = Name(one, "ingredient", landing);
            if (!shelf.TrySheet(one, name))
            {
                foods.Sheet(one, name);
            }
        }
    }

    private static string Name(OpenThing thing, string otherwise, Landing landing) => OpenNames.Of(thing.Name, otherwise, $"{thing.Path}.name", landing.Travels);

    private static ArrivedFile Kit(OpenKit open, Landing landing)
    {
        Kits.Kit kit = LandedKits.Of(open, landing);
        return File(KitFile.Form, KitFile.Write(kit), kit.Name, open.Path);
    }

    private static ArrivedFile Sheet(LarderSheet sheet, string from) => File(
        sheet switch { MaltSheet => LarderFile.Malt, HopSheet => LarderFile.Hop, YeastSheet => LarderFile.Yeast, ShelfSheet => LarderFile.Shelf, _ => FoodFile.Form },
        LarderFile.Write(sheet), sheet.Name, from);

    private static ArrivedFile File(FileForm form, string text, string name, string from) =>
        new(form, name, text, from, FileInHand.Read(System.Text.Encoding.UTF8.GetBytes(text)).Findings);
}
