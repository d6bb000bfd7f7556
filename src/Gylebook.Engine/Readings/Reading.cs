using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;

namespace Gylebook.Engine.Readings;

/// <summary>A number that was read, ready to be set against the draws: an instrument shows <c>readout · (1 + share) + offset</c>, and scatters about that.</summary>
/// <param name="Id">Stable within a brew: what is drawn for this reading hangs on it.</param>
/// <param name="Readout">Of what number of a run it is.</param>
/// <param name="Value">What was read, in the readout's unit, brought to what the readout means.</param>
/// <param name="ScatterVariance">Of one reading about what the instrument shows, in the unit squared.</param>
/// <param name="Instrument">The instrument, the same in all its readings.</param>
public sealed record Reading(string Id, Readout Readout, double Value, double ScatterVariance, ReadingInstrument Instrument);

/// <summary>How an instrument may be off: parameters that are drawn and learned like any other, about nought.</summary>
/// <param name="Offset">In the unit; null where it has none.</param>
/// <param name="Share">As a share of what is read; null where it has none.</param>
public sealed record ReadingInstrument(Parameter? Offset, Parameter? Share)
{
    /// <summary>One that is never off.</summary>
    public static ReadingInstrument Exact { get; } = new(null, null);

    /// <summary>Those there are.</summary>
    public IEnumerable<Parameter> Parameters => new[] { Offset, Share }.OfType<Parameter>();
}
