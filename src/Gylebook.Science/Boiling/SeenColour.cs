
namespace Gylebook.Science.Boiling;

/// <summary>A colour, and the nearest a screen can come to it.</summary>
/// <remarks>
/// <para>Source: IEC 61966-2-1 (sRGB), matrix of four decimals and the transfer curve as printed there.</para>
/// <para>Notes: channels outside 0 to 1 are clipped one by one; hue shifts a little where that happens.</para>
/// </remarks>
/// <param name="Tristimulus">The colour itself.</param>
/// <param name="Red">sRGB red, 0 to 255.</param>
/// <param name="Green">sRGB green, 0 to 255.</param>
/// <param name="Blue">sRGB blue, 0 to 255.</param>
/// <param name="InGamut">Whether a screen can show it: no channel had to be clipped.</param>
public readonly record struct SeenColour(Tristimulus Tristimulus, byte Red, byte Green, byte Blue, bool InGamut)
{
    // Half a step of the 8-bit scale at its dark end, in linear light: less than this is rounding, not clipping.
    private const double HalfAStep = 0.5 / 255 / 12.92;

    /// <summary>The screen colour as <c>#RRGGBB</c>.</summary>
    public string Hex => Invariant($"#{Red:X2}{Green:X2}{Blue:X2}");

    internal static SeenColour FromTristimulus(Tristimulus colour)
    {
        double x = colour.X / 100;
        double y = colour.Y / 100;
        double z = colour.Z / 100;
        double red = (3.2406 * x) - (1.5372 * y) - (0.4986 * z);
        double green = (-0.9689 * x) + (1.8758 * y) + (0.0415 * z);
        double blue = (0.0557 * x) - (0.2040 * y) + (1.0570 * z);
        bool inGamut = Fits(red) && Fits(green) && Fits(blue);
        return new SeenColour(colour, Channel(red), Channel(green), Channel(blue), inGamut);
    }

    private static bool Fits(double linear) => linear >= -HalfAStep && linear <= 1 + HalfAStep;

    private static byte Channel(double linear)
    {
        double clipped = Math.Clamp(linear, 0, 1);
        double curved = clipped <= 0.0031308 ? 12.92 * clipped : (1.055 * Math.Pow(clipped, 1 / 2.4)) - 0.055;
        return (byte)Math.Round(255 * curved);
    }
}
