using Gylebook.Engine.State;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast;

/// <summary>When a recipe says that something goes in, as a place in the run.</summary>
public static class AdditionPlaces
{
    /// <summary>The place of a time.</summary>
    /// <param name="at">The recipe's word for it.</param>
    /// <param name="portion">Into which portion.</param>
    public static Place ToPlace(this AdditionTime at, int portion = 0) => new(
        at.Point switch
        {
            AdditionPoint.Mash => Stage.Mash,
            AdditionPoint.CopperUp => Stage.CopperUp,
            AdditionPoint.Boil => Stage.Boil,
            AdditionPoint.KnockOut => Stage.KnockOut,
            AdditionPoint.Stand => Stage.Stand,
            AdditionPoint.Pitch or AdditionPoint.Ferment => Stage.Ferment,
            AdditionPoint.Rack => Stage.Rack,
            _ => Stage.Package,
        },
        at.Point switch
        {
            AdditionPoint.Pitch => 0,
            AdditionPoint.Boil or AdditionPoint.Stand or AdditionPoint.Ferment => at.Count,
            _ => null,
        },
        portion);
}
