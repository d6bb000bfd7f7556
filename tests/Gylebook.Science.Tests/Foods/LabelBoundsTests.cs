using Gylebook.Science.Foods;
using Gylebook.Science.Foods.Labels;

namespace Gylebook.Science.Tests.Foods;

public class LabelBoundsTests
{
    private static PrintedValue P(double number) => PrintedValue.Of(number);

    /// <summary>Defatted peanut flour, USDA NDB 16099, 12 g.</summary>
    private static PrintedPanel PeanutFlour => new()
    {
        Style = PanelStyle.Us, ServingGrams = 12, EnergyKilocalories = P(40), FatGrams = P(0), SodiumMilligrams = P(20),
        CarbohydrateGrams = P(4), FibreGrams = P(2), SugarsGrams = P(1), ProteinGrams = P(6),
    };

    /// <summary>Sweetened chocolate puffed-corn cereal, USDA NDB 08271, 36 g.</summary>
    private static PrintedPanel PuffedCorn => new()
    {
        Style = PanelStyle.Us, ServingGrams = 36, FatGrams = P(2), CarbohydrateGrams = P(30), FibreGrams = P(2),
        SugarsGrams = P(13), ProteinGrams = P(2),
    };

    // Printed to one decimal in the worked example: half a unit of it.
    private const double OneDecimal = 0.05;

    [Fact]
    public void Worked_label_A_defatted_peanut_flour_at_12_g()
    {
        LabelBounds bounds = LabelBounds.From(PeanutFlour);
        Assert.True(bounds.IsPossible);
        Assert.Empty(bounds.Cautions);
        Within(bounds.Fat, 0, 4.2, 0.55);
        Within(bounds.SodiumMilligrams, 145.8, 187.5, 180);
        Within(bounds.Carbohydrate, 29.2, 37.5, 34.7);
        Within(bounds.Fibre, 12.5, 20.8, 15.8);
        Within(bounds.Sugars, 4.2, 12.5, 8.22);
        Within(bounds.Protein, 45.8, 54.2, 52.2);
        // The example takes the remainder from whole intervals: 100 − 54.2 − 4.2 − 37.5 to 100 − 45.8 − 0 − 29.2.
        Within(bounds.Remainder, 4.2, 25.0, 12.55);
    }

    [Fact]
    public void Worked_label_B_puffed_corn_leaves_this_much_starch_and_other()
    {
        LabelBounds bounds = LabelBounds.From(PuffedCorn);
        // 15 g ± 1.5 g in 36 g: three lines rounded to 1 g each.
        Within(bounds.StarchAndOther, 37.5, 45.8, 83.7 - 5.7 - 37.2);
        Within(bounds.Starch, 0, 45.8, 0.92 * 41.7);
    }

    [Fact]
    public void Worked_label_C_zeros_on_2_g_say_almost_nothing()
    {
        LabelBounds bounds = LabelBounds.From(new()
        {
            Style = PanelStyle.Us, ServingGrams = 2, EnergyKilocalories = P(0), FatGrams = P(0), CarbohydrateGrams = P(0),
            ProteinGrams = P(0), SodiumMilligrams = P(0),
        });
        Assert.Equal(Interval.HalfOpen(0, 25), bounds.Fat);
        Assert.Equal(Interval.HalfOpen(0, 25), bounds.Carbohydrate);
        Assert.Contains(bounds.Cautions, caution => caution.Code == "label.looseZero" && caution.Lines.Contains(LabelLine.Fat));
    }

    [Fact]
    public void The_EU_panel_of_the_same_peanut_flour_states_carbohydrate_without_fibre()
    {
        LabelBounds bounds = LabelBounds.From(new()
        {
            Style = PanelStyle.Eu, ServingGrams = 100, EnergyKilojoules = P(1355), EnergyKilocalories = P(321), FatGrams = P(0.6),
            CarbohydrateGrams = P(19), SugarsGrams = P(8.2), FibreGrams = P(16), ProteinGrams = P(52), SaltGrams = P(0.45),
        });
        Assert.True(bounds.IsPossible);
        Assert.Empty(bounds.Cautions);
        Assert.True(bounds.Carbohydrate.Contains(34.7));
        Assert.True(bounds.AvailableCarbohydrate.Contains(18.9));
        Assert.Equal(2, bounds.Carbohydrate.Width, 1e-9);
        Within(bounds.SodiumMilligrams, 178, 182, 180);
    }

