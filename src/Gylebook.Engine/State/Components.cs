namespace Gylebook.Engine.State;

/// <summary>One row of the component table.</summary>
/// <param name="Component">Which.</param>
/// <param name="Name">Name in messages and ledgers.</param>
/// <param name="Unit"><c>kg</c>, or what a tracer counts in.</param>
/// <param name="Phase">What it follows when a portion is parted.</param>
/// <param name="Conserved">Whether nothing makes or unmakes it between entry and exit.</param>
/// <param name="SpecificVolume">Apparent specific volume once dissolved, L/kg; 0 for what is not extract.</param>
public readonly record struct ComponentRow(
    Component Component, string Name, string Unit, Phase Phase, bool Conserved, double SpecificVolume);

/// <summary>The one table of what a portion is made of: mixing, losing and balancing are loops over it.</summary>
/// <remarks>
/// Apparent specific volumes: sucrose to lactose from 10 % solutions in handbook density tables, protein 0.73, minerals
/// 0.35, sorbitol 0.654 (measured partial molar volume 119.2 cm³/mol); dextrin and haze starch 0.61. Maltotriose lies
/// between maltose and dextrin. Acids from partial molar volumes. All but sorbitol from memory; see
/// <c>docs/science/state.md</c>.
/// </remarks>
public static class Components
{
    /// <summary>How many there are.</summary>
    public const int Count = (int)Component.PairedBase + 1;

    /// <summary>Room for them in whole vectors of up to eight.</summary>
    internal const int Room = (Count + 7) / 8 * 8;

    /// <summary>Litres per kilogram of water at 20 °C, the reciprocal of the Plato table's 998.234 kg/m³.</summary>
    private const double WaterSpecificVolume = 1 / Wort.WaterKilogramsPerLitre;

    private const double SucroseSpecificVolume = 0.616;

    /// <summary>All rows, in the order of <see cref="Component"/>.</summary>
    public static IReadOnlyList<ComponentRow> Table { get; } =
    [
        new(Component.Water, "water", "kg", Phase.Liquid, false, 0),
        new(Component.Sucrose, "sucrose", "kg", Phase.Liquid, false, SucroseSpecificVolume),
        new(Component.Glucose, "glucose", "kg", Phase.Liquid, false, 0.622),
        new(Component.Fructose, "fructose", "kg", Phase.Liquid, false, 0.613),
        new(Component.Maltose, "maltose", "kg", Phase.Liquid, false, 0.619),
        new(Component.Maltotriose, "maltotriose", "kg", Phase.Liquid, false, 0.615),
        new(Component.Dextrin, "dextrin", "kg", Phase.Liquid, false, 0.61),
        new(Component.Lactose, "lactose", "kg", Phase.Liquid, true, 0.61),
        new(Component.Polyols, "polyols", "kg", Phase.Liquid, true, 0.654),
        new(Component.UnusedSugar, "unused sugar", "kg", Phase.Liquid, false, 0.615),
        new(Component.HazeStarch, "haze starch", "kg", Phase.Liquid, true, 0.61),
        new(Component.Protein, "protein", "kg", Phase.Liquid, true, 0.73),
        new(Component.CoagulableProtein, "coagulable protein", "kg", Phase.Liquid, false, 0.73),
        new(Component.Minerals, "minerals", "kg", Phase.Liquid, true, 0.35),
        new(Component.LacticAcid, "lactic acid", "kg", Phase.Liquid, false, 0.76),
        new(Component.AceticAcid, "acetic acid", "kg", Phase.Liquid, true, 0.86),
        new(Component.CitricAcid, "citric acid", "kg", Phase.Liquid, true, 0.59),
        new(Component.MalicAcid, "malic acid", "kg", Phase.Liquid, true, 0.62),
        new(Component.TartaricAcid, "tartaric acid", "kg", Phase.Liquid, true, 0.55),
        new(Component.PhosphoricAcid, "phosphoric acid", "kg", Phase.Liquid, true, 0.49),
        new(Component.QuinicAcid, "quinic acid", "kg", Phase.Liquid, true, 0.6),
        new(Component.Ethanol, "ethanol", "kg", Phase.Liquid, false, 0),
        new(Component.CarbonDioxide, "carbon dioxide", "kg", Phase.Liquid, false, 0),
        new(Component.Grain, "grain", "kg", Phase.Grain, true, 0),
        new(Component.Starch, "starch", "kg", Phase.Grain, false, 0),
        new(Component.RawStarch, "raw starch", "kg", Phase.Food, true, 0),
        new(Component.Fat, "fat", "kg", Phase.Fat, true, 0),
        new(Component.FoodSolids, "food solids", "kg", Phase.Food, true, 0),
        new(Component.Break, "break", "kg", Phase.Fines, false, 0),
        new(Component.SpentHops, "whole hops", "kg", Phase.SpentHops, true, 0),
        new(Component.HopMatter, "hop matter", "kg", Phase.Fines, true, 0),
        new(Component.Yeast, "yeast", "kg", Phase.Yeast, false, 0),
        new(Component.Bitterness, "bitterness", "mg", Phase.Liquid, false, 0),
        new(Component.Colour, "colour", "absorbance × L", Phase.Liquid, false, 0),
        new(Component.MaltColour, "malt colour", "kg × °L", Phase.Promise, false, 0),
        new(Component.Sodium, "sodium", "mg", Phase.Liquid, true, 0),
        new(Component.Calcium, "calcium", "mg", Phase.Liquid, true, 0),
        new(Component.Magnesium, "magnesium", "mg", Phase.Liquid, true, 0),
        new(Component.Potassium, "potassium", "mg", Phase.Liquid, true, 0),
        new(Component.Sulphate, "sulphate", "mg", Phase.Liquid, true, 0),
        new(Component.Chloride, "chloride", "mg", Phase.Liquid, true, 0),
        new(Component.FoodCalcium, "calcium of foods", "mg", Phase.Liquid, true, 0),
        new(Component.FoodMagnesium, "magnesium of foods", "mg", Phase.Liquid, true, 0),
        new(Component.Phosphorus, "phosphorus of foods", "mg", Phase.Liquid, true, 0),
        new(Component.Bicarbonate, "alkalinity brought, as bicarbonate", "mg", Phase.Liquid, true, 0),
        new(Component.SettledHold, "settled hold", "kg", Phase.Food, true, 0),
        new(Component.BagHold, "bag hold", "kg", Phase.Food, true, 0),
        new(Component.AlphaAcid, "alpha acid", "mg", Phase.Liquid, false, 0),
        new(Component.IsoAlphaAcid, "iso-alpha acid", "mg", Phase.Liquid, false, 0),
        new(Component.MaltBuffer, "malt that buffers", "kg of malt", Phase.Liquid, true, 0),
        new(Component.StrongAcid, "protons of strong acids", "mEq", Phase.Liquid, true, 0),
        new(Component.PairedBase, "base of foods and dry hops", "mEq", Phase.Liquid, true, 0),
    ];

