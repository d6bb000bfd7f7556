using Gylebook.Science.Quantities;

namespace Gylebook.Gyles.Cellar;

/// <summary>What a device said once, as it said it: neither calibrated nor judged.</summary>
/// <param name="At">When, by the device's own clock.</param>
/// <param name="Arrived">When the book took it.</param>
public readonly record struct SensorReading(DateTimeOffset At, DateTimeOffset Arrived)
{
    /// <summary>Gravity as the device showed it; null where it measures none.</summary>
    public SpecificGravity? Gravity { get; init; }

    /// <summary>Temperature of what it swims in or hangs beside.</summary>
    public Temperature? Temperature { get; init; }

    /// <summary>Pressure on the gauge of the vessel.</summary>
    public GaugePressure? Pressure { get; init; }

    /// <summary>Its battery, V.</summary>
    public double? BatteryVolts { get; init; }

    /// <summary>The device's own number for it, so that one sent again is known whatever its time says; null when it gives none.</summary>
    public string? Id { get; init; }

    /// <summary>Whether it says anything about the beer; a battery alone does not.</summary>
    public bool SaysSomething => Gravity is not null || Temperature is not null || Pressure is not null;
}
