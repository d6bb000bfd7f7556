using Gylebook.Recipes.Foods;
using Gylebook.Science.Foods.Labels;
using static Gylebook.Recipes.Tests.Foods.FoodFixture;

namespace Gylebook.Recipes.Tests.Foods;

public class LabelReadingTests
{
    /// <summary>Defatted peanut flour, USDA SR26 NDB 16099, by the rounding of 21 CFR 101.9 on a 12 g serving.</summary>
    private static readonly LabelPanel PeanutFlour = new()
    {
        Style = PanelStyle.Us, Serving = G(12), EnergyKilocalories = 40, Fat = P(0), Sodium = P(0.02), Carbohydrate = P(4), Fibre = P(2),
        Sugars = P(1), Protein = P(6),
    };

    /// <summary>Sweetened chocolate puffed-corn cereal, USDA SR26 NDB 08271, on a 36 g serving.</summary>
    private static readonly LabelPanel Cereal = new()
    {
        Style = PanelStyle.Us, Serving = G(36), Fat = P(2), Carbohydrate = P(30), Fibre = P(2), Sugars = P(13), Protein = P(2),
    };

    // Points of the intervals worked out by hand: protein 6/12, fibre 2/12, sugars 1/12, what is left for water and ash 2/12 of 100 g;
    // each published figure lies within half a gram a serving of it, 4.17 g/100 g.
    [Fact]
    public void Peanut_flour_reads_as_printed_and_near_the_truth()
    {
        var printed = FoodMakeups.From(Sheet("nut or seed flour, defatted", PeanutFlour)).Makeup!;
        var truth = OfTable("peanut-flour-defatted");
        var protein = printed.SolubleProtein / 0.15;
        Assert.Equal(0.5, protein, 1e-9);
        Assert.Equal(0, printed.Fat);
        Assert.Equal(1 / 12.0, Sugars(printed), 1e-9);
        Assert.Equal(20 / 12.0 * 1000, printed.SodiumMilligramsPerKilogram, 1e-6);
        Assert.Equal(2 / 12.0, printed.Water + 0.055, 1e-9);
        Assert.Equal(1, Total(printed), 1e-12);
        const double half = 0.5 / 12;
        Assert.Equal(truth.SolubleProtein / 0.15, protein, half);
        Assert.Equal(Sugars(truth), Sugars(printed), half);
        Assert.Equal(truth.Fat, printed.Fat, half);
    }

    // 50 mg on 12 g, to the nearest 10: 417 mg/100 g, [375, 458). What is not printed is not known, and listed as taken for none.
    [Fact]
    public void Potassium_is_read_where_a_panel_prints_it()
    {
        var read = FoodMakeups.From(Sheet("nut or seed flour, defatted", PeanutFlour with { Potassium = P(0.05) }));
        Assert.Equal(50 / 12.0 * 100, read.Composition!.PotassiumMilligrams!.Value, 1e-6);
        Assert.Equal(50 / 12.0 * 1000, read.Makeup!.PotassiumMilligramsPerKilogram, 1e-6);
        Assert.True(read.Makeup.Minerals >= read.Makeup.PotassiumMilligramsPerKilogram / 1e6);
        Assert.Equal(45 / 12.0 * 1000, read.Ends.Min(end => end.PotassiumMilligramsPerKilogram), 1e-6);
        Assert.Equal(55 / 12.0 * 1000, read.Ends.Max(end => end.PotassiumMilligramsPerKilogram), 1e-6);
        Assert.DoesNotContain(read.Makeup.Assumed, entry => entry.What == "potassium");
        var unsaid = FoodMakeups.From(Sheet("nut or seed flour, defatted", PeanutFlour));
        Assert.Null(unsaid.Composition!.PotassiumMilligrams);
        Assert.Contains(unsaid.Makeup!.Assumed, entry => entry is { What: "potassium", Value: "0 mg/100 g" });
    }

    [Fact]
    public void Potassium_heavier_than_what_is_left_for_ash_is_impossible() => Assert.Contains(
        FoodMakeups.From(Sheet("nut or seed flour, defatted", PeanutFlour with { Potassium = P(5) })).Findings,
        finding => finding is { Code: "food.labelImpossible", Severity: Severity.Error });

    // Residue 30 - 2 - 13 = 15 g, 41.7 g/100 g; starch 0.92 of it, 38 g/100 g as printed by hand, to the gram.
    [Fact]
    public void Cereal_gets_its_starch_from_what_the_label_leaves()
    {
        var made = FoodMakeups.From(Sheet("baked-cereal", Cereal));
        Assert.Equal(0.38, made.Makeup!.Starch, 0.005);
        Assert.Equal(15 / 36.0 * 0.92, made.Makeup.Starch, 1e-9);
        Assert.True(made.Makeup.StarchIsOpen);
        Assert.Contains(made.Makeup.Assumed, entry => entry is { What: "starch", Value: "38.333 g/100 g" });
        var assumedAsh = Assert.Single(made.Makeup.Assumed, entry => entry.What == "ash");
        Assert.Equal("1.3 g/100 g", assumedAsh.Value);
    }

