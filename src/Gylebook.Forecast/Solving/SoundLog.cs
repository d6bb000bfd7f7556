using Gylebook.Engine.Running;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;

namespace Gylebook.Forecast.Solving;

/// <summary>The log that asks besides whether every stage leaves amounts that can be.</summary>
/// <param name="trace">Where what can be read of the run goes.</param>
internal struct SoundLog(RunTrace trace) : IRunLog
{
    private readonly TraceLog _kept = new(trace);

    /// <summary>The first stage that left less than nothing, or no number; null when all are sound.</summary>
    public Stage? Broken { get; private set; }

    /// <inheritdoc/>
    public readonly void Added(Stage stage, int portion, in Wort added) => _kept.Added(stage, portion, added);

    /// <inheritdoc/>
    public readonly void Lost(Stage stage, int portion, Loss what, in Wort lost) => _kept.Lost(stage, portion, what, lost);

    /// <inheritdoc/>
    public void Reached(Stage stage, int portion, in Portion state)
    {
        _kept.Reached(stage, portion, state);
        if (Broken is null && !state.Wort.IsSound)
        {
            Broken = stage;
        }
    }

    /// <inheritdoc/>
    public readonly void Bittered(int addition, double milligrams) => _kept.Bittered(addition, milligrams);
}
