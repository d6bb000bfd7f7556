namespace Gylebook.Science.Conditioning;

/// <summary>Gas from extract that was thought to be done and is not.</summary>
/// <remarks>
/// <para>Source: 1 point of apparent gravity that ferments away is real extract of 2.1 g/L, by the ratio 0.81 of real to apparent attenuation and
/// 2.6 g/L of extract in a point; at 0.46 g of gas for a gram (Balling) it is 0.95 g/L, at 1.9635 g/L a volume: computed.</para>
/// </remarks>
public static class ResidualExtract
{
    /// <summary>Volumes of gas from one point of gravity, 0.001 SG, that falls in a closed bottle.</summary>
    public const double VolumesAPoint = 0.48;
}
