using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;
using Gylebook.Science.Mashing;

namespace Gylebook.Engine.Makeups;

/// <summary>What something is made of when it goes in, for any draw.</summary>
public abstract class Makeup
{
    /// <summary>All of it, as components.</summary>
    /// <param name="draw">The draw.</param>
    /// <param name="extracts">What malts' extracts are made of at that draw.</param>
    /// <param name="all">Written over.</param>
    public abstract void Fill(Draw draw, MaltExtracts extracts, out Wort all);

    /// <summary>So many kilograms of what one kilogram is.</summary>
    public static Wort Times(in Wort one, double kilograms)
    {
        Wort all = one;
        all.Multiply(kilograms);
        return all;
    }
}

/// <summary>Something of which nobody doubts what it is made of: a salt, an acid, yeast, sugar.</summary>
/// <param name="all">All of it, as components.</param>
public sealed class PlainMakeup(Wort all) : Makeup
{
    private readonly Wort _all = all;

    /// <inheritdoc/>
    public override void Fill(Draw draw, MaltExtracts extracts, out Wort all) => all = _all;
}

/// <summary>Malt extract: its sugars are its maker's, the malt whose buffering it stands for is not.</summary>
/// <param name="all">All of it, as components; the buffer left out.</param>
/// <param name="solids">Its dry matter, kg/kg.</param>
/// <param name="kilograms">How much.</param>
public sealed class ExtractMakeup(Wort all, double solids, double kilograms) : Makeup
{
    private readonly Wort _all = all;

    /// <inheritdoc/>
    public override void Fill(Draw draw, MaltExtracts extracts, out Wort all)
    {
        all = _all;
        all[Component.MaltBuffer] = solids * draw[Known.ExtractAsMalt] * kilograms;
    }
}

/// <summary>A malt, taken apart by its certificate.</summary>
/// <param name="family">Its kind.</param>
/// <param name="kilograms">How much.</param>
public sealed class MaltMakeup(MaltFamily family, double kilograms) : Makeup
{
    /// <summary>Its kind.</summary>
    public MaltFamily Family => family;

    /// <summary>How much, as weighed.</summary>
    public double Kilograms => kilograms;

    /// <summary>Where its laboratory extract stands: fine grind, kg per kg of dry matter.</summary>
    public required Slot Extract { get; init; }

    /// <summary>Where its water stands, kg/kg as is.</summary>
    public required Slot Moisture { get; init; }

    /// <summary>Where its colour stands, °L.</summary>
    public required Slot Colour { get; init; }

    /// <summary>Where its diastatic power stands, degrees Lintner.</summary>
    public required Slot DiastaticPower { get; init; }

    /// <summary>Raw grain that the mash itself must open; null for what malting, flaking or cooking has opened, or the mash opens as malt.</summary>
    public GrainOpening? Opening { get; init; }

    /// <inheritdoc/>
    public override void Fill(Draw draw, MaltExtracts extracts, out Wort all)
    {
        ArgumentNullException.ThrowIfNull(extracts);
        extracts.OfOneKilogram(family, draw[Extract], draw[Moisture], draw[Colour], out all);
        if (Opening is { } grain)
        {
            double closed = all[Component.Starch] * (1 - grain.ShareAt(draw));
            all[Component.Starch] -= closed;
            all[Component.RawStarch] += closed;
        }

        all.Multiply(kilograms);
    }
}

/// <summary>Hops: matter that never dissolves, water, and what dissolves.</summary>
/// <param name="staysInKettle">Whether they are whole and boiled, and so stay behind.</param>
/// <param name="isCold">Whether they go in after the boil and the cooling: dry hops raise pH.</param>
/// <param name="kilograms">How much.</param>
public sealed class HopMakeup(bool staysInKettle, bool isCold, double kilograms) : Makeup
{
    /// <inheritdoc/>
    public override void Fill(Draw draw, MaltExtracts extracts, out Wort all)
    {
        all = default;
        all[staysInKettle ? Component.SpentHops : Component.HopMatter] = draw[Known.HopSolids] * kilograms;
        all[Component.Water] = draw[Known.HopWater] * kilograms;
        all[Component.Dextrin] = draw[Known.HopSoluble] * kilograms;
        all[Component.PairedBase] = isCold ? 1000 * draw[Known.DryHopBase] * kilograms : 0;
    }
}
