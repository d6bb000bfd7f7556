using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;
using Gylebook.Science.Liquids;
using Gylebook.Science.Water;

namespace Gylebook.Engine.Readouts;

/// <summary>Ions, mg in a litre of clear liquid, by place: in mash and kettle what liquor, salts, acids and foods brought, in the glass malt's own besides.</summary>
/// <remarks>
/// The tally of alkalinity is told for the mash alone: by the kettle the mash's acids have used it up. Malt's ions go with its buffering,
/// in proportion to malt, by what a wort of 12 °P holds; loss with break and yeast is not known.
/// </remarks>
public static class IonReadouts
{
    /// <summary>Strength of the worts whose ions were published, °P.</summary>
    private const double PublishedPlato = 12;

    /// <summary>What malt brings of an ion.</summary>
    private static readonly Dictionary<Ion, Known> OfMalt = new()
    {
        [Ion.Calcium] = Known.MaltCalcium,
        [Ion.Magnesium] = Known.MaltMagnesium,
        [Ion.Sodium] = Known.MaltSodium,
        [Ion.Potassium] = Known.MaltPotassium,
        [Ion.Sulphate] = Known.MaltSulphate,
        [Ion.Chloride] = Known.MaltChloride,
    };

    private static readonly double ExtractKilogramsPerLitre =
        PublishedPlato / 100 * SucroseSolution.KilogramsPerLitreOfGravity(SucroseSolution.GravityAt(PublishedPlato));

    /// <summary>Where they are told.</summary>
    public static IReadOnlyList<Stage> Places { get; } = [Stage.Mash, Stage.KnockOut, Stage.Pour];

    /// <summary>Phosphorus in the glass, as the element.</summary>
    public static Readout Phosphorus { get; } = new(
        "ions.pour.phosphorus", "phosphorus", "mg/L", 0, new(Stage.Pour),
        static (in run) => InGlass(run, Component.Phosphorus, Component.Phosphorus, Known.MaltPhosphorus));

    private static readonly Dictionary<(Stage Place, Ion Ion), Readout> Rows = Places
        .SelectMany(place => IonTracers.Carried.Where(ion => place == Stage.Mash || ion != Ion.Bicarbonate).Select(ion => (place, ion)))
        .ToDictionary(at => at, at => Row(at.place, at.ion));

    /// <summary>All rows.</summary>
    public static IReadOnlyList<Readout> All { get; } = [.. Rows.Values, Phosphorus];

    /// <summary>The row of an ion at a place.</summary>
    public static Readout Of(Stage place, Ion ion) => Rows[(place, ion)];

    /// <summary>The parameter of what malt brings of an ion into the glass.</summary>
    public static Known MaltsOwn(Ion ion) => OfMalt[ion];

    private static string NameOf(Ion ion) => ion.ToString().ToLowerInvariant();

    private static Readout Row(Stage place, Ion ion)
    {
        Component component = IonTracers.Of(ion);
        if (place == Stage.Pour)
        {
            Component foods = ion switch { Ion.Calcium => Component.FoodCalcium, Ion.Magnesium => Component.FoodMagnesium, _ => component };
            Known malt = OfMalt[ion];
            return new Readout($"ions.{Names.Of(place)}.{NameOf(ion)}", NameOf(ion), "mg/L", 0, new(place), (in run) => InGlass(run, component, foods, malt));
        }

        return new Readout(
            $"ions.{Names.Of(place)}.{NameOf(ion)}", NameOf(ion), "mg/L", 0, new(place),
            (in run) => run.Litres(place) is > 0 and var litres ? run.Wort(place)[component] / litres : double.NaN);
    }

    private static double InGlass(in RunView run, Component component, Component foods, Known malt)
    {
        double milligrams = 0, litres = 0, kilograms = 0;
        foreach (int portion in run.Plan.Packaged)
        {
            ref readonly Wort beer = ref run.Wort(Stage.Pour, portion);
            litres += run.Litres(Stage.Pour, portion);
            milligrams += beer[component] + (foods == component ? 0 : beer[foods]);
            kilograms += beer[Component.MaltBuffer];
        }

        double published = ExtractKilogramsPerLitre * run.Draw[Known.ExtractAsMalt];
        return litres > 0 ? (milligrams + (run.Draw[malt] * kilograms / published)) / litres : double.NaN;
    }
}
