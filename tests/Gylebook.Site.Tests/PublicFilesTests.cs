using System.Text;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;
using Gylebook.Site.Folder;
using Gylebook.Site.Publications;

namespace Gylebook.Site.Tests;

/// <summary>What a brewer keeps is in no byte of what is given out.</summary>
public sealed class PublicFilesTests
{
    private const string Secret = "zq-secret-";

    [Fact]
    public void No_note_no_price_no_date_no_other_lot_and_no_vessel_goes_out()
    {
        Publication publication = SecretOne();
        (IReadOnlyList<SiteFile> files, IReadOnlyList<Recipes.Finding> findings) = new SiteFolder("Lantern Shed", null).Pages([publication]);
        Assert.Empty(findings);
        Assert.All(files, file => Assert.DoesNotContain(Secret, Encoding.UTF8.GetString(file.Bytes.Span), StringComparison.OrdinalIgnoreCase));
        Assert.All(files, file => Assert.DoesNotContain("777.77", Encoding.UTF8.GetString(file.Bytes.Span), StringComparison.Ordinal));
    }

    [Fact]
    public void What_the_numbers_rest_on_does_go_out()
    {
        Publication publication = SecretOne();
        string sheet = Assert.Single(publication.Files.Larder);
        Assert.Contains("sack one", sheet, StringComparison.Ordinal);
        Assert.Contains("6.1 %", sheet, StringComparison.Ordinal);
        Assert.Equal(28, RecipeFile.Read(publication.Files.Recipe).Value!.Ingredients.Single(line => line.Kind == IngredientKind.Hop).Amount.Mass!.Value.Value.Kilograms * 1000, 12);
    }

    [Fact]
    public void A_publication_is_read_as_it_was_written()
    {
        Publication publication = SecretOne() with
        {
            Brewed = Given.Day,
            Errata = [new(Given.Day, 3, "a \"word\"")],
            Measured = [new("Gravity at cast", "SG", 3, 1.04, null, 1.0415)],
        };
        Publication read = PublicationFile.Read(PublicationFile.Write(publication))!;
        Assert.Equal(publication.Errata, read.Errata);
        Assert.Equal(publication.Measured, read.Measured);
        Assert.Equal(publication.Files.Larder, read.Files.Larder);
        Assert.Equal(
            publication with { Errata = [], Measured = [], Files = publication.Files with { Larder = [] } },
            read with { Errata = [], Measured = [], Files = read.Files with { Larder = [] } });
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("{\"format\":\"gylebook-publication/2\"}")]
    [InlineData("{\"format\":\"gylebook-publication/1\"}")]
    [InlineData("{\"format\":\"gylebook-publication/1\",\"name\":3}")]
    public void What_is_none_is_none(string text) => Assert.Null(PublicationFile.Read(text));

    /// <remarks>Allergens of the beer the yeast comes from are the reader's business; what that beer was called is not.</remarks>
    [Fact]
    public void Of_harvested_yeast_its_allergens_go_out_and_of_a_food_no_trial()
    {
        YeastSheet jar = new()
        {
            Id = "jar", Name = "Jar", Like = "English ale",
            Lots = [new() { Name = "one", Assay = new() { Form = IngredientForm.Slurry, Harvest = new() { Day = Given.Day, From = Secret + "gyle", Generation = 7, MayContain = "sesame" } } }],
        };
        Recipes.Foods.FoodSheet flour = FoodFile.Read(Given.Text("samples/recipes/foods/pumpkin-seed-flour.json")).Value! with
        {
            Trials = [new() { Day = Given.Day, Beer = Secret + "beer", Glasses = [new() { Dose = new(3, false, "3 g/L"), Notes = Secret + "tasted" }] }],
        };
        Publication publication = Given.Of(
            "plain-bitter",
            recipe => recipe with
            {
                Ingredients =
                [
                    .. recipe.Ingredients.Where(line => line.Kind != IngredientKind.Yeast),
                    recipe.Ingredients.First(line => line.Kind == IngredientKind.Yeast) with { Of = "jar", Lot = "one", Form = null, Cells = null, Amount = new(null, new Entered<VolumeAt20C>(VolumeAt20C.FromLitres(0.2), "200 mL")) },
                    recipe.Ingredients.First(line => line.Kind == IngredientKind.Malt) with { Kind = IngredientKind.Food, Of = flour.Id, Colour = null, Share = null, Amount = new(new Entered<Mass>(Mass.FromKilograms(0.1), "100 g"), null) },
                ],
            },
            new Larder([jar, flour]));
        string files = string.Join('\n', publication.Files.Larder);
        Assert.Contains("sesame", LarderFile.Yeast.Read(publication.Files.Larder.Single(file => file.Contains("gylebook-yeast", StringComparison.Ordinal))).Value!.Lots[0].Assay!.Harvest!.MayContain, StringComparison.Ordinal);
        Assert.Contains(flour.Id, files, StringComparison.Ordinal);
        Assert.DoesNotContain(Secret, files, StringComparison.Ordinal);
        Assert.DoesNotContain("generation", files, StringComparison.Ordinal);
    }

    /// <summary>A bitter in which everything that is kept says so.</summary>
    private static Publication SecretOne()
    {
        Lot<HopFigures> Lot(string name, string alpha) => new()
        {
            Name = name, Price = new(777.77m, "EUR", "777.77 EUR"), Bought = new(2026, 7, 7), Opened = new(2026, 7, 8), BestBefore = new(2027, 7, 7),
            Amount = new(new Entered<Mass>(Mass.FromKilograms(0.77777), "777.77 g"), null),
            Assay = new HopFigures { Alpha = new Entered<Fraction>(Fraction.FromPercent(double.Parse(alpha, System.Globalization.CultureInfo.InvariantCulture)), $"{alpha} %") },
        };
        HopSheet used = new() { Id = "shed-hop", Name = "Shed hop", Like = "Fuggle", Notes = Secret + "hop", Lots = [Lot("sack one", "6.1"), Lot(Secret + "sack", "9.9")] };
        HopSheet other = new() { Id = Secret + "other", Name = Secret + "other", Like = "Fuggle" };
        return Given.Of(
            "plain-bitter",
            recipe => recipe with
            {
                Notes = Secret + "notes",
                Ingredients = [.. recipe.Ingredients.Where(line => line.Kind != IngredientKind.Hop), recipe.Ingredients.First(line => line.Kind == IngredientKind.Hop) with
                {
                    Of = "shed-hop", Lot = "sack one", Alpha = null, Amount = new(new Entered<Mass>(Mass.FromKilograms(0.028), "28 g"), null),
                }],
            },
            new Larder([used, other]),
            Given.Text("samples/water/soft-blend.json").Replace("\"name\"", $"\"notes\": \"{Secret}water\", \"name\"", StringComparison.Ordinal),
            kit => kit with { Vessels = [new Vessel(Secret + "vessel", VesselKind.Keg, null)] });
    }
}