    /// <summary>1 for what goes where the clear liquid goes; room for whole vectors.</summary>
    internal static readonly double[] LiquidPhase = [.. Table.Select(row => row.Phase == Phase.Liquid ? 1.0 : 0), .. new double[Room - Count]];

    /// <summary>What follows another phase than the liquid; promises follow none.</summary>
    internal static readonly (Component Component, Phase Phase)[] Solids =
        [.. Table.Where(row => row.Phase is not (Phase.Liquid or Phase.Promise)).Select(row => (row.Component, row.Phase))];

    /// <summary>1 for what counts as mass, 0 for tracers.</summary>
    internal static readonly double[] MassWeights = Weights(row => row.Unit == "kg" && !IsHold(row) ? 1 : 0);

    /// <summary>1 for the mass of the clear liquid without its gas.</summary>
    internal static readonly double[] LiquidWeights = Weights(row =>
        row.Phase == Phase.Liquid && row.Unit == "kg" && row.Component != Component.CarbonDioxide ? 1 : 0);

    /// <summary>Kilograms of sucrose that read on a hydrometer as one kilogram of the component does.</summary>
    internal static readonly double[] ExtractWeights = Weights(row => SucroseEquivalent(row.Component));

    /// <summary>The part of that which salts, acids and liquor brought: read off their tracers, and so no extract of the grist.</summary>
    internal static readonly double[] LiquorExtractWeights = Weights(row =>
        IsIonTracer(row.Component) ? SucroseEquivalent(Component.Minerals) / 1e6
        : row.Component is >= Component.LacticAcid and <= Component.QuinicAcid ? SucroseEquivalent(row.Component) : 0);

    /// <summary>The part of that which salts brought: it reads as extract, and feeds nobody.</summary>
    internal static readonly double[] SaltExtractWeights = Weights(row =>
        IsIonTracer(row.Component) ? SucroseEquivalent(Component.Minerals) / 1e6 : 0);

    /// <summary>Kilograms of sucrose that read on a hydrometer as one kilogram of the component does: physics of §3.</summary>
    public static double SucroseEquivalent(Component component)
    {
        double v = Table[(int)component].SpecificVolume;
        return v == 0 ? 0 : (WaterSpecificVolume - v) / (WaterSpecificVolume - SucroseSpecificVolume);
    }

    /// <summary>A weight for each row up to the last that has one, in whole vectors of up to eight: what weighs nothing is not summed.</summary>
    private static double[] Weights(Func<ComponentRow, double> of)
    {
        double[] all = [.. Table.Select(of)];
        int weighed = Array.FindLastIndex(all, weight => weight != 0) + 1;
        return [.. all.Take(weighed), .. new double[(-weighed) & 7]];
    }

    /// <summary>Alkalinity leaves as gas and water: its tally weighs nothing.</summary>
    private static bool IsIonTracer(Component component) =>
        component is Component.Sodium or (>= Component.Calcium and < Component.Bicarbonate);

    private static bool IsHold(ComponentRow row) => row.Component is Component.SettledHold or Component.BagHold;
}
