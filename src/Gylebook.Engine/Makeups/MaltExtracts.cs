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

    private int _families;
    private OfExtract _base, _raw, _lightCaramel, _amberCaramel, _darkCaramel, _dextrin, _roast;

    /// <summary>None yet: those of a plan are asked for.</summary>
    internal MaltExtracts()
    {
    }

    /// <summary>All families at a draw.</summary>
    public MaltExtracts(Draw draw)
    {
        foreach (MaltFamily family in Enum.GetValues<MaltFamily>())
        {
            AskFor(family);
        }

        Fill(draw);
    }

    /// <summary>Reckons this family too from now on.</summary>
    internal void AskFor(MaltFamily family) => _families |= 1 << (int)family;

    /// <summary>Reckons none from now on.</summary>
    internal void AskForNone() => _families = 0;

    private bool Has(MaltFamily family) => (_families & (1 << (int)family)) != 0;

    /// <summary>How a Congress mash splits starch, at the draw.</summary>
    public StarchSplit CongressSplit { get; private set; }

    /// <summary>Carbohydrate in a malt's laboratory extract.</summary>
    internal static double CarbohydrateOf(Draw draw) =>
        1 - draw[Known.MaltSolubleProtein] - draw[Known.MaltCoagulable] - draw[Known.MaltMinerals];

    /// <summary>Share of the extract, in that family, that a mash makes from starch.</summary>
    public static double StarchShareOf(MaltFamily family, Draw draw) => CarbohydrateOf(draw) * (1 - OwnSugarOf(family, draw));

    /// <summary>Reckons its families anew.</summary>
    public void Fill(Draw draw)
    {
        CongressSplit = StarchSplit.At(100 * draw[Known.CongressLimit], draw);
        if (Has(MaltFamily.Base))
        {
            Unscaled(MaltFamily.Base, draw[Known.OwnFermentableOfBase], draw, out _base);
        }

        if (Has(MaltFamily.Raw))
        {
            Unscaled(MaltFamily.Raw, draw[Known.OwnFermentableOfBase], draw, out _raw);
        }

        if (Has(MaltFamily.Caramel))
        {
            Unscaled(MaltFamily.Caramel, draw[Known.OwnFermentableOfLightCaramel], draw, out _lightCaramel);
            Unscaled(MaltFamily.Caramel, draw[Known.OwnFermentableOfAmberCaramel], draw, out _amberCaramel);
            Unscaled(MaltFamily.Caramel, draw[Known.OwnFermentableOfDarkCaramel], draw, out _darkCaramel);
        }

        if (Has(MaltFamily.Dextrin))
        {
            Unscaled(MaltFamily.Dextrin, draw[Known.OwnFermentableOfDextrinMalt], draw, out _dextrin);
        }

        if (Has(MaltFamily.Roast))
        {
            Unscaled(MaltFamily.Roast, draw[Known.OwnFermentableOfRoast], draw, out _roast);
        }
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
        if (family == MaltFamily.Caramel)
        {
            CaramelOf(lovibond, out OfExtract caramel);
            Scaled(caramel, extractDry * (1 - moisture), moisture, lovibond, out malted);
        }
        else
        {
            Scaled(KindOf(family), extractDry * (1 - moisture), moisture, lovibond, out malted);
        }
    }

    private static void Scaled(in OfExtract kind, double extract, double moisture, double lovibond, out Wort malted)
    {
        double scale = extract * (CongressWater + moisture)
            / ((kind.SucroseEquivalent * (CongressWater + moisture + extract)) - (extract * kind.NativeMass));

        malted = kind.Parts;
        malted.Multiply(scale);
        malted[Component.Water] = moisture;
        malted[Component.Grain] = 1 - moisture - (scale * kind.NativeMass);
        malted[Component.MaltColour] = lovibond;
        malted[Component.MaltBuffer] = 1;
    }

    private ref readonly OfExtract KindOf(MaltFamily family)
    {
        switch (family)
        {
            case MaltFamily.Base: return ref _base;
            case MaltFamily.Raw: return ref _raw;
            case MaltFamily.Dextrin: return ref _dextrin;
            case MaltFamily.Roast: return ref _roast;
            default: throw new ArgumentOutOfRangeException(nameof(family), family, "No such family.");
        }
    }

    /// <summary>Between two measured colours on the straight line; beyond the last it is the last's.</summary>
    private void CaramelOf(double lovibond, out OfExtract caramel)
    {
        if (lovibond <= AmberCaramel)
        {
            OfExtract.Between(_lightCaramel, _amberCaramel, Math.Max(0, (lovibond - LightCaramel) / (AmberCaramel - LightCaramel)), out caramel);
        }
        else
        {
            OfExtract.Between(_amberCaramel, _darkCaramel, Math.Min(1, (lovibond - AmberCaramel) / (DarkCaramel - AmberCaramel)), out caramel);
        }
    }

    /// <summary>What a kilogram of laboratory extract is made of, roughly, before it is scaled to its certificate.</summary>
    private void Unscaled(MaltFamily family, double ownFermentable, Draw draw, out OfExtract kind)
    {
        kind = default;
        ref Wort parts = ref kind.Parts;
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

        kind.NativeMass = parts.Mass;
        kind.SucroseEquivalent = SucroseEquivalentOfCongress(parts);
    }

    private double SucroseEquivalentOfCongress(in Wort unscaled)
    {
        double starch = unscaled[Component.Starch];
        double sum = unscaled.ExtractMass;
        foreach ((Component product, double perKilogram, double sucroseEquivalent) in Products)
        {
            sum += starch * CongressSplit.StarchTo(product) * perKilogram * sucroseEquivalent;
        }

        return sum;
    }

    /// <summary>What starch becomes: kilograms of it from a kilogram of starch, and how it reads on a hydrometer.</summary>
    private static readonly (Component Product, double PerKilogram, double SucroseEquivalent)[] Products =
    [
        .. Reactions.Published.Conversion.Select(row =>
            (row.Terms[1].Component, row.Terms[1].PerKilogram, Components.SucroseEquivalent(row.Terms[1].Component))),
    ];

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
        public static void Between(in OfExtract from, in OfExtract to, double along, out OfExtract between)
        {
            between = new()
            {
                NativeMass = from.NativeMass + (along * (to.NativeMass - from.NativeMass)),
                SucroseEquivalent = from.SucroseEquivalent + (along * (to.SucroseEquivalent - from.SucroseEquivalent)),
            };
            between.Parts.Add(from.Parts, 1 - along);
            between.Parts.Add(to.Parts, along);
        }
    }
}
