namespace Gylebook.Science.Quantities;

/// <summary>A quantity and the very text it was typed as, so that writing it again changes nothing.</summary>
/// <param name="Value">What the text means.</param>
/// <param name="Text">What was typed: "4.2 kg", "1.068", "66 °C".</param>
/// <typeparam name="T">The quantity.</typeparam>
public readonly record struct Entered<T>(T Value, string Text)
    where T : struct, IQuantity<T>
{
    /// <inheritdoc/>
    public override string ToString() => Text;
}
