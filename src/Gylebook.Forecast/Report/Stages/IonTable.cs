using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Report.Stages;

/// <summary>Ions in mg/L of clear liquid, read off the one state.</summary>
/// <param name="Mash">In the mash's wort: what liquor, salts, acids and foods brought.</param>
/// <param name="Kettle">The same when the flame goes off.</param>
/// <param name="Glass">As served, malt's own with them, as bounds.</param>
/// <param name="Phosphorus">The element, as served.</param>
public sealed record IonTable(
    IReadOnlyDictionary<Ion, double> Mash, IReadOnlyDictionary<Ion, double> Kettle, IReadOnlyDictionary<Ion, Band> Glass, Band Phosphorus)
{
    /// <summary>Reads them off a run.</summary>
    /// <remarks>
    /// The tally of alkalinity is told for the mash alone: by the kettle the mash's acids have used it up.
    /// </remarks>
    public static IonTable Of(RunOutcome run) => new(
        At(run, Stage.Mash), At(run, Stage.KnockOut),
        IonTracers.Carried.Where(ion => ion != Ion.Bicarbonate)
            .ToDictionary(ion => ion, ion => InGlass(run, IonReadouts.Of(Stage.Pour, ion), IonReadouts.MaltsOwn(ion))),
        InGlass(run, IonReadouts.Phosphorus, Known.MaltPhosphorus));

    private static Dictionary<Ion, double> At(RunOutcome run, Stage stage) => IonTracers.Carried
        .Where(ion => stage == Stage.Mash || ion != Ion.Bicarbonate)
        .Select(ion => (Ion: ion, Milligrams: run[IonReadouts.Of(stage, ion)]))
        .Where(row => !double.IsNaN(row.Milligrams))
        .ToDictionary(row => row.Ion, row => row.Milligrams);

    /// <summary>What malt brings is as wide as published worts and beers; the rest is weighed out.</summary>
    private static Band InGlass(RunOutcome run, Readout readout, Known malt)
    {
        (double low, double high) = new Bounds().Between(malt, StartingParameters.EndsOf(malt)).Of(run, readout);
        return new Band(low, run[readout], high, readout.Unit, BandKind.Bounds);
    }
}
