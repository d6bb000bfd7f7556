using Gylebook.Forecast.LayingOut;
using Gylebook.Forecast.Running;
using Gylebook.Forecast.Stages;
using Gylebook.Forecast.State;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Liquids;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Tests.Stages;

/// <summary>Draws and worts for single stages, without a recipe.</summary>
internal static class Draws
{
    /// <summary>Rows of a draw that belong to the yeast, behind those that every run has.</summary>
    public static readonly FermentStep Yeast = new((int)Known.FatDensity + 1, (int)Known.FatDensity + 2, (int)Known.FatDensity + 3, (int)Known.FatDensity + 4);

    /// <summary>A mash at that conversion and limit of attenuation, and a yeast of those shares.</summary>
    public static double[] Of(double conversion = 1, double limit = 82, double maltose = 1, double maltotriose = 0.85, double dextrin = 0)
    {
        double[] draw = new double[(int)Known.FatDensity + 5];
        draw[(int)Known.Conversion] = conversion;
        draw[(int)Known.LimitOfAttenuation] = limit;
        draw[(int)Known.SpectrumMaltose] = StartingValues.Of("mash.spectrum.maltose").Value;
        draw[(int)Known.SpectrumMaltotriose] = StartingValues.Of("mash.spectrum.maltotriose").Value;
        draw[(int)Known.SpectrumGlucose] = StartingValues.Of("mash.spectrum.glucose").Value;
        draw[Yeast.Maltose] = maltose;
        draw[Yeast.Maltotriose] = maltotriose;
        draw[Yeast.Dextrin] = dextrin;
        return draw;
    }

    /// <summary>A malt by its certificate.</summary>
    public static Malt Malt(double extractDryPercent, double moisturePercent) => new(
        "test", "test malt", MaltFamily.Base, Fraction.FromPercent(extractDryPercent), Fraction.FromPercent(moisturePercent),
        MaltColour.FromEbc(6), 60, "barley", new("test", "test"));

    /// <summary>A mash of one malt in that many kilograms of water a kilogram, converted.</summary>
    public static Wort Mashed(Malt malt, double kilograms, double water, double[] draw)
    {
        Wort mash = default;
        mash.Add(MaltMakeup.OfOneKilogram(malt), kilograms);
        mash[Component.Water] += water;
        Mash.Convert(ref mash, new MashStep(MaltMakeup.StarchShareOf(malt.Family), 1, kilograms), draw, Reactions.Published);
        return mash;
    }

    /// <summary>Twenty kilograms or so of clear all-malt wort of that strength.</summary>
    public static Wort AllMalt(double plato)
    {
        Wort mash = Mashed(Malt(81.5, 3.2), 4, 14, Of());
        Wort wort = mash.Part(new Shares { Liquid = 1 }.ByComponent());
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
