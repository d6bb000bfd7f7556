using Gylebook.Engine.State;
using Gylebook.Recipes.Foods;

namespace Gylebook.Forecast.Foods;

/// <summary>Cautions of plants that are gathered, or that are food in one part and poison in another.</summary>
internal static class PlantHazards
{
    public static IEnumerable<Caution> Of(FoodMakeup food, Dose dose)
    {
        Place at = dose.At.ToPlace();
        bool IsNamed(string word) => food.Name.Contains(word, StringComparison.OrdinalIgnoreCase);
        if (food.FamilyId == "conifer")
        {
            yield return new("plant.conifer", at, $"{food.Name}: be sure of the tree. Yew, which looks alike, kills in small amounts. Juniper is not for pregnant women or sick kidneys. Take nothing that was sprayed.", "from memory: poison centres");
        }

        if (food.FamilyId == "rhubarb")
        {
            yield return new("plant.rhubarb", at, $"{food.Name}: stalks alone; the leaves are poisonous with oxalic acid. People with kidney stones should know of it.", "from memory: poison centres");
        }

        if (food.FamilyId == "wood")
        {
            yield return new("plant.wood", at, $"{food.Name}: food-grade, untreated wood alone, never painted, glued or pressure-treated. Boil or steep it in spirit first: it cannot be made clean otherwise.", Words.Trade);
        }

        if (IsNamed("elder"))
        {
            yield return new("plant.elder", at, $"{food.Name}: stalks, leaves and unripe or raw berries of elder make people sick (cyanide): pick them off, and heat berries through. Be sure of the plant.", "from memory: poison centres");
        }

        if (food.FamilyId is "herb-fresh" or "flower-dried" or "flower-sour" or "conifer")
        {
            yield return new("plant.gathered", at, $"{food.Name}: use what is sold as food or what you surely know, unsprayed. Some herbs are not for pregnancy or go badly with medicines; tell those who drink it.", Words.Trade);
        }
    }
}
