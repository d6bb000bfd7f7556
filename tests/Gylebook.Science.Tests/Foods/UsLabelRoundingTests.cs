using CsCheck;
using Gylebook.Science.Foods;
using Gylebook.Science.Foods.Labels;
using Gylebook.Science.Foods.Labels.Rounding;

namespace Gylebook.Science.Tests.Foods;

/// <summary>Every row of the rounding rules of 21 CFR 101.9(c), inverted.</summary>
public class UsLabelRoundingTests
{
    private static readonly LabelLine[] Lines = [.. Enum.GetValues<LabelLine>().Where(UsLabelRounding.Prints)];

    private static readonly Gen<LabelLine> AnyLine = Gen.Int[0, Lines.Length - 1].Select(index => Lines[index]);

    [Theory]
    // (c)(1): below 5 kcal may be 0; nearest 5 to 50; nearest 10 above
    [InlineData(LabelLine.EnergyKilocalories, 0, 0, 5)]
    [InlineData(LabelLine.EnergyKilocalories, 5, 2.5, 7.5)]
    [InlineData(LabelLine.EnergyKilocalories, 10, 7.5, 12.5)]
    [InlineData(LabelLine.EnergyKilocalories, 45, 42.5, 47.5)]
    [InlineData(LabelLine.EnergyKilocalories, 50, 47.5, 55)]
    [InlineData(LabelLine.EnergyKilocalories, 60, 55, 65)]
    [InlineData(LabelLine.EnergyKilocalories, 200, 195, 205)]
    // (c)(2): below 0.5 g is 0; nearest 0.5 below 5; nearest 1 from 5
    [InlineData(LabelLine.Fat, 0, 0, 0.5)]
    [InlineData(LabelLine.Fat, 0.5, 0.5, 0.75)]
    [InlineData(LabelLine.Fat, 1, 0.75, 1.25)]
    [InlineData(LabelLine.Fat, 4.5, 4.25, 4.75)]
    [InlineData(LabelLine.Fat, 5, 4.75, 5.5)]
    [InlineData(LabelLine.Fat, 6, 5.5, 6.5)]
    [InlineData(LabelLine.SaturatedFat, 5, 4.75, 5.5)]
    // (c)(3): below 2 mg is 0; nearest 5
    [InlineData(LabelLine.Cholesterol, 0, 0, 2)]
    [InlineData(LabelLine.Cholesterol, 10, 7.5, 12.5)]
    // (c)(4): below 5 mg is 0; nearest 5 to 140; nearest 10 above
    [InlineData(LabelLine.Sodium, 0, 0, 5)]
    [InlineData(LabelLine.Sodium, 5, 5, 7.5)]
    [InlineData(LabelLine.Sodium, 10, 7.5, 12.5)]
    [InlineData(LabelLine.Sodium, 135, 132.5, 137.5)]
    [InlineData(LabelLine.Sodium, 140, 137.5, 145)]
    [InlineData(LabelLine.Sodium, 150, 145, 155)]
    // (c)(8), from memory: nearest 10 mg; below 2 % of 4700 mg may be 0
    [InlineData(LabelLine.Potassium, 0, 0, 94)]
    [InlineData(LabelLine.Potassium, 90, 85, 95)]
    [InlineData(LabelLine.Potassium, 340, 335, 345)]
    // (c)(6), (c)(7): below 0.5 g is 0; nearest 1
    [InlineData(LabelLine.Carbohydrate, 0, 0, 0.5)]
    [InlineData(LabelLine.Carbohydrate, 1, 0.5, 1.5)]
    [InlineData(LabelLine.Fibre, 2, 1.5, 2.5)]
    [InlineData(LabelLine.Sugars, 13, 12.5, 13.5)]
    [InlineData(LabelLine.AddedSugars, 1, 0.5, 1.5)]
    [InlineData(LabelLine.Polyols, 0, 0, 0.5)]
    [InlineData(LabelLine.Protein, 6, 5.5, 6.5)]
    public void A_printed_number_means_these_true_values(LabelLine line, double printed, double low, double high) =>
        Assert.Equal(Interval.HalfOpen(low, high), UsLabelRounding.TrueInterval(line, PrintedValue.Of(printed)));

