using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Interchange.OpenFormats.Model;

namespace Gylebook.Recipes.Interchange.BeerXml;

/// <summary>The words BeerXML has for its choices.</summary>
internal static class BeerXmlWords
{
    public static readonly WordTable<RecipeType> Recipes = new(
        (RecipeType.AllGrain, "All Grain"), (RecipeType.PartialMash, "Partial Mash"), (RecipeType.Extract, "Extract"));

    public static readonly WordTable<FermentableType> Fermentables = new(
        (FermentableType.Grain, "Grain"), (FermentableType.Sugar, "Sugar"), (FermentableType.Extract, "Extract"),
        (FermentableType.DryExtract, "Dry Extract"), (FermentableType.Adjunct, "Adjunct"));

    public static readonly WordTable<OpenUse> HopUses = new(
        (OpenUse.Boil, "Boil"), (OpenUse.Fermentation, "Dry Hop"), (OpenUse.Mash, "Mash"), (OpenUse.FirstWort, "First Wort"), (OpenUse.Stand, "Aroma"));

    public static readonly WordTable<OpenUse> MiscUses = new(
        (OpenUse.Boil, "Boil"), (OpenUse.Mash, "Mash"), (OpenUse.Fermentation, "Primary"), (OpenUse.Rack, "Secondary"), (OpenUse.Package, "Bottling"));

    public static readonly WordTable<HopShape> HopShapes = new((HopShape.Pellet, "Pellet"), (HopShape.Plug, "Plug"), (HopShape.Leaf, "Leaf"));

    public static readonly WordTable<CultureType> Cultures = new(
        (CultureType.Ale, "Ale"), (CultureType.Lager, "Lager"), (CultureType.Wheat, "Wheat"), (CultureType.Wine, "Wine"), (CultureType.Champagne, "Champagne"));

    public static readonly WordTable<CultureForm> CultureForms = new(
        (CultureForm.Liquid, "Liquid"), (CultureForm.Dry, "Dry"), (CultureForm.Slant, "Slant"), (CultureForm.Culture, "Culture"));

    public static readonly WordTable<MiscType> Miscellaneous = new(
        (MiscType.Spice, "Spice"), (MiscType.Fining, "Fining"), (MiscType.WaterAgent, "Water Agent"), (MiscType.Herb, "Herb"),
        (MiscType.Flavor, "Flavor"), (MiscType.Other, "Other"));

    public static readonly WordTable<MashStepType> MashSteps = new(
        (MashStepType.Infusion, "Infusion"), (MashStepType.Temperature, "Temperature"), (MashStepType.Decoction, "Decoction"));
}
