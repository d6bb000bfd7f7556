namespace Gylebook.Recipes.Kits;

/// <summary>What a new part of a kit says until the brewer has measured their own: common practice, no source.</summary>
public static class UsualParts
{
    /// <summary>A bag in the kettle.</summary>
    public static IReadOnlyList<(string Key, string Text)> Bag { get; } = [("liquorKept", "0.6 L/kg"), ("rinsingShare", "60 %"), ("brewsInKettle", "true")];

    /// <summary>A mash tun.</summary>
    public static IReadOnlyList<(string Key, string Text)> Tun { get; } = [("brim", "30 L"), ("deadSpace", "0.5 L"), ("heatCapacity", "4 kJ/K"), ("liquorKept", "0.9 L/kg")];
}
