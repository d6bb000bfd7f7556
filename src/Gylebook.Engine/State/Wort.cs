using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Gylebook.Science.Liquids;

namespace Gylebook.Engine.State;

/// <summary>What lies in one place: liquid with all that is dissolved in it, and the solids with it.</summary>
/// <remarks>
/// Extensive: each amount is a kilogram (or a tracer's own unit), so two worts mix by adding and part by multiplying.
/// Gravity, litres and strength are read off, never stored. Litres are at 20 °C and of the clear liquid without gas.
/// </remarks>
public struct Wort
{
    /// <summary>Kilograms in a litre of water at 20 °C, by the table that gravity is read from: the engine knows no other.</summary>
    public const double WaterKilogramsPerLitre = 0.998234;

    /// <summary>Kilograms in a litre of pure ethanol at 20 °C.</summary>
    public const double PureEthanolKilogramsPerLitre = EthanolWater.EthanolKilogramsPerCubicMetre / 1000;

    private Amounts _amounts;

    /// <summary>How much of a component there is.</summary>
    public double this[Component component]
    {
        readonly get => _amounts[(int)component];
        set => _amounts[(int)component] = value;
    }

    /// <summary>Kilograms in all, solids and gas included.</summary>
    public readonly double Mass => Dot(Components.MassWeights);

    /// <summary>Kilograms of clear liquid, without gas.</summary>
    public readonly double LiquidMass => Dot(Components.LiquidWeights);

    /// <summary>Kilograms of extract in the clear liquid, as the sucrose a hydrometer would take it for.</summary>
    public readonly double ExtractMass => Dot(Components.ExtractWeights);

    /// <summary>Kilograms of that extract which salts, acids and liquor brought: the grist yielded the rest.</summary>
    public readonly double LiquorExtractMass => Dot(Components.LiquorExtractWeights);

    /// <summary>Kilograms of that extract which salts brought.</summary>
    public readonly double SaltExtractMass => Dot(Components.SaltExtractWeights);

    /// <summary>Degrees Plato of what is really dissolved, salts left out: what there is to eat in it, with the malt's own ash.</summary>
    public readonly double EdibleExtractPlato => Percent(ExtractMass - SaltExtractMass);

    /// <summary>Degrees Plato of what is really dissolved.</summary>
    public readonly double RealExtractPlato => Percent(ExtractMass);

    /// <summary>Ethanol, per cent of the liquid's mass.</summary>
    public readonly double AlcoholByMassPercent => Percent(this[Component.Ethanol]);

    /// <summary>Specific gravity 20/20 in air, by Tabarié: exactly 1 with nothing dissolved.</summary>
    public readonly double Gravity => GravityOf(LiquidMass);

    /// <summary>Litres of clear liquid at 20 °C.</summary>
    public readonly double Litres
    {
        get
        {
            double liquid = LiquidMass;
            return liquid / SucroseSolution.KilogramsPerLitreOfGravity(GravityOf(liquid));
        }
    }

    /// <summary>The same, for whoever has read the gravity already.</summary>
    public readonly double LitresAt(double gravity) => LiquidMass / SucroseSolution.KilogramsPerLitreOfGravity(gravity);

    /// <summary>Ethanol, per cent of the volume at 20 °C.</summary>
    public readonly double AlcoholByVolumePercent => AlcoholByVolumePercentOf(Litres);

    /// <summary>The same, for whoever has read the litres already.</summary>
    public readonly double AlcoholByVolumePercentOf(double litres) =>
        litres <= 0 ? 0 : 100 * this[Component.Ethanol] / PureEthanolKilogramsPerLitre / litres;

