namespace Gylebook.Engine.State;

/// <summary>Where in a brew something happens: the stage, the minute or day in it, the portion. Places sort in the order of the run.</summary>
/// <param name="Stage">Which stage.</param>
/// <param name="Count">Minutes before the end of the boil or the stand, days after the pitch; null where the stage as a whole is meant.</param>
/// <param name="Portion">Which portion of the run; the first until the cast is divided.</param>
public readonly record struct Place(Stage Stage, double? Count = null, int Portion = 0) : IComparable<Place>
{
    /// <summary>With the yeast.</summary>
    public static Place Pitch { get; } = new(Stage.Ferment, 0);

    /// <summary>A stage as a whole.</summary>
    public static implicit operator Place(Stage stage) => new(stage);

    /// <summary>What holds for a whole stage comes before its moments. Minutes count down to the end of the boil or the stand, days count up.</summary>
    public int CompareTo(Place other) => (Stage, Within, Portion).CompareTo((other.Stage, other.Within, other.Portion));

    private double Within => Count is not { } count ? double.NegativeInfinity : Stage is Stage.Boil or Stage.Stand ? -count : count;

    /// <summary>Whether one place comes before another.</summary>
    public static bool operator <(Place left, Place right) => left.CompareTo(right) < 0;

    /// <summary>Whether one place comes after another.</summary>
    public static bool operator >(Place left, Place right) => left.CompareTo(right) > 0;

    /// <summary>Whether one place comes before another, or is the same.</summary>
    public static bool operator <=(Place left, Place right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one place comes after another, or is the same.</summary>
    public static bool operator >=(Place left, Place right) => left.CompareTo(right) >= 0;
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

    /// <summary>The grain rinsed.</summary>
    Rinse,

    /// <summary>Wort run off through the grain.</summary>
    RunOff,

    /// <summary>Liquor added to fill the kettle up.</summary>
    TopUp,

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

    /// <summary>Portions put together.</summary>
    Blend,

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
}
