using Gylebook.Engine.State;
using Gylebook.Science.Water;

namespace Gylebook.Engine.Readouts;

/// <summary>Ions that liquor, salts, acids and foods brought, mg in a litre of clear liquid, by place.</summary>
/// <remarks>The tally of alkalinity is told for the mash alone: by the kettle the mash's acids have used it up.</remarks>
public static class IonReadouts
{
    /// <summary>Where they are told.</summary>
    public static IReadOnlyList<Stage> Places { get; } = [Stage.Mash, Stage.KnockOut, Stage.Pour];

    /// <summary>All rows.</summary>
    public static IReadOnlyList<Readout> All { get; } =
        [.. Places.SelectMany(place => IonTracers.Carried.Where(ion => place == Stage.Mash || ion != Ion.Bicarbonate).Select(ion => Row(place, ion)))];

    /// <summary>The row of an ion at a place.</summary>
    public static Readout Of(Stage place, Ion ion) => Rows[(place, ion)];

    private static readonly Dictionary<(Stage, Ion), Readout> Rows = All.ToDictionary(row => (row.Place.Stage, IonOf(row)));

    private static Ion IonOf(Readout row) => IonTracers.Carried.Single(ion => row.Id.EndsWith("." + NameOf(ion), StringComparison.Ordinal));

    private static string NameOf(Ion ion) => ion.ToString().ToLowerInvariant();

    private static Readout Row(Stage place, Ion ion)
    {
        Component component = IonTracers.Of(ion);
        return new Readout($"ions.{Names.Of(place)}.{NameOf(ion)}", NameOf(ion), "mg/L", 0, new(place), place == Stage.Pour
            ? (in run) => InGlass(run, component)
            : (in run) => run.Litres(place) is > 0 and var litres ? run.Wort(place)[component] / litres : double.NaN);
    }

    private static double InGlass(in RunView run, Component component)
    {
        double milligrams = 0, litres = 0;
        foreach (int portion in run.Plan.Packaged)
        {
            ref readonly Wort beer = ref run.Wort(Stage.Pour, portion);
            litres += beer.Litres;
            milligrams += beer[component];
        }

        return litres > 0 ? milligrams / litres : double.NaN;
    }
}
