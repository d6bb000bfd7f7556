namespace Gylebook.Gyles.Cellar;

/// <summary>Who said it.</summary>
public enum CellarSource
{
    /// <summary>Somebody read an instrument and typed it.</summary>
    Hand,

    /// <summary>A device sent it.</summary>
    Device,
}

/// <summary>What is odd about a point. Nothing is left out for it: who draws marks it, who fits passes it over.</summary>
[Flags]
public enum Oddities
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>The gravity has not moved at all for half a day while something else did: the float may hang on the wall or in the foam.</summary>
    Stuck = 1,

    /// <summary>The gravity stands far from its neighbours on both sides.</summary>
    Spike = 2,

    /// <summary>The temperature does.</summary>
    TemperatureSpike = 4,

    /// <summary>It was taken before the yeast went in.</summary>
    BeforePitch = 8,

    /// <summary>It was taken after the beer was packaged.</summary>
    AfterPackage = 16,

    /// <summary>By its time it is not yet.</summary>
    InFuture = 32,

    /// <summary>The first after a long silence: nothing is known of what lies between.</summary>
    AfterSilence = 64,
}

/// <summary>One point of a fermentation: calibrated, and on the true clock as far as that is known.</summary>
/// <param name="At">When.</param>
/// <param name="Source">Who said it.</param>
/// <param name="Instrument">With what: the device's name, or the instrument's.</param>
public sealed record CellarPoint(DateTimeOffset At, CellarSource Source, string Instrument)
{
    /// <summary>Gravity, SG at 20 °C; null where none was read.</summary>
    public double? GravitySg { get; init; }

    /// <summary>Temperature, °C.</summary>
    public double? TemperatureC { get; init; }

    /// <summary>Pressure on the gauge, bar.</summary>
    public double? PressureBar { get; init; }

    /// <summary>Standard deviation of the gravity, SG: scatter and offset of the instrument together; 0 without a gravity.</summary>
    public double GravitySd { get; init; }

    /// <summary>What is odd about it.</summary>
    public Oddities Flags { get; init; }

    /// <summary>Whether a fit may trust its gravity.</summary>
    public bool IsGoodGravity => GravitySg is not null && (Flags & ~(Oddities.AfterSilence | Oddities.TemperatureSpike)) == 0;
}
