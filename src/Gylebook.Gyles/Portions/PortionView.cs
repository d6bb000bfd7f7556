using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Report;

namespace Gylebook.Gyles.Portions;

/// <summary>What a forecast tells of one portion: its own numbers where the brew is divided, those of the whole where it is not.</summary>
public sealed class PortionView
{
    private readonly int? _place;

    private PortionView(DividedPortion? portion, int? place)
    {
        Name = portion?.Name;
        Share = portion?.Share ?? 1;
        _place = place;
        (OriginalGravity, FinalGravity, Alcohol) = place is { } known
            ? (PortionReadouts.OriginalGravity(known), StageReadouts.Of(Stage.Ferment, known).Gravity, StageReadouts.Of(Stage.Pour, known).Alcohol)
            : (BeerReadouts.OriginalGravity, BeerReadouts.FinalGravity, BeerReadouts.AlcoholByVolume);
    }

    /// <summary>Which portion; null for the whole.</summary>
    public string? Name { get; }

    /// <summary>Its share of the beer.</summary>
    public double Share { get; }

    /// <summary>Its gravity with all that goes in, unfermented.</summary>
    public Readout OriginalGravity { get; }

    /// <summary>Its gravity when fermentation ends.</summary>
    public Readout FinalGravity { get; }

    /// <summary>Alcohol in the glass, % by volume.</summary>
    public Readout Alcohol { get; }

    /// <summary>The view of a portion.</summary>
    /// <param name="forecast">The forecast of the brew as it is divided.</param>
    /// <param name="division">How the gyle is divided.</param>
    /// <param name="portion">Which portion; null, or none there is, for the whole.</param>
    public static PortionView Of(BrewForecast forecast, Division division, string? portion)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        ArgumentNullException.ThrowIfNull(division);
        return new(division.Find(portion), portion is null ? null : forecast.Stages.FirstOrDefault(stage => stage.Stage == Stage.Ferment && stage.Portion == portion)?.Place.Portion);
    }

    /// <summary>Clear beer there is of it, L at 20 °C; null where nobody can tell.</summary>
    public Band? Litres(BrewForecast forecast)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        return Band(forecast, _place is { } place ? StageReadouts.Of(Stage.Package, place).Litres : BeerReadouts.PackagedLitres);
    }

    /// <summary>Wort of it in the fermenter, L at 20 °C; 0 where nobody can tell.</summary>
    public double CastLitres(BrewForecast forecast)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        return Share * (forecast.Stages.FirstOrDefault(stage => stage.Stage == Stage.Cast)?.LitresAt20C ?? 0);
    }

    /// <summary>One of its numbers with its ends; null where nobody can tell.</summary>
    public static Band? Band(BrewForecast forecast, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        ArgumentNullException.ThrowIfNull(readout);
        return Headline(forecast, readout) ?? forecast.HowSure?.BandOf(readout);
    }

    /// <summary>How much of a planned line goes into it, kg; 0 where it goes into another.</summary>
    public double KilogramsOf(PlannedLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return Takes(line) ? line.Kilograms * (line.Line.Portion is null ? Share : 1) : 0;
    }

    /// <summary>Whether a planned line goes into it.</summary>
    public bool Takes(PlannedLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return Name is null || line.Line.Portion is not { } only || only == Name;
    }

    private static Band? Headline(BrewForecast forecast, Readout readout) => forecast.Headline.FirstOrDefault(headline => headline.Name == readout.Id)?.Band;
}
