using System.Globalization;
using Gylebook.Gyles.BrewDay;
using Gylebook.Pictures;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;
using Gylebook.Store;
using Gylebook.Web.Reading;
using Gylebook.Web.Widgets.Fields;

namespace Gylebook.Web.Features.Larders;

/// <summary>A sheet in the list of the larder.</summary>
/// <param name="Id">Which.</param>
/// <param name="Url">Its page.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Kind">What sort of thing it is: <c>malt</c>, <c>salt</c>.</param>
/// <param name="Says">A few words about it.</param>
/// <param name="Lots">Its lots.</param>
internal sealed record SheetLine(Guid Id, string Url, string Name, string Kind, string Says, IReadOnlyList<LotLine> Lots)
{
    /// <summary>Whether it is a food's.</summary>
    public bool IsFood => Kind == FoodKind;

    private const string FoodKind = "food";

    /// <summary>The line of a sheet of the book; one that cannot be read is told of by its name alone.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="isFood">Whether it is a food's: a damaged text does not say so itself.</param>
    /// <param name="shown">How the reader wants to see numbers.</param>
    /// <param name="today">Today.</param>
    /// <param name="used">How much of each lot went into gyles, kg.</param>
    public static SheetLine Of(Sheet sheet, bool isFood, Shown shown, DateOnly today, IReadOnlyDictionary<string, double> used)
    {
        string url = isFood ? PageUrls.OwnFood(sheet.Id) : PageUrls.LarderSheet(sheet.Id);
        if (!WholeText.Is(sheet))
        {
            return new SheetLine(sheet.Id, url, sheet.Name, isFood ? FoodKind : "", "damaged: its page says what can be done", []);
        }

        FileDraft draft = LarderDraft.Of(sheet.Document);
        string kind = isFood ? FoodKind : draft["kind"] ?? draft.Form.Noun;
        LarderSheet? read = LarderDraft.SheetOf(draft);
        string?[] says =
        [
            isFood ? read is FoodSheet food ? food.Family : null : draft["like"] is { } like ? $"like {like}" : null,
            read is null ? "cannot be read" : null,
            sheet.IsDemo ? "demo" : null,
        ];
        return new SheetLine(
            sheet.Id, url, sheet.Name, kind, string.Join(" · ", says.Where(said => said is not null)),
            [.. (read?.EveryLot ?? []).Select(lot => LotLine.Of(lot, sheet.Name, url, shown, today, used.GetValueOrDefault(LotKey.Of(read!, lot))))]);
    }
}

/// <summary>A lot in the list of the larder.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="Title">What it is of, and its name.</param>
/// <param name="Url">The page of its sheet.</param>
/// <param name="Amount">How much was bought, as the reader has it, and what gyles have left of it.</param>
/// <param name="Cost">What that cost.</param>
/// <param name="Dates">Its dates in words, what matters most first.</param>
/// <param name="Age">How far it is.</param>
internal sealed record LotLine(Lot Lot, string Title, string Url, string Amount, string Cost, string Dates, LotAge Age)
{
    /// <summary>What stands on the sack.</summary>
    public string Name => Lot.Name;

    /// <summary>The line of a lot.</summary>
    public static LotLine Of(Lot lot, string sheet, string url, Shown shown, DateOnly today, double usedKilograms)
    {
        LotAge age = lot.On(today);
        string?[] dates =
        [
            age switch
            {
                LotAge.Past => $"past its best for {Span(lot.BestBefore!.Value, today)}",
                LotAge.Soon => lot.BestBefore == today ? "best before today" : $"best for {Span(today, lot.BestBefore!.Value)} more",
                _ => lot.BestBefore is { } best ? $"best before {Day(best)}" : null,
            },
            lot.Opened is { } opened ? $"opened {Day(opened)}" : null,
            lot.Bought is { } bought ? $"bought {Day(bought)}" : null,
            lot.Harvest() is { } harvest ? Taken(harvest, today) : null,
        ];
        return new LotLine(
            lot, $"{sheet}, {lot.Name}", url,
            lot.Amount is { } amount ? FieldText.Amount.Show(amount.Text, shown.Units) + Left(lot, amount, usedKilograms, shown) : "", lot.Price?.Text ?? "",
            string.Join(", ", dates.Where(date => date is not null)), age);
    }

    private static string Left(Lot lot, Amount bought, double usedKilograms, Shown shown)
    {
        if (usedKilograms <= 0 || lot.Kilograms() is not { } kilograms)
        {
            return "";
        }

        double left = Math.Max(0, kilograms - usedKilograms);
        return $", {(bought.Mass is null ? FieldText.Amount.Show(Invariant($"{1000 * left:0} mL"), shown.Units) : shown.Kilograms(left))} left";
    }

    private static string Taken(YeastHarvest harvest, DateOnly today) =>
        $"harvested {(harvest.Day < today ? $"{Span(harvest.Day, today)} ago" : "today")}{(harvest.From is { } from ? $" from {from}" : "")}{(harvest.Generation is { } generation ? Invariant($", generation {generation}") : "")}{(harvest.MayContain is { } traces ? $"; may contain {traces}" : "")}";

    private static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    private static string Span(DateOnly from, DateOnly to) => (to.DayNumber - from.DayNumber) switch
    {
        1 => "a day",
        < 60 and var days => Invariant($"{days} days"),
        < 730 and var days => Invariant($"{days / 30} months"),
        var days => Invariant($"{days / 365} years"),
    };
}

/// <summary>Sheets of one sort.</summary>
/// <param name="Title">What they are.</param>
/// <param name="Sheets">Which, by name.</param>
internal sealed record LarderGroup(string Title, IReadOnlyList<SheetLine> Sheets)
{
    private static readonly (string Title, Func<SheetLine, bool> Holds)[] Order =
    [
        ("Malts", sheet => sheet.Kind == "malt"),
        ("Hops", sheet => sheet.Kind == "hop"),
        ("Yeasts", sheet => sheet.Kind == "yeast"),
        ("Foods", sheet => sheet.IsFood),
        ("On the shelf", sheet => sheet.Kind is not ("malt" or "hop" or "yeast" or "food")),
    ];

    /// <summary>For the page's anchors.</summary>
    public string Id => Title.ToLowerInvariant().Replace(' ', '-');

    /// <summary>All sorts of which there is something.</summary>
    public static IReadOnlyList<LarderGroup> Of(IReadOnlyList<SheetLine> sheets) =>
        [.. Order.Select(sort => new LarderGroup(sort.Title, [.. sheets.Where(sort.Holds).OrderBy(sheet => sheet.Name, StringComparer.OrdinalIgnoreCase)])).Where(group => group.Sheets.Count > 0)];
}
