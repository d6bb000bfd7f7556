using Gylebook.Recipes;
using Gylebook.Science.Boiling;
using Gylebook.Science.Conditioning;
using Gylebook.Science.Numerics.Distributions;
using Gylebook.Science.Quantities;

namespace Gylebook.Verbs;

/// <summary>What somebody asked of <c>carbonate</c>, read; every option that is wrong is a finding.</summary>
internal sealed class CarbonateQuestion
{
    private const double MostBar = 10, MostVolumes = 10, MostHours = 720, MostLitres = 1000;

    /// <summary>Warmest an ordinary ferment leaves flat beer, for who says nothing of the gas in it.</summary>
    private const double UsualFermentCelsius = 20;

    private readonly OptionReader _options = new();

    private CarbonateQuestion(CarbonateVerb.Settings asked)
    {
        Celsius = _options.Quantity<Temperature>("--temperature", asked.Temperature)?.Celsius ?? 0;
        _options.Within("--temperature", Celsius, -2, 40, "°C");
        double metres = asked.Altitude is { } typed ? _options.Quantity<Length>("--altitude", typed)?.Metres ?? 0 : 0;
        _options.Within("--altitude", metres, -400, 5000, "m");
        AirBar = BoilingPoint.PressureKilopascals(Math.Clamp(metres, -400, 5000)) / 100;
        string[] ways = [.. new[] { ("--pressure", asked.Pressure), ("--volumes", asked.Volumes), ("--burst", asked.Burst) }.Where(way => way.Item2 is not null).Select(way => way.Item1)];
        if (ways.Length != 1)
        {
            _options.Wrong("options.one", ways.Length == 0 ? "--pressure" : ways[^1], Invariant($"{ways.Length} of --pressure, --volumes and --burst; must be exactly one"), null);
        }

        GaugeBar = Pressure("--pressure", asked.Pressure) ?? Pressure("--burst", asked.Burst);
        Wanted = asked.Volumes is { } wanted ? Carbonated("--volumes", wanted) : null;
        IsBurst = asked.Burst is not null;
        IsShaken = asked.Shaken;
        ReadBurst(asked);
    }

    public IReadOnlyList<Finding> Findings => _options.Findings;

    public double Celsius { get; }

    public double AirBar { get; }

    /// <summary>Gauge told, bar; null where it is asked for.</summary>
    public double? GaugeBar { get; }

    /// <summary>Volumes told; null where they are asked for.</summary>
    public double? Wanted { get; }

    public bool IsBurst { get; }

    public bool IsShaken { get; }

    public double Hours { get; private set; }

    public double Litres { get; private set; } = BurstCarbonation.UsualLitres;

    /// <summary>Volumes in the beer before a burst.</summary>
    public double Start { get; private set; }

    public static CarbonateQuestion Read(CarbonateVerb.Settings asked) => new(asked);

    /// <summary>The gauge that was told, or that keeps what is wanted, bar.</summary>
    public double Gauge() => GaugeBar ?? KegPressure.GaugeBar(Wanted!.Value, Celsius, AirBar);

    /// <summary>What the beer would come to under that gauge, volumes.</summary>
    public double End() => KegPressure.VolumesAt(Gauge(), Celsius, AirBar);

    /// <summary>What it holds after the burst, volumes.</summary>
    public Quantiles Burst() => BurstCarbonation.After(Start, End(), Hours, Litres, IsShaken);

    private void ReadBurst(CarbonateVerb.Settings asked)
    {
        string[] stray = [.. new[] { ("--hours", asked.Hours), ("--into", asked.Into), ("--start", asked.Start), ("--shaken", asked.Shaken ? "" : null) }.Where(option => option.Item2 is not null).Select(option => option.Item1)];
        if (!IsBurst)
        {
            if (stray.Length > 0)
            {
                _options.Wrong("options.burst", stray[0], "belongs to --burst; at rest under a steady gauge time does not count", null);
            }

            return;
        }

        if (asked.Hours is null)
        {
            _options.Wrong("options.hours", "--hours", Invariant($"missing; --burst needs hours from 0 to {MostHours}"), null);
        }

        Hours = asked.Hours is { } hours ? HoursOf(hours) : 0;
        _options.Within("--hours", Hours, 0, MostHours, "h");
        Litres = asked.Into is { } into ? _options.Quantity<VolumeAt20C>("--into", into)?.Litres ?? Litres : Litres;
        _options.Within("--into", Litres, 0.1, MostLitres, "L");
        Start = asked.Start is { } start
            ? Carbonated("--start", start) ?? 0
            : ResidualCarbonDioxide.VolumesAt(UsualFermentCelsius, AirBar * 100);
    }

    private double? Pressure(string option, string? text)
    {
        double? bar = text is null ? null : _options.Quantity<GaugePressure>(option, text)?.Bar;
        _options.Within(option, bar ?? 0, 0, MostBar, "bar");
        return bar;
    }

    /// <summary>Volumes, with the unit or bare.</summary>
    private double? Carbonated(string option, string text)
    {
        bool isBare = text.Length > 0 && (char.IsAsciiDigit(text.Trim()[^1]) || text.Trim()[^1] is '.' or ',');
        double? volumes = isBare
            ? _options.Number(option, text, Invariant($"must be volumes from 0 to {MostVolumes}"))
            : _options.Quantity<Carbonation>(option, text)?.Volumes;
        _options.Within(option, volumes ?? 0, 0, MostVolumes, "volumes");
        return volumes;
    }

    /// <summary>Hours, bare or with a unit of time.</summary>
    private double HoursOf(string text) => text.Length > 0 && char.IsAsciiDigit(text.Trim()[^1])
        ? _options.Number("--hours", text, Invariant($"must be hours from 0 to {MostHours}")) ?? 0
        : (_options.Quantity<Duration>("--hours", text)?.Minutes ?? 0) / 60;
}
