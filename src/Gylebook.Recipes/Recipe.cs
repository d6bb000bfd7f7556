using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes;

/// <summary>What to brew, whatever the kit.</summary>
public sealed record Recipe
{
    /// <summary>What the beer is called.</summary>
    public required string Name { get; init; }

    /// <summary>Anything the brewer wants to remember, and keeps; null when nothing.</summary>
    public string? Notes { get; init; }

    /// <summary>What those who brew it after the brewer read first, as Markdown; null for nothing. Unlike the notes it goes out with the recipe.</summary>
    public string? Story { get; init; }

    /// <summary>How much beer is wanted, in what, how lively.</summary>
    public required PackageWish Package { get; init; }

    /// <summary>Numbers of the beer that hold while other things change; null when none does.</summary>
    public HoldPlan? Hold { get; init; }

    /// <summary>How the grain is mashed; null for a brew from extract.</summary>
    public MashPlan? Mash { get; init; }

    /// <summary>Liquor the brewer fixes by hand; null to have it planned backwards from the package.</summary>
    public LiquorPlan? Liquor { get; init; }

    /// <summary>Souring in the kettle between run-off and boil; null for none.</summary>
    public SouringPlan? Souring { get; init; }

    /// <summary>The boil; null for none.</summary>
    public BoilPlan? Boil { get; init; }

    /// <summary>The rest after knock-out; null for none.</summary>
    public Rest? Stand { get; init; }

    /// <summary>Fermentation, one rest after the other.</summary>
    public required IReadOnlyList<Rest> Ferment { get; init; }

    /// <summary>How the cast is divided; empty when it stays together.</summary>
    public IReadOnlyList<PortionShare> Portions { get; init; } = [];

    /// <summary>All that goes in, in the order written.</summary>
    public required IReadOnlyList<IngredientLine> Ingredients { get; init; }
}

/// <summary>Numbers that hold: what is weighed for them follows every change.</summary>
/// <param name="OriginalGravity">For which malt and malt extract are weighed; null to let it follow.</param>
/// <param name="Bitterness">For which the hops that boil longest are weighed; null to let it follow.</param>
public sealed record HoldPlan(Entered<SpecificGravity>? OriginalGravity, Entered<Bitterness>? Bitterness);

/// <summary>The beer that is wanted at the end.</summary>
/// <param name="Volume">Litres at 20 °C, packaged.</param>
/// <param name="In">A kit package's kind: <c>bottle</c>, <c>keg</c>.</param>
/// <param name="Carbonation">How lively; null leaves it as fermented.</param>
public sealed record PackageWish(Entered<VolumeAt20C> Volume, string In, Entered<Carbonation>? Carbonation);

/// <summary>A temperature held for a time.</summary>
/// <param name="Temperature">Degrees.</param>
/// <param name="Time">How long.</param>
public sealed record Rest(Entered<Temperature> Temperature, Entered<Duration> Time);

/// <summary>How grain and liquor meet and part.</summary>
/// <param name="Method">In what the mash stands.</param>
/// <param name="Rests">Its rests; the first sets the strike temperature.</param>
/// <param name="Sparge">How the grain is rinsed.</param>
public sealed record MashPlan(MashMethod Method, IReadOnlyList<Rest> Rests, SpargePlan Sparge);

/// <summary>In what the mash stands.</summary>
public enum MashMethod
{
    /// <summary>A bag in the kettle.</summary>
    Bag,

    /// <summary>A vessel of its own, run off through the grain.</summary>
    Tun,

    /// <summary>A small mash beside extract; the kettle is filled up with liquor.</summary>
    Part,

    /// <summary>No mash: extract only.</summary>
    None,
}

/// <summary>How the grain is rinsed.</summary>
/// <param name="Method">The way of it.</param>
/// <param name="Volume">Litres at 20 °C; null for none.</param>
/// <param name="Temperature">Of the rinse liquor; null when unsaid.</param>
public sealed record SpargePlan(SpargeMethod Method, Entered<VolumeAt20C>? Volume, Entered<Temperature>? Temperature)
{
    /// <summary>No rinse at all.</summary>
    public static SpargePlan None { get; } = new(SpargeMethod.None, null, null);
}

/// <summary>The way the grain is rinsed.</summary>
public enum SpargeMethod
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>Poured over the bag.</summary>
    Pour,

    /// <summary>The bag stirred about in a second vessel.</summary>
    Dunk,

    /// <summary>Liquor stirred into the drained tun, and run off again.</summary>
    Batch,

    /// <summary>Liquor trickled on as wort runs off.</summary>
    Continuous,
}

/// <summary>Liquor fixed by hand.</summary>
/// <param name="Strike">Liquor the mash starts in, or the kettle when there is no mash; null to plan it.</param>
/// <param name="TopUp">Liquor added to the kettle at copper-up; null to plan it where the method has one.</param>
public sealed record LiquorPlan(Entered<VolumeAt20C>? Strike, Entered<VolumeAt20C>? TopUp);

/// <summary>Wort soured by lactic bacteria in the kettle.</summary>
/// <param name="Culture">What sours it, by the table of lactic cultures.</param>
/// <param name="Temperature">At which it is kept.</param>
/// <param name="Ph">pH at which it is boiled, sample cooled to 20 °C.</param>
/// <param name="Time">How long the brewer thinks that takes: nothing is reckoned from it.</param>
public sealed record SouringPlan(string Culture, Entered<Temperature> Temperature, PhTarget Ph, Entered<Duration> Time);

/// <summary>A pH to reach, as typed.</summary>
/// <param name="Value">pH.</param>
/// <param name="Text">As typed.</param>
public sealed record PhTarget(double Value, string Text)
{
    /// <inheritdoc/>
    public override string ToString() => Text;
}

/// <summary>The boil.</summary>
/// <param name="Time">From the first bubble to knock-out.</param>
public sealed record BoilPlan(Entered<Duration> Time);

/// <summary>A share of the cast that goes its own way.</summary>
/// <param name="Name">What ingredients call it by.</param>
/// <param name="Share">Of the cast, by mass; all shares together are 1.</param>
public sealed record PortionShare(string Name, Entered<Fraction> Share);
