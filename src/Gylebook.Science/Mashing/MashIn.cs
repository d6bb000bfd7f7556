namespace Gylebook.Science.Mashing;

/// <summary>What comes together when grain meets strike liquor.</summary>
public readonly record struct MashIn
{
    /// <summary>Grain as weighed, kg.</summary>
    public required double GrainKilograms { get; init; }

    /// <summary>Its moisture, 0.04 for 4 %.</summary>
    public required double GrainMoisture { get; init; }

    /// <summary>Its temperature, °C.</summary>
    public required double GrainCelsius { get; init; }

    /// <summary>Strike liquor, kg.</summary>
    public required double LiquorKilograms { get; init; }

    /// <summary>Heat the vessel takes up per degree, kJ/K. 0 for a vessel heated with its liquor.</summary>
    public double VesselKilojoulesPerKelvin { get; init; }

    /// <summary>Temperature of the vessel before the liquor goes in, °C.</summary>
    public double VesselCelsius { get; init; }

    /// <summary>How much the mash warms itself as the dry grain takes up water, K.</summary>
    public double SlakingKelvins { get; init; }

    internal double GrainKilojoulesPerKelvin => GrainKilograms * WortHeat.OfMalt(GrainMoisture);

    internal double LiquorKilojoulesPerKelvin => LiquorKilograms * WortHeat.Water;

    internal void Check()
    {
        Argument.MustNotBeNegative(GrainKilograms);
        Argument.MustBePositive(LiquorKilograms);
        Argument.MustBeWithin(GrainCelsius, -50, 150);
        Argument.MustNotBeNegative(VesselKilojoulesPerKelvin);
        Argument.MustBeWithin(VesselCelsius, -50, 150);
        Argument.MustBeWithin(SlakingKelvins, 0, 10);
    }
}
