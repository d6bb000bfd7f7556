using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Report.Stages;

/// <summary>Ions that liquor, salts, acids and foods brought, in mg/L of clear liquid, read off the one state.</summary>
/// <param name="Mash">In the mash's wort.</param>
/// <param name="Kettle">When the flame goes off.</param>
/// <param name="Glass">As served.</param>
public sealed record IonTable(
    IReadOnlyDictionary<Ion, double> Mash, IReadOnlyDictionary<Ion, double> Kettle, IReadOnlyDictionary<Ion, double> Glass)
{
    /// <summary>Reads them off a run.</summary>
    /// <remarks>
    /// The tally of alkalinity is told for the mash alone: by the kettle the mash's acids have used it up.
    /// </remarks>
    public static IonTable Of(RunOutcome run) => new(At(run, Stage.Mash), At(run, Stage.KnockOut), At(run, Stage.Pour));

    private static Dictionary<Ion, double> At(RunOutcome run, Stage stage) => IonTracers.Carried
        .Where(ion => stage == Stage.Mash || ion != Ion.Bicarbonate)
        .Select(ion => (Ion: ion, Milligrams: run[IonReadouts.Of(stage, ion)]))
        .Where(row => !double.IsNaN(row.Milligrams))
        .ToDictionary(row => row.Ion, row => row.Milligrams);
}
