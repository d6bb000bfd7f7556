using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Lots;

namespace Gylebook.Recipes.Interchange;

/// <summary>What all sheets of the larder share: an id, a name, lots.</summary>
internal static class LotForms
{
    /// <summary>The first fields of a sheet.</summary>
    public static Form<TSheet> Titled<TSheet>(this Form<TSheet> form)
        where TSheet : LarderSheet => form
        .Need("id", "id", SheetId.Only, s => s.Id, (s, v) => s with { Id = v }, new("What recipes call it by: small letters a to z, digits and hyphens between them."))
        .Need("name", "name", Leaves.Name, s => s.Name, (s, v) => s with { Name = v });

    /// <summary>The fields of a sheet that is like a row of the tables.</summary>
    /// <param name="form">The sheet's.</param>
    /// <param name="figures">What its maker states.</param>
    /// <param name="like">What the row is called: a malt of the table.</param>
    public static Form<TSheet> Alike<TSheet, TFigures>(this Form<TSheet> form, ValueForm<TFigures> figures, string like)
        where TSheet : LikeSheet<TFigures>
        where TFigures : class => form
        .Need("like", "like", Leaves.Name, s => s.Like, (s, v) => s with { Like = v }, new($"{like} that it is like, by id or name: from it all is taken that is not said."))
        .May("notes", "notes", Leaves.Prose, s => s.Notes, (s, v) => s with { Notes = v }, new("Anything worth remembering."))
        .May("figures", "figures", figures, s => s.Figures, (s, v) => s with { Figures = v }, new("What its maker states of it; a lot's assay goes before."));

    /// <summary>The lots of a sheet, behind what is known of it.</summary>
    public static Form<TSheet> WithLots<TSheet, TFigures>(this Form<TSheet> form, ValueForm<TFigures> assay, AmountForm amount)
        where TSheet : LarderSheet<TFigures>
        where TFigures : class => form
        .May("pack", "sold in packs of", amount, s => s.Pack, (s, v) => s with { Pack = v }, new("How much is bought at once: a shopping list is rounded up to it."))
        .MayList("lots", "lots", new ListForm<Lot<TFigures>>(Lot(assay, amount)) { MatchedBy = ["lot"], ItemSaid = "lot" }, s => s.Lots, (s, v) => s with { Lots = v }, new("Amounts of it at hand; a recipe's line names one by its `lot`."))
        .Agree((sheet, at) => Once(sheet.Lots, at))
        .Agree(Packed);

    private static Form<Lot<TFigures>> Lot<TFigures>(ValueForm<TFigures> assay, AmountForm amount)
        where TFigures : class => new Form<Lot<TFigures>>(new Lot<TFigures> { Name = "" }) { About = "An amount at hand." }
        .Need("lot", "lot", Leaves.Name, l => l.Name, (l, v) => l with { Name = v }, new("What stands on the sack."))
        .May("amount", "amount bought", amount, l => l.Amount, (l, v) => l with { Amount = v }, new("How much was bought: what the price is for."))
        .May("price", "price", Spelled.Price, l => l.Price, (l, v) => l with { Price = v }, new("For the amount bought, with its currency: \"4.20 EUR\"."))
        .May("bought", "bought", Leaves.Day, l => l.Bought, (l, v) => l with { Bought = v })
        .May("opened", "opened", Leaves.Day, l => l.Opened, (l, v) => l with { Opened = v }, new("The day it was opened, not before it was bought."))
        .May("bestBefore", "best before", Leaves.Day, l => l.BestBefore, (l, v) => l with { BestBefore = v }, new("As printed on the pack; nothing is reckoned from it."))
        .May("assay", "assay", assay, l => l.Assay, (l, v) => l with { Assay = v }, new("What was measured of this lot; it goes before the sheet's figures."))
        .Agree(Check);

    private static void Check(Lot lot, PartCursor at)
    {
        if (lot.Amount is { IsNothing: true } amount)
        {
            at.Error("lot.amount", "amount", $"{amount.Text}; must be above 0: a lot of nothing is no lot", amount.Text, "above 0");
        }

        if (lot is { Bought: { } bought, Opened: { } opened } && opened < bought)
        {
            at.Error("lot.dates", "opened", $"{Day(opened)}; must not be before it was bought, {Day(bought)}", Day(opened), Day(bought));
        }

        if (lot is { Bought: { } got, BestBefore: { } best } && best < got)
        {
            at.Warning("lot.pastBest", "bestBefore", $"{Day(best)}; it was bought later, on {Day(got)}");
        }
    }

    private static void Packed(LarderSheet sheet, PartCursor at)
    {
        if (sheet.Pack is { IsNothing: true } pack)
        {
            at.Error("sheet.pack", "pack", $"{pack.Text}; must be above 0: nobody sells packs of nothing", pack.Text, "above 0");
        }
    }

    private static void Once(IReadOnlyList<Lot> lots, PartCursor at)
    {
        for (int i = 0; i < lots.Count; i++)
        {
            if (lots[i] is { Name.Length: > 0 } lot && lots.Take(i).Any(other => string.Equals(other.Name, lot.Name, StringComparison.OrdinalIgnoreCase)))
            {
                at.Findings.Error("lot.twice", Invariant($"{at.PathOf("lots")}[{i}].lot"), $"\"{FindingList.Shorten(lot.Name)}\"; another lot has that name, so a recipe could not tell them apart", lot.Name);
            }
        }
    }

    /// <summary>A day as files have it.</summary>
    public static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
