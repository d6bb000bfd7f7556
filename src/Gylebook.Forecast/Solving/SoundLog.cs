using Gylebook.Forecast.Running;
using Gylebook.Forecast.State;

namespace Gylebook.Forecast.Solving;

/// <summary>The log that only asks whether every stage leaves amounts that can be.</summary>
internal struct SoundLog : IRunLog
{
    /// <summary>The first stage that left less than nothing, or no number; null when all are sound.</summary>
    public Stage? Broken { get; private set; }

    /// <inheritdoc/>
    public readonly void Added(Stage stage, int portion, in Wort added)
    {
    }

    /// <inheritdoc/>
    public readonly void Lost(Stage stage, int portion, Loss what, in Wort lost)
    {
    }

    /// <inheritdoc/>
    public void Reached(Stage stage, int portion, in Portion state)
    {
        if (Broken is null && !state.Wort.IsSound)
        {
            Broken = stage;
        }
    }

    /// <inheritdoc/>
    public readonly void Bittered(int addition, double milligrams)
    {
    }
}
