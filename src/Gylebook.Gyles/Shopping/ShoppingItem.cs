using Gylebook.Recipes.Lots;

namespace Gylebook.Gyles.Shopping;

/// <summary>What a brew wants of one thing, what the larder has of it, and what has to be bought.</summary>
/// <param name="What">Its name.</param>
/// <param name="WantedKilograms">How much is wanted in all, kg; null where it cannot be weighed.</param>
/// <param name="Wanted">The same as the recipe says it: <c>11 g</c>; several with "and" between them.</param>
/// <param name="Sheet">The larder's sheet of it; null where the larder does not know it.</param>
/// <param name="AtHandKilograms">What is left of its lots, kg; null where nobody wrote down how much was bought.</param>
public sealed record ShoppingItem(string What, double? WantedKilograms, string Wanted, LarderSheet? Sheet, double? AtHandKilograms)
{
    /// <summary>Less than a scale shows is nothing.</summary>
    private const double Nothing = 5e-5;

    /// <summary>How much is missing, kg: 0 where the lots have enough; null where nobody knows.</summary>
    public double? MissingKilograms => WantedKilograms is not { } wanted ? null
        : Sheet is null ? wanted
        : AtHandKilograms is not { } atHand ? null
        : wanted - atHand > Nothing ? wanted - atHand : 0;

    /// <summary>What one pack holds, kg; null where the sheet says none, or none that is weighed.</summary>
    public double? PackKilograms => Sheet?.Pack?.Mass?.Value.Kilograms is > 0 and var pack ? pack : null;

    /// <summary>How many packs make up for what is missing; null where nothing is, or nobody knows.</summary>
    public int? Packs => MissingKilograms is > 0 and var missing && PackKilograms is { } pack ? (int)Math.Ceiling((missing / pack) - 1e-9) : null;

    /// <summary>How much to buy, kg: whole packs where it is sold in such; null where nobody knows.</summary>
    public double? ToBuyKilograms => Packs is { } packs ? packs * PackKilograms : MissingKilograms;

    /// <summary>What that would cost, by what was last paid for it; null where no lot says.</summary>
    public (decimal Value, string Currency)? Cost => ToBuyKilograms is > 0 and var buy && LastPrice is ({ } price, double kilograms)
        ? (Math.Round(price.Value * (decimal)(buy / kilograms), 2), price.Currency) : null;

    /// <summary>Price and amount of the lot that was bought last, of those that say both.</summary>
    private (Price? Price, double Kilograms) LastPrice => (Sheet?.EveryLot ?? [])
        .Where(lot => lot is { Price: not null, Amount.Mass.Value.Kilograms: > 0 })
        .OrderBy(lot => lot.Bought ?? DateOnly.MinValue)
        .Select(lot => (lot.Price, lot.Amount!.Value.Mass!.Value.Value.Kilograms))
        .LastOrDefault();
}
