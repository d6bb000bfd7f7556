using Gylebook.Engine.Readings;
using Gylebook.Forecast.Report.Readings;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;

namespace Gylebook.Forecast.Learning;

/// <summary>What finished gyles teach of a kit and its yeasts: proposals, what they cannot tell apart, and what is odd about them.</summary>
/// <remarks>
/// Each gyle is set against its forecast by itself, on the kit as it is now; what its readings added to what was thought before is its evidence
/// (<see cref="GyleEvidence"/>), and the evidences are joined (<see cref="KitProposal"/>). A recipe whose liquors are planned is thought to have
/// been brewed with the liquors that this kit plans.
/// </remarks>
public sealed record KitLearning
{
    /// <summary>Draws of each gyle when nobody says how many.</summary>
    public const int UsualDraws = 1000;

    /// <summary>The kit as it is.</summary>
    public required Kit Kit { get; init; }

    /// <summary>The gyles learned from, by name.</summary>
    public required IReadOnlyList<string> Gyles { get; init; }

    /// <summary>Every figure there was to learn, the one most narrowed first; what was taught nothing about comes last.</summary>
    public required IReadOnlyList<ProposedFigure> Figures { get; init; }

    /// <summary>What readings of a gyle cannot tell apart, with what would.</summary>
    public required IReadOnlyList<TiedFigures> Pairs { get; init; }

    /// <summary>What is odd about the gyles, and what was done.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Learns.</summary>
    /// <param name="kit">The kit all of them were brewed on.</param>
    /// <param name="gyles">The gyles.</param>
    /// <param name="seed">The word of the draws.</param>
    /// <param name="draws">How many draws of each gyle.</param>
    public static KitLearning Of(Kit kit, IReadOnlyList<FinishedGyle> gyles, string seed, int draws = UsualDraws)
    {
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentNullException.ThrowIfNull(gyles);
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 2);
        List<Finding> findings = [];
        FinishedGyle[] once = [.. gyles.DistinctBy(gyle => gyle.Name)];
        findings.AddRange(gyles.GroupBy(gyle => gyle.Name).Where(same => same.Count() > 1).Select(same => Twice(same.Key)));
        ReadGyle[] read = [.. once.Select(gyle => ReadGyle.Of(kit, gyle, seed, draws))];
        findings.AddRange(read.SelectMany(gyle => gyle.Findings));
        ProposedFigure[] figures =
        [
            .. read.SelectMany(gyle => gyle.Figures.Select(figure => (Gyle: gyle.Name, Figure: figure)))
                .GroupBy(said => said.Figure.Key)
                .Select(said => Proposed(kit, [.. said], findings)).OfType<ProposedFigure>()
                .OrderByDescending(figure => figure.IsTaught).ThenBy(figure => figure.Learned.Deviation / figure.Learned.DeviationBefore),
        ];
        return new()
        {
            Kit = kit,
            Gyles = [.. read.Where(gyle => gyle.Figures.Count > 0).Select(gyle => gyle.Name)],
            Figures = figures,
            Pairs = TiedFigures.Of(read),
            Findings = findings,
        };
    }

    /// <summary>The kit with figures accepted, each a line of its history.</summary>
    /// <param name="names">Which, by <see cref="ProposedFigure.Name"/>.</param>
    /// <param name="on">The day.</param>
    public Kit Accepted(IEnumerable<string> names, DateOnly on)
    {
        Kit kit = Kit;
        foreach (ProposedFigure figure in names.Distinct().Select(name => Figures.First(figure => figure.Name == name)))
        {
            AcceptedFigure accepted = figure.Accepted(on);
            kit = accepted.Figure.In(kit, accepted.To) with { Learned = [.. kit.Learned, accepted] };
        }

        return kit;
    }

    /// <summary>The proposal of one figure; null where nothing that is said of it can be joined.</summary>
    private static ProposedFigure? Proposed(Kit kit, (string Gyle, TaughtFigure Figure)[] said, List<Finding> findings)
    {
        TaughtFigure first = said[0].Figure;
        HashSet<string> known = [.. KnownFrom(kit, first)];
        findings.AddRange(said.Where(one => known.Contains(one.Gyle)).Select(one => Already(one.Gyle, first)));
        (string Gyle, TaughtFigure Figure)[] fresh = [.. said.Where(one => !known.Contains(one.Gyle))];
        string? text = first.Its?.Figure.TextIn(kit);
        return KitProposal.For(first.Parameter, [.. fresh.Select(one => one.Figure.Evidence).OfType<GyleEvidence>()]) is { } proposal && (first.Its is null || text is not null)
            ? new(first.Parameter, first.Its, text, proposal, [.. fresh.Where(one => one.Figure.Evidence is null).Select(one => one.Gyle)])
            : null;
    }

    /// <summary>Gyles that are in the figure's width already.</summary>
    private static IEnumerable<string> KnownFrom(Kit kit, TaughtFigure figure) =>
        figure.Its is { } its && kit.LearnedOf(its.Figure) is not null ? kit.Learned.Where(accepted => accepted.Figure == its.Figure).SelectMany(accepted => accepted.Gyles) : [];

    private static Finding Already(string gyle, TaughtFigure figure) => new(
        "learn.already", Severity.Note, "learn", $"{gyle}: {figure.Key} was learned from it and accepted already; it does not count twice", gyle, "once");

    private static Finding Twice(string gyle) => new(
        "learn.twice", Severity.Warning, "learn", $"{gyle}: two of the readings have that name; a gyle counts once, and the first was taken", gyle, "once");
}

/// <summary>Two figures that hang together in the readings of some gyles.</summary>
/// <param name="Pair">The two, as the gyle says in which they hang together most.</param>
/// <param name="Gyles">In which gyles.</param>
public sealed record TiedFigures(InseparablePair Pair, IReadOnlyList<string> Gyles)
{
    /// <summary>In words.</summary>
    public string Sentence => $"{Pair.Sentence} (in {string.Join(", ", Gyles)})";

    internal static IReadOnlyList<TiedFigures> Of(IReadOnlyList<ReadGyle> read) =>
    [
        .. read.SelectMany(gyle => gyle.Pairs.Select(pair => (Gyle: gyle.Name, Pair: pair)))
            .GroupBy(tied => string.Join('\n', new[] { tied.Pair.One, tied.Pair.Other }.Order(StringComparer.Ordinal)))
            .Select(tied => new TiedFigures(tied.MaxBy(one => Math.Abs(one.Pair.Correlation)).Pair, [.. tied.Select(one => one.Gyle)]))
            .OrderByDescending(tied => Math.Abs(tied.Pair.Correlation)),
    ];
}
