using Gylebook.Engine.Readouts;

namespace Gylebook.Forecast.Treating;

/// <summary>Acid that brings the wort in the kettle to a pH.</summary>
/// <param name="From">pH before, at 20 °C: as measured, or the mash's.</param>
/// <param name="Measured">Whether a meter said so.</param>
/// <param name="To">pH wanted.</param>
/// <param name="Amount">mL (g of a powder), at the ends of the wort buffers in print and of the pH before.</param>
/// <param name="Units">What to measure out: the likely amount in steps of the measure, within the limit.</param>
public sealed record WortSouring(Band From, bool Measured, double To, Band Amount, double Units);
