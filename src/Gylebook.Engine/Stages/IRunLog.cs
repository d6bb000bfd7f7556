using Gylebook.Engine.State;

namespace Gylebook.Engine.Stages;

/// <summary>Who watches a run: the page wants all of it, the ensemble nothing.</summary>
/// <remarks>
/// Handed over as a struct, so that a log that keeps nothing costs nothing. What enters and what leaves is told here and
/// summed outside the stages: no stage can hide a loss in a remainder.
/// </remarks>
public interface IRunLog
{
    /// <summary>Something entered a portion.</summary>
    void Added(Stage stage, int portion, in Wort added);

    /// <summary>Something left for good.</summary>
    void Lost(Stage stage, int portion, Loss what, in Wort lost);

    /// <summary>A stage is over; this is what it left.</summary>
    void Reached(Stage stage, int portion, in Portion state);

    /// <summary>A hop's bitterness was settled, at knock-out.</summary>
    void Bittered(int addition, double milligrams);
}

/// <summary>The log of one run of thousands: it keeps nothing.</summary>
public readonly struct NoLog : IRunLog
{
    /// <inheritdoc/>
    public void Added(Stage stage, int portion, in Wort added)
    {
    }

    /// <inheritdoc/>
    public void Lost(Stage stage, int portion, Loss what, in Wort lost)
    {
    }

    /// <inheritdoc/>
    public void Reached(Stage stage, int portion, in Portion state)
    {
    }

    /// <inheritdoc/>
    public void Bittered(int addition, double milligrams)
    {
    }
}