    [Fact]
    public void A_label_is_read_as_bounds_and_says_so()
    {
        var finding = Assert.Single(FoodMakeups.From(Sheet("nuts", PeanutFlour)).Findings, finding => finding.Code == "food.labelRead");
        Assert.Equal(Severity.Note, finding.Severity);
        // 5.5 to 6.5 g of 12 g protein, less than half a gram of fat.
        Assert.Contains("protein 45.83 to 54.17, fat 0 to 4.17", finding.Message, StringComparison.Ordinal);
    }

    // Defatted peanut flour as a European panel prints it: carbohydrate 34.7 - 15.8 = 18.9 g, salt 0.45 g, per 100 g.
    [Fact]
    public void A_European_panel_counts_fibre_apart_and_salt_for_sodium()
    {
        var panel = new LabelPanel
        {
            Style = PanelStyle.Eu, EnergyKilocalories = 321, Fat = P(0.55), Carbohydrate = P(18.9), Fibre = P(15.8), Sugars = P(8.22),
            Protein = P(52.2), Salt = P(0.45),
        };
        var printed = FoodMakeups.From(Sheet("nut-flour-defatted", panel)).Makeup!;
        var truth = OfTable("peanut-flour-defatted");
        Assert.Equal(1800, printed.SodiumMilligramsPerKilogram, 1e-9);
        Assert.Equal(truth.Starch, printed.Starch, 1e-9);
        Assert.Equal(truth.Dextrin, printed.Dextrin, 1e-9);
        // The panel does not print ash: 5.5 of the family against 4.75, of which 0.3 never dissolves.
        Assert.Equal(truth.Insoluble + (0.3 * 0.0075), printed.Insoluble, 1e-9);
    }

    [Fact]
    public void A_European_panel_without_fibre_borrows_it()
    {
        var panel = new LabelPanel { Style = PanelStyle.Eu, Carbohydrate = P(18.9), Protein = P(52.2), Fat = P(0.55) };
        var made = FoodMakeups.From(Sheet("nut-flour-defatted", panel)).Makeup!;
        Assert.Contains(made.Assumed, entry => entry.What == "fibre");
        Assert.Equal(1, Total(made), 1e-12);
    }

    [Fact]
    public void More_fibre_and_sugar_than_carbohydrate_looks_European()
    {
        var panel = PeanutFlour with { Serving = G(100), Carbohydrate = P(18.9), Fibre = P(15.8), Sugars = P(8.2), Protein = P(52), EnergyKilocalories = null };
        Assert.Contains(FoodMakeups.From(Sheet("nuts", panel)).Findings, finding => finding.Code == "label.style");
        Assert.DoesNotContain(FoodMakeups.From(Sheet("nuts", PeanutFlour)).Findings, finding => finding.Code == "label.style");
    }

    // 2 mL of a flavouring that prints nothing but zeros: fat could be 25 g/100 g.
    [Fact]
    public void Zeros_on_a_tiny_serving_say_little()
    {
        var panel = new LabelPanel { Style = PanelStyle.Us, Serving = G(2), Fat = P(0), Carbohydrate = P(0), Protein = P(0), Sodium = P(0) };
        Assert.Contains(FoodMakeups.From(Sheet("extract-in-alcohol", panel)).Findings, finding => finding.Code == "label.looseZero");
        Assert.DoesNotContain(FoodMakeups.From(Sheet("nuts", PeanutFlour)).Findings, finding => finding.Code == "label.looseZero");
    }

    [Fact]
    public void A_label_fuller_than_the_food_is_an_error_beyond_rounding()
    {
        LabelPanel Panel(double protein) => new() { Style = PanelStyle.Us, Serving = G(10), Protein = P(protein), Fat = P(0), Carbohydrate = P(5) };
        // 6 and 5 g of 10 g: 5.5 and 4.5 g just fit.
        var fits = FoodMakeups.From(Sheet("nuts", Panel(6)));
        Assert.DoesNotContain(fits.Findings, finding => finding.Severity == Severity.Error);
        Assert.Equal(0, fits.Makeup!.Water, 1e-9);
        var made = FoodMakeups.From(Sheet("nuts", Panel(9)));
        var finding = Assert.Single(made.Findings, finding => finding.Code == "food.labelImpossible");
        Assert.Equal((Severity.Error, "foods/food.label.protein", "13 g", "10 g"), (finding.Severity, finding.Where, finding.Value, finding.Limit));
        Assert.Contains(made.Findings, finding => finding is { Code: "food.overfull", Severity: Severity.Error });
        Assert.Equal(1, Total(made.Makeup!), 1e-12);
    }

