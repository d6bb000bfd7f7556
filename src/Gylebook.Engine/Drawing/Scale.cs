using Gylebook.Engine.Parameters;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Engine.Drawing;

/// <summary>The scale on which a parameter's draws may be moved by any amount and stay what they can be: logarithm, logit, or the normal number of the same share.</summary>
/// <remarks>
/// By the family of the prior. A normal one with ends is moved as it stands and stopped there. What has only ends, a triangle, a uniform, a label,
/// is moved on the normal number that has the same share below it; where its median sits on an end, half of the draws are that end and
/// share one number.
/// </remarks>
internal readonly struct Scale
{
    private const double LeastShare = 1e-9;

    private readonly Way _way;
    private readonly Distribution _whole;

    private Scale(Way way, Distribution whole) => (_way, _whole) = (way, whole);

    private enum Way
    {
        Straight,
        Log,
        Logit,
        Score,
    }

    /// <summary>The scale of a parameter; the ends are stretched to draws that lie beyond them already.</summary>
    public static Scale Of(Parameter parameter, ReadOnlySpan<double> draws)
    {
        double least = double.PositiveInfinity, most = double.NegativeInfinity;
        foreach (double draw in draws)
        {
            (least, most) = (Math.Min(least, draw), Math.Max(most, draw));
        }

        Distribution prior = parameter.Prior.About(parameter.Median);
        Distribution whole = prior.Family == Family.Point
            ? prior with { Low = least > 0 ? 0 : double.NegativeInfinity, High = double.PositiveInfinity }
            : prior with { Low = Math.Min(prior.Low, least), High = Math.Max(prior.High, most) };
        return new Scale(
            whole.Family switch
            {
                // A share that is what the others leave moves with them: it has no width of its own.
                Family.Point or Family.LogNormal when least > 0 => Way.Log,
                Family.LogitNormal when least > whole.Low && most < whole.High => Way.Logit,
                Family.Triangular or Family.Uniform or Family.LogUniform => Way.Score,
                _ => Way.Straight,
            },
            whole);
    }

    /// <summary>A figure on that scale.</summary>
    public double To(double figure) => _way switch
    {
        Way.Log => Math.Log(figure),
        Way.Logit => Math.Log((figure - _whole.Low) / (_whole.High - figure)),
        Way.Score => StandardNormal.Quantile(Math.Clamp(ShareBelow(figure), LeastShare, 1 - LeastShare)),
        _ => figure,
    };

    /// <summary>The figure that stands there.</summary>
    public double From(double moved) => _way switch
    {
        Way.Log => Math.Clamp(Math.Exp(moved), _whole.Low, _whole.High),
        Way.Logit => _whole.Low + ((_whole.High - _whole.Low) / (1 + Math.Exp(-moved))),
        Way.Score => _whole.Quantile(Math.Clamp(StandardNormal.ShareBelow(moved), LeastShare, 1 - LeastShare)),
        _ => Math.Clamp(moved, _whole.Low, _whole.High),
    };

    private double ShareBelow(double figure)
    {
        bool isAbove = _whole.High > _whole.Median && figure >= _whole.Median;
        double end = isAbove ? _whole.High : _whole.Low;
        if (end == _whole.Median)
        {
            return isAbove ? 0.75 : 0.25;
        }

        double way = _whole.Family == Family.LogUniform
            ? Math.Log(figure / _whole.Median) / Math.Log(end / _whole.Median)
            : (figure - _whole.Median) / (end - _whole.Median);
        double beyond = _whole.Family == Family.Triangular ? (1 - way) * (1 - way) / 2 : (1 - way) / 2;
        return isAbove ? 1 - beyond : beyond;
    }
}
