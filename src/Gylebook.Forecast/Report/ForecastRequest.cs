using Gylebook.Engine.State;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Readings;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Report;

/// <summary>What a reader of a forecast may ask for; the default is what everybody gets.</summary>
public sealed record ForecastRequest
{
    /// <summary>What everybody gets.</summary>
    public static ForecastRequest Usual { get; } = new();

    /// <summary>Which of the two models of bitterness is shown; the other stands beside it.</summary>
    public BitternessModel Bitterness { get; init; }

    /// <summary>How much beer the light goes through in the glass.</summary>
    public Length Glass { get; init; } = Length.FromMetres(0.05);

    /// <summary>How many draws the bands are made of; 0 for the likely run alone.</summary>
    public int Draws { get; init; }

    /// <summary>What was read of the brew; null for a forecast before anything is.</summary>
    public BrewReadings? Readings { get; init; }

    /// <summary>A style to compare with; null for none.</summary>
    public StyleStatistics? Style { get; init; }

    /// <summary>The largest starter the brewer has a vessel for; from 0.1 L to 20 L, where the published table ends.</summary>
    public VolumeAt20C MostStarter { get; init; } = VolumeAt20C.FromLitres(4);
}
