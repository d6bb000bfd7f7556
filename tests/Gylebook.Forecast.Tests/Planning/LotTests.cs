using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Tests.Report;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;
using Gylebook.Science.Liquids;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Planning;

/// <summary>What the figures of a lot move, how sure they are, and what the lots cost.</summary>
public sealed class LotTests
{
    private static readonly Recipe Sample = RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/lots/larder-bitter.json"))).Value!;

    private static readonly Larder Kept = new(Directory.GetFiles(RepositoryFile.PathOf("samples/recipes/lots/larder"), "*.json").Select(Sheet));

    /// <summary>
    /// The extract of a malt is defined by its Congress wort, E = P·(800 + M)/(100 − P) (EBC Analytica 4.5.1): liquor and moisture
    /// as they are, P/(100 − P) goes with E. Two points off 81.5 leave 79.5/81.5 of it in the wort of a mash.
    /// </summary>
    [Fact]
    public void Two_points_less_extract_thin_the_wort_by_the_definition_of_extract()
    {
        double usual = PlatoOf(Larder.Empty, Typed.Malt("pale ale malt", 4));
        double poor = PlatoOf(Malt(new MaltFigures { Extract = Typed.Share(0.795) }), Typed.Malt("own", 4));
        double ratio = 79.5 / 81.5 * usual / (100 - usual);
        Assert.Equal(100 * ratio / (1 + ratio), poor, 0.01);
        Assert.InRange(usual - poor, 0.2, 0.4);
    }

    /// <summary>Both published models are a share of the alpha acid: so is their beer's bitterness.</summary>
    [Fact]
    public void Bitterness_goes_with_the_alpha_acid_of_the_lot()
    {
        double pack = Bitterness(null), lot = Bitterness("crop 2026");
        Assert.Equal(5.8 / 5.2, lot / pack, 1e-9);

        static double Bitterness(string? lot) =>
            Forecast(Bitters.With(Typed.Line(IngredientKind.Hop, "hill-golding", 0.04, AdditionPoint.Boil, 60) with { Lot = lot }), Kept).Number("bitterness");
    }

    /// <summary>Widths of data/priors.csv: a base malt's extract 1.2 % of dry matter between lots, 0.5 with its certificate; colour 0.15 and 0.09; power 0.25 and 0.08.</summary>
    [Theory]
    [InlineData("malt.pale-ale-malt.extract", "malt.own.extract", 0.012, 0.005)]
    [InlineData("malt.pale-ale-malt.colour", "malt.own.colour", 0.15, 0.09)]
    [InlineData("malt.pale-ale-malt.diastaticPower", "malt.own.diastaticPower", 0.25, 0.08)]
    public void A_certificate_narrows_what_it_states(string table, string own, double between, double known)
    {
        MaltFigures all = new() { Extract = Typed.Share(0.81), Colour = new(MaltColour.FromEbc(6), "6 EBC"), DiastaticPower = new DiastaticPower(60, "60 Lintner") };
        Assert.Equal(between, WidthOf(Larder.Empty, "pale ale malt", table));
        Assert.Equal(known, WidthOf(Malt(all), "own", own));
        // What the certificate does not say is as wide as the table's.
        Assert.Equal(between, WidthOf(Malt(new MaltFigures { Moisture = Typed.Share(0.04) }), "own", own));
    }

    /// <summary>A cultivar's range 0.15, the figure on a sealed pack 0.08, an assay of the lot 0.05 (natural logarithms, data/priors.csv).</summary>
    [Fact]
    public void An_assay_of_the_lot_is_surer_than_the_pack_and_the_pack_than_the_cultivar()
    {
        Assert.Equal(0.15, AlphaWidth(Hop("Golding", null), "hop.golding.alpha"));
        Assert.Equal(0.08, AlphaWidth(Hop("hill-golding", null), "hop.hill-golding.alpha"));
        Assert.Equal(0.05, AlphaWidth(Hop("hill-golding", "crop 2026"), "hop.hill-golding-crop 2026.alpha"));

        static IngredientLine Hop(string of, string? lot) => Typed.Line(IngredientKind.Hop, of, 0.04, AdditionPoint.Boil, 60) with { Lot = lot };

        static double AlphaWidth(IngredientLine hop, string id) => SpreadOf(BrewPlanner.Plan(Bitters.With(hop), Bitters.AtTheSea, Kept), id);
    }

