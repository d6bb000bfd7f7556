namespace Gylebook.Pictures.Drawing;

/// <summary>Where things stand in a drawing of the run.</summary>
/// <param name="Width">Of the whole drawing.</param>
/// <param name="Centre">Middle of the ribbon.</param>
/// <param name="RibbonRoom">Width of the ribbon at its widest.</param>
/// <param name="TextStart">Left edge of the words.</param>
/// <param name="AdditionsEnd">Right edge of the names of additions at the left; null to write them among the words.</param>
internal sealed record RunFrame(double Width, double Centre, double RibbonRoom, double TextStart, double? AdditionsEnd)
{
    /// <summary>For a page or a print.</summary>
    public static RunFrame Wide { get; } = new(545, 212, 108, 296, 148);

    /// <summary>For a telephone held upright: one unit is one pixel at 360 px.</summary>
    public static RunFrame Narrow { get; } = new(360, 48, 68, 104, null);

    /// <summary>Right edge of the words.</summary>
    public double TextEnd => Width - 6;

    /// <summary>Room for words in a line.</summary>
    public double TextRoom => TextEnd - TextStart;
}

/// <summary>Sizes and distances that both drawings share, in pixels at full size.</summary>
internal static class Type
{
    /// <summary>Names of stages.</summary>
    public const double Name = 15;

    /// <summary>Everything else.</summary>
    public const double Small = 12.5;

    /// <summary>From line to line.</summary>
    public const double Line = 17;
}
