namespace Gylebook.Science.Foods.Doses;

/// <summary>A limit somebody published.</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">Its unit: <c>mg/L</c>.</param>
/// <param name="Meaning">What happens there, in plain words.</param>
/// <param name="Source">Who says so; "from memory" or "common practice, no source" where that is all there is.</param>
public sealed record PublishedLimit(double Value, string Unit, string Meaning, string Source);

/// <summary>Refuses arguments that no dose can have.</summary>
internal static class Require
{
    public static double NotNegative(double value, string name) => value >= 0 && double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(name, value, "Expected 0 or more, finite.");

    public static double Positive(double value, string name) => value > 0 && double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(name, value, "Expected more than 0, finite.");

    public static double Share(double value, string name) => value is >= 0 and <= 1
        ? value
        : throw new ArgumentOutOfRangeException(name, value, "Expected a share from 0 to 1.");
}
