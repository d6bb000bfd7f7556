using Gylebook.Science.Foods.Labels;

namespace Gylebook.Science.Tests.Foods;

public class LabelContradictionTests
{
    private static PrintedValue P(double number) => PrintedValue.Of(number);

    private static PrintedPanel Plausible => new()
    {
        Style = PanelStyle.Us, ServingGrams = 30, FatGrams = P(2), SaturatedFatGrams = P(1), CarbohydrateGrams = P(22),
        FibreGrams = P(3), SugarsGrams = P(8), AddedSugarsGrams = P(6), ProteinGrams = P(3), SodiumMilligrams = P(100),
        EnergyKilocalories = P(120),
    };

    [Fact]
    public void A_plausible_panel_has_nothing_to_complain_about()
    {
        LabelBounds bounds = LabelBounds.From(Plausible);
        Assert.Empty(bounds.Contradictions);
        Assert.Empty(bounds.Cautions);
    }

    [Fact]
    public void Sugars_above_carbohydrate_name_those_two_lines_only()
    {
        LabelContradiction found = Only(Plausible with { SugarsGrams = P(25), AddedSugarsGrams = P(6), FibreGrams = P(0) });
        Assert.Equal([LabelLine.Sugars, LabelLine.Carbohydrate], found.Lines);
        Assert.Equal(24.5, found.Value, 1e-9);
        Assert.Equal(22.5, found.Limit, 1e-9);
        Assert.Equal("Sugars of at least 24.5 g cannot be: carbohydrate leaves room for 22.5 g at most.", found.Message);
    }

    [Fact]
    public void Added_sugars_above_sugars() => Assert.Equal(
        [LabelLine.AddedSugars, LabelLine.Sugars], Only(Plausible with { AddedSugarsGrams = P(12) }).Lines);

    [Fact]
    public void Saturated_fat_above_fat() => Assert.Equal(
        [LabelLine.SaturatedFat, LabelLine.Fat], Only(Plausible with { SaturatedFatGrams = P(4) }).Lines);

    [Fact]
    public void Sugars_fibre_and_sugar_alcohols_together_above_carbohydrate()
    {
        LabelContradiction found = Only(Plausible with { PolyolsGrams = P(14) });
        Assert.Equal([LabelLine.Fibre, LabelLine.Sugars, LabelLine.Polyols, LabelLine.Carbohydrate], found.Lines);
        Assert.Equal(2.5 + 7.5 + 13.5, found.Value, 1e-9);
    }

    [Fact]
    public void More_than_the_serving_in_the_serving()
    {
        LabelContradiction found = Only(Plausible with { ProteinGrams = P(20) });
        Assert.Contains(LabelLine.Protein, found.Lines);
        Assert.Contains(LabelLine.Carbohydrate, found.Lines);
        Assert.Contains(LabelLine.Serving, found.Lines);
        Assert.Equal(30, found.Limit);
        Assert.True(found.Value > 30);
    }

    [Fact]
    public void One_line_above_the_serving_is_named_alone_with_it() => Assert.Equal(
        [LabelLine.Fat, LabelLine.Serving], Only(Plausible with { FatGrams = P(40) }).Lines);

    [Fact]
    public void The_sets_are_minimal_and_two_faults_give_two_contradictions()
    {
        PrintedPanel twice = Plausible with { SaturatedFatGrams = P(4), AddedSugarsGrams = P(12) };
        LabelBounds bounds = LabelBounds.From(twice);
        Assert.Equal(2, bounds.Contradictions.Count);
        Assert.False(bounds.IsPossible);
        // Dropping any line of both sets, one of each, makes the panel possible.
        Assert.True(LabelBounds.From(twice with { FatGrams = default, SugarsGrams = default }).IsPossible);
        Assert.True(LabelBounds.From(twice with { SaturatedFatGrams = default, AddedSugarsGrams = default }).IsPossible);
    }

