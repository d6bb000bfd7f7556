namespace Gylebook.Science.Quantities;

/// <summary>Colour of a malt as its certificate states it, on the EBC laboratory wort.</summary>
/// <remarks>
/// Kept in EBC; from 0 to 5000. <c>default</c> is colourless.
/// Not a <see cref="BeerColour"/>: the two scales share a name and not a meaning.
/// </remarks>
public readonly record struct MaltColour : IQuantity<MaltColour>
{
    private MaltColour(double ebc) => Ebc = Limits.Check(ebc);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("MaltColour", "EBC", 0, 5000);

    /// <summary>The value in EBC.</summary>
    public double Ebc { get; }

    /// <summary>A value stated in EBC.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static MaltColour FromEbc(double ebc) => new(ebc);

    /// <summary>The same colour in degrees Lovibond, (EBC + 1.2) / 2.65. Common practice; see <c>docs/science/colour.md</c>.</summary>
    public double Lovibond => (Ebc + 1.2) / 2.65;

    /// <summary>A malt colour stated in degrees Lovibond, from 0.453 °L (0 EBC) up.</summary>
    public static MaltColour FromLovibond(double lovibond) => FromEbc((2.65 * lovibond) - 1.2);

    /// <inheritdoc/>
    public double Canonical => Ebc;

    /// <inheritdoc/>
    public static MaltColour FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(MaltColour other) => Ebc.CompareTo(other.Ebc);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Ebc);
}
