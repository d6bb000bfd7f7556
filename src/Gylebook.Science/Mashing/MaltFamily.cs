namespace Gylebook.Science.Mashing;

/// <summary>How a malt's laboratory extract is made up.</summary>
public enum MaltFamily
{
    /// <summary>Pale malts: mostly starch, some sugar of their own.</summary>
    Base,

    /// <summary>Unmalted grain, raw or flaked: starch, next to no sugar of its own, and no enzyme.</summary>
    Raw,

    /// <summary>Caramel malts: stewed, all extract already sugar and dextrin.</summary>
    Caramel,

    /// <summary>Dextrin malt: pale and glassy, its starch cooked in the grain; meant for the dextrin it brings.</summary>
    Dextrin,

    /// <summary>Roasted malts and grains: all extract already dextrin-like.</summary>
    Roast,
}
