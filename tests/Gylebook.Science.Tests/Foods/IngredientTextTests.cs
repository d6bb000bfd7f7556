using Gylebook.Science.Data;
using Gylebook.Science.Foods.Words;
using static Gylebook.Science.Foods.Words.IngredientKind;

namespace Gylebook.Science.Tests.Foods;

public class IngredientTextTests
{
    internal static IngredientLexicon Lexicon { get; } =
        IngredientLexicon.Of(CsvTable.Parse("ingredient-words.csv", File.ReadAllText(CompositionRow.RepositoryFile("data/ingredient-words.csv"))));

    internal static IReadOnlyList<IngredientHit> Read(string text) => IngredientText.Read(text, Lexicon);

    [Theory]
    // Regulation (EC) 1333/2008: sorbates E200 to E203, benzoates E210 to E213, sulphites E220 to E228, E235, E242
    [InlineData("preservative (E202)", Sorbate)]
    [InlineData("preservative: E 200", Sorbate)]
    [InlineData("E-203", Sorbate)]
    [InlineData("INS 202", Sorbate)]
    [InlineData("Potassium Sorbate", Sorbate)]
    [InlineData("e211", Benzoate)]
    [InlineData("sodium benzoate", Benzoate)]
    [InlineData("E228", Sulphite)]
    [InlineData("sulfur dioxide", Sulphite)]
    [InlineData("sulphur dioxide", Sulphite)]
    [InlineData("sodium metabisulfite", Sulphite)]
    [InlineData("sulphites", Sulphite)]
    [InlineData("E235", Natamycin)]
    [InlineData("dimethyl dicarbonate", DimethylDicarbonate)]
    [InlineData("E242", DimethylDicarbonate)]
    [InlineData("maltitol syrup", SugarAlcohol)]
    [InlineData("sweetener: erythritol", SugarAlcohol)]
    [InlineData("high-fructose corn syrup", GlucoseSyrup)]
    [InlineData("Glucose-Fructose Syrup", GlucoseSyrup)]
    [InlineData("maltodextrin", GlucoseSyrup)]
    [InlineData("hazelnuts", TreeNut)]
    [InlineData("Brazil nuts", TreeNut)]
    [InlineData("almond milk", TreeNut)]
    [InlineData("pine nuts", TreeNutUsOnly)]
    [InlineData("desiccated coconut", NutNoLongerUs)]
    [InlineData("coconut milk", NutNoLongerUs)]
    [InlineData("chestnut purée", NutNoLongerUs)]
    [InlineData("groundnuts", Peanut)]
    [InlineData("peanut butter", Peanut)]
    [InlineData("spelt", Wheat)]
    [InlineData("whole-wheat flour", Wheat)]
    [InlineData("cookies", Wheat)]
    [InlineData("malt extract", Barley)]
    [InlineData("rye malt", Rye)]
    [InlineData("oats", Oats)]
    [InlineData("soya lecithin", Soy)]
    [InlineData("tahini", Sesame)]
    [InlineData("celeriac", Celery)]
    [InlineData("lupin flour", Lupin)]
    [InlineData("oysters", Mollusc)]
    [InlineData("isinglass", Isinglass)]
    [InlineData("crème fraîche (cream)", Milk)]
    [InlineData("whey powder", Milk)]
    [InlineData("anchovies", Fish)]
    [InlineData("cocoa nibs", Caffeine)]
    [InlineData("guaraná", Caffeine)]
    [InlineData("ground cassia", Cinnamon)]
    [InlineData("Ceylon cinnamon", CeylonCinnamon)]
    [InlineData("nutmeg", Nutmeg)]
    [InlineData("tonka beans", TonkaBean)]
    [InlineData("licorice root", Liquorice)]
    [InlineData("liquorice extract", Liquorice)]
    [InlineData("rum", Alcohol)]
    [InlineData("cider vinegar", Vinegar)]
    [InlineData("cage-free range egg", Egg)]
    public void A_word_brings_one_thing(string text, IngredientKind kind) =>
        Assert.Equal(kind, Assert.Single(Read(text)).Kind);

