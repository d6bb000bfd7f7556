namespace Gylebook.Forecast.Running;

/// <summary>One move of a run: a kind of stage, the portion it works on, the one it fills, and the row of its figures.</summary>
/// <param name="Kind">What happens.</param>
/// <param name="From">The portion it happens to.</param>
/// <param name="To">The portion that receives; the same as <paramref name="From"/> where nothing moves.</param>
/// <param name="Index">Row of the figures of that kind in the plan; 0 where the kind has none.</param>
public readonly record struct Step(StepKind Kind, int From, int To, int Index);

/// <summary>All that can happen in a run.</summary>
public enum StepKind
{
    /// <summary>Liquor into the mash vessel or the kettle.</summary>
    Strike,

    /// <summary>An ingredient goes in.</summary>
    Add,

    /// <summary>Starch becomes sugar.</summary>
    Mash,

    /// <summary>Grain and wort part; the grain lies in the other portion from now on.</summary>
    Lift,

    /// <summary>The grain in the other portion is rinsed into this one.</summary>
    Rinse,

    /// <summary>The grain leaves for good.</summary>
    SpentGrain,

    /// <summary>Liquor added to fill up.</summary>
    TopUp,

    /// <summary>All wort in the kettle.</summary>
    CopperUp,

    /// <summary>Lactic bacteria sour the wort in the kettle.</summary>
    Sour,

    /// <summary>Some minutes of boil.</summary>
    Boil,

    /// <summary>Flame off: break, bitterness and colour are settled.</summary>
    KnockOut,

    /// <summary>A hot rest.</summary>
    Stand,

    /// <summary>Cooling, which loses nothing.</summary>
    Chill,

    /// <summary>From the kettle to the fermenter.</summary>
    Cast,

    /// <summary>A share goes to the other portion.</summary>
    Split,

    /// <summary>All of the other portion comes into this one.</summary>
    Blend,

    /// <summary>The yeast takes what it takes.</summary>
    Ferment,

    /// <summary>Fermentation is over; its readings are taken.</summary>
    EndFerment,

    /// <summary>Chilled to clear.</summary>
    Crash,

    /// <summary>Clear beer off its sludge.</summary>
    Rack,

    /// <summary>Into bottles or keg.</summary>
    Package,

    /// <summary>Gas made or taken up there.</summary>
    Condition,

    /// <summary>Into the glass.</summary>
    Pour,

    /// <summary>Hops steep in hot wort, standing or cooling.</summary>
    Steep,
}
