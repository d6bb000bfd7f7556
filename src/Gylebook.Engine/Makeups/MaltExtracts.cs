using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;
using Gylebook.Science.Mashing;

namespace Gylebook.Engine.Makeups;

/// <summary>What a kilogram of laboratory extract is made of, by kind of malt, at one draw; and malts taken apart with it.</summary>
/// <remarks>
/// A laboratory extract already contains the water of hydrolysis its own sugars took up, so the starch behind it weighs
/// less. The constituents are scaled so that a Congress mash of the malt (50 g malt, 400 g water) reads the certificate:
/// with E the extract as is, M the moisture, s the sucrose-equivalent and d the native dry mass of the unscaled
/// constituents, 100·k·s / (8 + M + k·d) must equal 100·E / (8 + M + E), and so k = E(8 + M) / (s(8 + M + E) − E·d).
/// Shares of protein, minerals and sugar are handbook averages from memory: see <c>data/starting-values.csv</c>.
/// </remarks>
public sealed class MaltExtracts
{
    /// <summary>Kilograms of water a Congress mash has per kilogram of malt: 400 g to 50 g.</summary>
    public const double CongressWater = 8;

    /// <summary>Colours of the caramel malts whose loss of attenuation was measured, °L.</summary>
    private const double LightCaramel = 10, AmberCaramel = 40, DarkCaramel = 120;

    private OfExtract _base, _raw, _lightCaramel, _amberCaramel, _darkCaramel, _dextrin, _roast;

    /// <summary>Shares of a kilogram that is yet to be filled in.</summary>
    public MaltExtracts()
    {
    }

    /// <summary>At a draw.</summary>
    public MaltExtracts(Draw draw) => Fill(draw);

    /// <summary>How a Congress mash splits starch, at the draw.</summary>
    public StarchSplit CongressSplit { get; private set; }

    /// <summary>Carbohydrate in a malt's laboratory extract.</summary>
    internal static double CarbohydrateOf(Draw draw) =>
        1 - draw[Known.MaltSolubleProtein] - draw[Known.MaltCoagulable] - draw[Known.MaltMinerals];

    /// <summary>Share of the extract, in that family, that a mash makes from starch.</summary>
    public static double StarchShareOf(MaltFamily family, Draw draw) => CarbohydrateOf(draw) * (1 - OwnSugarOf(family, draw));

    /// <summary>Reckons all kinds anew.</summary>
    public void Fill(Draw draw)
    {
        CongressSplit = StarchSplit.At(100 * draw[Known.CongressLimit], draw);
        _base = Unscaled(MaltFamily.Base, draw[Known.OwnFermentableOfBase], draw);
        _raw = Unscaled(MaltFamily.Raw, draw[Known.OwnFermentableOfBase], draw);
        _lightCaramel = Unscaled(MaltFamily.Caramel, draw[Known.OwnFermentableOfLightCaramel], draw);
        _amberCaramel = Unscaled(MaltFamily.Caramel, draw[Known.OwnFermentableOfAmberCaramel], draw);
        _darkCaramel = Unscaled(MaltFamily.Caramel, draw[Known.OwnFermentableOfDarkCaramel], draw);
        _dextrin = Unscaled(MaltFamily.Dextrin, draw[Known.OwnFermentableOfDextrinMalt], draw);
        _roast = Unscaled(MaltFamily.Roast, draw[Known.OwnFermentableOfRoast], draw);
    }

    /// <summary>One kilogram of a malt as is.</summary>
    /// <param name="family">Its kind.</param>
    /// <param name="extractDry">Laboratory extract on dry matter, fine grind, kg/kg.</param>
    /// <param name="moisture">Water as is, kg/kg.</param>
    /// <param name="lovibond">Colour, °L.</param>
    public Wort OfOneKilogram(MaltFamily family, double extractDry, double moisture, double lovibond)
    {
        OfOneKilogram(family, extractDry, moisture, lovibond, out Wort malted);
        return malted;
    }

