using Gylebook.Science.Water;

namespace Gylebook.Engine.State;

/// <summary>The ions a run carries, and the way between them and the liquor science's profile.</summary>
/// <remarks>Nitrate is not carried: nothing in a brew asks for it.</remarks>
public static class IonTracers
{
    private static readonly (Ion Ion, Component Component)[] Pairs =
    [
        (Ion.Calcium, Component.Calcium), (Ion.Magnesium, Component.Magnesium), (Ion.Sodium, Component.Sodium),
        (Ion.Potassium, Component.Potassium), (Ion.Bicarbonate, Component.Bicarbonate),
        (Ion.Sulphate, Component.Sulphate), (Ion.Chloride, Component.Chloride),
    ];

    /// <summary>The ions carried, in the order in which they are told.</summary>
    public static IReadOnlyList<Ion> Carried { get; } = [.. Pairs.Select(pair => pair.Ion)];

    /// <summary>The component that carries an ion.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Nothing carries it.</exception>
    public static Component Of(Ion ion)
    {
        foreach ((Ion each, Component component) in Pairs)
        {
            if (each == ion)
            {
                return component;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(ion), ion, "No component carries this ion.");
    }

    /// <summary>Adds so many litres' worth of a profile's ions; alkalinity below zero is acid, and carried as such elsewhere.</summary>
    public static void Put(ref Wort wort, IonProfile milligramsPerLitre, double litres)
    {
        foreach ((Ion ion, Component component) in Pairs)
        {
            wort[component] += Math.Max(0, milligramsPerLitre[ion]) * litres;
        }
    }

    /// <summary>mg of an ion in each litre of the clear liquid.</summary>
    public static double MilligramsPerLitre(in Wort wort, Ion ion)
    {
        double litres = wort.Litres;
        return litres > 0 ? wort[Of(ion)] / litres : 0;
    }
}
