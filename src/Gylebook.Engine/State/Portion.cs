namespace Gylebook.Engine.State;

/// <summary>Liquid in one vessel on its way to the glass.</summary>
public struct Portion
{
    /// <summary>All that lies in the vessel.</summary>
    public Wort Wort;

    /// <summary>The same wort as if no yeast had touched it, from the cast to the racking: what the original gravity is of.</summary>
    public Wort Unfermented;

    /// <summary>Minutes boiled so far.</summary>
    public double BoiledMinutes;

    /// <summary>Gravity over the boil so far, summed minute by minute.</summary>
    public double GravityMinutes;
}
