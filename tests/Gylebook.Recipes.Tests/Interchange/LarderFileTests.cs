using System.Text;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;

namespace Gylebook.Recipes.Tests.Interchange;

/// <summary>Sheets of the larder, read and written.</summary>
public sealed class LarderFileTests
{
    [Theory]
    [MemberData(nameof(Samples.Larder), MemberType = typeof(Samples))]
    [MemberData(nameof(Samples.Foods), MemberType = typeof(Samples))]
    public void A_sheet_written_and_read_again_says_the_same(string path)
    {
        string written = LarderFile.Write(Read(Samples.Text(path)).Value!);
        Assert.Equal(written, LarderFile.Write(Read(written).Value!));
    }

    [Fact]
    public void A_malt_is_read_figure_by_figure()
    {
        MaltSheet malt = Assert.IsType<MaltSheet>(Read(Samples.Text("samples", "recipes", "lots", "larder", "north-field-pale.json")).Value);
        Lot<Gylebook.Recipes.Ingredients.MaltFigures> lot = Assert.Single(malt.Lots);
        Assert.Equal(("2611-04", 25d, 31.50m, "EUR"), (lot.Name, lot.Amount!.Value.Mass!.Value.Value.Kilograms, lot.Price!.Value.Value, lot.Price.Value.Currency));
        Assert.Equal((new DateOnly(2026, 11, 7), new DateOnly(2026, 11, 21), new DateOnly(2027, 11, 1)), (lot.Bought, lot.Opened, lot.BestBefore));
        // 77.2 % as is, in 96.5 % of dry matter.
        Assert.Equal(80.0, lot.Assay!.ExtractDry!.Value.Percent, 1e-9);
        // 180 WK: (180 + 16)/3.5.
        Assert.Equal(56, malt.Figures!.DiastaticPower!.Value.Lintner, 1e-9);
    }

    /// <summary>A maltster's sheet prints both: 40 to 65 degrees Lintner, 124 to 212 °WK.</summary>
    [Theory]
    [InlineData(124, 40)]
    [InlineData(212, 65)]
    public void Windisch_Kolbach_is_read_as_the_trade_converts_it(double windischKolbach, double lintner) =>
        Assert.Equal(lintner, Gylebook.Recipes.Ingredients.DiastaticPower.LintnerOf(windischKolbach), 0.2);

    [Theory]
    [InlineData("4.20 EUR", true)]
    [InlineData("4,20 EUR", true)]
    [InlineData("0 USD", true)]
    [InlineData("4.20", false)]
    [InlineData("4.20 eur", false)]
    [InlineData("€ 4.20", false)]
    [InlineData("-1 EUR", false)]
    [InlineData("1.000,50 EUR", false)]
    public void A_price_is_a_number_and_three_letters(string price, bool isOne)
    {
        Reading<LarderSheet> read = Read($$"""{ "format": "gylebook-malt/1", "id": "a", "name": "a", "like": "pale ale malt", "lots": [ { "lot": "1", "price": "{{price}}" } ] }""");
        Assert.Equal(isOne, read.Value is not null);
        Assert.Equal(isOne ? [] : ["price.wrong lots[0].price"], read.Findings.Select(f => $"{f.Code} {f.Where}"));
    }

    [Theory]
    [InlineData("2026-02-28", true)]
    [InlineData("2026-02-29", false)]
    [InlineData("2028-02-29", true)]
    [InlineData("26-02-28", false)]
    [InlineData("28.2.2026", false)]
    public void A_day_is_year_month_and_day(string day, bool isOne) => Assert.Equal(
        isOne, Read($$"""{ "format": "gylebook-malt/1", "id": "a", "name": "a", "like": "pale ale malt", "lots": [ { "lot": "1", "bought": "{{day}}" } ] }""").Value is not null);

    [Fact]
    public void What_is_like_nothing_known_is_told_with_the_nearest()
    {
        Finding told = Assert.Single(Read("""{ "format": "gylebook-hop/1", "id": "a", "name": "a", "like": "Fugle" }""").Findings);
        Assert.Equal(("hop.unknown", "like"), (told.Code, told.Where));
        Assert.StartsWith("Fuggle", told.Limit, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_another_form_is_told_which_there_are()
    {
        Finding told = Assert.Single(Read("""{ "format": "gylebook-kit/1" }""").Findings);
        Assert.Equal("format.wrong", told.Code);
        Assert.Contains("gylebook-malt/1, gylebook-hop/1, gylebook-yeast/1, gylebook-shelf/1, gylebook-food/1", told.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_food_takes_lots_and_their_analysis_goes_before_its_own()
    {
        FoodSheet food = Assert.IsType<FoodSheet>(Read("""
            {
              "format": "gylebook-food/1", "id": "squash", "name": "squash", "family": "other",
              "composition": { "water": "90 g", "carbohydrate": "8 g", "source": "label" },
              "lots": [ { "lot": "October", "assay": { "water": "80 g", "carbohydrate": "18 g", "source": "laboratory" } } ]
            }
            """).Value);
        Larder larder = new([food]);
        Assert.Equal(0.90, larder.Made(food).Makeup!.Water, 1e-9);
        Assert.Equal(0.80, larder.Made(food, food.Lots[0]).Makeup!.Water, 1e-9);
    }

    private static Reading<LarderSheet> Read(string text)
    {
        using MemoryStream stream = new(Encoding.UTF8.GetBytes(text));
        return LarderFile.Read(stream);
    }
}
