namespace Gylebook.Recipes.Lots;

/// <summary>How far a lot is on its way on some day.</summary>
public enum LotAge
{
    /// <summary>Nothing speaks against it.</summary>
    Good,

    /// <summary>Its maker stands by it for a month more at most.</summary>
    Soon,

    /// <summary>Its maker stands by it no more.</summary>
    Past,
}

/// <summary>What the dates of lots say.</summary>
public static class LotAges
{
    /// <summary>From how many days before its last a lot counts as near its end. Common practice, no source.</summary>
    public const int SoonDays = 30;

    /// <summary>How far a lot is; one without a date is good, for all anybody knows.</summary>
    public static LotAge On(this Lot lot, DateOnly day) => lot.BestBefore is not { } best || best.DayNumber - day.DayNumber > SoonDays ? LotAge.Good
        : best >= day ? LotAge.Soon
        : LotAge.Past;

    /// <summary>What all those lots with a price cost, for each currency.</summary>
    public static IReadOnlyList<(decimal Value, string Currency)> Costs(IEnumerable<Lot> lots) =>
        [.. lots.Where(lot => lot.Price is not null).GroupBy(lot => lot.Price!.Value.Currency, StringComparer.Ordinal)
            .Select(same => (same.Sum(lot => lot.Price!.Value.Value), same.Key)).OrderBy(sum => sum.Key, StringComparer.Ordinal)];
}
