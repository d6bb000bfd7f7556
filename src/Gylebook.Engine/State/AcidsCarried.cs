using Gylebook.Science.Acidity;
using Gylebook.Science.Water;

namespace Gylebook.Engine.State;

/// <summary>The acids a run carries, and the way between them and the acid science's load.</summary>
/// <remarks>A strong acid leaves its anion as an ion and its protons as a tally of their own.</remarks>
public static class AcidsCarried
{
    private static readonly Dictionary<Acid, Component> Weak = new()
    {
        [Acids.Lactic] = Component.LacticAcid,
        [Acids.Acetic] = Component.AceticAcid,
        [Acids.Citric] = Component.CitricAcid,
        [Acids.Malic] = Component.MalicAcid,
        [Acids.Tartaric] = Component.TartaricAcid,
        [Acids.Phosphoric] = Component.PhosphoricAcid,
        [Acids.Quinic] = Component.QuinicAcid,
    };

    /// <summary>pH at which a strong acid's protons are counted: sulphuric acid has given up both of its by then.</summary>
    private const double OfBeer = 4.5;

    /// <summary>Puts so many millimoles of an acid into a wort, with the ion and the protons it leaves.</summary>
    public static void Put(ref Wort wort, Acid acid, double millimoles)
    {
        bool weak = Weak.TryGetValue(acid, out Component component);
        wort[weak ? component : Component.Minerals] += millimoles * acid.MolarMass / 1e6;
        wort[Component.StrongAcid] += weak ? 0 : millimoles * acid.ProtonsGivenUp(OfBeer);
        if (acid.Anion is Ion anion)
        {
            wort[IonTracers.Of(anion)] += millimoles * anion.MolarMass();
        }
    }

    /// <summary>All that a wort carries.</summary>
    public static AcidLoad Of(in Wort wort) => new(
        Millimoles(wort, Component.LacticAcid, Acids.Lactic),
        Millimoles(wort, Component.AceticAcid, Acids.Acetic),
        Millimoles(wort, Component.CitricAcid, Acids.Citric),
        Millimoles(wort, Component.MalicAcid, Acids.Malic),
        Millimoles(wort, Component.TartaricAcid, Acids.Tartaric),
        Millimoles(wort, Component.PhosphoricAcid, Acids.Phosphoric),
        Millimoles(wort, Component.QuinicAcid, Acids.Quinic),
        wort[Component.StrongAcid],
        ResidualMilliequivalents(wort),
        wort[Component.PairedBase],
        wort.LiquidMass > 0 ? wort.Litres : 0);

    /// <summary>mEq of base that a food brings with its acids: as much as they give up at its own pH.</summary>
    internal static double PairedBaseAt(in Wort food, double ownPh) =>
        (Of(food) with { Strong = 0, Alkalinity = 0, PairedBase = 0 }).AnchoredAt(ownPh).PairedBase;

    /// <summary>Kilograms that a millimole weighs.</summary>
    internal static double KilogramsOf(Acid acid) => acid.MolarMass / 1e6;

    /// <summary>Kolbach's residual alkalinity of the ions carried, mEq.</summary>
    private static double ResidualMilliequivalents(in Wort wort) => ResidualAlkalinity.FromMilliequivalents(
        wort[Component.Bicarbonate] / Bicarbonate, wort[Component.Calcium] / Calcium, wort[Component.Magnesium] / Magnesium);

    private static readonly double Bicarbonate = Ion.Bicarbonate.EquivalentWeight();
    private static readonly double Calcium = Ion.Calcium.EquivalentWeight();
    private static readonly double Magnesium = Ion.Magnesium.EquivalentWeight();

    private static double Millimoles(in Wort wort, Component component, Acid acid) => wort[component] / KilogramsOf(acid);
}
