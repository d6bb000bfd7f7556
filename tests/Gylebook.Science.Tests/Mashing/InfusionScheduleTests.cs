using CsCheck;
using Gylebook.Science.Mashing;

namespace Gylebook.Science.Tests.Mashing;

public sealed class InfusionScheduleTests
{
    /// <summary>Hand-worked: 5 kg of malt (4 % moisture, 1.694 kJ/kg/K) with 12.5 kg at 50 °C; 98 °C water to 65 °C 6.603 kg, then to 72 °C 5.688 kg. Half a gram of rounding each.</summary>
    [Fact]
    public void Known_steps_share_out_their_own_sum()
    {
        double grain = Infusion.MashKilojoulesPerKelvin(5, 0.04, 0);
        MashStepUp[] steps = [new(50, 65), new(65, 72)];
        double strike = InfusionSchedule.StrikeKilograms(grain, 12.5 + 6.603 + 5.688, steps, 98)!.Value;
        Assert.Equal(12.5, strike, 0.001);
        Assert.Equal(6.603, InfusionSchedule.InfusionKilograms(grain, strike, steps.AsSpan(0, 1), 98), 0.001);
        Assert.Equal(5.688, InfusionSchedule.InfusionKilograms(grain, strike, steps, 98), 0.001);
    }

    /// <summary>
    /// Printed example of the home-brewing literature, from memory: 8 lb with 8 quarts, 104, 140, 158 °F with water of 210 °F: 4.9 and
    /// 5.0 quarts. Its grain takes up 0.2 of a quart a pound (1.745 kJ/kg/K) where ours at 4 % takes 1.694: 3 % of the grain's part, which
    /// is a sixth of the mash: 0.5 % of an infusion, 0.03 quart, beside its rounding of 0.05.
    /// </summary>
    [Fact]
    public void Known_printed_example()
    {
        const double Quart = 0.946353 * 0.9982, Pound = 0.45359237;
        double grain = Infusion.MashKilojoulesPerKelvin(8 * Pound, 0.04, 0);
        const double Water = (210 - 32) / 1.8;
        MashStepUp[] steps = [new(40, 60), new(60, 70)];
        double strike = InfusionSchedule.StrikeKilograms(grain, 17.9 * Quart, steps, Water)!.Value;
        Assert.Equal(4.9, InfusionSchedule.InfusionKilograms(grain, strike, steps.AsSpan(0, 1), Water) / Quart, 0.08);
        Assert.Equal(5.0, InfusionSchedule.InfusionKilograms(grain, strike, steps, Water) / Quart, 0.08);
        Assert.Equal(8.0, strike / Quart, 0.08);
    }

    [Fact]
    public void Balance_the_shares_are_all_the_liquor_and_reach_every_rest() =>
        Gen.Select(Gen.Double[1, 20], Gen.Double[20, 80], Gen.Double[30, 50], Gen.Double[1, 15], Gen.Double[1, 15]).Sample((grist, liquor, first, up, more) =>
        {
            double grain = Infusion.MashKilojoulesPerKelvin(grist, 0.04, 0);
            MashStepUp[] steps = [new(first, first + up), new(first + up, first + up + more)];
            if (InfusionSchedule.StrikeKilograms(grain, liquor, steps, 98) is not { } strike)
            {
                return;
            }

            double heat = grain + (strike * WortHeat.Water), all = strike;
            for (int i = 0; i < steps.Length; i++)
            {
                double infusion = InfusionSchedule.InfusionKilograms(grain, strike, steps.AsSpan(0, i + 1), 98);
                Assert.Equal(steps[i].ToCelsius, Infusion.RestCelsius(heat, steps[i].FromCelsius, infusion, 98), 1e-9);
                heat += infusion * WortHeat.Water;
                all += infusion;
            }

            Assert.Equal(liquor, all, 1e-9 * liquor);
        });

    [Fact]
    public void Limits_too_little_liquor_for_the_steps_is_no_plan()
    {
        Assert.Null(InfusionSchedule.StrikeKilograms(Infusion.MashKilojoulesPerKelvin(20, 0.04, 0), 5, [new(40, 72)], 98));
        Assert.Equal(12, InfusionSchedule.StrikeKilograms(8, 12, [], 98)!.Value, 1e-12);
    }
}
