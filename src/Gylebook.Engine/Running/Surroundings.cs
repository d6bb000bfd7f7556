using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;

namespace Gylebook.Engine.Running;

/// <summary>What of kit and recipe moves no mass, and yet decides what is told: heat, chilling, gas, cells.</summary>
public sealed record Surroundings
{
    /// <summary>How warm each stage was meant to be, °C; null where nobody knows. The strike's is not meant, it follows.</summary>
    public required IReadOnlyDictionary<Stage, double> Celsius { get; init; }

    /// <summary>Where wort boils at the kit's height, °C.</summary>
    public required double BoilCelsius { get; init; }

    /// <summary>The mash's heat; null without a mash.</summary>
    public MashHeatPlan? Mash { get; init; }

    /// <summary>How the wort is brought down; null when it is not, or when the kit does not say how.</summary>
    public ChillPlan? Chill { get; init; }

    /// <summary>The keg's cold and the air around it; null unless gas comes from a cylinder.</summary>
    public KegPlan? Keg { get; init; }

    /// <summary>The yeast pitched; null when none is.</summary>
    public PitchPlan? Pitch { get; init; }
}

/// <summary>The heat of a mash.</summary>
/// <param name="GristKilograms">All that is stirred into the strike liquor, as weighed.</param>
/// <param name="RoomCelsius">Grain and vessel before it.</param>
/// <param name="VesselKilojoulesPerKelvin">What a vessel takes up that starts cold; 0 for a bag in the warm kettle.</param>
/// <param name="FirstRestCelsius">Where it is to stand.</param>
/// <param name="Kilowatts">Rated power of the kettle; null when unknown.</param>
/// <param name="BoilFromCelsius">From where it is brought to the boil; null without one.</param>
public sealed record MashHeatPlan(
    double GristKilograms, double RoomCelsius, double VesselKilojoulesPerKelvin, double FirstRestCelsius, double? Kilowatts,
    double? BoilFromCelsius)
{
    /// <summary>Hours in which the mash's warmth over the room falls to 1/e; null when the kit does not say.</summary>
    public double? CoolingHours { get; init; }

    /// <summary>Whether it stands in a vessel that nothing heats.</summary>
    public bool IsInTun { get; init; }

    /// <summary>How warm the rinse is meant to be, °C; null without one, or when unsaid.</summary>
    public double? RinseCelsius { get; init; }
}

/// <summary>A keg under gas.</summary>
/// <param name="Celsius">Its temperature.</param>
/// <param name="AirBar">The air at the kit's height, bar.</param>
public sealed record KegPlan(double Celsius, double AirBar);

/// <summary>Yeast that is pitched.</summary>
/// <param name="Rate">Cells wanted, 10^6/mL/°P.</param>
/// <param name="Yeasts">What is pitched.</param>
public sealed record PitchPlan(double Rate, IReadOnlyList<PitchedYeast> Yeasts);

/// <summary>One yeast that is pitched.</summary>
/// <param name="Billions">Cells when it was packed; null when they follow from its grams or millilitres, or are unknown.</param>
/// <param name="Amount">Grams of dry yeast, or millilitres of slurry; 0 for what is told in cells.</param>
/// <param name="CellsPerUnit">Where cells to a gram or a millilitre stand; null for what is told in cells.</param>
/// <param name="ViableLow">Share alive by the harsher of two rules.</param>
/// <param name="ViableHigh">Share alive by the milder.</param>
public sealed record PitchedYeast(double? Billions, double Amount, Known? CellsPerUnit, double ViableLow, double ViableHigh);
