using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;

namespace Gylebook.Recipes.Tests.Larders;

/// <summary>What a line takes from the larder.</summary>
public sealed class LarderTests
{
    private static readonly Larder Kept = new(Samples.Files("samples", "recipes", "lots", "larder").Select(Sheet));

    [Theory]
    [InlineData("north-field-pale")]
    [InlineData("North Field pale")]
    [InlineData("north field PALE")]
    public void A_sheet_is_found_by_id_or_name(string of) => Assert.Equal("north-field-pale", Taken(Line("malt", of)).Sheet?.Id);

    [Theory]
    [InlineData("\"0 g\"", "sheet.pack")]
    [InlineData("\"1 L\"", "quantity.wrong")]
    public void A_pack_of_nothing_or_of_what_is_not_weighed_is_refused(string pack, string code)
    {
        string text = $$"""{ "format": "gylebook-hop/1", "id": "mine", "name": "Mine", "like": "Golding", "pack": {{pack}} }""";
        Finding finding = Assert.Single(LarderDraft.Of(text).Findings, finding => finding.Severity == Severity.Error);
        Assert.Equal((code, "pack"), (finding.Code, finding.Where));
    }

    [Fact]
    public void A_sheet_of_another_kind_is_not_meant() => Assert.Null(Taken(Line("hop", "north-field-pale")).Sheet);

    [Fact]
    public void The_lot_goes_before_the_sheet_and_the_line_before_both()
    {
        Assert.Equal((5.2, AlphaFrom.Pack), Alpha(Line("hop", "hill-golding")));
        Assert.Equal((5.8, AlphaFrom.Assay), Alpha(Line("hop", "hill-golding", "crop 2026")));
        Assert.Equal((6.1, AlphaFrom.Pack), Alpha(Line("hop", "hill-golding", "crop 2026", "\"alpha\": \"6.1 %\"")));

        static (double, AlphaFrom) Alpha(IngredientLine line) => (Math.Round(Taken(line).Line.Alpha!.Value.Value.Percent, 9), Taken(line).Alpha);
    }

    [Fact]
    public void A_malt_takes_of_its_lot_what_was_assayed_and_the_rest_of_its_sheet()
    {
        OwnMalt own = Taken(Line("malt", "north-field-pale", "2611-04")).Malt!;
        Malt malt = Malts.Find("pale ale malt").Match!.As(own, "North Field pale");
        Assert.Equal(0.80, malt.ExtractFineDry.Ratio, 1e-12);
        Assert.Equal(6.2, malt.Colour.Ebc, 1e-9);
        Assert.Equal(56, malt.DiastaticPower, 1e-9);
        Assert.Equal("pale-ale-malt", malt.Id);
    }

    [Fact]
    public void Cells_of_a_yeast_go_with_its_weight() =>
        Assert.Equal(115, Taken(Line("yeast", "harbour-ale", "H118", "\"at\": \"pitch\"") with { Amount = new Amount(Typed.Kilograms(0.0115), null) }).Line.Cells!.Value.Billions, 1e-9);

    /// <summary>A hop's age is the line's to say: a harvest in the sheet makes nothing old.</summary>
    [Fact]
    public void A_hop_without_an_age_on_its_line_is_as_assayed()
    {
        Assert.Null(Taken(Line("hop", "hill-golding", "crop 2026")).Line.Storage);
        HopStorage kept = Taken(Line("hop", "hill-golding", "crop 2026", "\"age\": \"200 d\"")).Line.Storage!;
        Assert.Equal((20d, 35d), (kept.Temperature.Value.Celsius, Math.Round(kept.Lost!.Value.Value.Percent, 9)));
    }

    [Theory]
    [InlineData("north-field-pale", "2611-05", "lot.unknown", "2611-04")]
    [InlineData("pale ale malt", "2611-04", "lot.noSheet", "a sheet")]
    public void A_lot_there_is_not_is_told(string of, string lot, string code, string limit)
    {
        List<Finding> findings = [];
        Kept.Take(Line("malt", of, lot), "ingredients[3]", findings);
        Finding told = Assert.Single(findings);
        Assert.Equal((code, "ingredients[3].lot", lot, limit), (told.Code, told.Where, told.Value, told.Limit));
    }

    private static LineInHand Taken(IngredientLine line)
    {
        List<Finding> findings = [];
        LineInHand hand = Kept.Take(line, "", findings);
        Assert.Empty(findings);
        return hand;
    }

    private static IngredientLine Line(string kind, string of, string? lot = null, string more = "\"at\": \"mash\"")
    {
        more = more.Contains("\"at\"", StringComparison.Ordinal) ? more : more + ", \"at\": \"mash\"";
        string named = lot is null ? "" : $"\"lot\": \"{lot}\", ";
        return RecipeFile.Read($$"""
            {
              "format": "gylebook-recipe/1", "name": "x", "package": { "volume": "20 L", "in": "keg" }, "ferment": [],
              "ingredients": [ { "{{kind}}": "{{of}}", {{named}}"amount": "100 g", {{more}} } ]
            }
            """).Value!.Ingredients[0];
    }

    private static LarderSheet Sheet(string path)
    {
        using FileStream stream = File.OpenRead(Samples.Folder(path));
        return LarderFile.Read(stream).Value!;
    }
}
