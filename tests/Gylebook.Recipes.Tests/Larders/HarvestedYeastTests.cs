using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;

namespace Gylebook.Recipes.Tests.Larders;

/// <summary>A lot of yeast that was taken out of a fermenter: its file, and what a line takes from it.</summary>
public sealed class HarvestedYeastTests
{
    private const string Jar = """
        {
          "format": "gylebook-yeast/1", "id": "mine", "name": "Mine", "like": "English ale",
          "figures": { "form": "dry", "cells": "10 billion", "per": "1 g" },
          "lots": [ { "lot": "jar", "amount": "400 mL", "assay": {
            "form": "slurry", "cells": "1.2 billion", "per": "1 mL",
            "harvest": { "day": "2026-03-01", "from": "Bitter", "generation": 2, "mayContain": "sesame" } } } ]
        }
        """;

    [Fact]
    public void Its_file_keeps_where_it_comes_from_and_is_written_as_it_was_read()
    {
        YeastSheet sheet = Sheet(Jar);
        YeastHarvest harvest = sheet.Lots[0].Assay!.Harvest!;
        Assert.Equal((new DateOnly(2026, 3, 1), "Bitter", 2d, "sesame"), (harvest.Day, harvest.From, harvest.Generation, harvest.MayContain));
        Assert.Equal(harvest, Sheet(LarderFile.Write(sheet)).Lots[0].Assay!.Harvest);
    }

    [Theory]
    [InlineData("\"generation\": 2,", "\"generation\": 2.5,", "yeast.generation", "lots[0].assay.harvest.generation", "1 to 100")]
    [InlineData("\"generation\": 2,", "\"generation\": 0,", "number.range", "lots[0].assay.harvest.generation", "1 to 100")]
    [InlineData("2026-03-01", "1 March", "date.wrong", "lots[0].assay.harvest.day", "yyyy-MM-dd")]
    public void What_cannot_be_so_is_told_with_its_limit(string right, string wrong, string code, string where, string limit)
    {
        Finding finding = Assert.Single(LarderDraft.Of(Jar.Replace(right, wrong, StringComparison.Ordinal)).Findings);
        Assert.Equal((code, where, limit), (finding.Code, finding.Where, finding.Limit));
    }

    /// <remarks>A kind of yeast was not taken out of a fermenter: a jar of it was.</remarks>
    [Fact]
    public void A_sheet_has_no_harvest_of_its_own() =>
        Assert.Equal(("key.unknown", "figures.harvest"), Told(Jar.Replace("\"per\": \"1 g\" }", "\"per\": \"1 g\", \"harvest\": { \"day\": \"2026-03-01\" } }", StringComparison.Ordinal)));

    [Fact]
    public void Its_age_counts_from_the_day_it_was_taken_out_unless_the_line_says_one()
    {
        Larder larder = new([Sheet(Jar)]);
        Assert.Null(Line(larder).Age);
        Assert.Null(Line(larder.On(new(2026, 3, 1))).Age);
        Assert.Equal((30d, "30 d"), (Line(larder.On(new(2026, 3, 31))).Age!.Value.Value.Days, Line(larder.On(new(2026, 3, 31))).Age!.Value.Text));
        Assert.Equal(7, Line(larder.On(new(2026, 3, 31)), "\"age\": \"7 d\"").Age!.Value.Value.Days);
    }

    /// <remarks>The sheet's cells are of its dry yeast: 10 billion a gram would be ten times what slurry holds.</remarks>
    [Fact]
    public void It_is_slurry_with_its_own_cells_or_with_those_slurry_usually_has()
    {
        Larder larder = new([Sheet(Jar)]);
        Assert.Equal((IngredientForm.Slurry, 240d), (Line(larder).Form, Math.Round(Line(larder).Cells!.Value.Billions, 9)));
        Assert.Null(Line(new Larder([Sheet(Jar.Replace("\"cells\": \"1.2 billion\", \"per\": \"1 mL\",", "", StringComparison.Ordinal))])).Cells);

        List<Finding> findings = [];
        Assert.Equal(IngredientForm.Slurry, Line(larder, "\"form\": \"dry\"", findings).Form);
        Finding told = Assert.Single(findings);
        Assert.Equal(("yeast.formOfLot", Severity.Warning, "ingredients[0].form", "slurry"), (told.Code, told.Severity, told.Where, told.Limit));
    }

    [Fact]
    public void A_jar_older_than_the_rules_of_ageing_is_told()
    {
        List<Finding> findings = [];
        Line(new Larder([Sheet(Jar)]).On(new(2026, 9, 1)), findings: findings);
        Assert.Equal(("yeast.age", "142 d"), (Assert.Single(findings).Code, findings[0].Limit));
    }

    [Fact]
    public void A_lot_is_put_behind_the_others_letter_for_letter_once_and_taken_out_by_name()
    {
        FileDraft jar = LarderDraft.Of(Jar), bare = LarderDraft.Of("""{ "format": "gylebook-yeast/1", "id": "mine", "name": "Mine", "like": "English ale", "pack": "wrong" }""");
        FileDraft taken = bare.TakeLot(jar)!.After;
        Assert.Equal(("jar", "400 mL", "2026-03-01", "wrong"), (taken["lots[0].lot"], taken["lots[0].amount"], taken["lots[0].assay.harvest.day"], taken["pack"]));
        Assert.Null(taken.TakeLot(jar));
        Assert.Null(taken.RemoveLot("other"));
        Assert.True(taken.RemoveLot("JAR")!.After.Says(bare));
    }

    private static (string, string) Told(string text)
    {
        Finding finding = Assert.Single(LarderDraft.Of(text).Findings);
        return (finding.Code, finding.Where);
    }

    private static YeastSheet Sheet(string text) => (YeastSheet)LarderDraft.SheetOf(LarderDraft.Of(text))!;

    private static IngredientLine Line(Larder larder, string more = "\"portion\": null", List<Finding>? findings = null)
    {
        IngredientLine line = RecipeFile.Read($$"""
            {
              "format": "gylebook-recipe/1", "name": "x", "package": { "volume": "20 L", "in": "keg" }, "ferment": [],
              "ingredients": [ { "yeast": "mine", "lot": "jar", "amount": "200 mL", "at": "pitch", {{more}} } ]
            }
            """).Value!.Ingredients[0];
        List<Finding> found = findings ?? [];
        LineInHand hand = larder.Take(line, "ingredients[0]", found);
        Assert.True(findings is not null || found.Count == 0, string.Join('\n', found));
        return hand.Line;
    }
}
