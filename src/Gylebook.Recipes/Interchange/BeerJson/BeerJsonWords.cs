using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Interchange.OpenFormats.Model;

namespace Gylebook.Recipes.Interchange.BeerJson;

/// <summary>The words BeerJSON has for its choices.</summary>
internal static class BeerJsonWords
{
    public static readonly WordTable<RecipeType> Recipes = new(
        (RecipeType.AllGrain, "all grain"), (RecipeType.PartialMash, "partial mash"), (RecipeType.Extract, "extract"), (RecipeType.Cider, "cider"),
        (RecipeType.Kombucha, "kombucha"), (RecipeType.Soda, "soda"), (RecipeType.Mead, "mead"), (RecipeType.Wine, "wine"), (RecipeType.Other, "other"));

    public static readonly WordTable<FermentableType> Fermentables = new(
        (FermentableType.DryExtract, "dry extract"), (FermentableType.Extract, "extract"), (FermentableType.Grain, "grain"), (FermentableType.Sugar, "sugar"),
        (FermentableType.Fruit, "fruit"), (FermentableType.Juice, "juice"), (FermentableType.Honey, "honey"), (FermentableType.Other, "other"));

    public static readonly WordTable<GrainGroup> Groups = new(
        (GrainGroup.Base, "base"), (GrainGroup.Caramel, "caramel"), (GrainGroup.Flaked, "flaked"), (GrainGroup.Roasted, "roasted"),
        (GrainGroup.Specialty, "specialty"), (GrainGroup.Smoked, "smoked"), (GrainGroup.Adjunct, "adjunct"));

    public static readonly WordTable<HopShape> HopShapes = new(
        (HopShape.Leaf, "leaf"), (HopShape.Pellet, "pellet"), (HopShape.Plug, "plug"), (HopShape.WetLeaf, "leaf (wet)"),
        (HopShape.Extract, "extract"), (HopShape.Powder, "powder"));

    public static readonly WordTable<CultureType> Cultures = new(
        (CultureType.Ale, "ale"), (CultureType.Lager, "lager"), (CultureType.Kveik, "kveik"), (CultureType.Brett, "brett"), (CultureType.Wine, "wine"),
        (CultureType.Champagne, "champagne"), (CultureType.Lacto, "lacto"), (CultureType.Pedio, "pedio"), (CultureType.Bacteria, "bacteria"),
        (CultureType.Malolactic, "malolactic"), (CultureType.MixedCulture, "mixed-culture"), (CultureType.Spontaneous, "spontaneous"), (CultureType.Other, "other"));

    public static readonly WordTable<CultureForm> CultureForms = new(
        (CultureForm.Dry, "dry"), (CultureForm.Liquid, "liquid"), (CultureForm.Culture, "culture"), (CultureForm.Slant, "slant"), (CultureForm.Dregs, "dregs"));

    public static readonly WordTable<MiscType> Miscellaneous = new(
        (MiscType.Spice, "spice"), (MiscType.Fining, "fining"), (MiscType.WaterAgent, "water agent"), (MiscType.Herb, "herb"),
        (MiscType.Flavor, "flavor"), (MiscType.Wood, "wood"), (MiscType.Other, "other"));

    public static readonly WordTable<OpenUse> Uses = new(
        (OpenUse.Mash, "add_to_mash"), (OpenUse.Boil, "add_to_boil"), (OpenUse.Fermentation, "add_to_fermentation"), (OpenUse.Package, "add_to_package"));

    public static readonly WordTable<MashStepType> MashSteps = new(
        (MashStepType.Infusion, "infusion"), (MashStepType.Temperature, "temperature"), (MashStepType.Decoction, "decoction"),
        (MashStepType.SouringMash, "souring mash"), (MashStepType.SouringWort, "souring wort"), (MashStepType.Drain, "drain mash tun"), (MashStepType.Sparge, "sparge"));

    public static readonly WordTable<PackageType> Packages = new(
        (PackageType.Bottle, "bottle"), (PackageType.Keg, "keg"), (PackageType.Cask, "cask"), (PackageType.Tank, "tank"),
        (PackageType.Firkin, "firkin"), (PackageType.Other, "other"));

    public static readonly WordTable<VesselForm> Vessels = new(
        (VesselForm.HotLiquor, "HLT"), (VesselForm.MashTun, "Mash Tun"), (VesselForm.LauterTun, "Lauter Tun"), (VesselForm.Kettle, "Brew Kettle"),
        (VesselForm.Fermenter, "Fermenter"), (VesselForm.Aging, "Aging Vessel"), (VesselForm.Package, "Packaging Vessel"));
}
