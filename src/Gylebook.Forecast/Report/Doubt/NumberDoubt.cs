using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Readouts;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Report.Doubt;

/// <summary>Where the doubt about a number comes from.</summary>
/// <param name="Readout">The number.</param>
/// <param name="Causes">Each large enough to tell from chance, the largest first.</param>
/// <param name="Aside">Why the likely value does not lie in the middle of the draws; null where it does.</param>
public sealed record NumberDoubt(Readout Readout, IReadOnlyList<DoubtCause> Causes, string? Aside)
{
    /// <summary>A cause is said when it is at least this much of the variance: a twentieth.</summary>
    private const double WorthSaying = 0.05;

    private const int MostSaid = 4;

    /// <summary>Further from the middle than this share of the band, and the reader is told why.</summary>
    private const double FarFromTheMiddle = 0.25;

    /// <summary>In words: "half of it is how much boils off in an hour, a quarter how much wort the grain holds back".</summary>
    public string Sentence
    {
        get
        {
            List<DoubtCause> said = [.. Causes.Where(cause => cause.Share >= WorthSaying).Take(MostSaid)];
            if (said.Count == 0)
            {
                return "many small things; each is too small to tell";
            }

            string causes = string.Join(", ", said.Select((cause, place) => $"{Portion(cause.Share)}{(place == 0 ? " of it is" : "")} {cause.Words}"));
            return said.Sum(cause => cause.Share) < 1 - WorthSaying ? $"{causes}; the rest in small parts" : causes;
        }
    }

    internal static NumberDoubt Of(Readout readout, Band band, IReadOnlyList<VarianceShare> shares) => new(
        readout,
        [.. shares.Select(share => new DoubtCause(share.Source.Id, WordsOf(share.Source.Id), share.Part) { Lead = share.Lead })],
        AsideOf(band, shares));

    private static string WordsOf(string id) => ParameterWords.Of(id) ?? id;

    /// <summary>Half of every figure's draws lie on either side of its likely value, but those on one side may lie further off.</summary>
    private static string? AsideOf(Band band, IReadOnlyList<VarianceShare> shares)
    {
        double off = band.Middle!.Value - band.Likely;
        if (band.Likely >= band.Low && band.Likely <= band.High && Math.Abs(off) <= FarFromTheMiddle * (band.High - band.Low))
        {
            return null;
        }

        VarianceShare leans = shares.OrderByDescending(share => share.Shift * Math.Sign(off)).FirstOrDefault();
        string side = off > 0 ? "above" : "below";
        return leans.Source is { } source && leans.Shift * off > 0
            ? $"most draws lie {side} the likely run, mostly because of {WordsOf(source.Id)}: that can be much further off to one side than to the other"
            : $"most draws lie {side} the likely run: no single figure leans that way, they bend it together";
    }

    private static readonly (double Share, string Words)[] Portions =
    [
        (0.05, "a twentieth"), (0.1, "a tenth"), (0.2, "a fifth"), (0.25, "a quarter"), (1.0 / 3, "a third"), (0.4, "two fifths"), (0.5, "half"),
        (0.6, "three fifths"), (2.0 / 3, "two thirds"), (0.75, "three quarters"), (0.8, "four fifths"), (0.9, "nine tenths"), (1, "nearly all"),
    ];

    private static string Portion(double share) => Portions.MinBy(portion => Math.Abs(Math.Log(portion.Share / share))).Words;
}

/// <summary>One cause of doubt.</summary>
/// <param name="Id">The parameter's id, or the first one's of several that hang together.</param>
/// <param name="Words">As a brewer says it.</param>
/// <param name="Share">Of the number's variance.</param>
public sealed record DoubtCause(string Id, string Words, double Share)
{
    /// <summary>Place of the parameter that explains most of it, among the draws.</summary>
    public int Lead { get; init; }
}
