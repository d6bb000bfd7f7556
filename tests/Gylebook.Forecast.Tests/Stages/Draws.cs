using Gylebook.Engine.Makeups;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Liquids;
using Gylebook.Science.Mashing;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Tests.Stages;

/// <summary>Draws and worts for single stages, without a recipe.</summary>
internal static class Draws
{
    private static readonly ParameterList Slots = new();

    /// <summary>A yeast's shares, behind the parameters that every run has.</summary>
    public static readonly FermentStep Yeast = new(new(SlotOf("maltose"), SlotOf("maltotriose"), SlotOf("dextrin")), SlotOf("gas"));

    /// <summary>A mash at that conversion and limit of attenuation, and a yeast of those shares.</summary>
    public static double[] Of(double conversion = 1, double limit = 82, double maltose = 1, double maltotriose = 0.85, double dextrin = 0)
    {
        double[] draw = [.. Malted.Plan!.Medians.Take(ParameterList.KnownCount), maltose, maltotriose, dextrin, 0];
        draw[(int)Known.Conversion] = conversion;
        draw[(int)Known.LimitOfAttenuation] = limit;
        return draw;
    }

    /// <summary>Any brew, for the parameters that every run has.</summary>
    private static readonly BrewPlan Malted = new Recipe
    {
        Name = "any",
        Package = new PackageWish(Typed.Litres(20), "bottle", null),
        Mash = new MashPlan(MashMethod.Bag, [Typed.Rest(66, 60)], SpargePlan.None),
        Ferment = [Typed.Days(20, 14)],
        Ingredients = [Typed.Malt("pale ale malt", 4)],
    }.PlanOn(Kits.Whole);

    private static Slot SlotOf(string share) => Slots.Of(new Parameter(share, 1, Prior.Point, "kg/kg", "test", "test"));

    /// <summary>A malt by its certificate.</summary>
    public static Malt Malt(double extractDryPercent, double moisturePercent) => new(
        "test", "test malt", MaltFamily.Base, Fraction.FromPercent(extractDryPercent), Fraction.FromPercent(moisturePercent),
        MaltColour.FromEbc(6), 60, "barley", new("test", "test"));

    /// <summary>A mash of one malt in that many kilograms of water a kilogram, converted.</summary>
    public static Wort Mashed(Malt malt, double kilograms, double water, double[] draw)
    {
        MaltExtracts extracts = new(draw);
        Wort mash = default;
        mash.Add(extracts.OfOneKilogram(malt.Family, malt.ExtractFineDry.Ratio, malt.Moisture.Ratio, malt.Colour.Lovibond), kilograms);
        mash[Component.Water] += water;
        Mash.Convert(ref mash, MashOf(malt, kilograms, ref draw), draw, Reactions.Published);
        return mash;
    }

    /// <summary>A mash of that malt alone, with power enough; its certificate stands behind the draw.</summary>
    private static MashStep MashOf(Malt malt, double kilograms, ref double[] draw)
    {
        ParameterList list = new();
        for (int i = ParameterList.KnownCount; i < draw.Length; i++)
        {
            list.Of(new Parameter($"yeast {i}", draw[i], Prior.Point, "1", "test", "test"));
        }

        Slot Next(string id, double value) => list.Of(new Parameter(id, value, Prior.Point, "1", "test", "test"));
        MaltMakeup made = new(malt.Family, kilograms)
        {
            Extract = Next("extract", malt.ExtractFineDry.Ratio),
            Moisture = Next("moisture", malt.Moisture.Ratio),
            Colour = Next("colour", malt.Colour.Lovibond),
            DiastaticPower = Next("power", 2 * MashStep.EnoughDiastaticPower),
        };
        draw = [.. draw, malt.ExtractFineDry.Ratio, malt.Moisture.Ratio, malt.Colour.Lovibond, 2 * MashStep.EnoughDiastaticPower];
        return new MashStep([made], kilograms, new RestCourse([new RestStep(66, 60)], towardsPlateau: 0.5));
    }

    /// <summary>Twenty kilograms or so of clear all-malt wort of that strength.</summary>
    public static Wort AllMalt(double plato)
    {
        Wort mash = Mashed(Malt(81.5, 3.2), 4, 14, Of());
        Wort wort = mash.Part(Shares.ClearLiquid);
        wort[Component.Water] += (100 * wort.ExtractMass / plato) - wort.LiquidMass;
        return wort;
    }

    /// <summary>That wort fermented by that yeast.</summary>
    public static Wort Fermented(Wort wort, double[] draw)
    {
        Ferment.Out(ref wort, Yeast, Reactions.Published, draw);
        return wort;
    }

    /// <summary>Degrees Plato of a gravity, by the table the engine reads.</summary>
    public static double Plato(double gravity) => SucroseSolution.PlatoAt(gravity);
}
