using CsCheck;
using Gylebook.Science.Foods.Doses;

namespace Gylebook.Science.Tests.Foods;

public class DoseTests
{
    [Theory]
    // Henderson–Hasselbalch with handbook pKa values, printed to two digits (SO2 to one significant digit): half of the last
    [InlineData(PreservativeDose.SorbicPKa, 3.3, 0.97, 0.005)]
    [InlineData(PreservativeDose.SorbicPKa, 4.2, 0.78, 0.005)]
    [InlineData(PreservativeDose.SorbicPKa, 4.5, 0.65, 0.005)]
    [InlineData(PreservativeDose.SorbicPKa, 5.2, 0.27, 0.005)]
    [InlineData(PreservativeDose.BenzoicPKa, 3.3, 0.89, 0.005)]
    [InlineData(PreservativeDose.BenzoicPKa, 4.2, 0.50, 0.005)]
    [InlineData(PreservativeDose.BenzoicPKa, 4.5, 0.33, 0.005)]
    [InlineData(PreservativeDose.BenzoicPKa, 5.2, 0.09, 0.005)]
    [InlineData(PreservativeDose.SulphurousPKa, 3.3, 0.031, 0.0005)]
    [InlineData(PreservativeDose.SulphurousPKa, 4.2, 0.004, 0.0005)]
    [InlineData(PreservativeDose.SulphurousPKa, 4.5, 0.002, 0.0005)]
    [InlineData(PreservativeDose.SulphurousPKa, 5.2, 0.0004, 0.00005)]
    public void Undissociated_share_of_the_acid(double pKa, double pH, double share, double tolerance) =>
        Assert.Equal(share, PreservativeDose.UndissociatedFraction(pH, pKa), tolerance);

    [Fact]
    public void Half_is_undissociated_at_the_pKa_and_less_above_it()
    {
        Assert.Equal(0.5, PreservativeDose.UndissociatedFraction(4.76, 4.76), 1e-15);
        Gen.Select(Gen.Double[0, 13], Gen.Double[0.001, 1]).Sample((pH, step) =>
            PreservativeDose.UndissociatedFraction(pH + step, 4.76) < PreservativeDose.UndissociatedFraction(pH, 4.76));
    }

    [Fact]
    public void Preservative_of_a_puree_in_a_batch()
    {
        // 1 kg with 1000 mg/kg in 20 L; 5 kg of it; 0.5 kg of dried fruit with 2000 mg/kg of SO2 (EU maximum, from memory)
        Assert.Equal(50, PreservativeDose.MilligramsPerLitre(1, 1000, 20), 1e-12);
        Assert.Equal(250, PreservativeDose.MilligramsPerLitre(5, 1000, 20), 1e-12);
        double sulphurDioxide = PreservativeDose.MilligramsPerLitre(0.5, 2000, 20);
        Assert.Equal(50, sulphurDioxide, 1e-12);
        Assert.True(sulphurDioxide > PreservativeDose.SulphiteDeclaration.Value);
    }

    [Fact]
    public void Sorbic_acid_in_potassium_sorbate() =>
        // OIV 200 mg/L of sorbic acid is 268 mg/L of potassium sorbate, printed to 1 mg
        Assert.Equal(268, PreservativeDose.SorbicFungistatic.Value / PreservativeDose.SorbicPerPotassiumSorbate, 0.5);

    [Theory]
    // USDA SR26: cocoa powder 230 mg caffeine and 2057 mg theobromine per 100 g, instant coffee 3142 mg; coffee 1.2 %, 85 % extracted
    [InlineData(10, 230, 1, 23, 0.5)]
    [InlineData(10, 2057, 1, 206, 0.5)]
    [InlineData(1, 3142, 1, 31, 0.5)]
    [InlineData(10, 1200, 0.85, 102, 0.5)]
    public void Caffeine_in_the_drink(double gramsPerLitre, double content, double extracted, double expected, double tolerance) =>
        Assert.Equal(expected, CaffeineDose.MilligramsPerLitre(gramsPerLitre, content, extracted), tolerance);

    [Fact]
    public void The_table_of_stimulants_holds_a_food_once_and_plausible_numbers()
    {
        string[] rows =
        [
            .. File.ReadLines(CompositionRow.RepositoryFile("data/foods-stimulants.csv")).Where(line => !line.StartsWith('#')).Skip(1),
        ];
        Assert.Equal(8, rows.Length);
        Assert.Equal(rows.Length, rows.Select(row => row[..row.LastIndexOf(',')]).Distinct().Count());
        Assert.Contains("\"cocoa powder, unsweetened\",230,2057", rows);
    }

    [Fact]
    public void A_days_caffeine_and_none()
    {
        Assert.Equal(4, CaffeineDose.LitresForADay(100), 1e-12);
        Assert.Equal(double.PositiveInfinity, CaffeineDose.LitresForADay(0));
    }

    [Fact]
    public void A_gram_of_cassia_a_litre_is_two_litres_a_day_for_60_kg()
    {
        // EFSA 2008: 0.1 mg per kg a day; cassia at 3 g/kg
        double coumarin = CoumarinDose.MilligramsPerLitre(1, 3);
        Assert.Equal(3, coumarin, 1e-12);
        Assert.Equal(2, CoumarinDose.LitresForADay(coumarin, 60), 1e-12);
        Assert.True(CoumarinDose.CassiaGramsPerKilogram.Contains(3));
        Assert.False(CoumarinDose.CeylonGramsPerKilogram.Contains(3));
    }

    [Fact]
    public void The_nutmeg_cap_keeps_twenty_litres_at_the_toxic_dose()
    {
        Assert.Equal(20, NutmegDose.LitresForToxicDose(NutmegDose.AdvisedCap.Value), 1e-12);
        Assert.Equal(double.PositiveInfinity, NutmegDose.LitresForToxicDose(0));
    }

    [Fact]
    public void Impossible_doses_are_a_bug()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PreservativeDose.UndissociatedFraction(double.NaN, 4));
        Assert.Throws<ArgumentOutOfRangeException>(() => PreservativeDose.UndissociatedFraction(4, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => PreservativeDose.MilligramsPerLitre(1, 1000, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => CaffeineDose.MilligramsPerLitre(1, 100, 1.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => CoumarinDose.MilligramsPerLitre(-1, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => NutmegDose.LitresForToxicDose(double.PositiveInfinity));
    }

    [Fact]
    public void Every_published_limit_names_its_source() => Assert.All(
        new[]
        {
            PreservativeDose.SorbicFungistatic, PreservativeDose.BenzoateLegal, PreservativeDose.BenzoateHoldsYeast,
            PreservativeDose.SulphurDioxideDelays, PreservativeDose.SulphiteDeclaration, CaffeineDose.AdultsADay,
            CoumarinDose.TolerableDailyIntake, NutmegDose.Toxic, NutmegDose.AdvisedCap,
        },
        limit => Assert.False(string.IsNullOrWhiteSpace(limit.Source) || string.IsNullOrWhiteSpace(limit.Meaning)));
}
