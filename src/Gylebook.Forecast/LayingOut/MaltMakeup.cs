using Gylebook.Forecast.Stages;
using Gylebook.Forecast.State;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.LayingOut;

/// <summary>A malt's certificate, taken apart into components.</summary>
/// <remarks>
/// A laboratory extract already contains the water of hydrolysis its own sugars took up, so the starch behind it weighs
/// less. The constituents are scaled so that a Congress mash of the malt (50 g malt, 400 g water) reads the certificate:
/// with E the extract as is, M the moisture, s the sucrose-equivalent and d the native dry mass of the unscaled
/// constituents, 100·k·s / (8 + M + k·d) must equal 100·E / (8 + M + E), and so k = E(8 + M) / (s(8 + M + E) − E·d).
/// Shares of protein, minerals and sugar are handbook averages from memory: see <c>data/starting-values.csv</c>.
/// </remarks>
public static class MaltMakeup
{
    /// <summary>Kilograms of water a Congress mash has per kilogram of malt: 400 g to 50 g.</summary>
    public const double CongressWater = 8;

    private static readonly double Protein = Start("malt.solubleProtein");
    private static readonly double Coagulable = Start("malt.coagulable");
    private static readonly double Minerals = Start("malt.minerals");
    private static readonly double Carbohydrate = 1 - Protein - Coagulable - Minerals;

    /// <summary>Fermentable sugar that a pale malt brings of its own, as a share of its extract.</summary>
    internal static double OwnFermentableOfPaleMalt { get; } = Carbohydrate * Start("malt.ownSugar.base") * Start("malt.ownFermentable.base");

    /// <summary>What of a pale malt's extract is made from starch.</summary>
    internal static double StarchOfPaleMalt { get; } = Carbohydrate * (1 - Start("malt.ownSugar.base"));

    /// <summary>How a Congress mash splits starch; it needs the two above, so they come first.</summary>
    public static StarchSplit CongressSplit { get; } = StarchSplit.At(
        100 * Start("mash.limit.congress"), Start("mash.spectrum.maltose"), Start("mash.spectrum.maltotriose"), Start("mash.spectrum.glucose"));

    /// <summary>By family, once: the starting values do not change under a run.</summary>
    private static readonly Wort[] UnscaledOf = [.. Enum.GetValues<MaltFamily>().Select(Unscaled)];

    /// <summary>One kilogram of the malt as is.</summary>
    public static Wort OfOneKilogram(Malt malt) => OfOneKilogram(malt, malt.Colour.Lovibond);

    /// <summary>One kilogram of the malt as is, of another colour than the table's.</summary>
    public static Wort OfOneKilogram(Malt malt, double lovibond)
    {
        double moisture = malt.Moisture.Ratio;
        double extract = malt.ExtractFineDry.Ratio * (1 - moisture);
        Wort unscaled = UnscaledOf[(int)malt.Family];
        double native = unscaled.Mass;
        double scale = extract * (CongressWater + moisture)
            / ((SucroseEquivalentOfCongress(unscaled) * (CongressWater + moisture + extract)) - (extract * native));

        Wort malted = default;
        malted.Add(unscaled, scale);
        malted[Component.Water] = moisture;
        malted[Component.Grain] = 1 - moisture - (scale * native);
        malted[Component.MaltColour] = lovibond;
        malted[Component.MaltBuffer] = 1;
        return malted;
    }

    /// <summary>Share of the extract, in that family, that a mash makes from starch.</summary>
    public static double StarchShareOf(MaltFamily family) => Carbohydrate * (1 - OwnSugarOf(family));

    /// <summary>What a kilogram of laboratory extract is made of, roughly, before it is scaled to its certificate.</summary>
    private static Wort Unscaled(MaltFamily family)
    {
        Wort parts = default;
        parts[Component.Protein] = Protein;
        parts[Component.CoagulableProtein] = Coagulable;
        parts[Component.Minerals] = Minerals;
        parts[Component.Starch] = StarchShareOf(family) / CongressSplit.Hydration;
        double own = Carbohydrate * OwnSugarOf(family);
        double fermentable = own * OwnFermentableOf(family);
        parts[Component.Dextrin] = own - fermentable;
        if (family == MaltFamily.Base)
        {
            parts[Component.Sucrose] = fermentable;
        }
        else
        {
            parts[Component.Maltose] = fermentable * Start("mash.spectrum.maltose");
            parts[Component.Maltotriose] = fermentable * Start("mash.spectrum.maltotriose");
            parts[Component.Glucose] = fermentable * Start("mash.spectrum.glucose");
        }

        return parts;
    }

    private static double SucroseEquivalentOfCongress(in Wort unscaled)
    {
        double starch = unscaled[Component.Starch];
        double sum = unscaled.ExtractMass;
        foreach (Reaction row in Reactions.Published.Conversion)
        {
            Component product = row.Terms[1].Component;
            sum += starch * CongressSplit.StarchTo(product) * row.Terms[1].PerKilogram * Components.SucroseEquivalent(product);
        }

        return sum;
    }

    private static double OwnSugarOf(MaltFamily family) => Start("malt.ownSugar." + Word(family));

    private static double OwnFermentableOf(MaltFamily family) => Start("malt.ownFermentable." + Word(family));

    private static string Word(MaltFamily family) => family switch
    {
        MaltFamily.Base => "base",
        MaltFamily.Caramel => "caramel",
        MaltFamily.Roast => "roast",
        _ => throw new ArgumentOutOfRangeException(nameof(family), family, "No such family."),
    };

    private static double Start(string id) => StartingValues.Of(id).Value;
}
