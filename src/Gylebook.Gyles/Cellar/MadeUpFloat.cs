using Gylebook.Science.Numerics;
using Gylebook.Science.Numerics.Distributions;
using Gylebook.Science.Quantities;

namespace Gylebook.Gyles.Cellar;

/// <summary>A float that there is not: readings of a fermentation that nobody brewed, for trying things out.</summary>
/// <remarks>Gravity falls from start to end as a logistic of time; noise is a bell curve, as wide as a floating sensor's scatter in <c>data/instruments.csv</c>. Everything here is invented.</remarks>
public sealed record MadeUpFloat
{
    private const double NoiseSg = 0.0010, NoiseKelvin = 0.05, WarmestKelvin = 1.5, SpikeSg = 0.02;
    private const double FullVolts = 4.1, VoltsADay = 0.004;

    /// <summary>The word its noise is drawn with.</summary>
    public required string Seed { get; init; }

    /// <summary>When it begins.</summary>
    public required DateTimeOffset From { get; init; }

    /// <summary>Time between two readings.</summary>
    public TimeSpan Every { get; init; } = TimeSpan.FromMinutes(15);

    /// <summary>Gravity at the pitch, SG.</summary>
    public double StartSg { get; init; } = 1.050;

    /// <summary>Gravity at the end, SG.</summary>
    public double EndSg { get; init; } = 1.011;

    /// <summary>Hours until half of the fall is done.</summary>
    public double HalfHours { get; init; } = 44;

    /// <summary>Hours that the steepness is told by: about a ninth of the time in which most of it falls.</summary>
    public double SlopeHours { get; init; } = 11;

    /// <summary>Temperature of the room, °C.</summary>
    public double RoomCelsius { get; init; } = 18;

    /// <summary>Share of readings that are spikes, 0 to 1.</summary>
    public double Spikes { get; init; }

    /// <summary>Hours after which the float hangs; null for never.</summary>
    public double? StuckAfterHours { get; init; }

    /// <summary>That many readings, the first at <see cref="From"/>. The same each time.</summary>
    public IEnumerable<SensorReading> Readings(int count)
    {
        SeededRandom chance = SeededRandom.Of(Seed, "float");
        SpecificGravity? held = null;
        for (int i = 0; i < count; i++)
        {
            DateTimeOffset at = From + (Every * i);
            double hours = (at - From).TotalHours, left = 1 / (1 + Math.Exp((hours - HalfHours) / SlopeHours));
            double gravity = EndSg + ((StartSg - EndSg) * left) + (NoiseSg * StandardNormal.Quantile(Share(ref chance))) + (Share(ref chance) < Spikes ? SpikeSg : 0);
            var shown = SpecificGravity.FromRatio(Math.Round(gravity, 4));
            held = hours < StuckAfterHours || StuckAfterHours is null ? shown : held ?? shown;
            double celsius = RoomCelsius + (4 * WarmestKelvin * left * (1 - left)) + (NoiseKelvin * StandardNormal.Quantile(Share(ref chance)));
            yield return new SensorReading(at, at)
            {
                Gravity = held,
                Temperature = Temperature.FromCelsius(Math.Round(celsius, 2)),
                BatteryVolts = Math.Round(Math.Max(3, FullVolts - (VoltsADay * hours / 24)), 3),
            };
        }
    }

    /// <summary>A number from above 0 to below 1.</summary>
    private static double Share(ref SeededRandom chance) => ((chance.Next() >> 11) + 0.5) * (1.0 / (1L << 53));
}
