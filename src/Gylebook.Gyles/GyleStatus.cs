namespace Gylebook.Gyles;

/// <summary>How far a gyle has come.</summary>
public enum GyleStatus
{
    /// <summary>Meant to be brewed; nothing is frozen yet.</summary>
    Planned,

    /// <summary>Brew day: the plan is frozen, the liquor is on.</summary>
    Brewing,

    /// <summary>Cast, and in the fermenter.</summary>
    Fermenting,

    /// <summary>In bottle, keg or cask.</summary>
    Packaged,

    /// <summary>Drunk up, or closed by the brewer.</summary>
    Finished,

    /// <summary>Poured away.</summary>
    Abandoned,
}
