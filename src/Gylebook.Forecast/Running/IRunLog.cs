using Gylebook.Forecast.State;

namespace Gylebook.Forecast.Running;

/// <summary>Who watches a run: the page wants all of it, the ensemble nothing.</summary>
/// <remarks>
/// Handed over as a struct, so that a log that keeps nothing costs nothing. What enters and what leaves is told here and
/// summed outside the stages: no stage can hide a loss in a remainder.
/// </remarks>
public interface IRunLog
{
    /// <summary>Something entered a portion.</summary>
    void Added(Stage stage, int portion, in Wort added);

    /// <summary>Something left for good.</summary>
    void Lost(Stage stage, int portion, Loss what, in Wort lost);

    /// <summary>A stage is over; this is what it left.</summary>
    void Reached(Stage stage, int portion, in Portion state);

    /// <summary>A hop's bitterness was settled, at knock-out.</summary>
    void Bittered(int addition, double milligrams);
}

/// <summary>The log of one run of thousands: it keeps nothing.</summary>
public readonly struct NoLog : IRunLog
{
    /// <inheritdoc/>
    public void Added(Stage stage, int portion, in Wort added)
    {
    }

    /// <inheritdoc/>
    public void Lost(Stage stage, int portion, Loss what, in Wort lost)
    {
    }

    /// <inheritdoc/>
    public void Reached(Stage stage, int portion, in Portion state)
    {
    }

    /// <inheritdoc/>
    public void Bittered(int addition, double milligrams)
    {
    }
}

/// <summary>The stages of a run, in order.</summary>
public enum Stage
{
    /// <summary>Liquor, before the grain.</summary>
    Strike,

    /// <summary>Grain and liquor together.</summary>
    Mash,

    /// <summary>The bag lifted out.</summary>
    Lift,

    /// <summary>Wort run off through the grain.</summary>
    RunOff,

    /// <summary>The grain rinsed.</summary>
    Rinse,

    /// <summary>All the wort in the kettle.</summary>
    CopperUp,

    /// <summary>Wort soured in the kettle.</summary>
    Sour,

    /// <summary>The boil.</summary>
    Boil,

    /// <summary>Flame off.</summary>
    KnockOut,

    /// <summary>Hot rest after knock-out.</summary>
    Stand,

    /// <summary>Cooled.</summary>
    Chill,

    /// <summary>In the fermenter.</summary>
    Cast,

    /// <summary>Cast divided.</summary>
    Split,

    /// <summary>Fermented.</summary>
    Ferment,

    /// <summary>Chilled to clear.</summary>
    Crash,

    /// <summary>Clear beer off its sludge.</summary>
    Rack,

    /// <summary>In bottles or keg.</summary>
    Package,

    /// <summary>Gas made or taken up.</summary>
    Condition,

    /// <summary>In the glass.</summary>
    Pour,

    /// <summary>Portions put together.</summary>
    Blend,

    /// <summary>Liquor or wort added to fill up.</summary>
    TopUp,
}

/// <summary>What can be lost, each by its own law.</summary>
public enum Loss
{
    /// <summary>Wort the spent grain holds, with the grain.</summary>
    HeldInGrain,

    /// <summary>Wort below the tun's outlet.</summary>
    TunDeadSpace,

    /// <summary>Water boiled off.</summary>
    Steam,

    /// <summary>Clear wort the kettle keeps.</summary>
    Kettle,

    /// <summary>Whole hops and the wort they hold.</summary>
    SpentHops,

    /// <summary>Break and food solids left in the kettle, and the wort they hold.</summary>
    KettleSolids,

    /// <summary>Carbon dioxide that left fermenter or souring kettle.</summary>
    Gas,

    /// <summary>What settled, and the beer it holds.</summary>
    Sludge,

    /// <summary>Clear beer the siphon or the fermenter keeps.</summary>
    Racking,
}