    [Fact]
    public void Less_than_forms_read_as_the_rule_allows_them()
    {
        Assert.Equal(Interval.HalfOpen(0, 1), UsLabelRounding.TrueInterval(LabelLine.Fibre, PrintedValue.LessThan(1)));
        Assert.Equal(new Interval(2, 5), UsLabelRounding.TrueInterval(LabelLine.Cholesterol, PrintedValue.LessThan(5)));
        Assert.Equal(Interval.NotNegative, UsLabelRounding.TrueInterval(LabelLine.Fibre, PrintedValue.Absent));
    }

    [Theory]
    [InlineData(LabelLine.EnergyKilocalories, 39.2, 40)]
    [InlineData(LabelLine.EnergyKilocalories, 4.99, 0)]
    [InlineData(LabelLine.EnergyKilocalories, 54.9, 50)]
    [InlineData(LabelLine.EnergyKilocalories, 55, 60)]
    [InlineData(LabelLine.Fat, 0.49, 0)]
    [InlineData(LabelLine.Fat, 0.74, 0.5)]
    [InlineData(LabelLine.Fat, 4.75, 5)]
    [InlineData(LabelLine.Fat, 5.49, 5)]
    [InlineData(LabelLine.Sodium, 21.6, 20)]
    [InlineData(LabelLine.Sodium, 144.9, 140)]
    [InlineData(LabelLine.Sodium, 145, 150)]
    [InlineData(LabelLine.Sodium, 4.9, 0)]
    [InlineData(LabelLine.Cholesterol, 1.9, 0)]
    [InlineData(LabelLine.Potassium, 337, 340)]
    [InlineData(LabelLine.Protein, 0.5, 1)]
    [InlineData(LabelLine.Protein, 6.26, 6)]
    public void A_maker_prints(LabelLine line, double amount, double printed) =>
        Assert.Equal(PrintedValue.Of(printed), UsLabelRounding.Print(line, amount));

    [Fact]
    public void What_is_printed_reads_back_to_hold_the_truth() =>
        Gen.Select(AnyLine, Gen.Double[0, 300])
            .Sample((line, amount) =>
                UsLabelRounding.TrueInterval(line, UsLabelRounding.Print(line, amount)).Contains(amount));

    [Fact]
    public void Every_boundary_belongs_to_the_number_above_it() =>
        Assert.All(
            from line in Enum.GetValues<LabelLine>().Where(UsLabelRounding.Prints)
            from quarter in Enumerable.Range(0, 1000)
            select (line, amount: quarter * 0.25),
            at => Assert.True(
                UsLabelRounding.TrueInterval(at.line, UsLabelRounding.Print(at.line, at.amount)).Contains(at.amount), $"{at}"));

    [Fact]
    public void Lines_of_the_other_style_and_negative_numbers_are_a_bug()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => UsLabelRounding.TrueInterval(LabelLine.Salt, PrintedValue.Of(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => UsLabelRounding.TrueInterval(LabelLine.Fat, PrintedValue.Of(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => UsLabelRounding.Print(LabelLine.Fat, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => PrintedValue.Of(double.NaN));
    }

    [Fact]
    public void Legal_tolerance_of_the_classes()
    {
        // 21 CFR 101.9(g): protein at least 80 % of the label, fat at most 120 %.
        Interval protein = UsLabelTolerance.Widen(LabelLine.Protein, Interval.HalfOpen(5.5, 6.5));
        Assert.Equal(4.4, protein.Low, 1e-12);
        Assert.Equal(double.PositiveInfinity, protein.High);
        Interval fat = UsLabelTolerance.Widen(LabelLine.Fat, Interval.HalfOpen(5.5, 6.5));
        Assert.Equal(0, fat.Low);
        Assert.Equal(7.8, fat.High, 1e-12);
        Assert.Equal(Interval.NotNegative, UsLabelTolerance.Widen(LabelLine.Polyols, Interval.HalfOpen(5.5, 6.5)));
    }
}