    [Fact]
    public void An_impossible_panel_is_not_mended()
    {
        LabelBounds bounds = LabelBounds.From(Plausible with { SugarsGrams = P(25) });
        Assert.Equal(24.5 / 30 * 100, bounds.Sugars.Low, 1e-9);
        Assert.Equal(22.5 / 30 * 100, bounds.Carbohydrate.High, 1e-9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-30)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_serving_of_nothing_says_nothing(double grams)
    {
        LabelBounds bounds = LabelBounds.From(Plausible with { ServingGrams = grams });
        Assert.Equal([LabelLine.Serving], Assert.Single(bounds.Contradictions).Lines);
        Assert.Equal(100, bounds.Protein.Width);
    }

    [Fact]
    public void A_negative_number_is_reported_with_its_line()
    {
        LabelContradiction found = Only(Plausible with { ProteinGrams = P(-3) });
        Assert.Equal([LabelLine.Protein], found.Lines);
        Assert.Equal(-3, found.Value);
        Assert.Equal([LabelLine.EnergyKilocalories], Only(Plausible with { EnergyKilocalories = P(-3) }).Lines);
    }

    [Fact]
    public void Rounding_alone_never_contradicts()
    {
        // 2.4 + 2.4 g print as 2 + 2; 4.8 g of carbohydrate as 5. And 2.6 + 2.6 as 3 + 3 in 5.2, printed 5.
        Assert.True(LabelBounds.From(new()
        {
            Style = PanelStyle.Us, ServingGrams = 10, SugarsGrams = P(3), FibreGrams = P(3), CarbohydrateGrams = P(5),
        }).IsPossible);
    }

    [Fact]
    public void Exactly_no_room_is_no_room()
    {
        PrintedPanel panel = new() { Style = PanelStyle.Us, ServingGrams = 10, SugarsGrams = P(3), CarbohydrateGrams = P(4) };
        // 2.5 g of sugars and 1.5 g of fibre at least are 4.0 g; "4 g" may be anything below 4.5 g.
        Assert.True(LabelBounds.From(panel with { FibreGrams = P(2) }).IsPossible);
        // 2.5 g and 2.0 g would be 4.5 g exactly, which "4 g" does not reach: 0.5 g at 2.0 g is the open end itself.
        Assert.False(LabelBounds.From(panel with { FibreGrams = P(2.5) }).IsPossible);
    }

    [Fact]
    public void Fibre_above_carbohydrate_less_sugars_must_be_an_EU_panel()
    {
        PrintedPanel flour = new()
        {
            Style = PanelStyle.Us, ServingGrams = 100, CarbohydrateGrams = P(19), SugarsGrams = P(8), FibreGrams = P(16),
        };
        Assert.Equal(PanelStyle.Eu, PanelStyleGuess.Of(flour).Style);
        LabelBounds asUs = LabelBounds.From(flour);
        Assert.False(asUs.IsPossible);
        Assert.Contains(asUs.Cautions, caution => caution.Code == "label.style");
        Assert.True(LabelBounds.From(flour with { Style = PanelStyle.Eu }).IsPossible);
        Assert.Null(PanelStyleGuess.Of(Plausible).Style);
        // Within rounding nothing is certain: 3 against 5 − 3.
        Assert.Null(PanelStyleGuess.Of(flour with { CarbohydrateGrams = P(5), SugarsGrams = P(3), FibreGrams = P(3) }).Style);
    }

    [Fact]
    public void Energy_is_only_a_soft_warning()
    {
        LabelBounds bounds = LabelBounds.From(Plausible with { EnergyKilocalories = P(300) });
        Assert.True(bounds.IsPossible);
        Assert.Equal("label.energy", Assert.Single(bounds.Cautions).Code);
    }

    [Fact]
    public void Kilojoules_typed_as_kilocalories_are_recognised()
    {
        // Regulation (EU) 1169/2011, Annex XIV, for the defatted peanut flour: 1355 kJ, 321 kcal.
        PrintedPanel flour = new()
        {
            Style = PanelStyle.Eu, ServingGrams = 100, FatGrams = P(0.6), CarbohydrateGrams = P(19), SugarsGrams = P(8.2),
            FibreGrams = P(16), ProteinGrams = P(52), SaltGrams = P(0.45),
        };
        Assert.Empty(LabelBounds.From(flour with { EnergyKilocalories = P(321) }).Cautions);
        Assert.Empty(LabelBounds.From(flour with { EnergyKilojoules = P(1355) }).Cautions);
        Assert.Equal(
            "label.kilojoulesAsKilocalories",
            Assert.Single(LabelBounds.From(flour with { EnergyKilocalories = P(1355) }).Cautions).Code);
        Assert.Equal(
            "label.kilocaloriesAsKilojoules",
            Assert.Single(LabelBounds.From(flour with { EnergyKilojoules = P(321) }).Cautions).Code);
        Assert.Equal(
            "label.energyRatio",
            Assert.Single(LabelBounds.From(flour with { EnergyKilojoules = P(1535), EnergyKilocalories = P(321) }).Cautions).Code);
    }

    [Theory]
    // USDA NDB 19165 cocoa powder: 433 by 4-4-9, 301 with fibre deducted; 228 by specific factors is lawful, and outside.
    [InlineData(433, false)]
    [InlineData(301, false)]
    [InlineData(228, true)]
    public void Each_lawful_formula_of_cocoa_powder_is_accepted_but_specific_factors_are_not_known(double kilocalories, bool warns)
    {
        LabelBounds bounds = LabelBounds.From(new()
        {
            Style = PanelStyle.Us, ServingGrams = 100, EnergyKilocalories = P(Math.Round(kilocalories / 10) * 10), FatGrams = P(14),
            CarbohydrateGrams = P(58), FibreGrams = P(33), SugarsGrams = P(2), ProteinGrams = P(20),
        });
        Assert.Equal(warns, bounds.Cautions.Any(caution => caution.Code == "label.energy"));
    }

    [Fact]
    public void A_line_the_style_does_not_have_is_said_to_be_left_out()
    {
        LabelBounds bounds = LabelBounds.From(Plausible with { SaltGrams = P(0.3) });
        Assert.Equal("label.lineNotRead", Assert.Single(bounds.Cautions).Code);
    }

    private static LabelContradiction Only(PrintedPanel panel) => Assert.Single(LabelBounds.From(panel).Contradictions);
}
