namespace Gylebook.Science.Fermenting;

/// <summary>How many yeast cells a wort asks for, and how much dry yeast that is.</summary>
/// <remarks>
/// <para>Symbols: cells (10⁹) = r·L·°P, r million cells per mL and °P.</para>
/// <para>Source: the rule of 0.75 for ale and 1.5 for lager, home-brewing literature; Fix, Principles of Brewing Science
/// (from memory). Cells in a gram of dry yeast are a starting value, <c>yeast.dryCellsPerGram</c>.</para>
/// <para>Valid for: no range is published.</para>
/// <para>Accuracy: a rule, not a measurement. Strains differ more than twofold in cells per gram.</para>
/// <para>Notes: counts living cells. How they die in store is another model.</para>
/// </remarks>
public static class PitchRate
{
    /// <summary>Million cells per mL and °P for an ale.</summary>
    public const double Ale = 0.75;

    /// <summary>Million cells per mL and °P for a lager.</summary>
    public const double Lager = 1.5;

    /// <summary>Cells wanted, 10⁹.</summary>
    /// <param name="millionsPerMillilitrePlato">The rate, 10⁶ per mL and °P.</param>
    /// <param name="litres">Wort, L.</param>
    /// <param name="plato">Its extract, °P.</param>
    public static double BillionCells(double millionsPerMillilitrePlato, double litres, double plato)
    {
        Argument.MustNotBeNegative(millionsPerMillilitrePlato);
        Argument.MustNotBeNegative(litres);
        Argument.MustBeWithin(plato, 0, 100);

        // 10⁶ per mL is 10⁹ per L.
        return millionsPerMillilitrePlato * litres * plato;
    }

    /// <summary>Dry yeast that holds so many cells, g.</summary>
    public static double DryYeastGrams(double billionCells, double billionsPerGram)
    {
        Argument.MustNotBeNegative(billionCells);
        Argument.MustBePositive(billionsPerGram);
        return billionCells / billionsPerGram;
    }
}
