using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Lots;

namespace Gylebook.Forecast.Report.Beer;

/// <summary>What a recipe's ingredients cost, by the lots its lines name.</summary>
/// <remarks>
/// A line costs its share of its lot: price · amount / amount bought. Nothing is told where a line has no price, for a part of
/// the cost would be taken for all of it. Plain liquor costs nothing here; so do salts and acids of a water plan, and priming
/// sugar that the plan found, for no line names them: that is said.
/// </remarks>
/// <param name="Total">All lines together; null where one has no price, or no line names a lot.</param>
/// <param name="Findings">What was left out, or what is missing.</param>
internal sealed record BeerCost(Price? Total, IReadOnlyList<Finding> Findings)
{
    private static readonly BeerCost Unasked = new(null, []);

    /// <summary>The cost of a recipe that was laid out.</summary>
    /// <param name="brew">The recipe on its kit.</param>
    /// <param name="primingGrams">Sugar for priming that no line names, g.</param>
    public static BeerCost Of(BrewPlan brew, double primingGrams)
    {
        List<PlannedLine> bought = [.. brew.Lines.Where(line => line.Number < brew.OwnLines && line.Line.Kind != IngredientKind.Water)];
        if (!bought.Exists(line => line.Hand?.Lot is not null))
        {
            return Unasked;
        }

        List<PlannedLine> unpriced = [.. bought.Where(line => ShareOf(line) is null)];
        if (unpriced.Count > 0)
        {
            string names = string.Join(", ", unpriced.Select(line => line.Name).Distinct());
            return new(null, [new("cost.noPrice", Severity.Note, "ingredients", $"no cost is told: {names} has no lot with a price and an amount it can be measured by", names, "a price and an amount for each")]);
        }

        List<Price> shares = [.. bought.Select(line => ShareOf(line)!.Value)];
        List<string> currencies = [.. shares.Select(share => share.Currency).Distinct()];
        if (currencies.Count > 1)
        {
            string several = string.Join(", ", currencies);
            return new(null, [new("cost.currencies", Severity.Note, "ingredients", $"no cost is told: lots are priced in {several}, and nobody knows today's rate", several, "one currency")]);
        }

        decimal total = shares.Sum(share => share.Value);
        return new(new Price(total, currencies[0], ""), [.. Left(brew, primingGrams)]);
    }

    /// <summary>What one brew's own lines cost more than another's, line by line; null where a line that differs has no price, or prices are in several currencies.</summary>
    /// <param name="from">The brew as it is.</param>
    /// <param name="to">The brew changed; its lines are those of the other, and new ones behind.</param>
    public static Price? Between(BrewPlan from, BrewPlan to)
    {
        List<Price?> more = [.. to.Lines
            .Where(line => line.Number < to.OwnLines && line.Line.Kind != IngredientKind.Water)
            .Select(line => (Was: from.Lines.FirstOrDefault(other => other.Number == line.Number), Is: line))
            .Where(pair => pair.Was?.Line.Amount != pair.Is.Line.Amount)
            .Select(pair => ShareOf(pair.Is) is not { } now ? null : pair.Was is null ? now : ShareOf(pair.Was) is { } before ? now with { Value = now.Value - before.Value } : (Price?)null)];
        return more.Count == 0 || more.Exists(price => price is null) || more.DistinctBy(price => price!.Value.Currency).Count() > 1
            ? null
            : more[0]!.Value with { Value = more.Sum(price => price!.Value.Value), Text = "" };
    }

    private static IEnumerable<Finding> Left(BrewPlan brew, double primingGrams)
    {
        List<string> left = [];
        if (primingGrams > 0)
        {
            left.Add("priming sugar");
        }

        if (brew.Lines.Any(line => line.Number >= brew.OwnLines))
        {
            left.Add("salts and acids of the water plan");
        }

        if (left.Count > 0)
        {
            string what = string.Join(" and ", left);
            yield return new("cost.without", Severity.Note, "ingredients", $"the cost is without {what}: no line names a lot of it", what);
        }
    }

    /// <summary>What a line takes of its lot's price; null without a price, an amount, or a common measure.</summary>
    private static Price? ShareOf(PlannedLine line) => line.Hand?.Lot is { Price: { } price, Amount: { } lot } && TimesOf(line.Line.Amount, lot) is { } times
        ? price with { Value = price.Value * (decimal)times }
        : null;

    private static double? TimesOf(Amount line, Amount lot) => (line, lot) switch
    {
        ({ Mass: { } used }, { Mass: { } bought }) when bought.Value.Kilograms > 0 => used.Value.Kilograms / bought.Value.Kilograms,
        ({ Volume: { } used }, { Volume: { } bought }) when bought.Value.Litres > 0 => used.Value.Litres / bought.Value.Litres,
        _ => null,
    };
}
