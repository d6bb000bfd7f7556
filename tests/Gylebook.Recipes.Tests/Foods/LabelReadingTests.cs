using Gylebook.Recipes.Foods;
using static Gylebook.Recipes.Tests.Foods.FoodFixture;

namespace Gylebook.Recipes.Tests.Foods;

public class LabelReadingTests
{
    /// <summary>Defatted peanut flour, USDA SR26 NDB 16099, by the rounding of 21 CFR 101.9 on a 12 g serving.</summary>
    private static readonly LabelPanel PeanutFlour = new()
    {
        Style = LabelStyle.Us, Serving = G(12), EnergyKilocalories = 40, Fat = G(0), Sodium = G(0.02), Carbohydrate = G(4), Fibre = G(2),
        Sugars = G(1), Protein = G(6),
    };

    /// <summary>Sweetened chocolate puffed-corn cereal, USDA SR26 NDB 08271, on a 36 g serving.</summary>
    private static readonly LabelPanel Cereal = new()
    {
        Style = LabelStyle.Us, Serving = G(36), Fat = G(2), Carbohydrate = G(30), Fibre = G(2), Sugars = G(13), Protein = G(2),
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
    public void A_label_is_read_as_points_and_says_so()
    {
        var finding = Assert.Single(FoodMakeups.From(Sheet("nuts", PeanutFlour)).Findings, finding => finding.Code == "food.labelRead");
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Contains("4.167 g/100 g", finding.Message, StringComparison.Ordinal);
    }

    // Defatted peanut flour as a European panel prints it: carbohydrate 34.7 - 15.8 = 18.9 g, salt 0.45 g, per 100 g.
    [Fact]
    public void A_European_panel_counts_fibre_apart_and_salt_for_sodium()
    {
        var panel = new LabelPanel
        {
            Style = LabelStyle.Eu, EnergyKilocalories = 321, Fat = G(0.55), Carbohydrate = G(18.9), Fibre = G(15.8), Sugars = G(8.22),
            Protein = G(52.2), Salt = G(0.45),
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
        var panel = new LabelPanel { Style = LabelStyle.Eu, Carbohydrate = G(18.9), Protein = G(52.2), Fat = G(0.55) };
        var made = FoodMakeups.From(Sheet("nut-flour-defatted", panel)).Makeup!;
        Assert.Contains(made.Assumed, entry => entry.What == "fibre");
        Assert.Equal(1, Total(made), 1e-12);
    }

    [Fact]
    public void More_fibre_and_sugar_than_carbohydrate_looks_European()
    {
        var panel = PeanutFlour with { Serving = G(100), Carbohydrate = G(18.9), Fibre = G(15.8), Sugars = G(8.2), Protein = G(52), EnergyKilocalories = null };
        Assert.Contains(FoodMakeups.From(Sheet("nuts", panel)).Findings, finding => finding.Code == "food.carbohydrateStyle");
        Assert.DoesNotContain(FoodMakeups.From(Sheet("nuts", PeanutFlour)).Findings, finding => finding.Code == "food.carbohydrateStyle");
    }

    // 2 mL of a flavouring that prints nothing but zeros: fat could be 25 g/100 g.
    [Fact]
    public void Zeros_on_a_tiny_serving_say_little()
    {
        var panel = new LabelPanel { Style = LabelStyle.Us, Serving = G(2), Fat = G(0), Carbohydrate = G(0), Protein = G(0), Sodium = G(0) };
        Assert.Contains(FoodMakeups.From(Sheet("extract-in-alcohol", panel)).Findings, finding => finding.Code == "food.labelSaysLittle");
        Assert.DoesNotContain(FoodMakeups.From(Sheet("nuts", PeanutFlour)).Findings, finding => finding.Code == "food.labelSaysLittle");
    }

    [Fact]
    public void A_label_fuller_than_the_food_is_an_error_beyond_rounding()
    {
        LabelPanel Panel(double protein) => new() { Style = LabelStyle.Us, Serving = G(10), Protein = G(protein), Fat = G(0), Carbohydrate = G(5) };
        Assert.Contains(FoodMakeups.From(Sheet("nuts", Panel(6))).Findings, finding => finding is { Code: "food.overfull", Severity: Severity.Warning });
        var made = FoodMakeups.From(Sheet("nuts", Panel(9)));
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
            Style = LabelStyle.Us, EnergyKilocalories = kilocalories, Protein = G(19.6), Fat = G(13.7), Carbohydrate = G(57.9), Fibre = G(33.2),
        };
        var findings = FoodMakeups.From(Sheet("cocoa powder", panel)).Findings;
        Assert.Equal(found, findings.Any(finding => finding is { Code: "food.energyDiffers", Severity: Severity.Note }));
    }
}
