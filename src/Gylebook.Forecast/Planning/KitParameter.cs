using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readings;
using Gylebook.Recipes.Kits;

namespace Gylebook.Forecast.Planning;

/// <summary>A parameter of a run that stands in the kit as a figure, and the way between the two.</summary>
/// <param name="Id">The parameter's id.</param>
/// <param name="Figure">The kit's figure.</param>
public sealed record KitParameter(string Id, KitFigure Figure)
{
    private static readonly KitParameter[] WithTun =
    [
        .. Both(), Kept("tun.liquorKept"), Of("kit.tun.deadSpace", "tun.deadSpace"),
    ];

    private static readonly KitParameter[] WithBag = [.. Both(), Kept("bag.liquorKept")];

    /// <summary>The figure's number as the parameter's.</summary>
    public Func<double, double> ToParameter { get; private init; } = number => number;

    /// <summary>The parameter's number as the figure's.</summary>
    public Func<double, double> ToFigure { get; private init; } = number => number;

    /// <summary>The figure behind a parameter; null for one that no kit states.</summary>
    /// <param name="id">The parameter's id.</param>
    /// <param name="usesTun">Whether the mash stands in the tun.</param>
    public static KitParameter? Find(string id, bool usesTun) => (usesTun ? WithTun : WithBag).FirstOrDefault(its => its.Id == id);

    /// <summary>A parameter as sure as its kit's gyles have made it, and its brewer accepted.</summary>
    internal static Parameter AsLearned(Parameter parameter, Kit kit, bool usesTun) =>
        kit.Learned.Count > 0 && Find(parameter.Id, usesTun) is { } its && kit.LearnedOf(its.Figure) is { } learned && its.Number(learned.Low) is { } low && its.Number(learned.High) is { } high
            ? KitProposal.Learned(parameter, low, high)
            : parameter;

    private double? Number(string text) => Figure.NumberOf(text) is { } number ? ToParameter(number) : null;

    private static KitParameter[] Both() =>
    [
        Of("kit.conversion", "conversion"), Of("kit.rinsingShare", "bag.rinsingShare"), Of("kit.kettle.evaporation", "kettle.evaporation"),
        Of("kit.kettle.leftBehind", "kettle.leftBehind"), Of("kit.kettle.solidsLeft", "kettle.solidsLeft"),
        Of("kit.kettle.heldBySpentHops", "kettle.heldBySpentHops"), Of("kit.racking.leftBehind", "racking.leftBehind"),
    ];

    private static KitParameter Of(string id, string path) => new(id, KitFigure.Find(path) ?? throw new InvalidOperationException($"No kit has a figure {path}."));

    private static KitParameter Kept(string path) => Of("kit.wortHeld", path) with { ToParameter = WortHeld.FromLiquorKept, ToFigure = WortHeld.ToLiquorKept };
}
