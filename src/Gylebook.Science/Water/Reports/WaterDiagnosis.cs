namespace Gylebook.Science.Water;

/// <summary>Something doubtful in a water or in its treatment, as data.</summary>
/// <param name="Code">Stable name: <c>water.chargeBalance</c>.</param>
/// <param name="Message">What is wrong and what to do, in plain words.</param>
/// <param name="Value">The number that gave it away.</param>
/// <param name="Limit">What it ran into.</param>
/// <param name="Unit">Unit of both.</param>
public sealed record WaterDiagnosis(string Code, string Message, double Value, double Limit, string Unit);
