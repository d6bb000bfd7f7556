using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Shopping;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;
using Gylebook.Tests.Shared;

namespace Gylebook.Gyles.Tests;

/// <summary>What has to be bought: each thing once, in whole packs, at the price last paid.</summary>
public sealed class ShoppingTests
{
    private const string Malt = """
        { "format": "gylebook-malt/1", "id": "pale", "name": "Pale", "like": "pale ale malt", "pack": "1 kg",
          "lots": [ { "lot": "old", "amount": "1 kg", "price": "9.00 EUR", "bought": "2026-01-05" },
                    { "lot": "new", "amount": "2 kg", "price": "5.00 EUR", "bought": "2026-11-05" } ] }
        """;

    private const string Hop = """{ "format": "gylebook-hop/1", "id": "hop", "name": "Garden hop", "like": "Golding", "lots": [ { "lot": "bag", "amount": "50 g" } ] }""";

    [Fact]
    public void It_is_rounded_up_to_packs_and_priced_by_the_lot_that_was_bought_last()
    {
        // 3.6 kg are wanted, 3 kg at hand: one pack of 1 kg at 2.50 EUR a kilogram.
        ShoppingItem malt = Item(Of(Malt), "Pale");
        Assert.Equal((3.6, 3.0, 0.6), (malt.WantedKilograms!.Value, malt.AtHandKilograms!.Value, Math.Round(malt.MissingKilograms!.Value, 9)));
        Assert.Equal((1, 1.0, (2.50m, "EUR")), (malt.Packs, malt.ToBuyKilograms, malt.Cost!.Value));

        // A gyle has used half a kilogram of a lot: two packs.
        malt = Item(Of(Malt, used: new() { ["pale/new"] = 0.5 }), "Pale");
        Assert.Equal((2, (5.00m, "EUR")), (malt.Packs, malt.Cost!.Value));

        // A pack of just what is missing is one pack, and what is there is not bought.
        Assert.Equal(1, Item(Of(Malt.Replace("\"pack\": \"1 kg\"", "\"pack\": \"600 g\"", StringComparison.Ordinal)), "Pale").Packs);
        malt = Item(Of(Malt.Replace("2 kg", "2.6 kg", StringComparison.Ordinal)), "Pale");
        Assert.Equal((0.0, null, null), (malt.MissingKilograms, malt.Packs, malt.Cost));
    }

    [Fact]
    public void Without_packs_it_is_the_exact_amount()
    {
        ShoppingItem malt = Item(Of(Malt.Replace("\"pack\": \"1 kg\",", "", StringComparison.Ordinal)), "Pale");
        Assert.Equal((null, 0.6, (1.50m, "EUR")), (malt.Packs, Math.Round(malt.ToBuyKilograms!.Value, 9), malt.Cost!.Value));
    }

    /// <remarks>The sample's bitter wants 11 g of dry yeast; a jar of 400 g of slurry is no dry yeast, and what a jar lacks is in no shop.</remarks>
    [Fact]
    public void A_jar_of_slurry_is_no_packet_and_what_it_lacks_is_not_bought()
    {
        const string Yeast = """
            { "format": "gylebook-yeast/1", "id": "ale", "name": "Ale", "like": "English ale", "pack": "11.5 g", "lots": [
                { "lot": "jar", "amount": "400 g", "assay": { "form": "slurry", "harvest": { "day": "2026-11-01" } } } ] }
            """;
        const string Line = "\"English ale\", \"form\": \"dry\", \"amount\": \"11 g\"";
        ShoppingItem dry = Item(Of(Yeast, line: (Line, Line.Replace("English ale", "ale", StringComparison.Ordinal))), "Ale");
        Assert.Equal((0.0, 1), (dry.AtHandKilograms, dry.Packs));

        ShoppingItem slurry = Item(Of(Yeast, line: (Line, "\"ale\", \"lot\": \"jar\", \"amount\": \"200 mL\"")), "Ale");
        Assert.Equal((0.4, 0.0, null), (slurry.AtHandKilograms, slurry.MissingKilograms, slurry.Packs));
        slurry = Item(Of(Yeast, line: (Line, "\"ale\", \"lot\": \"jar\", \"amount\": \"500 mL\"")), "Ale");
        Assert.Equal((null, null), (slurry.AtHandKilograms, slurry.Packs));
    }

    [Fact]
    public void Two_additions_of_a_hop_are_one_thing_to_buy()
    {
        // 45 g and 20 g by samples/recipes/plain-bitter.json, of a bag of 50 g.
        ShoppingItem hop = Item(Of(Hop), "Garden hop");
        Assert.Equal((0.065, 0.05, 0.015, null), (Math.Round(hop.WantedKilograms!.Value, 9), hop.AtHandKilograms, Math.Round(hop.ToBuyKilograms!.Value, 9), hop.Cost));
        Assert.Equal("45 g and 20 g", hop.Wanted);
    }

    [Fact]
    public void What_nobody_knows_is_looked_for_and_not_bought()
    {
        ShoppingList list = Of(Hop.Replace(", \"amount\": \"50 g\"", "", StringComparison.Ordinal));
        Assert.Empty(list.ToBuy);
        Assert.Null(Item(list, "Garden hop").MissingKilograms);

        // The hop without an amount, and all that the larder has no sheet of.
        Assert.Equal(["pale ale malt", "caramel malt", "Garden hop", "carrageenan", "English ale"], list.Unknown.Select(item => item.What));
        Assert.Equal(["Garden hop"], Of(Hop).ToBuy.Select(item => item.What));
    }

    [Fact]
    public void A_sheet_without_lots_is_nothing_at_hand()
    {
        ShoppingItem hop = Item(Of("""{ "format": "gylebook-hop/1", "id": "hop", "name": "Garden hop", "like": "Golding", "pack": "100 g" }"""), "Garden hop");
        Assert.Equal((0.0, 1), (hop.AtHandKilograms, hop.Packs));
    }

    private static ShoppingItem Item(ShoppingList list, string what) => Assert.Single(list.Items, item => item.What == what);

    private static ShoppingList Of(string sheet, Dictionary<string, double>? used = null, (string Was, string Now)? line = null)
    {
        string text = File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json"))
            .Replace(sheet.Contains("Garden", StringComparison.Ordinal) ? "\"Golding\", \"alpha\": \"5.2 %\", \"form\": \"whole\"" : "\"pale ale malt\"", sheet.Contains("Garden", StringComparison.Ordinal) ? "\"hop\"" : "\"pale\"", StringComparison.Ordinal);
        Recipe recipe = RecipeFile.Read(line is var (was, now) ? text.Replace(was, now, StringComparison.Ordinal) : text).Value!;
        LarderSheet own = LarderDraft.SheetOf(LarderDraft.Of(sheet))!;
        BrewPlan brew = Forecaster.Plan(recipe, BuiltInKit.LanternShed, new Larder([own]), null).Brew;
        Assert.NotNull(brew.Plan);
        return ShoppingList.Of(brew, Array.Empty<BrewStep>(), used ?? []);
    }
}
