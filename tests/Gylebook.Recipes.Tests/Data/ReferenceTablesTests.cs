using Gylebook.Recipes.Data;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Tests.Data;

public class ReferenceTablesTests
{
    private static readonly string[] Statuses =
        ["seen", "seen-suspect", "memory", "common practice", "computed", "invented"];

    /// <summary>Capitals that a generic name may have: places, peoples and two abbreviations.</summary>
    private static readonly string[] Capitals =
        ["European", "English", "Indian", "American", "Scottish", "Irish", "Belgian", "Kölsch", "Altbier", "Weissbier", "Witbier",
         "Brettanomyces", "EBC", "DE"];

    /// <summary>Tables whose rows all come from what the head names.</summary>
    // A parameter has several: between brewers, within one. What must differ there is asked in PriorsTests.
    private const string Widths = "priors.csv";

    private static readonly string[] OneSourceForAll = ["foods-stimulants.csv", "ingredient-words.csv", "parameter-words.csv"];

    public static TheoryData<string> RowsWithASource => [.. Files.Select(row => row.Data).Except(OneSourceForAll)];

    public static TheoryData<string> Files =>
        [.. typeof(ReferenceData).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith("data/", StringComparison.Ordinal)).Select(name => name["data/".Length..])];

    [Fact]
    public void All_tables_travel_in_the_assembly() => Assert.Equal(
        [
            "finings.csv", "food-acids.csv", "food-families.csv", "food-minerals.csv", "food-ph.csv", "food-polyols.csv", "foods-stimulants.csv", "foods.csv", "hops.csv", "ingredient-words.csv", "instruments.csv", "lactic-cultures.csv",
            "malt-titration.csv", "malts.csv", "parameter-words.csv", "priors.csv", "readings.csv", "starting-values.csv", "style-statistics.csv", "sugars.csv", "water-balances.csv", "yeasts.csv",
        ],
        Files.Select(row => row.Data).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_head_says_source_and_licence(string file)
    {
        var head = string.Join('\n', ReferenceData.Table(file).Head);
        Assert.Contains("source", head, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("licence", head, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [MemberData(nameof(RowsWithASource))]
    public void Every_row_has_a_source_and_a_known_status(string file)
    {
        var table = ReferenceData.Table(file);
        Assert.NotEmpty(table.Rows);
        Assert.All(table.Rows, row =>
        {
            Assert.NotEmpty(row.Required("source"));
            Assert.Contains(row.Required("status"), Statuses);
        });
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Ids_and_names_are_unique(string file)
    {
        var table = ReferenceData.Table(file);
        foreach (var column in table.Columns.Intersect(file == Widths ? [] : ["id", "name", "phrase"]))
        {
            Assert.Distinct(table.Rows.Select(row => row.Required(column)), StringComparer.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void No_name_looks_like_a_brand()
    {
        string[] names =
        [
            .. Malts.All.Select(row => row.Name), .. Sugars.All.Select(row => row.Name), .. YeastStyles.All.Select(row => row.Name),
            .. FoodTable.All.Select(row => row.Name), .. FoodFamilies.All.Select(row => row.Name),
        ];
        Assert.All(names, name =>
        {
            Assert.DoesNotContain(name, letter => letter is '®' or '™' or '©');
            Assert.All(name.Split(' ', ',', '-').Where(word => word.Any(char.IsUpper)), word => Assert.Contains(word, Capitals));
        });
        Assert.All(HopCultivars.All, hop => Assert.DoesNotContain(hop.Name, letter => letter is '®' or '™'));
    }

    [Fact]
    public void Every_id_and_every_name_finds_its_own_row()
    {
        Assert.All(Malts.All, row => Assert.Same(row, Malts.Find(row.Id).Match));
        Assert.All(Malts.All, row => Assert.Same(row, Malts.Find(row.Name).Match));
        Assert.All(Sugars.All, row => Assert.Same(row, Sugars.Find(row.Name).Match));
        Assert.All(HopCultivars.All, row => Assert.Same(row, HopCultivars.Find(row.Name).Match));
        Assert.All(YeastStyles.All, row => Assert.Same(row, YeastStyles.Find(row.Name).Match));
        Assert.All(StyleTable.All, row => Assert.Same(row, StyleTable.Find(row.Name).Match));
        Assert.All(FoodTable.All, row => Assert.Same(row, FoodTable.Find(row.Name).Match));
        Assert.All(FoodFamilies.All, row => Assert.Same(row, FoodFamilies.Find(row.Name).Match));
    }

    [Fact]
    public void Every_family_says_which_way_it_moves_pH_whether_it_is_low_in_acid_or_has_stones_and_is_read_as_it_says()
    {
        var rows = ReferenceData.Table("food-families.csv").Rows;
        Assert.Equal(rows.Select(row => row.Required("id")), FoodFamilies.All.Select(family => family.Id));
        Assert.All(rows, row =>
        {
            var family = FoodFamilies.Of(row.Required("id"));
            Assert.Equal(
                (row.Required("beerPh"), row.Required("isLowAcid") == "yes", row.Required("hasStones") == "yes"),
                (family.BeerPh.ToString().ToLowerInvariant(), family.IsLowAcid, family.HasStones));
        });
    }

    // FDA list of pH: fruit below beer's 4.3; dates 6.2, banana 4.5, coffee 4.85, milk 6.4, molasses 4.9, pumpkin 4.8 and more, above it.
    [Theory]
    [InlineData("berries", PhPull.Lowers, false)]
    [InlineData("tamarind", PhPull.Lowers, false)]
    [InlineData("dates", PhPull.Raises, true)]
    [InlineData("banana", PhPull.Raises, true)]
    [InlineData("brewed-coffee", PhPull.Raises, true)]
    [InlineData("ground-coffee", PhPull.Raises, true)]
    [InlineData("milk", PhPull.Raises, true)]
    [InlineData("molasses", PhPull.Raises, false)]
    [InlineData("cocoa-powder", PhPull.Raises, true)]
    [InlineData("vegetable", PhPull.Raises, true)]
    [InlineData("dried-fruit", PhPull.Either, false)]
    [InlineData("baked-cereal", PhPull.None, true)]
    [InlineData("sugar", PhPull.None, false)]
    public void A_family_moves_pH_the_way_its_own_pH_lies(string family, PhPull pull, bool isLow) =>
        Assert.Equal((pull, isLow), (FoodFamilies.Of(family).BeerPh, FoodFamilies.Of(family).IsLowAcid));

    [Theory]
    [InlineData("food-acids.csv")]
    [InlineData("food-minerals.csv")]
    [InlineData("food-ph.csv")]
    [InlineData("food-polyols.csv")]
    public void What_foods_hold_besides_is_of_foods_in_the_table_and_says_its_licence(string file) => Assert.All(ReferenceData.Table(file).Rows, row =>
    {
        Assert.Contains(FoodTable.All, food => food.Id == row.Required("food"));
        Assert.NotEmpty(row.Required("licence"));
    });

    [Fact]
    public void A_foods_pH_lies_between_its_ends() => Assert.All(FoodTable.All.Select(food => food.Composition.Ph).OfType<FoodPh>(), ph =>
        Assert.True(ph.Low <= ph.Likely && ph.Likely <= ph.High && ph.Low >= 2 && ph.High <= 8));
}
