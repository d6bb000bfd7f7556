using Gylebook.Recipes.Data;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Data;

namespace Gylebook.Recipes.Tests.Data;

public class TableTests
{
    private static readonly Table<string> Rows = new(
        CsvTable.Parse("t.csv", """
            id,name,also
            munich-malt,munich malt,
            pale-ale-malt,pale ale malt,pale malt
            raw-date,"date, raw",date
            dried-date,"date, dried",date
            mittelfrueh,Hallertau Mittelfrüh,
            """),
        row => row.Text("id"));

    [Theory]
    [InlineData("munich-malt", "munich-malt")]
    [InlineData("Munich Malt", "munich-malt")]
    [InlineData("munich malts", "munich-malt")]
    [InlineData("Munich", "munich-malt")]
    [InlineData("pale malt", "pale-ale-malt")]
    [InlineData("hallertau mittelfruh", "mittelfrueh")]
    [InlineData("dates raw", "raw-date")]
    public void A_name_is_found_however_it_is_written(string asked, string id)
    {
        var found = Rows.Find(asked);
        Assert.Equal(id, found.Match);
        Assert.Empty(found.Nearest);
    }

    [Fact]
    public void A_name_that_fits_two_rows_fits_none_and_both_are_named()
    {
        var found = Rows.Find("dates");
        Assert.Null(found.Match);
        Assert.Equal(["date, raw", "date, dried"], found.Nearest);
    }

    [Theory]
    [InlineData("minuch malt", "munich malt")]
    [InlineData("palee ale", "pale ale malt")]
    [InlineData("mittelfrüh", "Hallertau Mittelfrüh")]
    public void A_misspelling_names_what_was_meant_first(string asked, string nearest)
    {
        var found = Rows.Find(asked);
        Assert.Null(found.Match);
        Assert.Equal(nearest, found.Nearest[0]);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("-")]
    public void An_empty_name_is_not_found(string asked) => Assert.Null(Rows.Find(asked).Match);

    [Fact]
    public void An_unknown_id_is_a_callers_bug_and_names_the_nearest() =>
        Assert.Contains("break.share", Assert.Throws<ArgumentOutOfRangeException>(() => StartingValues.Of("break.shar")).Message,
            StringComparison.Ordinal);

    [Theory]
    [InlineData("pale ale malt", "pale-ale-malt")]
    [InlineData("munich malt", "munich-malt")]
    [InlineData("caramel malt", "caramel-malt")]
    [InlineData("crystal malt", "caramel-malt")]
    [InlineData("chocolate malt", "chocolate-malt")]
    [InlineData("roasted barley", "roasted-barley")]
    public void Malts_of_a_recipe_are_found(string asked, string id) => Assert.Equal(id, Malts.Find(asked).Match?.Id);

    [Fact]
    public void Hops_yeast_sugar_and_foods_of_a_recipe_are_found()
    {
        Assert.Equal("fuggle", HopCultivars.Find("Fuggle").Match?.Id);
        Assert.Equal("fuggle", HopCultivars.Find("fuggles hops").Match?.Id);
        Assert.Equal("english-ale", YeastStyles.Find("English ale").Match?.Id);
        Assert.Equal("white-sugar", Sugars.Find("white-sugar").Match?.Id);
        Assert.Equal("honey", FoodTable.Find("honey").Match?.Id);
        Assert.Equal("nut-flour-defatted", FoodFamilies.Find("nut or seed flour, defatted").Match?.Id);
    }

    [Fact]
    public async Task Many_threads_may_ask_at_once()
    {
        var asked = Enumerable.Range(0, 64).Select(_ => Task.Run(() => Malts.Find("munich").Match));
        var found = await Task.WhenAll(asked);
        Assert.Single(found.Distinct());
        Assert.NotNull(found[0]);
    }

    [Fact]
    public void An_id_that_is_there_twice_is_refused() =>
        Assert.Equal("t.csv, line 3, column id: is there twice: a.", Assert.Throws<InvalidDataException>(
            () => new Table<string>(CsvTable.Parse("t.csv", "id\na\na"), row => row.Text("id"))).Message);
}
