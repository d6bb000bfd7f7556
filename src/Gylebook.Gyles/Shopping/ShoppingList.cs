using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Gyles.BrewDay;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;
using Gylebook.Recipes.Lots;

namespace Gylebook.Gyles.Shopping;

/// <summary>All that a brew wants, from the mash to the package, and what of it the larder has.</summary>
/// <param name="Items">Each thing once, in the order in which it goes in.</param>
public sealed record ShoppingList(IReadOnlyList<ShoppingItem> Items)
{
    /// <summary>What has to be bought: what the larder lacks of what it knows.</summary>
    public IEnumerable<ShoppingItem> ToBuy => Items.Where(item => item is { Sheet: not null, MissingKilograms: > 0 });

    /// <summary>What the larder does not know: whether it is at hand only the brewer can tell.</summary>
    public IEnumerable<ShoppingItem> Unknown => Items.Where(item => item.Sheet is null || item.MissingKilograms is null);

    /// <summary>What all that has to be bought would cost, for each currency, as far as prices are known.</summary>
    public IReadOnlyList<(decimal Value, string Currency)> Costs =>
        [.. ToBuy.Select(item => item.Cost).OfType<(decimal Value, string Currency)>().GroupBy(cost => cost.Currency, StringComparer.Ordinal)
            .Select(same => (same.Sum(cost => cost.Value), same.Key)).OrderBy(cost => cost.Key, StringComparer.Ordinal)];

    /// <summary>The list of a brew.</summary>
    /// <param name="brew">The recipe on its kit, with the brewer's larder.</param>
    /// <param name="steps">Brew day: salts and acids of the water plan stand in its steps alone.</param>
    /// <param name="used">How much of each lot went into gyles already, kg, by <see cref="LotKey"/>.</param>
    public static ShoppingList Of(BrewPlan brew, IReadOnlyList<BrewStep> steps, IReadOnlyDictionary<string, double> used)
    {
        ArgumentNullException.ThrowIfNull(brew);
        ArgumentNullException.ThrowIfNull(steps);
        ArgumentNullException.ThrowIfNull(used);
        IEnumerable<Wanted> lines = brew.Lines.Take(brew.OwnLines).Where(line => line.Line.Kind != IngredientKind.Water && !line.Line.Amount.IsNothing).Select(Of);
        IEnumerable<Wanted> doses = steps.SelectMany(step => step.Items).Where(item => !ItemKey.IsLine(item.Key))
            .Select(item => new Wanted(item.What, item.Kilograms, item.Amount, OnShelf(brew.Larder, item.What)));
        return new([.. lines.Concat(doses).GroupBy(wanted => (wanted.Sheet, wanted.IsHarvested, Name: wanted.Sheet is null ? wanted.What.ToLowerInvariant() : "")).Select(same => Of([.. same], used))]);
    }

    private static Wanted Of(PlannedLine line) => new(line.Hand?.Sheet?.Name ?? line.Name, line.Kilograms > 0 ? line.Kilograms : null, line.Line.Amount.Text, line.Hand?.Sheet, line.Hand?.Lot.Harvest() is not null);

    private static ShoppingItem Of(IReadOnlyList<Wanted> same, IReadOnlyDictionary<string, double> used)
    {
        double? kilograms = same.All(wanted => wanted.Kilograms is not null) ? same.Sum(wanted => wanted.Kilograms!.Value) : null;
        return new(same[0].What, kilograms, string.Join(" and ", same.Select(wanted => wanted.Amount)), same[0].Sheet, same[0].Sheet is { } sheet ? AtHand(sheet, same[0].IsHarvested, kilograms ?? 0, used) : null);
    }

    /// <summary>What is left of a sheet's lots, those that were harvested or those that were bought: a jar of slurry stands for no packet, and what it lacks cannot be bought. A lot whose amount nobody wrote down may hold anything, which is no matter while the others have enough.</summary>
    private static double? AtHand(LarderSheet sheet, bool isHarvested, double wanted, IReadOnlyDictionary<string, double> used)
    {
        Lot[] lots = [.. sheet.EveryLot.Where(lot => lot.Harvest() is not null == isHarvested)];
        double known = lots.Sum(lot => lot.Kilograms() is { } bought ? Math.Max(0, bought - used.GetValueOrDefault(LotKey.Of(sheet, lot))) : 0);
        return known >= wanted || (!isHarvested && lots.All(lot => lot.Kilograms() is not null)) ? known : null;
    }

    /// <summary>The sheet of a salt or an acid of the water plan, by what it is like.</summary>
    private static ShelfSheet? OnShelf(Larder larder, string name) => larder.Sheets.OfType<ShelfSheet>().LastOrDefault(sheet => sheet.Kind switch
    {
        IngredientKind.Salt => ShelfWords.Salt(sheet.Like)?.Name == name,
        IngredientKind.Acid => ShelfWords.Sold(sheet.Like)?.Name == name,
        _ => false,
    });

    private sealed record Wanted(string What, double? Kilograms, string Amount, LarderSheet? Sheet, bool IsHarvested = false);
}