    /// <summary>Whether every amount is a finite number that is not negative beyond rounding.</summary>
    public readonly bool IsSound
    {
        get
        {
            ref double mine = ref First(ref Unsafe.AsRef(in _amounts));
            int i = 0;
            for (; i + Vector<double>.Count <= Components.Count; i += Vector<double>.Count)
            {
                Vector<double> amounts = Vector.LoadUnsafe(ref mine, (nuint)i);
                if (!Vector.GreaterThanOrEqualAll(amounts, Least) || !Vector.LessThanOrEqualAll(amounts, Most))
                {
                    return false;
                }
            }

            for (; i < Components.Count; i++)
            {
                if (!(_amounts[i] >= Least[0] && _amounts[i] <= Most[0]))
                {
                    return false;
                }
            }

            return true;
        }
    }

    private static Vector<double> Least => Vector.Create(-1e-9);

    private static Vector<double> Most => Vector.Create(double.MaxValue);

    /// <summary>Mixes another wort, or some multiple of it, into this one.</summary>
    public void Add(in Wort other, double times = 1)
    {
        ref double mine = ref First(ref _amounts);
        ref double theirs = ref First(ref Unsafe.AsRef(in other._amounts));
        for (int i = 0; i < Components.Room; i += Vector<double>.Count)
        {
            (Vector.LoadUnsafe(ref mine, (nuint)i) + (Vector.LoadUnsafe(ref theirs, (nuint)i) * times)).StoreUnsafe(ref mine, (nuint)i);
        }
    }

    /// <summary>Multiplies every amount.</summary>
    public void Multiply(double times)
    {
        ref double mine = ref First(ref _amounts);
        for (int i = 0; i < Components.Room; i += Vector<double>.Count)
        {
            (Vector.LoadUnsafe(ref mine, (nuint)i) * times).StoreUnsafe(ref mine, (nuint)i);
        }
    }

    /// <summary>The share of each phase that is named; it stays here too until it is taken off.</summary>
    public readonly Wort Part(in Shares shares)
    {
        Unsafe.SkipInit(out Wort part);
        ref double mine = ref First(ref Unsafe.AsRef(in _amounts));
        ref double into = ref First(ref part._amounts);
        ref double liquid = ref MemoryMarshal.GetArrayDataReference(Components.LiquidPhase);
        for (int i = 0; i < Components.Room; i += Vector<double>.Count)
        {
            (Vector.LoadUnsafe(ref mine, (nuint)i) * (Vector.LoadUnsafe(ref liquid, (nuint)i) * shares.Liquid)).StoreUnsafe(ref into, (nuint)i);
        }

        if (shares.HasSolids)
        {
            foreach ((Component component, Phase phase) in Components.Solids)
            {
                part[component] = this[component] * shares[phase];
            }
        }

        return part;
    }

    /// <summary>The gravity, for whoever has weighed the liquid already.</summary>
    private readonly double GravityOf(double liquid)
    {
        if (liquid <= 0)
        {
            return 1;
        }

        double plato = 100 * ExtractMass / liquid;
        double ethanol = this[Component.Ethanol];
        return ethanol == 0 ? SucroseSolution.GravityAt(plato) : Tabarie.GravityOf(plato, 100 * ethanol / liquid);
    }

    private readonly double Dot(double[] weights)
    {
        ref double mine = ref First(ref Unsafe.AsRef(in _amounts));
        ref double weight = ref MemoryMarshal.GetArrayDataReference(weights);
        Vector<double> sum = Vector<double>.Zero;
        for (int i = 0; i < weights.Length; i += Vector<double>.Count)
        {
            sum += Vector.LoadUnsafe(ref mine, (nuint)i) * Vector.LoadUnsafe(ref weight, (nuint)i);
        }

        return Vector.Sum(sum);
    }

    private static ref double First(ref Amounts amounts) => ref Unsafe.As<Amounts, double>(ref amounts);

    private readonly double Percent(double part)
    {
        double liquid = LiquidMass;
        return liquid <= 0 ? 0 : 100 * part / liquid;
    }

    /// <summary>The amounts in a row, padded to whole vectors of up to eight.</summary>
    [InlineArray(Length)]
    private struct Amounts
    {
        public const int Length = Components.Room;
        private double _first;
    }
}
