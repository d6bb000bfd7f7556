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

    /// <summary>Wort through the exchanger: as fast as the kit says, else as fast as still reaches the pitch; null when not known or not to be had.</summary>
    /// <param name="wort">The wort.</param>
    /// <param name="from">As it comes, °C.</param>
    /// <param name="to">The pitch, below that, °C.</param>
    public RunThrough? Through(in HotWort wort, double from, double to)
    {
        if (!wort.IsThere || from <= to || Exchanger is not { } exchanger)
        {
            return null;
        }

        double kilogramsPerLitre = wort.RunOffKilograms / wort.RunOffLitres;
        double? most = exchanger.WortKilogramsPerMinute(wort.KilojoulesPerKilogramKelvin, from, to);
        double? kilograms = kit.Chiller!.WortLitresPerMinute * kilogramsPerLitre ?? most;
        return kilograms is not double run ? null : new RunThrough(
            run / kilogramsPerLitre,
            wort.RunOffKilograms / run,
            exchanger.WortCelsius(run, wort.KilojoulesPerKilogramKelvin, from),
            exchanger.WaterCelsius(run, wort.KilojoulesPerKilogramKelvin, from),
            most / kilogramsPerLitre);
    }
}

/// <summary>A run-off through an exchanger.</summary>
/// <param name="LitresPerMinute">Wort.</param>
/// <param name="Minutes">Until the kettle is empty.</param>
/// <param name="WortCelsius">Wort as it comes out.</param>
/// <param name="WaterCelsius">Water as it comes out.</param>
/// <param name="MostLitresPerMinute">Wort that still comes out at the pitch; null when the water is not that cold.</param>
internal readonly record struct RunThrough(
    double LitresPerMinute, double Minutes, double WortCelsius, double WaterCelsius, double? MostLitresPerMinute);
