using Gylebook.Engine.Running;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Cooling;

namespace Gylebook.Forecast.Cooling;

/// <summary>How a kit brings its wort down, as far as it says.</summary>
internal sealed class WortChill(Kit kit)
{
    /// <summary>The kind; null for a word nobody knows.</summary>
    public ChillerKind? Kind => kit.Chiller is { } chiller ? chiller.Means : ChillerKind.None;

    /// <summary>As told: the kit's own word.</summary>
    public string Word => kit.Chiller?.Kind ?? "none";

    /// <summary>Whether wort runs through it out of a kettle that stays hot.</summary>
    public bool RunsThrough => Kind.RunsThrough();

    /// <summary>Hours in which a closed vessel's warmth over the room falls to 1/e; null when the kit does not say, or when it has a chiller.</summary>
    public double? AloneHours => Kind == ChillerKind.None ? kit.WortCooling?.Value.Hours : null;

    /// <summary>The room is taken to be as warm as the grain, °C.</summary>
    public double Room => kit.GrainTemperature.Value.Celsius;

    /// <summary>What cools the wort, °C; null when nobody knows.</summary>
    public double? CoolerCelsius => Kind == ChillerKind.None ? Room : kit.Chiller?.Coolant?.Value.Celsius;

    /// <summary>Cooling water, L/min; null when unknown or none.</summary>
    public double? WaterLitresPerMinute => Kind == ChillerKind.None ? null : kit.Chiller?.LitresPerMinute;

    /// <summary>A coil whose figures are known.</summary>
    public ImmersionChiller? Coil => Kind == ChillerKind.Immersion && Figures is (double wall, double flow, double celsius)
        ? new ImmersionChiller(wall, flow, celsius)
        : null;

    /// <summary>An exchanger that wort runs through, whose figures are known.</summary>
    public CounterflowChiller? Exchanger => RunsThrough && Figures is (double wall, double flow, double celsius)
        ? new CounterflowChiller(wall, flow, celsius)
        : null;

    /// <summary>Keys of the kit without which nothing is known.</summary>
    public IReadOnlyList<string> Needs => Kind switch
    {
        null => ["chiller.kind"],
        ChillerKind.None => kit.WortCooling is null ? ["wortCooling"] : [],
        _ =>
        [
            .. kit.Chiller!.Coolant is null ? ["chiller.coolant"] : Array.Empty<string>(),
            .. kit.Chiller.LitresPerMinute is null ? ["chiller.litresPerMinute"] : Array.Empty<string>(),
            .. kit.Chiller.KilowattsPerKelvin is null ? ["chiller.kilowattsPerKelvin"] : Array.Empty<string>(),
        ],
    };

    private (double Wall, double Flow, double Celsius)? Figures =>
        kit.Chiller is { KilowattsPerKelvin: { } wall, LitresPerMinute: { } flow, Coolant: { } coolant } ? (wall, flow, coolant.Value.Celsius) : null;

    /// <summary>The plan of it from one temperature down to another, °C.</summary>
    public ChillPlan From(double celsius, double to) => new(celsius, to)
    {
        Coil = Coil,
        Exchanger = Exchanger is { } exchanger ? (exchanger, kit.Chiller!.WortLitresPerMinute) : null,
        Alone = AloneHours is { } hours ? (Room, hours) : null,
    };
}