    [Fact]
    public void The_mass_balance_narrows_what_rounding_left()
    {
        // 3 g of a 3 g serving is carbohydrate: more than 83 %, so that fat cannot use the 16.7 % its zero allows.
        LabelBounds bounds = LabelBounds.From(new()
        {
            Style = PanelStyle.Us, ServingGrams = 3, FatGrams = P(0), ProteinGrams = P(0), CarbohydrateGrams = P(3), SugarsGrams = P(3),
        });
        Assert.Equal(100.0 * 2.5 / 3, bounds.Carbohydrate.Low, 1e-9);
        Assert.Equal(100, bounds.Carbohydrate.High);
        Assert.Equal(100 - (100.0 * 2.5 / 3), bounds.Remainder.High, 1e-9);
        Assert.Equal(100 - (100.0 * 2.5 / 3), bounds.StarchAndOther.High, 1e-9);
    }

    [Fact]
    public void A_part_inherits_the_open_end_of_its_whole()
    {
        LabelBounds bounds = LabelBounds.From(PuffedCorn);
        // "2 g" of fat is less than 2.5 g, so saturated fat is too.
        Assert.Equal(Interval.HalfOpen(0, bounds.Fat.High), bounds.SaturatedFat);
        Assert.True(bounds.StarchAndOther.HighIsOpen);
    }

    [Fact]
    public void Sodium_takes_its_place_in_the_remainder()
    {
        // 4 g of a seasoning with 1200 mg of sodium: the remainder is 1.195 g at least.
        LabelBounds bounds = LabelBounds.From(new()
        {
            Style = PanelStyle.Us, ServingGrams = 4, CarbohydrateGrams = P(1), SodiumMilligrams = P(1200),
        });
        Assert.Equal(100 * 1.195 / 4, bounds.Remainder.Low, 1e-9);
    }

    [Fact]
    public void Undeclared_sugar_alcohols_stay_in_starch_and_other()
    {
        LabelBounds silent = LabelBounds.From(PuffedCorn);
        Assert.False(silent.PolyolsAreDeclared);
        Assert.Equal(silent.StarchAndOther.High, silent.Polyols.High);
        LabelBounds declared = LabelBounds.From(PuffedCorn with { PolyolsGrams = P(10) });
        Assert.True(declared.PolyolsAreDeclared);
        Assert.Equal(1000.0 / 36, (declared.Polyols.Low + declared.Polyols.High) / 2, 1e-9);
        Assert.True(declared.StarchAndOther.High < silent.StarchAndOther.High);
    }

    [Fact]
    public void Legal_mode_is_never_narrower_than_rounding()
    {
        foreach (PrintedPanel panel in (PrintedPanel[])[PeanutFlour, PuffedCorn])
        {
            LabelBounds rounding = LabelBounds.From(panel);
            LabelBounds legal = LabelBounds.From(panel, LabelMode.Legal);
            Assert.True(legal.IsPossible);
            Assert.All(All(rounding).Zip(All(legal)), pair => Assert.True(pair.Second.Contains(pair.First), $"{pair}"));
        }

        // 0.8 of 5.5 g in 12 g
        Assert.Equal(0.8 * 550 / 12, LabelBounds.From(PeanutFlour, LabelMode.Legal).Protein.Low, 1e-9);
    }

    [Fact]
    public void A_serving_of_a_hundred_grams_does_not_matter_to_the_answer_only_its_width() =>
        Assert.True(LabelBounds.From(PeanutFlour).Protein.Contains(LabelBounds.From(PeanutFlour with
        {
            ServingGrams = 100,
            FatGrams = P(0.5),
            SodiumMilligrams = P(180),
            CarbohydrateGrams = P(35),
            FibreGrams = P(16),
            SugarsGrams = P(8),
            ProteinGrams = P(52),
        }).Protein));

    [Fact]
    public void A_prior_is_clipped_to_the_bounds()
    {
        Interval bounds = Interval.HalfOpen(12.5, 20.8);
        Assert.Equal(15.8, LabelPrior.PointEstimate(bounds, 15.8));
        Assert.Equal(12.5, LabelPrior.PointEstimate(bounds, 3));
        Assert.Equal(20.8, LabelPrior.PointEstimate(bounds, 30));
        Assert.Throws<ArgumentOutOfRangeException>(() => LabelPrior.PointEstimate(bounds, double.NaN));
    }

    internal static IEnumerable<Interval> All(LabelBounds bounds) =>
    [
        bounds.Protein, bounds.Fat, bounds.SaturatedFat, bounds.Carbohydrate, bounds.AvailableCarbohydrate, bounds.Fibre,
        bounds.Sugars, bounds.AddedSugars, bounds.Polyols, bounds.StarchAndOther, bounds.Starch, bounds.Remainder, bounds.SodiumMilligrams,
    ];

    private static void Within(Interval bounds, double low, double high, double truth)
    {
        Assert.Equal(low, bounds.Low, OneDecimal);
        Assert.Equal(high, bounds.High, OneDecimal);
        Assert.True(bounds.Contains(truth), $"{truth} in {bounds}");
    }
}
