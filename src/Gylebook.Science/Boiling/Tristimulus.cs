namespace Gylebook.Science.Boiling;

/// <summary>A colour as the CIE 1931 standard observer sees it.</summary>
/// <param name="X">Red share of the sum.</param>
/// <param name="Y">Brightness: 100 for the light itself.</param>
/// <param name="Z">Blue share of the sum.</param>
public readonly record struct Tristimulus(double X, double Y, double Z)
{
    /// <summary>The same in CIELAB, where equal steps look about equal.</summary>
    /// <remarks>Source: ISO/CIE 11664-4.</remarks>
    /// <param name="white">The colour of the light.</param>
    public CielabColour ToCielab(Tristimulus white)
    {
        double fx = Stretch(X / white.X);
        double fy = Stretch(Y / white.Y);
        double fz = Stretch(Z / white.Z);
        return new CielabColour((116 * fy) - 16, 500 * (fx - fy), 200 * (fy - fz));
    }

    private static double Stretch(double ratio)
    {
        const double Delta = 6.0 / 29;
        return ratio > Delta * Delta * Delta ? Math.Cbrt(ratio) : (ratio / (3 * Delta * Delta)) + (4.0 / 29);
    }
}

/// <summary>A colour in CIELAB.</summary>
/// <param name="Lightness">L*, 0 black to 100 white.</param>
/// <param name="RedOverGreen">a*, red above nought, green below.</param>
/// <param name="YellowOverBlue">b*, yellow above nought, blue below.</param>
public readonly record struct CielabColour(double Lightness, double RedOverGreen, double YellowOverBlue);
