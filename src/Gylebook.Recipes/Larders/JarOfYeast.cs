using Gylebook.Recipes.Lots;

namespace Gylebook.Recipes.Larders;

/// <summary>What sets a lot of harvested yeast apart from one that was bought.</summary>
public static class JarOfYeast
{
    /// <summary>Where a lot was harvested; null for one that was bought.</summary>
    public static YeastHarvest? Harvest(this Lot? lot) => (lot as Lot<YeastFigures>)?.Assay?.Harvest;

    /// <summary>How much a lot was at first, kg; null where nobody says, or it is no weight. Slurry is poured, and a millilitre of it counts as a gram.</summary>
    public static double? Kilograms(this Lot lot)
    {
        ArgumentNullException.ThrowIfNull(lot);
        return lot.Amount?.Mass?.Value.Kilograms ?? (lot.Harvest() is null ? null : lot.Amount?.Volume?.Value.Litres);
    }
}
