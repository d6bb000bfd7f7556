namespace Gylebook.Science.Quantities;

/// <summary>Colour of wort or beer: 12.7 times its absorbance at 430 nm through 1 cm.</summary>
/// <remarks>
/// Kept in SRM; from 0 to 10000. <c>default</c> is colourless.
/// </remarks>
public readonly record struct BeerColour : IQuantity<BeerColour>
{
    private BeerColour(double srm) => Srm = Limits.Check(srm);

    /// <inheritdoc/>
    public static QuantityLimits Limits { get; } = new("BeerColour", "SRM", 0, 10000);

    /// <summary>The value in SRM.</summary>
    public double Srm { get; }

    /// <summary>The same in ebc.</summary>
    public double Ebc => Srm * (25 / 12.7);

    /// <summary>A value stated in SRM.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside <see cref="Limits"/>.</exception>
    public static BeerColour FromSrm(double srm) => new(srm);

    /// <summary>A value stated in ebc.</summary>
    public static BeerColour FromEbc(double ebc) => new(ebc / (25 / 12.7));

    /// <inheritdoc/>
    public double Canonical => Srm;

    /// <inheritdoc/>
    public static BeerColour FromCanonical(double value) => new(value);

    /// <inheritdoc/>
    public int CompareTo(BeerColour other) => Srm.CompareTo(other.Srm);

    /// <inheritdoc/>
    public override string ToString() => Limits.Format(Srm);
}
