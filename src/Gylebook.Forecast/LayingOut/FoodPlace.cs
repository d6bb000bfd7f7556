using Gylebook.Forecast.State;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.LayingOut;

/// <summary>What a food becomes where it goes in: its starch is the part that depends on the place.</summary>
/// <remarks>
/// In the mash, open starch meets enzymes and raw starch stays with the grain. In the kettle heat opens it and nothing
/// converts it: haze. In the cold, starch that cooking has opened is haze too, and raw starch settles. Outside the mash a
/// share of the starch, the family's, never leaves the particles it sits in: it settles with the food's solids and holds beer
/// as they do.
/// </remarks>
internal static class FoodPlace
{
    /// <summary>That many kilograms of the food at that place.</summary>
    public static Wort Of(FoodMakeup food, double kilograms, AdditionPoint at)
    {
        Wort one = default;
        one[Component.Water] = food.Water;
        one[Component.Sucrose] = food.Sucrose;
        one[Component.Glucose] = food.Glucose;
        one[Component.Fructose] = food.Fructose;
        one[Component.Maltose] = food.Maltose;
        one[Component.Lactose] = food.Lactose;
        one[Component.Polyols] = food.Polyols;
        one[Component.Dextrin] = food.Dextrin;
        one[Component.Protein] = food.SolubleProtein;
        one[Component.Minerals] = food.Minerals;
        one[Component.Ethanol] = food.Ethanol;
        one[Component.Fat] = food.Fat;
        double trapped = at == AdditionPoint.Mash ? 0 : food.Starch * food.StarchThatSettles;
        double settles = food.Insoluble + trapped;
        one[Component.FoodSolids] = settles;
        one[StarchAs(food.StarchIsOpen, at)] += food.Starch - trapped;
        one[Component.Sodium] = food.SodiumMilligramsPerKilogram;
        one[Component.Potassium] = food.PotassiumMilligramsPerKilogram;
        one[Component.SettledHold] = settles * food.SettledHold;
        one[Component.BagHold] = at == AdditionPoint.Mash ? food.Insoluble * food.BagHold : 0;

        Wort all = default;
        all.Add(one, kilograms);
        return all;
    }

    private static Component StarchAs(bool open, AdditionPoint at) => at switch
    {
        AdditionPoint.Mash => open ? Component.Starch : Component.RawStarch,
        <= AdditionPoint.Stand => Component.HazeStarch,
        _ => open ? Component.HazeStarch : Component.RawStarch,
    };
}
