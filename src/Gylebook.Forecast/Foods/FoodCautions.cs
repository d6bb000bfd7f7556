using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Foods;

/// <summary>The hazards of a dose of food, at its place: the one home of them, for forecasts and for single foods alike.</summary>
/// <remarks>Gylebook informs; local law and licensed practice decide.</remarks>
public static class FoodCautions
{
    /// <summary>Foods drier than this foam and clot in hot wort.</summary>
    private const double Dry = 0.2;

    /// <summary>Powder in a boil, g/L, from which a third of the kettle should stand empty. Common practice, no source.</summary>
    private const double MuchPowder = 10;

    /// <summary>Room for foam, as a share of the vessel: a third of a kettle, three tenths of a fermenter with fruit or sugar. Common practice, no source.</summary>
    private const double KettleHeadspace = 1.0 / 3;

    private const double FermenterHeadspace = 0.3;

    /// <summary>All cautions for that dose of that food.</summary>
    /// <param name="food">The food.</param>
    /// <param name="dose">How much, where, into how much.</param>
    public static IReadOnlyList<Caution> Of(FoodMakeup food, Dose dose) =>
    [
        .. AtPlace(food, dose),
        .. YeastHazards.Of(food, dose),
        .. HealthHazards.Of(food, dose),
        .. PlantHazards.Of(food, dose),
    ];

    /// <summary>Powder that clots and foams in a boil: flours, grounds, dry sugars.</summary>
    internal static bool IsPowder(FoodMakeup food) => food.Water < Dry && !food.IsSyrup;

    /// <summary>Powder, sugar or syrup into hot wort.</summary>
    /// <param name="name">What goes in.</param>
    /// <param name="dose">How much, where, into how much.</param>
    /// <param name="isSyrup">Whether it is poured, not strewn.</param>
    public static Caution BoilOver(string name, Dose dose, bool isSyrup)
    {
        if (isSyrup)
        {
            return new(
                "boilover.syrup", dose.At.ToPlace(),
                $"{name}: it sinks, and burns on where the heat is. Flame off, pour it in slowly and stir until it is dissolved; it wakes foam as it goes in.",
                Words.Trade);
        }

        double headspace = dose.Into.Litres * KettleHeadspace / (1 - KettleHeadspace);
        string room = dose.GramsPerLitre > MuchPowder ? "at least" : "better";
        return new(
            "boilover.powder", dose.At.ToPlace(),
            Invariant($"{name}: it foams in hot wort and can burn on. Flame off, stirred to a slurry with three to five times its weight of cool water first, in five parts over five minutes, {room} {headspace:0.0} L of headspace above {dose.Into.Litres:0.#} L of wort."),
            Words.Trade);
    }

    /// <summary>Anything into fermenting beer.</summary>
    /// <param name="name">What goes in.</param>
    /// <param name="dose">How much, where, into how much.</param>
    public static Caution FermenterFoam(string name, Dose dose)
    {
        double headspace = dose.Into.Litres * FermenterHeadspace / (1 - FermenterHeadspace);
        return new(
            "foam.fermenter", dose.At.ToPlace(),
            Invariant($"{name}: anything that goes in shakes gas out of fermenting beer. Cool it first, add it in five parts, keep {headspace:0.0} L of headspace above {dose.Into.Litres:0.#} L and fit a blow-off tube."),
            Words.Trade);
    }

    /// <summary>Raw honey into cold wort or beer: it carries an enzyme.</summary>
    /// <param name="name">What goes in.</param>
    /// <param name="at">Where.</param>
    private static Caution RawHoney(string name, AdditionTime at) => new(
        "honey.diastase", at.ToPlace(),
        $"{name}: raw honey carries diastase, about as much as malt flour (9 to 37 units against 24), and here nothing stops it. It can turn dextrin into sugar, so the beer may end drier than counted, and in the package make more gas. Ten minutes of boiling stop it; packed honey was often heated, and a label does not say.",
        "trade literature on honey and malt flour");

    /// <summary>Starch that hangs in the beer.</summary>
    /// <param name="gramsPerLitre">How much of it.</param>
    public static Caution StarchLater(double gramsPerLitre) => new(
        "starch.later", Stage.Package,
        Invariant($"About {gramsPerLitre:0.0} g/L of starch that met no enzyme hangs in the beer as haze. A diastatic or wild yeast could still eat it in the package and raise the pressure."),
        "stoichiometry; " + Words.Trade);

    /// <summary>Starch from which a word is worth saying, g/L. Common practice, no source.</summary>
    internal const double StarchWorthAWord = 0.5;

    private static IEnumerable<Caution> AtPlace(FoodMakeup food, Dose dose)
    {
        AdditionPoint point = dose.At.Point;
        if (point is AdditionPoint.CopperUp or AdditionPoint.Boil or AdditionPoint.KnockOut or AdditionPoint.Stand && (IsPowder(food) || food.IsSyrup))
        {
            yield return BoilOver(food.Name, dose, food.IsSyrup);
        }

        if (point == AdditionPoint.Ferment)
        {
            yield return FermenterFoam(food.Name, dose);
        }

        if (point >= AdditionPoint.Pitch && food.Insoluble > 0)
        {
            yield return new(
                "food.raw", dose.At.ToPlace(),
                $"{food.Name}: it goes into cold beer, and nothing kills what lives on it. Heat it to 75 °C for ten minutes or steep it in spirit of 40 % or more first. Freezing kills nothing.",
                "Salmonella in raw flour, nuts, seeds, coconut and spices: food-safety agencies; times " + Words.Trade);
        }

        if (point >= AdditionPoint.Pitch && FoodFamilies.Of(food.FamilyId).IsLowAcid)
        {
            yield return new(
                "food.lowAcid", dose.At.ToPlace(),
                $"{food.Name}: it is low in acid. Never keep it wet and sealed at room temperature. Make it the same day, or keep it at 4 °C for a week at most; add it only to beer below pH 4.6 that holds alcohol.",
                "Clostridium botulinum grows above pH 4.6 and water activity 0.85: university extension food-safety sheets");
        }

        if (point >= AdditionPoint.Pitch && food.FamilyId == "honey")
        {
            yield return RawHoney(food.Name, dose.At);
        }

        Wort placed = FoodFigures.Placed(food, dose.Amount.Kilograms, point);
        double haze = 1000 * placed[Component.HazeStarch] / dose.Into.Litres;
        if (haze > StarchWorthAWord)
        {
            yield return StarchLater(haze);
        }
    }
}
