using Gylebook.Engine.State;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Mashing;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.LayingOut;

/// <summary>Finds finings, salts, acids and plain liquor.</summary>
internal static class Chemistry
{
    /// <summary>Looks a line up.</summary>
    public static LaidLine? Find(int number, IngredientLine line, string path, List<Finding> findings) => line.Kind switch
    {
        IngredientKind.Salt => Salt(number, line, path, findings),
        IngredientKind.Acid => AcidOf(number, line, path, findings),
        IngredientKind.Water => Pure(number, line, Component.Water),
        _ => Pure(number, line, Component.Break),
    };

    private static LaidLine? Salt(int number, IngredientLine line, string path, List<Finding> findings)
    {
        BrewingSalt? salt = ShelfWords.Salt(line.Of);
        if (salt is null || line.Amount.Mass is not { } mass)
        {
            string known = ShelfWords.KnownSalts;
            findings.Add(new("salt.unknown", Severity.Error, $"{path}.salt", $"{line.Of}, {line.Amount.Text}; known, by weight: {known}", line.Of, known));
            return null;
        }

        double kg = mass.Value.Kilograms;
        Wort makeup = default;
        makeup[Component.Water] = kg * salt.WaterShare;
        makeup[Component.Minerals] = kg * (1 - salt.WaterShare);
        IonTracers.Put(ref makeup, salt.PerGramInALitre, kg * 1000);
        return new LaidLine(number, line, line.As ?? salt.Name, kg) { Makeup = makeup, Salt = salt };
    }

    /// <summary>An acid with the strength it is sold at behind its name: "lactic acid 88 %". A powder needs none.</summary>
    private static LaidLine? AcidOf(int number, IngredientLine line, string path, List<Finding> findings)
    {
        Acid? acid = ShelfWords.Acid(line.Of);
        double? strength = ShelfWords.Strength(line.Of);
        AcidAsSold? sold = ShelfWords.Sold(line.Of);

        // Grams of a bottle whose strength is by volume say nothing without its density.
        bool weighsVolume = line.Amount.Mass is not null && ShelfWords.IsByVolume(line.Of);
        if (acid is null || weighsVolume || (line.Amount.Mass is null && sold is not { Unit: DoseUnit.Millilitre }))
        {
            string known = ShelfWords.KnownAcids;
            findings.Add(new("acid.unknown", Severity.Error, $"{path}.acid", $"{line.Of}, {line.Amount.Text}; known by the jug or by weight: {known}; others by weight, with their strength", line.Of, known));
            return null;
        }

        double share = strength ?? 1;
        double kilograms = line.Amount.Mass?.Value.Kilograms
            ?? line.Amount.Volume!.Value.Value.Millilitres * sold!.MillimolesPerUnit * acid.MolarMass / 1e6 / share;
        double millimoles = kilograms * share * 1e6 / acid.MolarMass;
        Wort makeup = default;
        AcidsCarried.Put(ref makeup, acid, millimoles);
        makeup[Component.Water] = kilograms * (1 - share);
        return new LaidLine(number, line, line.As ?? line.Of, kilograms)
        {
            Makeup = makeup,
            Acid = new MashPhAcid(new AcidAsSold(acid.Id, acid, 1, DoseUnit.Gram), millimoles),
        };
    }

    private static LaidLine Pure(int number, IngredientLine line, Component component)
    {
        double kg = line.Amount.Mass?.Value.Kilograms ?? (line.Amount.Volume!.Value.Value.Litres * Wort.WaterKilogramsPerLitre);
        Wort makeup = default;
        makeup[component] = kg;
        return new LaidLine(number, line, line.As ?? line.Of, kg) { Makeup = makeup };
    }
}
