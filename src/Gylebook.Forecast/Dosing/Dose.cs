using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Dosing;

/// <summary>How much of a food goes in, where, and into how much.</summary>
/// <param name="Amount">The food as is.</param>
/// <param name="At">The place in the run.</param>
/// <param name="Into">Litres at 20 °C: of wort in the fermenter for every place up to fermentation, of beer in the package after it.</param>
public sealed record Dose(Mass Amount, AdditionTime At, VolumeAt20C Into)
{
    /// <summary>Grams of food per litre.</summary>
    public double GramsPerLitre => Amount.Grams / Into.Litres;
}
