using System.Text.Json.Nodes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.Json;

namespace Gylebook.Recipes.Interchange;

/// <summary>A recipe as the keys of its file, in the order of the guide.</summary>
internal static class RecipeWriter
{
    internal static JsonObject Write(Recipe recipe)
    {
        var file = new ObjectWriter()
            .Put("format", RecipeFile.Format)
            .Put("name", recipe.Name)
            .Put("notes", recipe.Notes)
            .Put("package", Package(recipe.Package))
            .Put("mash", recipe.Mash is { } mash ? Mash(mash) : null)
            .Put("liquor", recipe.Liquor is { } liquor ? Liquor(liquor) : null)
            .Put("souring", recipe.Souring is { } souring ? Souring(souring) : null)
            .Put("boil", recipe.Boil is { } boil ? new ObjectWriter().Put("time", boil.Time).Done : null)
            .Put("stand", recipe.Stand is { } stand ? Rest(stand) : null)
            .PutList("ferment", recipe.Ferment, Rest);
        if (recipe.Portions.Count > 0)
        {
            file.PutList("portions", recipe.Portions, Portion);
        }

        return file.PutList("ingredients", recipe.Ingredients, Line).Done;
    }

    private static JsonObject Package(PackageWish package) => new ObjectWriter()
        .Put("volume", package.Volume)
        .Put("in", package.In)
        .Put("carbonation", package.Carbonation)
        .Done;

    private static JsonObject Mash(MashPlan mash)
    {
        var at = new ObjectWriter().Put("method", FileWords.MashMethods.Word(mash.Method));
        if (mash.Rests.Count > 0)
        {
            at.PutList("rests", mash.Rests, Rest);
        }

        return at.Put("sparge", mash.Sparge == SpargePlan.None ? null : Sparge(mash.Sparge)).Done;
    }

    private static JsonObject Sparge(SpargePlan sparge) => new ObjectWriter()
        .Put("method", FileWords.SpargeMethods.Word(sparge.Method))
        .Put("volume", sparge.Volume)
        .Put("temperature", sparge.Temperature)
        .Done;

    private static JsonObject Liquor(LiquorPlan liquor) => new ObjectWriter()
        .Put("strike", liquor.Strike)
        .Put("topUp", liquor.TopUp)
        .Done;

    private static JsonObject Souring(SouringPlan souring) => new ObjectWriter()
        .Put("culture", souring.Culture)
        .Put("temperature", souring.Temperature)
        .Put("ph", souring.Ph.Text)
        .Put("time", souring.Time)
        .Done;

    private static JsonObject Rest(Rest rest) => new ObjectWriter()
        .Put("temperature", rest.Temperature)
        .Put("time", rest.Time)
        .Done;

    private static JsonObject Portion(PortionShare portion) => new ObjectWriter()
        .Put("name", portion.Name)
        .Put("share", portion.Share)
        .Put("from", "cast")
        .Done;

    private static JsonObject Storage(HopStorage storage) => new ObjectWriter()
        .Put("temperature", storage.Temperature)
        .Put("pack", FileWords.HopPacks.Word(storage.Pack))
        .Put("lost", storage.Lost)
        .Done;

    private static JsonObject Line(IngredientLine line) => new ObjectWriter()
        .Put(FileWords.Kinds.Word(line.Kind), line.Of)
        .Put("as", line.As)
        .Put("colour", line.Colour)
        .Put("alpha", line.Alpha)
        .Put("form", line.Form is { } form ? FileWords.FormsOf(line.Kind)!.Word(form) : null)
        .Put("age", line.Age)
        .Put("storage", line.Storage is { } storage ? Storage(storage) : null)
        .Put("cells", line.Cells?.Text)
        .Put("attenuation", line.Attenuation)
        .Put("amount", line.Amount.Text)
        .Put("at", line.Kind == IngredientKind.Malt && line.At.Point == AdditionPoint.Mash ? null : AdditionTimeText.Write(line.At))
        .Put("portion", line.Portion)
        .Done;
}
