using Gylebook.Engine.Parameters;

namespace Gylebook.Engine.Makeups;

/// <summary>Raw grain in a mash: which share of its starch the warmest rest opens.</summary>
/// <remarks>
/// Below the published span of its cereal none opens, above it all. Inside it only the ends are known: the share is
/// u^((1 − p)/p), u the way through the span and p the parameter <see cref="Known.RawGrainOpens"/>. Half-way, p = ½, the granules
/// are spread evenly over the span; p = 0 and p = 1 are the bounds, none and all. Spans: <c>data/mashing/gelatinisation.csv</c>.
/// </remarks>
/// <param name="Low">Temperature at which the first granules open, °C.</param>
/// <param name="High">Temperature at which the last do, °C.</param>
/// <param name="WarmestRest">The warmest rest as it was meant, °C.</param>
public readonly record struct GrainOpening(double Low, double High, double WarmestRest)
{
    /// <summary>Whether nothing but the ends is known of it in a mash as warm as it was meant.</summary>
    public bool IsBetween => WarmestRest > Low && WarmestRest < High;

    /// <summary>Share of the starch that opens, 0 to 1.</summary>
    public double ShareAt(Draw draw)
    {
        double through = (WarmestRest + draw[Known.MashWarmer] - Low) / (High - Low);
        return through switch
        {
            <= 0 => 0,
            >= 1 => 1,
            _ => draw[Known.RawGrainOpens] is > 0 and var early ? Math.Pow(through, (1 - early) / early) : 0,
        };
    }
}