    // Unsweetened cocoa powder, NDB 19165: 228 kcal by its own factors, 433 by 4-4-9, 301 without fibre. 600 fits none.
    [Theory]
    [InlineData(301, false)]
    [InlineData(433, false)]
    [InlineData(600, true)]
    [InlineData(150, true)]
    public void Energy_is_only_a_soft_check(double kilocalories, bool found)
    {
        var panel = new LabelPanel
        {
            Style = PanelStyle.Us, EnergyKilocalories = kilocalories, Protein = P(19.6), Fat = P(13.7), Carbohydrate = P(57.9), Fibre = P(33.2),
        };
        var findings = FoodMakeups.From(Sheet("cocoa powder", panel)).Findings;
        Assert.Equal(found, findings.Any(finding => finding is { Code: "label.energy", Severity: Severity.Warning }));
    }

    // "Less than 1 g" of sugar on 30 g is 0 to 3.33 g/100 g (21 CFR 101.9(c)(6)); the family has 36 % of carbohydrate, which the
    // label does not allow.
    [Fact]
    public void Less_than_is_kept_apart_from_a_number_and_takes_what_the_family_has_as_far_as_the_label_allows()
    {
        var panel = new LabelPanel { Style = PanelStyle.Us, Serving = G(30), Fat = P(1), Carbohydrate = P(9), Fibre = P(4), Sugars = Below(1), Protein = P(15) };
        var made = FoodMakeups.From(Sheet("nut-flour-defatted", panel));
        Assert.Equal("[0, 3.333)", made.Bounds!.Sugars.ToString());
        Assert.Equal(1 / 30.0, Sugars(made.Makeup!), 1e-9);
        Assert.Contains(made.Makeup!.Assumed, entry => entry.What == "Sugars, within what the label allows");
    }

    [Fact]
    public void Every_end_of_a_label_prints_as_the_label_and_adds_up_to_one()
    {
        foreach (var (family, panel) in ((string, LabelPanel)[])[("nut-flour-defatted", PeanutFlour), ("baked-cereal", Cereal)])
        {
            var made = FoodMakeups.From(Sheet(family, panel));
            Assert.True(made.Ends.Count > 10);
            Assert.All(made.Ends, end =>
            {
                Assert.Equal(1, Total(end), 1e-9);
                // Half a gram a serving either way is the width of the line; the ends are where it stops.
                Assert.InRange(Sugars(end) * panel.Serving!.Value.Value.Grams, panel.Sugars!.Value.Amount.Grams - 0.5 - 1e-9, panel.Sugars!.Value.Amount.Grams + 0.5 + 1e-9);
                Assert.InRange(end.Fat * panel.Serving!.Value.Value.Grams, 0, panel.Fat!.Value.Amount.Grams + 0.5 + 1e-9);
            });
            Assert.InRange(Sugars(made.Makeup!), made.Ends.Min(Sugars) - 1e-9, made.Ends.Max(Sugars) + 1e-9);
            Assert.InRange(made.Makeup!.Fat, made.Ends.Min(end => end.Fat) - 1e-9, made.Ends.Max(end => end.Fat) + 1e-9);
        }
    }

    // 1 355 kJ typed as kcal: defatted peanut flour, USDA SR26 NDB 16099, as a European panel prints it.
    [Fact]
    public void Kilojoules_typed_as_kilocalories_are_found_on_the_energy_line()
    {
        var panel = new LabelPanel
        {
            Style = PanelStyle.Eu, EnergyKilocalories = 1355, Fat = P(0.55), Carbohydrate = P(18.9), Fibre = P(15.8), Sugars = P(8.22),
            Protein = P(52.2), Salt = P(0.45),
        };
        var finding = Assert.Single(
            FoodMakeups.From(Sheet("nut-flour-defatted", panel)).Findings, finding => finding.Code == "label.kilojoulesAsKilocalories");
        Assert.Equal(("foods/food.label.energy", "1355 kcal", Severity.Warning), (finding.Where, finding.Value, finding.Severity));
    }

    [Fact]
    public void Sugars_above_carbohydrate_are_an_error_that_names_both_lines_and_the_limit()
    {
        var panel = PeanutFlour with { Sugars = P(9) };
        var finding = Assert.Single(FoodMakeups.From(Sheet("nuts", panel)).Findings, finding => finding.Code == "food.labelImpossible");
        // 8.5 g of sugars at least, 4.5 g of carbohydrate at most.
        Assert.Equal(("foods/food.label.sugars", "8.5 g", "4.5 g"), (finding.Where, finding.Value, finding.Limit));
        Assert.Contains("sugars, carbohydrate", finding.Message, StringComparison.Ordinal);
    }
}
