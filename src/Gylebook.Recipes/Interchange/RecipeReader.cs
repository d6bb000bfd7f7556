using Gylebook.Recipes.Interchange.Json;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>The keys of a recipe file.</summary>
internal static class RecipeReader
{
    internal static Recipe Read(ObjectReader file) => new()
    {
        Name = file.Name("name"),
        Notes = file.Prose("notes"),
        Package = file.Object("package", Package),
        Mash = file.OptionalObject("mash", Mash),
        Liquor = file.OptionalObject("liquor", Liquor),
        Souring = file.OptionalObject("souring", Souring),
        Boil = file.OptionalObject("boil", at => new BoilPlan(at.Quantity<Duration>("time"))),
        Stand = file.OptionalObject("stand", Rest),
        Ferment = file.ListOfObjects("ferment", Rest),
        Portions = file.OptionalListOfObjects("portions", Portion),
        Ingredients = file.ListOfObjects("ingredients", IngredientReader.Read),
    };

    private static PackageWish Package(ObjectReader at) => new(
        at.Quantity<VolumeAt20C>("volume"),
        at.Name("in"),
        at.OptionalQuantity<Carbonation>("carbonation"));

    private static MashPlan Mash(ObjectReader at) => new(
        at.Word("method", FileWords.MashMethods),
        at.OptionalListOfObjects("rests", Rest),
        at.OptionalObject("sparge", Sparge) ?? SpargePlan.None);

    private static SpargePlan Sparge(ObjectReader at) => new(
        at.Word("method", FileWords.SpargeMethods),
        at.OptionalQuantity<VolumeAt20C>("volume"),
        at.OptionalQuantity<Temperature>("temperature"));

    private static LiquorPlan Liquor(ObjectReader at) => new(
        at.OptionalQuantity<VolumeAt20C>("strike"),
        at.OptionalQuantity<VolumeAt20C>("topUp"));

    private static SouringPlan Souring(ObjectReader at) => new(
        at.Name("culture"),
        at.Quantity<Temperature>("temperature"),
        at.Need("ph") is { } ph ? PhText.Read(ph) ?? Unread : Unread,
        at.Quantity<Duration>("time"));

    /// <summary>Stands where a pH could not be read; the list knows why.</summary>
    private static readonly PhTarget Unread = new(0, "");

    private static Rest Rest(ObjectReader at) => new(
        at.Quantity<Temperature>("temperature"),
        at.Quantity<Duration>("time"));

    private static PortionShare Portion(ObjectReader at)
    {
        var portion = new PortionShare(at.Name("name"), at.Quantity<Fraction>("share"));
        if (at.Take("from") is { } from && from.Text(int.MaxValue) is { } stage && stage != "cast")
        {
            at.Findings.Error("portion.from", from.Path, $"\"{FindingList.Shorten(stage)}\"; portions part at \"cast\" only", stage, "cast");
        }

        return portion;
    }
}
