namespace Gylebook.Recipes.Ingredients;

/// <summary>The place in the run where something is added, in the order of the run.</summary>
public enum AdditionPoint
{
    /// <summary>With the grain.</summary>
    Mash,

    /// <summary>Into the kettle before it boils.</summary>
    CopperUp,

    /// <summary>Some minutes before knock-out.</summary>
    Boil,

    /// <summary>When the flame goes off.</summary>
    KnockOut,

    /// <summary>Some minutes before the stand ends.</summary>
    Stand,

    /// <summary>With the yeast.</summary>
    Pitch,

    /// <summary>On a day of fermentation.</summary>
    Ferment,

    /// <summary>As the beer is racked off its sludge.</summary>
    Rack,

    /// <summary>Into the package, or the beer about to fill it.</summary>
    Package,
}

/// <summary>When something is added.</summary>
/// <param name="Point">At which place in the run.</param>
/// <param name="Count">Minutes before knock-out for the boil, before the end of it for the stand, the day for fermentation; else 0.</param>
public readonly record struct AdditionTime(AdditionPoint Point, double Count = 0);
