using Gylebook.Engine.Makeups;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Liquids;
using Gylebook.Science.Mashing;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Planning;

/// <summary>The trade's figure for what grain keeps, and the engine's, one from the other.</summary>
/// <remarks>
/// The trade counts litres of liquor in less litres of wort out at 20 °C, per kilogram of grist as weighed. The engine
/// counts kilograms of wort per kilogram of the grist's dry matter that cannot dissolve, so that a better conversion does
/// not move litres by itself. The two meet at one stated mash: 1 kg of pale malt with 3.2 % moisture and 81.5 % fine-grind
/// extract on dry matter, 5 L of liquor, conversion 95 %, no rinse.
/// </remarks>
public static class WortHeld
{
    private const double LiquorLitres = 5;
    private const double Conversion = 0.95;

    private static readonly Malt ReferenceMalt = new(
        "reference", "reference pale malt", MaltFamily.Base, Fraction.FromPercent(81.5), Fraction.FromPercent(3.2),
        MaltColour.FromEbc(6), 70, "barley", new("stated reference", "common practice"));

    private static readonly Wort ReferenceMash = MakeReferenceMash();

    /// <summary>Kilograms of wort per kilogram of undissolved dry matter, from litres of liquor kept per kilogram of grist.</summary>
    public static double FromLiquorKept(double litresPerKilogram)
    {
        double heldLitres = ReferenceMash.Litres - (LiquorLitres - litresPerKilogram);
        return heldLitres * SucroseSolution.KilogramsPerLitreOfGravity(ReferenceMash.Gravity) / ReferenceMash[Component.Grain];
    }

    /// <summary>Litres of liquor kept per kilogram of grist, from kilograms of wort per kilogram of undissolved dry matter.</summary>
    public static double ToLiquorKept(double kilogramsPerKilogram)
    {
        double heldLitres = kilogramsPerKilogram * ReferenceMash[Component.Grain]
            / SucroseSolution.KilogramsPerLitreOfGravity(ReferenceMash.Gravity);
        return LiquorLitres - (ReferenceMash.Litres - heldLitres);
    }

    private static Wort MakeReferenceMash()
    {
        Wort mash = LineLookup.OfOneKilogram(ReferenceMalt, ReferenceMalt.Colour.Lovibond);
        mash[Component.Water] += LiquorLitres * Wort.WaterKilogramsPerLitre;
        double converted = mash[Component.Starch] * (1 - ((1 - Conversion) / MaltExtracts.StarchShareOf(MaltFamily.Base, StartingParameters.Medians)));
        foreach (Reaction row in Reactions.Published.Conversion)
        {
            row.Run(ref mash, converted * StartingParameters.Extracts.CongressSplit.StarchTo(row.Terms[1].Component));
        }

        return mash;
    }
}
