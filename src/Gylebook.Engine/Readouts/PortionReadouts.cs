using System.Collections.Concurrent;
using Gylebook.Engine.State;

namespace Gylebook.Engine.Readouts;

/// <summary>What can be told of one portion where the cast is divided, besides its stages.</summary>
public static class PortionReadouts
{
    private static readonly ConcurrentDictionary<int, Readout> OriginalGravities = new();

    /// <summary>Gravity of a portion with all that goes into it, unfermented.</summary>
    /// <param name="portion">Which portion of the run.</param>
    public static Readout OriginalGravity(int portion) => OriginalGravities.GetOrAdd(portion, static portion => new(
        Invariant($"portion.{portion}.originalGravity"), "original gravity, all in", "SG", 4, new(Stage.Ferment, null, portion), (in run) => run.Trace.Unfermented(portion).Gravity));
}