    /// <summary>4/25 of 31.50, 5/250 of 3.00, 60/100 of 4.20, 11.5/23 of 7.80: 5.04 + 0.06 + 2.52 + 3.90 = 11.52 EUR for 20 L.</summary>
    [Fact]
    public void The_cost_is_each_lines_share_of_its_lot()
    {
        BrewForecast told = Forecast(Sample, Kept);
        Band cost = told.Headline.Single(h => h.Name == "costPerLitre").Band!;
        Assert.Equal("EUR/L", cost.Unit);
        Assert.Equal(0.576, cost.Likely, 1e-6);
        Assert.DoesNotContain(told.Findings, f => f.Code.StartsWith("cost.", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_price_there_is_no_cost_and_a_note_says_of_what()
    {
        BrewForecast told = Forecast(Sample with { Ingredients = [.. Sample.Ingredients.Take(4), Typed.Yeast("English ale")] }, Kept);
        Assert.Null(told.Headline.Single(h => h.Name == "costPerLitre").Band);
        Assert.Equal("English ale", Assert.Single(told.Findings, f => f.Code == "cost.noPrice").Value);
    }

    [Fact]
    public void Two_currencies_make_no_sum()
    {
        Larder mixed = new([.. Kept.Sheets.Select(sheet => sheet is YeastSheet yeast ? yeast with { Lots = [.. yeast.Lots.Select(lot => lot with { Price = new Price(9, "USD", "9 USD") })] } : sheet)]);
        BrewForecast told = Forecast(Sample, mixed);
        Assert.Null(told.Headline.Single(h => h.Name == "costPerLitre").Band);
        Assert.Equal("EUR, USD", Assert.Single(told.Findings, f => f.Code == "cost.currencies").Value);
    }

    [Fact]
    public void Nobody_who_names_no_lot_is_told_of_cost()
    {
        BrewForecast told = Forecast(Bitters.With(), Kept);
        Assert.Null(told.Headline.Single(h => h.Name == "costPerLitre").Band);
        Assert.DoesNotContain(told.Findings, f => f.Code.StartsWith("cost.", StringComparison.Ordinal));
    }

    [Fact]
    public void Priming_sugar_that_no_line_names_is_said_to_be_left_out()
    {
        BrewForecast told = Forecast(Sample with { Package = Sample.Package with { In = "bottle" } }, Kept);
        Assert.Equal("priming sugar", Assert.Single(told.Findings, f => f.Code == "cost.without").Value);
    }

    [Fact]
    public void An_unknown_lot_stops_the_brew_and_names_the_nearest()
    {
        BrewForecast told = Forecaster.Forecast(
            Sample with { Ingredients = [Sample.Ingredients[0] with { Lot = "2611-40" }, .. Sample.Ingredients.Skip(1)] }, BuiltInKit.LanternShed, Kept, "test");
        Finding finding = Assert.Single(told.Findings, f => f.Severity == Severity.Error);
        Assert.Equal(("lot.unknown", "ingredients[0].lot", "2611-04"), (finding.Code, finding.Where, finding.Limit));
    }

    /// <summary>What a lot's yeast did last time is solved for this grist, as if the line had said it.</summary>
    [Fact]
    public void Attenuation_of_a_sheet_does_what_the_lines_own_does()
    {
        Larder told = new([new YeastSheet { Id = "own", Name = "own", Like = "English ale", Figures = new YeastFigures { Form = IngredientForm.Dry, Attenuation = Typed.Share(0.70) } }]);
        double line = Forecast(Bitters.With(Typed.Yeast("English ale") with { Attenuation = Typed.Share(0.70) }), Larder.Empty).Number("apparentAttenuation");
        Assert.Equal(line, Forecast(Bitters.With(Typed.Yeast("own")), told).Number("apparentAttenuation"), 1e-9);
        Assert.Equal(70, line, 0.01);
    }

    private static Larder Malt(MaltFigures figures) => new([new MaltSheet { Id = "own", Name = "own", Like = "pale ale malt", Figures = figures }]);

    private static double PlatoOf(Larder larder, IngredientLine malt)
    {
        Recipe recipe = Bitters.With();
        double gravity = Forecast(recipe with { Ingredients = [malt, .. recipe.Ingredients.Skip(1)] }, larder).Number("copperUpGravity");
        return SucroseSolution.PlatoAt(gravity);
    }

    private static double WidthOf(Larder larder, string malt, string id)
    {
        Recipe recipe = Bitters.With();
        return SpreadOf(BrewPlanner.Plan(recipe with { Ingredients = [Typed.Malt(malt, 4), .. recipe.Ingredients.Skip(1)] }, Bitters.AtTheSea, larder), id);
    }

    private static double SpreadOf(BrewPlan brew, string id) =>
        Assert.IsType<Prior.Spread>(brew.Plan!.Parameters.Single(p => p.Id == id).Prior).Between.Spread;

    private static BrewForecast Forecast(Recipe recipe, Larder larder)
    {
        BrewForecast told = Forecaster.Forecast(recipe, Bitters.AtTheSea, larder, "lots");
        Assert.True(told.CanBeBrewed, string.Join('\n', told.Findings.Select(f => f.Message)));
        return told;
    }

    private static LarderSheet Sheet(string path)
    {
        using FileStream stream = File.OpenRead(path);
        return LarderFile.Read(stream).Value!;
    }
}
