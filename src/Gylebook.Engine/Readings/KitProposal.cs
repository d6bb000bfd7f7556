using Gylebook.Engine.Drawing;
using Gylebook.Engine.Parameters;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Engine.Readings;

/// <summary>What one finished gyle says of a parameter, on the parameter's own scale.</summary>
/// <param name="Gyle">Which gyle, and by which readings.</param>
/// <param name="Value">What it was in that gyle.</param>
/// <param name="Variance">How sure that is.</param>
public sealed record GyleEvidence(string Gyle, double Value, double Variance)
{
    /// <summary>What the readings of a gyle added to its draws: the difference of two normal beliefs. Null where they taught nothing about it.</summary>
    public static GyleEvidence? Of(string gyle, Draws before, Draws after, int place)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        Scale scale = Scale.Of(before.Parameters[place], before[place]);
        (double wasAt, double was) = Spread(before[place], scale);
        (double isAt, double now) = Spread(after[place], scale);
        if (!(was > 0) || Math.Sqrt(now / was) > 1 - LearnedParameter.Something)
        {
            return null;
        }

        double told = (1 / now) - (1 / was);
        return new(gyle, ((isAt / now) - (wasAt / was)) / told, 1 / told);
    }

    private static (double Mean, double Variance) Spread(ReadOnlySpan<double> draws, Scale scale)
    {
        double mean = 0, squares = 0;
        for (int i = 0; i < draws.Length; i++)
        {
            double value = scale.To(draws[i]), from = value - mean;
            mean += from / (i + 1);
            squares += from * (value - mean);
        }

        return (mean, squares / (draws.Length - 1));
    }
}

/// <summary>A kit's or a yeast's own middle, learned from finished gyles; a proposal, until the brewer accepts it.</summary>
/// <remarks>
/// <para>1/Var = 1/ω² + Σ w/(τ² + s²): ω between brewers, τ from gyle to gyle, s what the readings of a gyle leave.</para>
/// <para>Source: normal means in two levels, from memory. A gyle more than two standard deviations from what the others say weighs 8/(4 + z²), so
/// that one odd gyle moves little.</para>
/// <para>Notes: readings never make the next gyle surer than τ.</para>
/// </remarks>
/// <param name="Middle">On the scale of the evidence.</param>
/// <param name="DeviationBefore">Of the middle, before any gyle.</param>
/// <param name="Deviation">Of the middle now.</param>
/// <param name="Within">From gyle to gyle.</param>
/// <param name="Behind">The gyles behind it, with the weight of each.</param>
public sealed record KitProposal(double Middle, double DeviationBefore, double Deviation, double Within, IReadOnlyList<(GyleEvidence Gyle, double Weight)> Behind)
{
    private const double AsItIs = 2, Freedom = 4;

    /// <summary>Standard deviation of the next gyle's figure; never below <see cref="Within"/>.</summary>
    public double NextGyle => Math.Sqrt((Deviation * Deviation) + (Within * Within));

    /// <summary>The same before any gyle.</summary>
    public double NextGyleBefore => Math.Sqrt((DeviationBefore * DeviationBefore) + (Within * Within));

    /// <summary>Whether these gyles taught something about it.</summary>
    public bool IsTaught => 1 - (Deviation / DeviationBefore) >= LearnedParameter.Something;

    /// <summary>The proposal for a parameter on its own scale; null for one that does not vary from gyle to gyle, or has no width of its own.</summary>
    public static KitProposal? For(Parameter parameter, IReadOnlyList<GyleEvidence> gyles)
    {
        ArgumentNullException.ThrowIfNull(parameter);
        if (parameter.Prior is not Prior.Spread { Within: { Spread: > 0 } within, Between: { Spread: > 0 } between })
        {
            return null;
        }

        Scale scale = Scale.Of(parameter, []);
        double least = within.About(parameter.Median).Quantile(StandardNormal.ShareBelow(-Small)), most = within.About(parameter.Median).Quantile(StandardNormal.ShareBelow(Small));
        return Of(scale.To(parameter.Median), between.Spread, (scale.To(most) - scale.To(least)) / (2 * Small), gyles);
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
        double off = gyle.Value - others.Middle, squared = off * off / (others.Variance + (within * within) + gyle.Variance);
        return squared <= AsItIs * AsItIs ? 1 : (Freedom + (AsItIs * AsItIs)) / (Freedom + squared);
    }

    private static (double Middle, double Variance) Joined(double middle, double between, double within, IEnumerable<(GyleEvidence Gyle, double Weight)> gyles)
    {
        double sure = 1 / (between * between), sum = middle * sure;
        foreach ((GyleEvidence gyle, double weight) in gyles)
        {
            double adds = weight / ((within * within) + gyle.Variance);
            (sure, sum) = (sure + adds, sum + (adds * gyle.Value));
        }

        return (sum / sure, 1 / sure);
    }
}