    /// <summary>The same, written where it is wanted.</summary>
    internal void OfOneKilogram(MaltFamily family, double extractDry, double moisture, double lovibond, out Wort malted)
    {
        double extract = extractDry * (1 - moisture);
        OfExtract kind = KindOf(family, lovibond);
        double scale = extract * (CongressWater + moisture)
            / ((kind.SucroseEquivalent * (CongressWater + moisture + extract)) - (extract * kind.NativeMass));

        malted = kind.Parts;
        malted.Multiply(scale);
        malted[Component.Water] = moisture;
        malted[Component.Grain] = 1 - moisture - (scale * kind.NativeMass);
        malted[Component.MaltColour] = lovibond;
        malted[Component.MaltBuffer] = 1;
    }

    private OfExtract KindOf(MaltFamily family, double lovibond) => family switch
    {
        MaltFamily.Base => _base,
        MaltFamily.Raw => _raw,
        MaltFamily.Caramel => CaramelOf(lovibond),
        MaltFamily.Dextrin => _dextrin,
        MaltFamily.Roast => _roast,
        _ => throw new ArgumentOutOfRangeException(nameof(family), family, "No such family."),
    };

    /// <summary>Between two measured colours on the straight line; beyond the last it is the last's.</summary>
    private OfExtract CaramelOf(double lovibond) => lovibond <= AmberCaramel
        ? OfExtract.Between(_lightCaramel, _amberCaramel, Math.Max(0, (lovibond - LightCaramel) / (AmberCaramel - LightCaramel)))
        : OfExtract.Between(_amberCaramel, _darkCaramel, Math.Min(1, (lovibond - AmberCaramel) / (DarkCaramel - AmberCaramel)));

    /// <summary>What a kilogram of laboratory extract is made of, roughly, before it is scaled to its certificate.</summary>
    private OfExtract Unscaled(MaltFamily family, double ownFermentable, Draw draw)
    {
        Wort parts = default;
        parts[Component.Protein] = draw[Known.MaltSolubleProtein];
        parts[Component.CoagulableProtein] = draw[Known.MaltCoagulable];
        parts[Component.Minerals] = draw[Known.MaltMinerals];
        parts[Component.Starch] = StarchShareOf(family, draw) / CongressSplit.Hydration;
        double own = CarbohydrateOf(draw) * OwnSugarOf(family, draw);
        double fermentable = own * ownFermentable;
        parts[Component.Dextrin] = own - fermentable;
        if (family is MaltFamily.Base or MaltFamily.Raw)
        {
            parts[Component.Sucrose] = fermentable;
        }
        else
        {
            parts[Component.Maltose] = fermentable * draw[Known.SpectrumMaltose];
            parts[Component.Maltotriose] = fermentable * draw[Known.SpectrumMaltotriose];
            parts[Component.Glucose] = fermentable * draw[Known.SpectrumGlucose];
        }

        return new OfExtract { Parts = parts, NativeMass = parts.Mass, SucroseEquivalent = SucroseEquivalentOfCongress(parts) };
    }

    private double SucroseEquivalentOfCongress(in Wort unscaled)
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

    private static double OwnSugarOf(MaltFamily family, Draw draw) => family switch
    {
        MaltFamily.Base => draw[Known.OwnSugarOfBase],
        MaltFamily.Raw => draw[Known.OwnSugarOfRaw],
        MaltFamily.Caramel or MaltFamily.Dextrin => draw[Known.OwnSugarOfCaramel],
        MaltFamily.Roast => draw[Known.OwnSugarOfRoast],
        _ => throw new ArgumentOutOfRangeException(nameof(family), family, "No such family."),
    };

    /// <summary>Constituents of a kilogram of extract, with what is asked of them for each malt.</summary>
    private struct OfExtract
    {
        public Wort Parts;
        public double NativeMass;
        public double SucroseEquivalent;

        /// <summary>So far along from one to the other: all three are sums over the parts, so the line is straight in each.</summary>
        public static OfExtract Between(in OfExtract from, in OfExtract to, double along)
        {
            OfExtract between = new()
            {
                NativeMass = from.NativeMass + (along * (to.NativeMass - from.NativeMass)),
                SucroseEquivalent = from.SucroseEquivalent + (along * (to.SucroseEquivalent - from.SucroseEquivalent)),
            };
            between.Parts.Add(from.Parts, 1 - along);
            between.Parts.Add(to.Parts, along);
            return between;
        }
    }
}
