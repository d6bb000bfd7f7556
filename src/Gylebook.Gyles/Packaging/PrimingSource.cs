using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Conditioning;

namespace Gylebook.Gyles.Packaging;

/// <summary>A sugar or a food that beer is primed with.</summary>
/// <remarks>
/// <para>Source: gas by stoichiometry (<see cref="PackageCarbonation"/>) of the sugars in it; lactose, dextrin and sugar alcohols make none here, and of
/// maltotriose all is counted, the careful way. What a food's starch may become is not counted: a food with starch is refused.</para>
/// </remarks>
/// <param name="Name">Its name.</param>
/// <param name="GasGramsPerGram">Grams of gas a gram of it makes; above 0.</param>
/// <param name="Starch">Share of it that is starch.</param>
public sealed record PrimingSource(string Name, double GasGramsPerGram, double Starch)
{
    /// <summary>The usual one.</summary>
    public const string Usual = "white sugar";

    /// <summary>That sugar or food by its name; null where nobody knows it, or it makes no gas.</summary>
    /// <param name="name">As in a recipe.</param>
    /// <param name="larder">The brewer's own sheets.</param>
    public static PrimingSource? Of(string name, Larder larder)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(larder);
        PrimingSource? found = Sugars.Find(name).Match is { } sugar
            ? new(sugar.Name, Gas(sugar.Sucrose + sugar.Maltose, sugar.Glucose + sugar.Fructose, sugar.Maltotriose), 0)
            : larder.Food(name) is { } food ? new(food.Name, Gas(food.Sucrose + food.Maltose, food.Glucose + food.Fructose, 0), food.Starch) : null;
        return found is { GasGramsPerGram: > 0 } ? found : null;
    }

    private static double Gas(double disaccharides, double hexoses, double maltotriose) =>
        (disaccharides * PackageCarbonation.FromDisaccharide) + (hexoses * PackageCarbonation.FromHexose) + (maltotriose * PackageCarbonation.FromMaltotriose);
}
