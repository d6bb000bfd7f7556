using Gylebook.Engine.Drawing;
using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Planning;

namespace Gylebook.Forecast.Report.Doubt;

/// <summary>A brew drawn and run with each draw: its parameters, what models leave open, and whatever else is to be drawn beside them.</summary>
public static class DrawnBrew
{
    /// <summary>Draws it.</summary>
    /// <param name="brew">The brew.</param>
    /// <param name="likely">Its run at the medians.</param>
    /// <param name="seed">A readable word.</param>
    /// <param name="draws">How many.</param>
    /// <param name="besides">What is drawn besides, such as how instruments are off.</param>
    /// <param name="told">Draws of another plan of this brew, whose figures are taken over; null for none.</param>
    /// <param name="readouts">What to read; null for all there is.</param>
    public static Ensemble Of(
        BrewPlan brew, RunOutcome likely, string seed, int draws, IReadOnlyList<Parameter> besides, Draws? told = null, IReadOnlyList<Readout>? readouts = null)
    {
        IReadOnlyList<ModelTerm> terms = ModelTerms.Of(brew, likely);
        Draws drawn = Draws.Of([.. brew.Plan!.Parameters, .. terms.Select(term => term.Parameter).DistinctBy(term => term.Id), .. besides], seed, draws);
        drawn = told is null ? drawn : drawn.Told(told);
        return Ensemble.Of(brew.Plan, drawn, readouts ?? brew.Readouts!.All, terms, Environment.ProcessorCount);
    }
}
