using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Conditioning;
using Gylebook.Science.Foods.Doses;
using Gylebook.Science.Quantities;
using FoodWord = Gylebook.Science.Foods.Words.IngredientKind;

namespace Gylebook.Forecast.Foods;

/// <summary>Cautions of sugar that yeast will eat in the package, and of preservatives that keep it from working.</summary>
internal static class YeastHazards
{
    /// <summary>Preservative that a food is taken to hold when only its name is printed, mg/kg: the usual legal limit. From memory.</summary>
    private const double UsualMilligramsPerKilogram = 1000;

    /// <summary>Sulphur dioxide that dried fruit may hold in the EU, mg/kg. From memory.</summary>
    private const double DriedFruitSulphurDioxide = 2000;

    /// <summary>pH a finished beer is taken to have. Common practice, no source.</summary>
    private const double BeerPh = 4.3;

    /// <summary>Volumes that an ordinary crown bottle should not pass, and from which it is a bomb. Common practice, no source.</summary>
    internal const double BottleLimit = 3.5;

    private const double CellarCelsius = 20;

    public static IEnumerable<Caution> Of(FoodMakeup food, Dose dose)
    {
        if (dose.At.Point >= AdditionPoint.Rack && InPackage(food, dose) is { } gas)
        {
            yield return gas;
        }

        if (Has(food, FoodWord.Sorbate))
        {
            yield return Preservative(food, dose, "sorbate", PreservativeDose.SorbicPKa);
        }

        if (Has(food, FoodWord.Benzoate))
        {
            yield return Preservative(food, dose, "benzoate", PreservativeDose.BenzoicPKa);
        }

        if (Has(food, FoodWord.Natamycin))
        {
            yield return Unknown(food, dose, "natamycin");
        }

        if (Has(food, FoodWord.DimethylDicarbonate))
        {
            yield return Unknown(food, dose, "dimethyl dicarbonate");
        }

        if (Has(food, FoodWord.Sulphite))
        {
            yield return Sulphite(food, dose);
        }
    }

    private static Caution Unknown(FoodMakeup food, Dose dose, string preservative) => new(
        "preservative.unknown", dose.At.ToPlace(),
        $"{food.Name} is kept with {preservative}, which is there to stop yeast. No dose for beer is known here: try it in a small jar with yeast first.",
        Words.Trade);

    internal static bool Has(FoodMakeup food, FoodWord word)
    {
        for (int i = 0; i < food.Words.Count; i++)
        {
            if (food.Words[i].Kind == word && !food.Words[i].MayContainOnly)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>All its sugar to gas, no yeast being relied on to leave any, on top of what beer keeps under the air of the place.</summary>
    private static Caution? InPackage(FoodMakeup food, Dose dose)
    {
        Wort placed = FoodFigures.Placed(food, dose.Amount.Kilograms, AdditionPoint.Package);
        double kilograms = Reactions.Published.Conditioning
            .Where(row => row.Reactant != Component.Dextrin)
            .Sum(row => placed[row.Reactant] * row.Terms.Single(term => term.Component == Component.CarbonDioxide).PerKilogram);
        double volumes = 1000 * kilograms / dose.Into.Litres / Carbonation.GramsPerLitreInOneVolume;
        if (volumes < 0.05)
        {
            return null;
        }

        double all = volumes + ResidualCarbonDioxide.VolumesAt(CellarCelsius, dose.AirKilopascals);
        double bar = BottlePressure.GaugeBar(all, CellarCelsius, airBar: dose.AirKilopascals / 100);
        string air = dose.Height is { } height ? height.Text : "sea level, no height being known";
        return new(
            "bottle.unfermentedSugar", dose.At.ToPlace(),
            Invariant($"The sugar of {food.Name} will ferment in the package: {volumes:0.00} volumes more, {all:0.0} with what the beer holds, {bar:0.0} bar at {CellarCelsius:0} °C against the air of {air}, on top of any priming. Ordinary bottles stand {BottleLimit:0.0} volumes; glass bursts. Keg it cold with a relief valve, or let it ferment first."),
            "stoichiometry of its sugars; air by ISO 2533; limit of bottles " + Words.Trade)
        {
            Severity = all > BottleLimit ? Severity.Error : Severity.Warning,
        };
    }

    private static Caution Preservative(FoodMakeup food, Dose dose, string name, double pKa)
    {
        double milligrams = PreservativeDose.MilligramsPerLitre(dose.Amount.Kilograms, UsualMilligramsPerKilogram, dose.Into.Litres);
        double working = milligrams * PreservativeDose.UndissociatedFraction(BeerPh, pKa);
        PublishedLimit limit = name == "sorbate" ? PreservativeDose.SorbicFungistatic : PreservativeDose.BenzoateHoldsYeast;
        return new(
            "preservative." + name, dose.At.ToPlace(),
            Invariant($"{food.Name} is kept with {name}. At the usual {UsualMilligramsPerKilogram:0} mg/kg this dose is {milligrams:0} mg/L, {working:0} mg/L of it at work at pH {BeerPh:0.0}; yeast is stopped near {limit.Value:0} {limit.Unit}. It slows a starter and bottle conditioning long before; an active fermentation goes on."),
            limit.Source + "; Henderson–Hasselbalch");
    }

    private static Caution Sulphite(FoodMakeup food, Dose dose)
    {
        double most = PreservativeDose.MilligramsPerLitre(dose.Amount.Kilograms, DriedFruitSulphurDioxide, dose.Into.Litres);
        PublishedLimit limit = PreservativeDose.SulphiteDeclaration;
        return new(
            "preservative.sulphite", dose.At.ToPlace(),
            Invariant($"{food.Name} holds sulphites. At the most that dried fruit may hold, {DriedFruitSulphurDioxide:0} mg/kg, this dose is {most:0} mg/L; from {limit.Value:0} mg/L on, declare them."),
            limit.Source);
    }
}
