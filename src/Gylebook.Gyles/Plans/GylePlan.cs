using Gylebook.Gyles.BrewDay;

namespace Gylebook.Gyles.Plans;

/// <summary>The plan of a gyle as it was frozen when it started: shown ever after, never reckoned anew.</summary>
/// <remarks>
/// It holds the files it was made of letter by letter of meaning, the forecast as it was told then, and the priors it was drawn with, so that it can
/// be read without the engine that made it. The live forecast is another thing: today's engine on these inputs, with all that was read since.
/// </remarks>
public sealed record GylePlan
{
    /// <summary>What the gyle is called.</summary>
    public required string Name { get; init; }

    /// <summary>When it was frozen.</summary>
    public required DateTimeOffset Frozen { get; init; }

    /// <summary>The engine's version.</summary>
    public required string Engine { get; init; }

    /// <summary>The word its draws were made with.</summary>
    public required string Seed { get; init; }

    /// <summary>The recipe's version in the book; 0 where it is none of the book's.</summary>
    public int RecipeVersion { get; init; }

    /// <summary>The recipe's file.</summary>
    public required string Recipe { get; init; }

    /// <summary>The kit's file.</summary>
    public required string Kit { get; init; }

    /// <summary>The water plan's file; null without one.</summary>
    public string? Water { get; init; }

    /// <summary>Files of the brewer's own sheets that the recipe names: foods, malts, hops, yeasts, with their lots.</summary>
    public IReadOnlyList<string> Larder { get; init; } = [];

    /// <summary>The forecast as it was told, of the form <c>gylebook-forecast/1</c>: all bands by place.</summary>
    public required string Forecast { get; init; }

    /// <summary>How wide each parameter was, by id.</summary>
    public required IReadOnlyList<FrozenPrior> Priors { get; init; }

    /// <summary>Brew day, step by step.</summary>
    public required IReadOnlyList<BrewStep> Steps { get; init; }
}

/// <summary>A parameter as it was when the plan was frozen.</summary>
/// <param name="Id">Which.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Low">5 % of the draws lie below it; null where it has no end.</param>
/// <param name="Median">What the likely run took; null where that has no end either.</param>
/// <param name="High">5 % of the draws lie above it; null where it has no end.</param>
public sealed record FrozenPrior(string Id, string Unit, double? Low, double? Median, double? High);
