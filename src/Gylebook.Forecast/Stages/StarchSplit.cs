using Gylebook.Forecast.LayingOut;
using Gylebook.Forecast.Running;
using Gylebook.Forecast.State;

namespace Gylebook.Forecast.Stages;

/// <summary>How converted starch divides into sugars and dextrin, as shares of the starch.</summary>
public readonly record struct StarchSplit
{
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

    /// <summary>The split at a draw's limit of attenuation.</summary>
    public static StarchSplit At(ReadOnlySpan<double> draw) => At(
        draw[(int)Known.LimitOfAttenuation],
        draw[(int)Known.SpectrumMaltose], draw[(int)Known.SpectrumMaltotriose], draw[(int)Known.SpectrumGlucose]);

    /// <summary>The split at an apparent limit of attenuation, given what the fermentable part is made of.</summary>
    public static StarchSplit At(double limitPercent, double maltose, double maltotriose, double glucose)
    {
        double ownFermentable = MaltMakeup.OwnFermentableOfPaleMalt;
        double fromStarch = MaltMakeup.StarchOfPaleMalt;
        double fermentable = Math.Clamp((Mash.FermentableShareOf(limitPercent) - ownFermentable) / fromStarch, 0, 1);
        double all = maltose + maltotriose + glucose;
        double each = fermentable / all;
        return new StarchSplit(glucose * each, maltose * each, maltotriose * each, 1 - fermentable);
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