    [Theory]
    [InlineData("butternut squash")]
    [InlineData("buckwheat flour")]
    [InlineData("lactic acid")]
    [InlineData("calcium lactate, E270")]
    [InlineData("lactobacillus")]
    [InlineData("cocoa butter")]
    [InlineData("eggplant")]
    [InlineData("doughnut peach")]
    [InlineData("water chestnuts")]
    [InlineData("tiger nuts")]
    [InlineData("cream of tartar")]
    [InlineData("butter beans")]
    [InlineData("caramel colour (E150d)")]
    [InlineData("oyster mushrooms")]
    [InlineData("crab apples")]
    [InlineData("sunflower lecithin")]
    [InlineData("rooibos tea")]
    [InlineData("unsulphured apricots")]
    [InlineData("vitamin E 200 mg")]
    [InlineData("sorbitan monostearate")]
    [InlineData("gluten-free, lactose free, nut-free")]
    [InlineData("rice, maize, sugar, salt, water, apples")]
    [InlineData("maltose")]
    [InlineData("champagne yeast, nutritional yeast")]
    [InlineData("")]
    public void A_word_that_only_looks_like_it_brings_nothing(string text) => Assert.Empty(Read(text));

    [Fact]
    public void A_word_can_bring_two_things()
    {
        Assert.Equal([Lactose, Milk], Read("lactose").Select(hit => hit.Kind));
        Assert.Equal([Milk, Caffeine], Read("milk chocolate").Select(hit => hit.Kind));
        Assert.Equal([RawEgg, Egg], Read("raw eggs").Select(hit => hit.Kind));
        Assert.Equal([Soy, Wheat], Read("soy sauce").Select(hit => hit.Kind));
    }

    [Fact]
    public void Positions_point_into_the_text_as_given()
    {
        const string text = "Sugar, Crème, wheat flour (E 202)";
        Assert.All(
            Read(text),
            hit => Assert.Equal(hit.Kind == Sorbate ? 'E' : 'w', text[hit.Position]));
        Assert.Equal([text.IndexOf("wheat", StringComparison.Ordinal), text.IndexOf("E 202", StringComparison.Ordinal)],
            Read(text).Select(hit => hit.Position));
    }

    [Fact]
    public void A_phrase_does_not_reach_across_a_comma() =>
        Assert.Equal([Caffeine, Milk], Read("cocoa, butter").Select(hit => hit.Kind));

    [Fact]
    public void May_contain_lasts_to_the_end_of_its_sentence()
    {
        IReadOnlyList<IngredientHit> hits = Read("Oats, sugar. May contain traces of nuts, sesame. Contains milk.");
        Assert.Equal([Oats, TreeNut, Sesame, Milk], hits.Select(hit => hit.Kind));
        Assert.Equal([false, true, true, false], hits.Select(hit => hit.MayContainOnly));
        Assert.True(Assert.Single(Read("Made in a facility that also handles peanuts")).MayContainOnly);
        Assert.False(Read("salt (trace), walnuts").Single().MayContainOnly);
    }

    [Fact]
    public void Lactose_free_milk_is_milk_without_lactose() => Assert.Equal([Milk], Read("lactose-free milk").Select(hit => hit.Kind));

    [Fact]
    public void Every_phrase_of_the_word_list_finds_itself() => Assert.All(
        File.ReadLines(CompositionRow.RepositoryFile("data/ingredient-words.csv"))
            .Where(line => line.Length > 0 && line[0] != '#' && line != "phrase,kinds")
            .Select(line => line.Split(',')),
        cells => Assert.Equal(
            cells[1] == "-" ? [] : cells[1].Split(';'),
            Read("x, " + cells[0].ToUpperInvariant() + ", y").Select(hit => hit.Kind.ToString())));

    [Theory]
    [InlineData("milk")]
    [InlineData("milk,NoSuchKind")]
    [InlineData("milk,7777")]
    [InlineData(",Milk")]
    public void A_bad_line_of_the_word_list_is_refused(string line) =>
        Assert.Throws<InvalidDataException>(() => IngredientLexicon.Of(WordList(line)));

    [Fact]
    public void A_phrase_may_stand_once_however_it_is_spelt() =>
        Assert.Equal(
            "words.csv, line 3, column phrase: repeats 'sulphite'.",
            Assert.Throws<InvalidDataException>(() => IngredientLexicon.Of(WordList("sulfite,Sulphite", "sulphites,Sulphite"))).Message);

    private static CsvTable WordList(params string[] lines) => CsvTable.Parse("words.csv", string.Join('\n', ["phrase,kinds", .. lines]));
}
