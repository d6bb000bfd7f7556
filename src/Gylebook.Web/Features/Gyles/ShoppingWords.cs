using Gylebook.Gyles.Shopping;
using Gylebook.Pictures;
using Gylebook.Pictures.Sheets;

namespace Gylebook.Web.Features.Gyles;

/// <summary>A shopping list in a reader's words.</summary>
internal static class ShoppingWords
{
    /// <summary>How much to buy: packs where it is sold in such.</summary>
    public static string Buy(ShoppingItem item, Shown shown) => item is { Packs: { } packs, PackKilograms: { } pack }
        ? $"{shown.Number(packs, 0)} × {shown.Kilograms(pack)}" : shown.Kilograms(item.ToBuyKilograms!.Value);

    /// <summary>How much the brew wants.</summary>
    public static string Wanted(ShoppingItem item, Shown shown) => item.WantedKilograms is { } kilograms ? shown.Kilograms(kilograms) : item.Wanted;

    /// <summary>A sum of money.</summary>
    public static string Money((decimal Value, string Currency) cost) => Invariant($"{cost.Value:0.00} {cost.Currency}");

    /// <summary>What all that has to be bought costs, in a sentence; empty where nobody knows.</summary>
    public static string Cost(ShoppingList list) => list.Costs.Count == 0 ? ""
        : $"About {string.Join(" and ", list.Costs.Select(Money))} by what was last paid{(list.ToBuy.All(item => item.Cost is not null) ? "" : ", without what has no price")}.";

    /// <summary>The list as a sheet to print.</summary>
    public static ShoppingSheet Sheet(string name, ShoppingList list, Shown shown)
    {
        ShoppingItem[] buy = [.. list.ToBuy], look = [.. list.Unknown];
        return new(
            name,
            [.. buy.Select(item => new ShoppingRow(item.What, Buy(item, shown), Wanted(item, shown), item.Cost is { } cost ? Money(cost) : ""))],
            [.. look.Select(item => new ShoppingRow(item.What, Wanted(item, shown), "", ""))],
            [.. list.Items.Except(buy).Except(look).Select(item => new ShoppingRow(item.What, Wanted(item, shown), "", ""))],
            Cost(list));
    }
}
