using Gylebook.Forecast.Running;

namespace Gylebook.Forecast.Telling;

/// <summary>The figures of a whole gyle: litres summed over its portions, everything else averaged by packaged litres.</summary>
/// <param name="packaged">Portions that were packaged.</param>
/// <param name="figures">What the run read.</param>
public sealed class HeadlineFigures(int[] packaged, double[] figures)
{
    /// <summary>The portions that were packaged.</summary>
    public IReadOnlyList<int> Portions => packaged;

    /// <summary>A figure of the whole gyle.</summary>
    public double this[Figure figure] => figure switch
    {
        Figure.PackagedLitres or Figure.SludgeLitres => packaged.Sum(p => Of(p, figure)),
        <= Figure.CastGravity => Of(packaged[0], figure),
        Figure.FermenterLitresWithSolids => packaged.Max(p => Of(p, figure)),
        Figure.MashLitresWithSolids => Of(packaged[0], figure),
        _ => Mean(figure),
    };

    /// <summary>A figure of one portion.</summary>
    public double Of(int portion, Figure figure) => figures[(portion * Figures.Count) + (int)figure];

    private double Mean(Figure figure)
    {
        double litres = packaged.Sum(p => Of(p, Figure.PackagedLitres));
        return packaged.Sum(p => Of(p, figure) * Of(p, Figure.PackagedLitres)) / litres;
    }
}
