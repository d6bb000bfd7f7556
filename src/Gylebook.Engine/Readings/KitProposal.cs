using Gylebook.Engine.Drawing;
using Gylebook.Engine.Parameters;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Engine.Readings;

/// <summary>A kit's or a yeast's own middle, learned from finished gyles; a proposal, until the brewer accepts it.</summary>
/// <remarks>
/// <para>1/Var = 1/ω² + 1/(c² + 1/Σ w/(τ² + s²)): ω between brewers, τ from gyle to gyle, s what the readings of a gyle leave of its own, c what the same
/// instruments leave in all of them, a mean by weight.</para>
/// <para>Source: normal means in two levels, from memory. A gyle more than two standard deviations from what the others say weighs 8/(4 + z²), so
/// that one odd gyle moves little.</para>
/// <para>Notes: readings never make the next gyle surer than τ, nor any number of gyles the kit surer than c. c is the part of what is left that instruments
/// explain, which is a little too low while ω is not much wider than s.</para>
/// </remarks>
/// <param name="Middle">On the scale of the evidence.</param>
/// <param name="DeviationBefore">Of the middle, before any gyle.</param>
/// <param name="Deviation">Of the middle now.</param>
/// <param name="Within">From gyle to gyle.</param>
/// <param name="Behind">The gyles behind it, with the weight of each.</param>
public sealed record KitProposal(double Middle, double DeviationBefore, double Deviation, double Within, IReadOnlyList<(GyleEvidence Gyle, double Weight)> Behind)
{
    private const double AsItIs = 2, Freedom = 4;

    /// <summary>The parameter it is of; null where it was made of numbers alone.</summary>
    public Parameter? Parameter { get; private init; }

    /// <summary>Standard deviation of the next gyle's figure; never below <see cref="Within"/>.</summary>
    public double NextGyle => Math.Sqrt((Deviation * Deviation) + (Within * Within));

    /// <summary>The same before any gyle.</summary>
    public double NextGyleBefore => Math.Sqrt((DeviationBefore * DeviationBefore) + (Within * Within));

    /// <summary>Whether these gyles taught something about it.</summary>
    public bool IsTaught => 1 - (Deviation / DeviationBefore) >= LearnedParameter.Something;

    /// <summary>Low, middle and high of the kit's own middle, in the parameter's unit.</summary>
    public Quantiles OwnBand => Band(Middle, Deviation);

    /// <summary>The same of the next gyle.</summary>
    public Quantiles NextBand => Band(Middle, NextGyle);

    /// <summary>The same of the next gyle before any was learned from.</summary>
    public Quantiles NextBandBefore => Band(Scale.Of(Parameter!, []).To(Parameter!.Median), NextGyleBefore);

    /// <summary>A number of the parameter's scale in its unit.</summary>
    public double InUnit(double onScale) => Scale.Of(Parameter!, []).From(onScale);

    /// <summary>The parameter as wide as its kit's own middle has been learned to be; as it was where the ends mean nothing to it.</summary>
    /// <param name="parameter">The parameter.</param>
    /// <param name="low">5 % of its own middle.</param>
    /// <param name="high">95 %.</param>
    public static Parameter Learned(Parameter parameter, double low, double high)
    {
        ArgumentNullException.ThrowIfNull(parameter);
        if (parameter.Prior is not Prior.Spread { Between: { Spread: > 0 } between } prior)
        {
            return parameter;
        }

        Scale scale = Scale.Of(parameter, []);
        double spread = (scale.To(high) - scale.To(low)) / (2 * AtEnd);
        return spread > 0 && double.IsFinite(spread)
            ? parameter with { Prior = prior with { Between = between with { Spread = Math.Min(spread, between.Spread) } } }
            : parameter;
    }

    private static readonly double AtEnd = StandardNormal.Quantile(1 - Quantiles.Tail);

    private Quantiles Band(double middle, double deviation) => new(InUnit(middle - (AtEnd * deviation)), InUnit(middle), InUnit(middle + (AtEnd * deviation)));

    /// <summary>The proposal for a parameter on its own scale; null for one that does not vary from gyle to gyle, or has no width of its own, as what is nought.</summary>
    public static KitProposal? For(Parameter parameter, IReadOnlyList<GyleEvidence> gyles)
    {
        ArgumentNullException.ThrowIfNull(parameter);
        if (parameter.Prior is not Prior.Spread { Within: { Spread: > 0 } within, Between: { Spread: > 0 } between })
        {
            return null;
        }

        Scale scale = Scale.Of(parameter, []);
        double least = within.About(parameter.Median).Quantile(StandardNormal.ShareBelow(-Small)), most = within.About(parameter.Median).Quantile(StandardNormal.ShareBelow(Small));
        double middle = scale.To(parameter.Median), fromGyleToGyle = (scale.To(most) - scale.To(least)) / (2 * Small);
        return double.IsFinite(middle) && fromGyleToGyle > 0 ? Of(middle, between.Spread, fromGyleToGyle, gyles) with { Parameter = parameter } : null;
    }

    /// <summary>The proposal from a prior and what gyles say.</summary>
    /// <param name="middle">Of the prior.</param>
    /// <param name="between">Its standard deviation, from brewer to brewer.</param>
    /// <param name="within">From gyle to gyle.</param>
    /// <param name="gyles">What each says.</param>
    public static KitProposal Of(double middle, double between, double within, IReadOnlyList<GyleEvidence> gyles)
    {
        ArgumentNullException.ThrowIfNull(gyles);
        double[] weights = [.. gyles.Select((gyle, place) => WeightOf(gyle, Joined(middle, between, within, gyles.Where((_, other) => other != place).Select(other => (other, 1.0))), within))];
        (GyleEvidence, double)[] behind = [.. gyles.Zip(weights)];
        (double now, double variance) = Joined(middle, between, within, behind);
        return new(now, between, Math.Sqrt(variance), within, behind);
    }

    private const double Small = 0.01;

    private static double WeightOf(GyleEvidence gyle, (double Middle, double Variance) others, double within)
    {
        double off = gyle.Value - others.Middle, squared = off * off / (others.Variance + (within * within) + gyle.OwnVariance);
        return squared <= AsItIs * AsItIs ? 1 : (Freedom + (AsItIs * AsItIs)) / (Freedom + squared);
    }

    private static (double Middle, double Variance) Joined(double middle, double between, double within, IEnumerable<(GyleEvidence Gyle, double Weight)> gyles)
    {
        double told = 0, sum = 0, shared = 0;
        foreach ((GyleEvidence gyle, double weight) in gyles)
        {
            double adds = weight / ((within * within) + gyle.OwnVariance);
            (told, sum, shared) = (told + adds, sum + (adds * gyle.Value), shared + (adds * gyle.SharedVariance));
        }

        if (told == 0)
        {
            return (middle, between * between);
        }

        double sure = 1 / (between * between), all = 1 / ((1 / told) + (shared / told));
        return (((middle * sure) + (sum / told * all)) / (sure + all), 1 / (sure + all));
    }
}
