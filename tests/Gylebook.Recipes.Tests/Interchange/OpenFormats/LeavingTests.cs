using System.Text;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Interchange.BeerJson;
using Gylebook.Recipes.Interchange.BeerXml;
using Gylebook.Recipes.Interchange.Csv;
using Gylebook.Recipes.Interchange.OpenFormats;
using Gylebook.Recipes.Interchange.OpenFormats.Arriving;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Tests.Interchange.OpenFormats;

/// <summary>What is written beside the recipe itself: figures, water, notes, tables.</summary>
public sealed class LeavingTests
{
    private static readonly Recipe Hedgerow = RecipeFile.Read(Samples.Text("samples", "recipes", "hedgerow-brown.json")).Value!;

    private static readonly BrewedFigures Figures = new()
    {
        Cast = VolumeAt20C.FromLitres(21.2),
        PreBoil = VolumeAt20C.FromLitres(26.1),
        Strike = VolumeAt20C.FromLitres(24.1),
        OriginalGravity = SpecificGravity.FromRatio(1.0588),
        FinalGravity = SpecificGravity.FromRatio(1.0134),
        Alcohol = Fraction.FromPercent(6.3),
        Bitterness = Bitterness.FromIbu(28),
        Colour = BeerColour.FromEbc(25),
    };

    [Fact]
    public void Figures_that_are_known_are_stated_and_litres_are_those_of_the_fermenter()
    {
        string json = BeerJsonFile.Write(Hedgerow, Larder.Empty, Figures, "A. Brewer").Text;
        Assert.Empty(BeerJsonSchema.Objections(json));
        foreach (string stated in new[]
        {
            "\"author\": \"A. Brewer\"", "\"batch_size\": { \"unit\": \"l\", \"value\": 21.2 }", "\"original_gravity\": { \"unit\": \"sg\", \"value\": 1.0588 }",
            "\"final_gravity\": { \"unit\": \"sg\", \"value\": 1.0134 }", "\"alcohol_by_volume\": { \"unit\": \"%\", \"value\": 6.3 }", "\"pre_boil_size\": { \"unit\": \"l\", \"value\": 26.1 }",
            "\"packaged_volume\": { \"unit\": \"l\", \"value\": 20 }",
        })
        {
            Assert.Contains(stated, json, StringComparison.Ordinal);
        }

        string xml = BeerXmlFile.Write(Hedgerow, Larder.Empty, Figures).Text;
        Assert.Contains("<BATCH_SIZE>21.2</BATCH_SIZE>", xml, StringComparison.Ordinal);
        Assert.Contains("<INFUSE_AMOUNT>24.1</INFUSE_AMOUNT>", xml, StringComparison.Ordinal);
    }

    [Fact]
    public void The_notes_say_what_the_file_cannot_and_come_back_without_it()
    {
        (string text, IReadOnlyList<Travel> travels) = BeerJsonFile.Write(Hedgerow, Larder.Empty, Figures);
        Assert.Contains("-- What this file cannot carry --", text, StringComparison.Ordinal);
        Assert.Contains(travels, travel => travel.Kind == TravelKind.Left && travel.Words.StartsWith("Buckwheat honey: what it is made of", StringComparison.Ordinal));
        Arrival arrival = BeerJsonFile.Read(Encoding.UTF8.GetBytes(text));
        Assert.Equal(Hedgerow.Notes, RecipeFile.Read(arrival.Files.Single(file => file.Form == RecipeFile.Form).Text).Value!.Notes);
    }

    [Fact]
    public void A_water_plan_leaves_with_its_waters_and_comes_back_as_a_plan()
    {
        WaterPlan plan = WaterFile.Read(Samples.Text("samples", "water", "soft-blend.json")).Value!;
        (string text, IReadOnlyList<Travel> travels) = BeerJsonFile.Write(Hedgerow, Larder.Empty, Figures, water: plan);
        Assert.Empty(BeerJsonSchema.Objections(text));
        Assert.Contains(travels, travel => travel is { Kind: TravelKind.Left, Where: "water" });
        foreach (byte[] bytes in new[] { Encoding.UTF8.GetBytes(text), Encoding.UTF8.GetBytes(BeerXmlFile.Write(Hedgerow, Larder.Empty, Figures, water: plan).Text) })
        {
            Arrival arrival = Gylebook.Recipes.Interchange.Arrivals.OpenFile.Read(bytes)!;
            WaterPlan back = WaterFile.Read(arrival.Files.Single(file => file.Form == WaterFile.Form).Text).Value!;
            Assert.Equal(plan.Sources.Select(source => source.Name), back.Sources.Select(source => source.Name));
            for (int i = 0; i < plan.Sources.Count; i++)
            {
                // Written to a hundredth of a milligram; shares by litres of four digits.
                Assert.Equal(plan.Sources[i].Report?.ToProfile().Calcium ?? 0, back.Sources[i].Report!.ToProfile().Calcium, 0.005);
                Assert.Equal(plan.Sources[i].Share.Percent, back.Sources[i].Share.Percent, 0.05);
            }
        }
    }

    [Fact]
    public void A_table_has_a_row_for_each_line_and_no_cell_is_a_formula()
    {
        Recipe recipe = Hedgerow with { Ingredients = [Hedgerow.Ingredients[0] with { As = "=cmd|' /C calc'!A0" }, Hedgerow.Ingredients[1] with { As = "Munich, \"dark\"" }] };
        (string text, _) = RecipeCsv.Write(recipe, Larder.Empty);
        string[] lines = text.Split("\r\n");
        Assert.Equal(RecipeCsv.Head, lines[0]);
        Assert.Equal("ingredient,malt,pale ale malt,'=cmd|' /C calc'!A0,3.6,kg,mash,,,,,3.6 kg", lines[2]);
        Assert.Equal("ingredient,malt,munich malt,\"Munich, \"\"dark\"\"\",0.5,kg,mash,,,,,500 g", lines[3]);
    }
}
