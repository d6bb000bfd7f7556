using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;

namespace Gylebook.Engine.Ensembles;

/// <summary>How wrong a number may be besides all that is uncertain of what goes into it: what the model itself leaves open. Added after the run.</summary>
/// <param name="Parameter">What is drawn: about nought, or about one where it multiplies.</param>
/// <param name="Readout">The number it moves.</param>
/// <param name="PerUnit">By how much for a unit of the parameter; 1 for the term of the number itself.</param>
/// <param name="Multiplies">Whether the number is multiplied by it.</param>
public sealed record ModelTerm(Parameter Parameter, Readout Readout, double PerUnit = 1, bool Multiplies = false);
