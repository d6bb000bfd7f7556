using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Solving;

/// <summary>Where a food suits in a first recipe, by what it is made of and how much of its kind is usual.</summary>
/// <remarks>
/// Common practice, no source; the draft is there to be changed. Starch goes where enzymes are. What dissolves and is dry, or a syrup, goes into the hot
/// wort at knock-out, which dissolves it and leaves few germs alive. Fruit and juice, wet and sour or sweet, go into the fermenter once it works, so that their smell does not
/// boil away. Of the rest, what is used by the handful goes into the mash, where the grain keeps what would be sludge, and what is used by the
/// pinch goes in at knock-out. What holds alcohol goes in when the beer is racked: heat would drive the alcohol off.
/// </remarks>
internal static class FoodPlace
{
    private const double SomeStarch = 0.1;
    private const double SomeAlcohol = 0.05;
    private const double NearlyAll = 0.01;

    /// <summary>Water beyond which a food that dissolves is a juice and no syrup: the thinnest syrup holds 34 %, 21 CFR 168.140.</summary>
    private const double SyrupWater = 0.34;

    /// <summary>A usual dose below this is a pinch, g per litre of beer.</summary>
    private const double Pinch = 10;

    /// <summary>The place.</summary>
    public static AdditionTime Of(FoodMakeup food)
    {
        double sugar = food.Sucrose + food.Glucose + food.Fructose + food.Maltose + food.Lactose + food.Polyols + food.Dextrin;
        FoodFamily family = FoodFamilies.Of(food.FamilyId);
        return food switch
        {
            { Ethanol: >= SomeAlcohol } => new(AdditionPoint.Rack),
            _ when family.IsSpice => new(AdditionPoint.KnockOut),
            _ when food.Starch >= SomeStarch && food.Starch >= sugar => new(AdditionPoint.Mash),
            _ when food.Water < SyrupWater && food.Insoluble + food.Starch + food.Fat < NearlyAll => new(AdditionPoint.KnockOut),
            _ when food.Water >= SyrupWater && (family.BeerPh == PhPull.Lowers || sugar > food.Insoluble + food.Fat) => new(AdditionPoint.Ferment, 3),
            _ when family.DoseTypical < Pinch => new(AdditionPoint.KnockOut),
            _ => new(AdditionPoint.Mash),
        };
    }
}
