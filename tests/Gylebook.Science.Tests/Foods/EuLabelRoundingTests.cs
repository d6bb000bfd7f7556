using CsCheck;
using Gylebook.Science.Foods;
using Gylebook.Science.Foods.Labels;
using Gylebook.Science.Foods.Labels.Rounding;

namespace Gylebook.Science.Tests.Foods;

/// <summary>Every row of the Commission's rounding guidance (December 2012) for Regulation (EU) 1169/2011, inverted.</summary>
public class EuLabelRoundingTests
{
    private static readonly LabelLine[] Lines = [.. Enum.GetValues<LabelLine>().Where(EuLabelRounding.Prints)];

    private static readonly Gen<LabelLine> AnyLine = Gen.Int[0, Lines.Length - 1].Select(index => Lines[index]);

    [Theory]
    [InlineData(LabelLine.EnergyKilocalories, 321, 320.5, 321.5)]
    [InlineData(LabelLine.EnergyKilojoules, 1355, 1354.5, 1355.5)]
    [InlineData(LabelLine.EnergyKilojoules, 0, 0, 0.5)]
    // 10 g and more: 1 g; above 0.5 and below 10 g: 0.1 g
    [InlineData(LabelLine.Protein, 52, 51.5, 52.5)]
    [InlineData(LabelLine.Protein, 11, 10.5, 11.5)]
    [InlineData(LabelLine.Carbohydrate, 10, 9.95, 10.5)]
    [InlineData(LabelLine.Sugars, 9.9, 9.85, 9.95)]
    [InlineData(LabelLine.Sugars, 8.2, 8.15, 8.25)]
    [InlineData(LabelLine.Fibre, 0.6, 0.55, 0.65)]
    [InlineData(LabelLine.Polyols, 0.5, 0.45, 0.55)]
    [InlineData(LabelLine.Starch, 44, 43.5, 44.5)]
    [InlineData(LabelLine.Fat, 0.6, 0.55, 0.65)]
    [InlineData(LabelLine.SaturatedFat, 0.2, 0.15, 0.25)]
    [InlineData(LabelLine.SaturatedFat, 0.1, 0.05, 0.15)]
    [InlineData(LabelLine.SaturatedFat, 12, 11.5, 12.5)]
    // salt, 1 g and more: 0.1 g; above 0.0125 and below 1 g: 0.01 g
    [InlineData(LabelLine.Salt, 0.45, 0.445, 0.455)]
    [InlineData(LabelLine.Salt, 0.01, 0.005, 0.015)]
    [InlineData(LabelLine.Salt, 1, 0.995, 1.05)]
    [InlineData(LabelLine.Salt, 1.4, 1.35, 1.45)]
    public void A_printed_number_means_these_true_values(LabelLine line, double printed, double low, double high) =>
        Assert.Equal(Interval.HalfOpen(low, high), EuLabelRounding.TrueInterval(line, PrintedValue.Of(printed)));

    [Theory]
    // Up to 0.5 g "0" or "<0.5 g"; saturates 0.1; salt 0.0125 as "0" or "<0.01 g": these ends are closed
    [InlineData(LabelLine.Fat, 0, false, 0.5)]
    [InlineData(LabelLine.Fat, 0.5, true, 0.5)]
    [InlineData(LabelLine.SaturatedFat, 0, false, 0.1)]
    [InlineData(LabelLine.SaturatedFat, 0.1, true, 0.1)]
    [InlineData(LabelLine.Salt, 0, false, 0.0125)]
    [InlineData(LabelLine.Salt, 0.01, true, 0.0125)]
    public void Next_to_nothing_has_a_closed_end(LabelLine line, double number, bool lessThan, double high) =>
        Assert.Equal(
            new Interval(0, high),
            EuLabelRounding.TrueInterval(line, lessThan ? PrintedValue.LessThan(number) : PrintedValue.Of(number)));

    [Theory]
    [InlineData(LabelLine.Carbohydrate, 18.9, 19)]
    [InlineData(LabelLine.Sugars, 8.22, 8.2)]
    [InlineData(LabelLine.Fat, 0.5, 0)]
    [InlineData(LabelLine.Fat, 0.55, 0.6)]
    [InlineData(LabelLine.Fat, 9.96, 10)]
    [InlineData(LabelLine.SaturatedFat, 0.1, 0)]
    [InlineData(LabelLine.Salt, 0.45, 0.45)]
    [InlineData(LabelLine.Salt, 0.012, 0)]
    [InlineData(LabelLine.Salt, 1.41, 1.4)]
    public void A_maker_prints(LabelLine line, double amount, double printed) =>
        Assert.Equal(printed, EuLabelRounding.Print(line, amount).Number, 1e-12);

    [Fact]
    public void What_is_printed_reads_back_to_hold_the_truth() =>
        Gen.Select(AnyLine, Gen.Double[0, 100])
            .Sample((line, amount) =>
                EuLabelRounding.TrueInterval(line, EuLabelRounding.Print(line, amount)).Contains(amount));

    [Theory]
    // Commission guidance December 2012, tolerances (from memory)
    [InlineData(LabelLine.Protein, 6, 2)]
    [InlineData(LabelLine.Protein, 20, 4)]
    [InlineData(LabelLine.Sugars, 50, 8)]
    [InlineData(LabelLine.Fat, 6, 1.5)]
    [InlineData(LabelLine.Fat, 30, 6)]
    [InlineData(LabelLine.SaturatedFat, 5, 1)]
    [InlineData(LabelLine.SaturatedFat, 3, 0.8)]
    [InlineData(LabelLine.Salt, 1, 0.375)]
    [InlineData(LabelLine.Salt, 2, 0.4)]
    public void Tolerance_is_added_to_both_ends(LabelLine line, double printed, double tolerance)
    {
        PrintedValue value = PrintedValue.Of(printed);
        Interval rounding = EuLabelRounding.TrueInterval(line, value);
        Interval legal = EuLabelTolerance.Widen(line, value, rounding);
        Assert.Equal(rounding.Low - tolerance, legal.Low, 1e-12);
        Assert.Equal(rounding.High + tolerance, legal.High, 1e-12);
    }
}
