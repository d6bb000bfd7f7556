using Gylebook.Engine.State;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Foods.Doses;
using FoodWord = Gylebook.Science.Foods.Words.IngredientKind;

namespace Gylebook.Forecast.Foods;

/// <summary>Cautions for those who drink the beer, and for animals that find what is left of it.</summary>
internal static class HealthHazards
{
    private const double ServingLitres = 0.5;

    /// <summary>A grown body, kg, for intakes per body mass.</summary>
    private const double BodyKilograms = 60;

    public static IEnumerable<Caution> Of(FoodMakeup food, Dose dose) => [.. Spices(food, dose), .. Fruit(food, dose), .. Caffeine(food, dose), .. Pets(food, dose)];

    private static IEnumerable<Caution> Spices(FoodMakeup food, Dose dose)
    {
        Place at = dose.At.ToPlace();
        if (YeastHazards.Has(food, FoodWord.Cinnamon))
        {
            double high = CoumarinDose.MilligramsPerLitre(dose.GramsPerLitre, CoumarinDose.CassiaGramsPerKilogram.High);
            double litres = CoumarinDose.LitresForADay(high, BodyKilograms);
            yield return new(
                "coumarin.cassia", at,
                Invariant($"If it is cassia, {food.Name} brings up to {high:0.00} mg/L of coumarin: {litres:0.0} L a day reach what a body of {BodyKilograms:0} kg bears. Ceylon cinnamon holds next to none."),
                CoumarinDose.TolerableDailyIntake.Source)
            {
                Severity = litres < 1 ? Severity.Error : Severity.Warning,
            };
        }

        if (YeastHazards.Has(food, FoodWord.Nutmeg))
        {
            double litres = NutmegDose.LitresForToxicDose(dose.GramsPerLitre);
            bool tooMuch = dose.GramsPerLitre > NutmegDose.AdvisedCap.Value;
            yield return new(
                "nutmeg.dose", at,
                Invariant($"{dose.GramsPerLitre:0.00} g/L of {food.Name}: {litres:0.0} L hold the {NutmegDose.Toxic.Value:0} g that poison. Stay below {NutmegDose.AdvisedCap.Value:0.00} g/L."),
                NutmegDose.Toxic.Source)
            {
                Severity = tooMuch ? Severity.Error : Severity.Note,
            };
        }

        if (YeastHazards.Has(food, FoodWord.TonkaBean))
        {
            yield return new("coumarin.tonka", at, $"{food.Name}: tonka bean and added coumarin are not allowed in food in the US.", "21 CFR 189.130");
        }

        if (YeastHazards.Has(food, FoodWord.SafroleOrCalamus))
        {
            yield return new("safrole.calamus", at, $"{food.Name}: safrole (sassafras) and calamus are not allowed in food in the US.", "21 CFR 189.110 and 189.180");
        }

        if (YeastHazards.Has(food, FoodWord.Liquorice))
        {
            yield return new("liquorice.pressure", at, $"{food.Name}: liquorice raises blood pressure in quantity; tell those who drink it.", "from memory");
        }
    }

    private static IEnumerable<Caution> Fruit(FoodMakeup food, Dose dose)
    {
        if (FoodFamilies.Of(food.FamilyId).HasStones || YeastHazards.Has(food, FoodWord.StoneFruitKernel))
        {
            yield return new(
                "pits.cyanide", dose.At.ToPlace(),
                $"{food.Name}: take the stones out, or leave them whole; never crush them. 0.37 g of raw apricot kernel, about three small ones, reach an adult's acute limit of cyanide.",
                "EFSA Journal 2016;14(4):4424");
        }

        if (YeastHazards.Has(food, FoodWord.Grapefruit))
        {
            yield return new("grapefruit.medicine", dose.At.ToPlace(), $"{food.Name}: grapefruit changes how some medicines act; tell those who drink it.", "from memory");
        }
    }

    private static IEnumerable<Caution> Caffeine(FoodMakeup food, Dose dose)
    {
        if (food.Stimulant?.Caffeine is double content)
        {
            double litre = CaffeineDose.MilligramsPerLitre(dose.GramsPerLitre, content);
            double serving = litre * ServingLitres;
            yield return new(
                "caffeine.serving", dose.At.ToPlace(),
                Invariant($"{food.Name} brings up to {serving:0} mg of caffeine in half a litre; {CaffeineDose.AdultsADay.Value:0} mg a day are borne by most healthy adults, less in pregnancy, none by children. Alcohol hides how awake it makes."),
                CaffeineDose.AdultsADay.Source + "; USDA SR26")
            {
                Severity = serving > CaffeineDose.AdultsADay.Value / 4 ? Severity.Warning : Severity.Note,
            };
        }
        else if (YeastHazards.Has(food, FoodWord.Caffeine))
        {
            yield return new(
                "caffeine.unknown", dose.At.ToPlace(),
                Invariant($"{food.Name} brings caffeine or theobromine; how much is not known here. {CaffeineDose.AdultsADay.Value:0} mg of caffeine a day are borne by most healthy adults."),
                CaffeineDose.AdultsADay.Source);
        }
    }

    private static IEnumerable<Caution> Pets(FoodMakeup food, Dose dose)
    {
        bool poisons = YeastHazards.Has(food, FoodWord.Caffeine) || YeastHazards.Has(food, FoodWord.SugarAlcohol) || YeastHazards.Has(food, FoodWord.PoisonsDogs)
            || food.Stimulant is not null;
        if (poisons)
        {
            string what = dose.At.Point == AdditionPoint.Mash ? "Spent grain" : "Sludge";
            yield return new(
                "pets.feed", dose.At.ToPlace(),
                $"{what} with {food.Name} is no feed: cocoa, coffee, raisins, xylitol, macadamia and hops can kill dogs. Bin it out of reach of animals.",
                "methylxanthines 20 mg/kg make dogs ill: veterinary toxicology; hops: J. Am. Vet. Med. Assoc. 210:51 (1997); the others from memory");
        }
    }
}
