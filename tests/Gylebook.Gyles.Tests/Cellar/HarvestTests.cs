using Gylebook.Gyles.Cellar;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Foods.Words;

namespace Gylebook.Gyles.Tests.Cellar;

/// <summary>Yeast that is taken out of a fermenter: what is known of it before, and the jar as it was typed.</summary>
public sealed class HarvestTests
{
    private static readonly YeastSheet Sheet = new() { Id = "mine", Name = "Mine", Like = "English ale", Lots = [new() { Name = "older" }] };
    private static readonly YeastHarvest From = new() { Day = new(2026, 3, 14), From = "Bitter", Generation = 1, MayContain = "barley" };

    [Fact]
    public void A_plain_beer_gives_first_generation_yeast_with_traces_of_its_malt()
    {
        HarvestOutlook outlook = Outlook("plain-bitter");
        HarvestableYeast yeast = Assert.Single(outlook.Yeasts);
        Assert.Equal(("english-ale", null, 1), (yeast.Like, yeast.SheetId, yeast.Generation));
        Assert.Equal("barley", outlook.MayContain);
        Assert.Contains(outlook.Cautions, caution => caution.Contains("A closed jar bursts", StringComparison.Ordinal));
        Assert.DoesNotContain(outlook.Cautions, caution => caution.StartsWith("Better not", StringComparison.Ordinal));
    }

    /// <remarks>The words on the jar are read again as traces of the next beer: none may be lost on the way.</remarks>
    [Theory]
    [InlineData("plain-bitter")]
    [InlineData("hedgerow-brown")]
    [InlineData("apricot-cardamom-wheat")]
    [InlineData("chestnut-mild")]
    public void What_the_jar_says_is_read_again_as_the_same_allergens(string recipe)
    {
        string told = Outlook(recipe).MayContain!;
        AllergenStatement eu = Allergens.State(AllergenList.EuFourteen, [.. IngredientWords.InTraces(told)]), us = Allergens.State(AllergenList.UsNine, [.. IngredientWords.InTraces(told)]);
        Assert.Empty(eu.Contains.Concat(us.Contains));
        Assert.Equal(told.Split(", "), eu.MayContain.Concat(us.MayContain).Select(name => name.ToLowerInvariant().Replace(" (gluten)", "", StringComparison.Ordinal)).Distinct());
    }

    [Fact]
    public void The_jar_is_a_sheet_with_one_lot_that_says_where_it_comes_from()
    {
        (string? text, IReadOnlyList<Finding> findings) = new TypedHarvest("400 mL", From.Day) { Cells = "1,2 billion/mL" }.Written(Sheet, "jar", From);
        Assert.Empty(findings);
        YeastSheet jar = (YeastSheet)LarderDraft.SheetOf(LarderDraft.Of(text!))!;
        Recipes.Lots.Lot<YeastFigures> lot = Assert.Single(jar.Lots);
        Assert.Equal(("mine", "English ale", "jar", "400 mL"), (jar.Id, jar.Like, lot.Name, lot.Amount!.Value.Text));
        Assert.Equal(From, lot.Assay!.Harvest);
        Assert.Equal((Recipes.Ingredients.IngredientForm.Slurry, 1.2, 0.001), (lot.Assay.Form, lot.Assay.Cells!.Value.Billions, lot.Assay.Per!.Value.Volume!.Value.Value.Litres));

        // Nobody has counted: the slurry's usual cells stand in, and none are written.
        (text, _) = new TypedHarvest("400 g", From.Day).Written(Sheet, "jar", From);
        Assert.Null(((YeastSheet)LarderDraft.SheetOf(LarderDraft.Of(text!))!).Lots[0].Assay!.Cells);
    }

    [Theory]
    [InlineData("", "", "amount", "a volume or a mass")]
    [InlineData("0 mL", "", "amount", "above 0")]
    [InlineData("much", "", "amount", null)]
    [InlineData("400 mL", "0", "cells", "above 0 and at most 10 billion/mL")]
    [InlineData("400 mL", "12 billion/mL", "cells", "above 0 and at most 10 billion/mL")]
    [InlineData("400 mL", "many", "cells", "above 0 and at most 10 billion/mL")]
    public void What_is_wrong_with_a_jar_names_the_field_and_its_limit(string amount, string cells, string field, string? limit)
    {
        (string? text, IReadOnlyList<Finding> findings) = new TypedHarvest(amount, From.Day) { Cells = cells }.Written(Sheet, "jar", From);
        Assert.Null(text);
        Finding finding = Assert.Single(findings);
        Assert.Equal(field, finding.Where);
        Assert.True(limit is null || finding.Limit == limit, finding.Limit);
    }

    private static HarvestOutlook Outlook(string recipe) => HarvestOutlook.Of(BrewStepsTests.Frozen(recipe, "lantern-shed").Plan!)!;
}
