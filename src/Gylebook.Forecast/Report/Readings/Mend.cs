using Gylebook.Engine.Readouts;

namespace Gylebook.Forecast.Report.Readings;

/// <summary>A way on from where the brew stands: one correction, or none.</summary>
/// <param name="Words">What to do: "boil 12 min longer".</param>
/// <param name="Minutes">Of work or waiting; null where nobody knows.</param>
/// <param name="Lands">Where the beer lands, as bands.</param>
/// <param name="Off">How far it lands from the plan, in what the models leave open anyway.</param>
public sealed record Mend(string Words, double? Minutes, IReadOnlyList<Landing> Lands, double Off)
{
    /// <summary>In words: "boil 12 min longer: original gravity 1.0452 (1.0431 to 1.0474), planned 1.0450".</summary>
    public string Sentence =>
        Words + (Minutes is { } minutes && minutes != 0 ? Invariant($" ({minutes:+0;−0} min)") : "") + ": " + string.Join("; ", Lands.Select(landing => landing.Sentence));
}

/// <summary>Where a number lands.</summary>
/// <param name="Readout">Which.</param>
/// <param name="Planned">What was planned.</param>
/// <param name="Band">What it would be.</param>
public sealed record Landing(Readout Readout, double Planned, Band Band)
{
    /// <summary>In words.</summary>
    public string Sentence =>
        $"{Readout.Title} {Readout.Digits(Band.Likely)} ({Readout.Digits(Band.Low)} to {Readout.Digits(Band.High)}; planned {Readout.Digits(Planned)})";
}
