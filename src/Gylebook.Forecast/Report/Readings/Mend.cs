using Gylebook.Engine.Readouts;
using Gylebook.Recipes.Lots;

namespace Gylebook.Forecast.Report.Readings;

/// <summary>A way on from where the brew stands: one correction, or none.</summary>
/// <param name="Words">What to do: "boil 12 min longer".</param>
/// <param name="Minutes">Of work or waiting; null where nobody knows.</param>
/// <param name="Lands">Where the beer lands, as bands.</param>
/// <param name="Off">How far it lands from the plan, in what the models leave open anyway.</param>
public sealed record Mend(string Words, double? Minutes, IReadOnlyList<Landing> Lands, double Off)
{
    /// <summary>What is to be done where nothing is.</summary>
    public const string LetBe = "let it be";

    /// <summary>Whether it changes anything.</summary>
    public bool IsChange => Words != LetBe;

    /// <summary>What it costs more than letting it be, by the lots the recipe names; null where they have no price, or nothing is bought for it.</summary>
    public Price? Cost { get; init; }

    /// <summary>Heat it takes at full flame, kW·h; null where nothing is heated, or nobody knows the burner.</summary>
    public double? KilowattHours { get; init; }

    /// <summary>In words: "boil 12 min longer: original gravity 1.0452 (1.0431 to 1.0474), planned 1.0450".</summary>
    public string Sentence => $"{Words}{(Effort.Length > 0 ? $" ({Effort})" : "")}: {string.Join("; ", Lands.Select(landing => landing.Sentence))}";

    /// <summary>What it takes, in words: "+12 min, 0.5 kW·h"; empty where that is nothing, or nobody knows.</summary>
    public string Effort => string.Join(", ", new[]
    {
        Minutes is { } minutes && minutes != 0 ? Invariant($"{minutes:+0;−0} min") : "",
        KilowattHours is { } heat && Math.Abs(heat) >= 0.05 ? Invariant($"{heat:+0.0;−0.0} kW·h at full flame") : "",
        Cost is { } cost && cost.Value != 0 ? Invariant($"{cost.Value:+0.00;−0.00} {cost.Currency}") : "",
    }.Where(part => part.Length > 0));
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
