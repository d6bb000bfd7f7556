using Gylebook.Engine.State;
using Gylebook.Forecast.Records;
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
    public static IonTable Of(RunRecord record) => new(
        At(record, Stage.Mash, IonTracers.Carried),
        At(record, Stage.KnockOut, InBeer),
        At(record, Stage.Pour, InBeer));

    private static readonly Ion[] InBeer = [.. IonTracers.Carried.Where(ion => ion != Ion.Bicarbonate)];

    private static Dictionary<Ion, double> At(RunRecord record, Stage stage, IEnumerable<Ion> ions)
    {
        List<Wort> worts = [.. record.Stages.Where(s => s.Stage == stage).Select(s => s.State.Wort)];
        double litres = worts.Sum(wort => wort.Litres);
        return litres <= 0 ? [] : ions.ToDictionary(ion => ion, ion => worts.Sum(wort => wort[IonTracers.Of(ion)]) / litres);
    }
}
