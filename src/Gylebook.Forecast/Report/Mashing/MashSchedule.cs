using Gylebook.Recipes;

namespace Gylebook.Forecast.Report.Mashing;

/// <summary>The mash day's rests, and each way to get from one to the next.</summary>
/// <param name="Rests">In order.</param>
/// <param name="InfusionStrike">Strike when the steps are made with hot water out of the same planned liquor; null where that cannot be, or there is one rest.</param>
/// <param name="StrikeHeatMinutes">Minutes to heat the strike liquor from the temperature of the grain; null when the kettle's power is unknown.</param>
/// <param name="BoilHeatMinutes">Minutes from the last rest to the boil; null when unknown or without a boil.</param>
public sealed record MashSchedule(
    IReadOnlyList<MashRest> Rests, InfusionStrike? InfusionStrike, double? StrikeHeatMinutes, double? BoilHeatMinutes)
{
    /// <summary>Liquor the mash starts in, at 20 °C.</summary>
    public required double StrikeLitres { get; init; }

    /// <summary>Its temperature.</summary>
    public required double StrikeCelsius { get; init; }

    /// <summary>Whether the wort is boiled.</summary>
    public required bool HasBoil { get; init; }

    /// <summary>Wort before the boil, at 20 °C.</summary>
    public required double CopperUpLitres { get; init; }

    /// <summary>The boil at the kit's height.</summary>
    public required double BoilCelsius { get; init; }

    /// <summary>The rinse; null for none.</summary>
    public MashRinse? Rinse { get; init; }
}

/// <summary>Rinsing the grain.</summary>
/// <param name="Method">The way of it.</param>
/// <param name="Litres">At 20 °C.</param>
/// <param name="Celsius">Of the liquor; null when unsaid.</param>
public sealed record MashRinse(SpargeMethod Method, double Litres, double? Celsius);

/// <summary>The strike of a mash that is stepped up with hot water.</summary>
/// <param name="Litres">At 20 °C.</param>
/// <param name="Celsius">Its temperature.</param>
public sealed record InfusionStrike(double Litres, double Celsius);

/// <summary>A rest, and how it may be reached from the one before; the first is reached by the strike.</summary>
/// <param name="Celsius">Its temperature.</param>
/// <param name="Minutes">How long.</param>
/// <param name="EndCelsius">What it has fallen to by its end if nobody heats; null when the kit does not say how fast it cools.</param>
/// <param name="InfusionLitres">Hot water to add, litres at 20 °C; null where it cannot be, or for the first rest.</param>
/// <param name="InfusionCelsius">Temperature of that water: the boil at this height.</param>
/// <param name="HeatMinutes">Minutes of full heat; null in a tun, or when the power is unknown.</param>
/// <param name="DecoctionShare">Share of the mash to take out, boil and give back, without losses; null for the first rest.</param>
/// <param name="DecoctionKilograms">The same, kg.</param>
public sealed record MashRest(
    double Celsius, double Minutes, double? EndCelsius, double? InfusionLitres, double? InfusionCelsius, double? HeatMinutes,
    double? DecoctionShare, double? DecoctionKilograms)
{
    /// <summary>Share of the alpha-amylase that is left at its end, 0 to 1.</summary>
    public double AlphaLeft { get; init; }

    /// <summary>Share of the beta-amylase that is left at its end, 0 to 1.</summary>
    public double BetaLeft { get; init; }
}
