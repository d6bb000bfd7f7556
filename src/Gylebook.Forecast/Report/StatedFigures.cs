using Gylebook.Engine.Readouts;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange.OpenFormats;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Report;

/// <summary>What a forecast comes to, for the open formats that state it.</summary>
public static class StatedFigures
{
    /// <summary>The figures of a forecast; unknown ones where the recipe cannot be brewed.</summary>
    public static BrewedFigures Of(BrewForecast forecast)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        return new BrewedFigures
        {
            Cast = Likely(forecast, BeerReadouts.CastLitres, VolumeAt20C.FromLitres),
            PreBoil = Likely(forecast, BeerReadouts.CopperUpLitres, VolumeAt20C.FromLitres),
            Strike = forecast.MashSchedule is { StrikeLitres: > 0 and var strike } ? VolumeAt20C.FromLitres(strike) : null,
            OriginalGravity = Likely(forecast, BeerReadouts.OriginalGravity, SpecificGravity.FromRatio),
            FinalGravity = Likely(forecast, BeerReadouts.FinalGravity, SpecificGravity.FromRatio),
            Alcohol = Likely(forecast, BeerReadouts.AlcoholByVolume, Fraction.FromPercent),
            Bitterness = Likely(forecast, BeerReadouts.Bitterness, Science.Quantities.Bitterness.FromIbu),
            Colour = Likely(forecast, BeerReadouts.Colour, BeerColour.FromSrm),
        };
    }

    /// <summary>Litres into the fermenter; null when the recipe cannot be brewed on the kit.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="kit">The kit.</param>
    /// <param name="sheets">The brewer's own sheets.</param>
    public static VolumeAt20C? CastOf(Recipe recipe, Kit kit, IEnumerable<LarderSheet> sheets) => Of(Forecaster.Forecast(recipe, kit, new Larder(sheets), "arrival")).Cast;

    private static T? Likely<T>(BrewForecast forecast, Readout readout, Func<double, T> of)
        where T : struct, IQuantity<T> =>
        forecast.Headline.FirstOrDefault(line => line.Name == readout.Id)?.Band is { Likely: var likely } && double.IsFinite(likely) ? of(likely) : null;
}
