namespace Gylebook.Engine.State;

/// <summary>Which of the two published ways to a bitterness is shown; both are always reckoned. See decision 0011.</summary>
public enum BitternessModel
{
    /// <summary>The table of boil time and wort gravity (1997): straight to the beer, boil only.</summary>
    TimeGravity,

    /// <summary>Isomerisation kinetics (2005) through mash, boil, stand and cooling, with losses of their own.</summary>
    Isomerisation,
}
