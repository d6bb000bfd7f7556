namespace Gylebook.Science.Fermenting.Kinetics;

/// <summary>A fermentation's extract as an S-shaped curve of four parameters.</summary>
/// <remarks>
/// <para>P(t) = Pₑ + (Pᵢ − Pₑ)/(1 + e^(−B(t − M))), B below 0.</para>
/// <para>Symbols: P apparent extract (°P, or any measure that falls alike); Pᵢ and Pₑ its levels long before and after; B slope (1/h); M hour of the
/// steepest fall; t hours since pitching.</para>
/// <para>Source: <c>asbc-yeast-14</c>; <c>speers-2003</c>: the parameters and their meaning read in abstracts, the printed form from memory.</para>
/// <para>Valid for: a single fall from one level to another; the method's own beer stands at 21 °C and is done within 72 h.</para>
/// <para>Accuracy: the papers fit it to their tubes; seven sets of data compared with five- and three-parameter forms in Fermentation 2021, 7:13.</para>
/// <para>Notes: Pᵢ is a level that the curve comes from, so P(0) lies below it.</para>
/// </remarks>
/// <param name="Start">Pᵢ.</param>
/// <param name="End">Pₑ.</param>
/// <param name="Slope">B, 1/h; below 0.</param>
/// <param name="MiddleHours">M, h.</param>
public readonly record struct LogisticAttenuation(double Start, double End, double Slope, double MiddleHours)
{
    /// <summary>The fastest fall, a unit of extract an hour.</summary>
    public double FastestFall => Math.Abs(Slope) * (Start - End) / 4;

    /// <summary>Extract at an hour.</summary>
    public double At(double hours) => End + ((Start - End) / (1 + Math.Exp(-Slope * (hours - MiddleHours))));

    /// <summary>Change of extract in an hour, then; below 0.</summary>
    public double ChangeAt(double hours)
    {
        double left = 1 / (1 + Math.Exp(-Slope * (hours - MiddleHours)));
        return (Start - End) * Slope * left * (1 - left);
    }

    /// <summary>The hour by which that share of the whole fall is behind it.</summary>
    /// <param name="share">Above 0 and below 1.</param>
    public double HoursUntil(double share)
    {
        if (!(share > 0 && share < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(share), share, "share must be above 0 and below 1.");
        }

        return MiddleHours + (Math.Log(share / (1 - share)) / -Slope);
    }

    /// <summary>The hour at which the extract is passed.</summary>
    /// <param name="extract">Between <see cref="Start"/> and <see cref="End"/>.</param>
    public double HoursAt(double extract) => HoursUntil((Start - extract) / (Start - End));
}
