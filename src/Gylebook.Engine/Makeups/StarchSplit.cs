using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;
using Gylebook.Science.Fermenting;

namespace Gylebook.Engine.Makeups;

/// <summary>How converted starch divides into sugars and dextrin, as shares of the starch.</summary>
/// <remarks>
/// The split is such that a pale malt's wort, all of it offered to a yeast that takes every fermentable sugar, attenuates to the
/// limit for the mash: the limit is of the wort, so the sugar a malt brings of its own is allowed for.
/// See <c>docs/science/mashing.md</c>.
/// </remarks>
public readonly record struct StarchSplit
{
    /// <summary>Gravity at which the limit of attenuation is turned into a share of mass, °P.</summary>
    private const double ReferencePlato = 12;

    private readonly double _glucose;
    private readonly double _maltose;
    private readonly double _maltotriose;
    private readonly double _dextrin;

    /// <summary>From shares of what is made to shares of the starch it takes.</summary>
    private StarchSplit(double glucose, double maltose, double maltotriose, double dextrin)
    {
        _glucose = glucose / GlucoseHydration;
        _maltose = maltose / MaltoseHydration;
        _maltotriose = maltotriose / MaltotrioseHydration;
        _dextrin = dextrin / DextrinHydration;
        double starch = _glucose + _maltose + _maltotriose + _dextrin;
        Hydration = 1 / starch;
        _glucose /= starch;
        _maltose /= starch;
        _maltotriose /= starch;
        _dextrin /= starch;
    }

    /// <summary>Kilograms made of a kilogram of starch.</summary>
    public double Hydration { get; }

    /// <summary>The split at an apparent limit of attenuation, %, in a draw's spectrum of sugars.</summary>
    public static StarchSplit At(double limitPercent, Draw draw)
    {
        double carbohydrate = MaltExtracts.CarbohydrateOf(draw);
        double ownFermentable = carbohydrate * draw[Known.OwnSugarOfBase] * draw[Known.OwnFermentableOfBase];
        double fromStarch = carbohydrate * (1 - draw[Known.OwnSugarOfBase]);
        (double maltose, double maltotriose, double glucose) = (draw[Known.SpectrumMaltose], draw[Known.SpectrumMaltotriose], draw[Known.SpectrumGlucose]);
        double fermentable = Math.Clamp((FermentableShareOf(limitPercent) - ownFermentable) / fromStarch, 0, 1);
        double all = maltose + maltotriose + glucose;
        double each = fermentable / all;
        return new StarchSplit(glucose * each, maltose * each, maltotriose * each, 1 - fermentable);
    }

    /// <summary>Share of a pale malt's extract, by mass, that may ferment at that apparent limit of attenuation.</summary>
    public static double FermentableShareOf(double apparentLimitPercent)
    {
        double realAttenuation = apparentLimitPercent / 100 / Balling.ApparentOverRealDrop(ReferencePlato);
        return Balling.ExtractFermented(realAttenuation, ReferencePlato * (1 - realAttenuation));
    }

    /// <summary>Share of the starch that becomes that product.</summary>
    public double StarchTo(Component product) => product switch
    {
        Component.Glucose => _glucose,
        Component.Maltose => _maltose,
        Component.Maltotriose => _maltotriose,
        Component.Dextrin => _dextrin,
        _ => 0,
    };

    private static readonly double GlucoseHydration = Reactions.HydrationOf(Component.Glucose);
    private static readonly double MaltoseHydration = Reactions.HydrationOf(Component.Maltose);
    private static readonly double MaltotrioseHydration = Reactions.HydrationOf(Component.Maltotriose);
    private static readonly double DextrinHydration = Reactions.HydrationOf(Component.Dextrin);
}
