using Gylebook.Gyles.Plans;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;

namespace Gylebook.Site.Publications;

/// <summary>Files to give out: all that the numbers rest on, without notes, prices, dates, and what else is at hand.</summary>
public static class PublicFiles
{
    /// <summary>The files of a brew, made public.</summary>
    /// <param name="inputs">The brew.</param>
    /// <param name="water">The water plan's file; null to count liquor as pure.</param>
    public static GyleFiles Of(GyleInputs inputs, string? water)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        return new GyleFiles(
            RecipeFile.Write(inputs.Recipe with { Notes = null }),
            KitFile.Write(Of(inputs.Kit)),
            water is not null && WaterFile.Form.Read(water).Value is { } sheet ? WaterFile.Write(sheet with { Notes = null, Recipe = null }) : null,
            [.. SheetsOf(inputs.Recipe, inputs.Larder).Select(LarderFile.Write)]);
    }

    /// <summary>What its brewer calls vessels, how they are cleaned and what gyles taught changes no number.</summary>
    private static Kit Of(Kit kit) => kit with { Vessels = [], Cleaning = null, Learned = [] };

    private static IEnumerable<LarderSheet> SheetsOf(Recipe recipe, Larder larder) => recipe.Ingredients
        .Select(line => (line.Lot, Sheet: larder.Sheet(line.Kind, line.Of)))
        .Where(named => named.Sheet is not null)
        .GroupBy(named => named.Sheet!)
        .Select(same => Of(same.Key, [.. same.Select(named => named.Lot).OfType<string>()]));

    private static LarderSheet Of(LarderSheet sheet, string[] lots) => sheet switch
    {
        MaltSheet malt => malt with { Notes = null, Pack = null, Lots = Of(malt.Lots, lots) },
        HopSheet hop => hop with { Notes = null, Pack = null, Lots = Of(hop.Lots, lots) },
        YeastSheet yeast => yeast with { Notes = null, Pack = null, Lots = [.. Of(yeast.Lots, lots).Select(Of)] },
        ShelfSheet shelf => shelf with { Notes = null, Pack = null, Lots = Of(shelf.Lots, lots) },
        FoodSheet food => food with { Pack = null, Trials = [], Lots = Of(food.Lots, lots) },
        _ => throw new ArgumentOutOfRangeException(nameof(sheet), sheet, "No such sheet."),
    };

    /// <summary>Of harvested yeast its day and its allergens go out; which gyle it comes from, and how many it has fermented, change no number.</summary>
    private static Lot<YeastFigures> Of(Lot<YeastFigures> lot) =>
        lot.Assay is { Harvest: { } harvest } assay ? lot with { Assay = assay with { Harvest = harvest with { From = null, Generation = null } } } : lot;

    /// <summary>The lots that the recipe names, with their analyses alone.</summary>
    private static IReadOnlyList<Lot<T>> Of<T>(IReadOnlyList<Lot<T>> lots, string[] named)
        where T : class =>
        [.. lots.Where(lot => named.Contains(lot.Name, StringComparer.OrdinalIgnoreCase)).Select(lot => new Lot<T> { Name = lot.Name, Assay = lot.Assay })];
}
