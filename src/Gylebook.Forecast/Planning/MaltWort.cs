using Gylebook.Engine.Readouts;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Acidity;

namespace Gylebook.Forecast.Planning;

/// <summary>The wort that a mash gives, as what comes after it is counted from: its pH, and the acids and alkalinity in that pH already.</summary>
/// <remarks>
/// With a water plan the pH is the mash's. Without one it is the range of worts in print, moved by what the recipe itself puts into
/// the mash, against the mash's own buffering: its grain takes a part.
/// </remarks>
internal sealed record MaltWort
{
    /// <summary>pH of a cooled sample before the boil.</summary>
    public required Band Ph { get; init; }

    /// <summary>By how much that is off an ordinary wort's: none with a plan, whose mash is ordinary.</summary>
    public required (double Low, double Likely, double High) Shift { get; init; }

    /// <summary>What went into the mash.</summary>
    public required AcidLoad Load { get; init; }

    /// <summary>Malt in the mash, kg.</summary>
    public required double MaltKilograms { get; init; }

    /// <summary>Share of the kettle's malt that was mashed; the rest came as extract.</summary>
    public required double ShareMashed { get; init; }

    /// <summary>
    /// The pH that would have been there without the load, at the middle of wort's buffering: what souring starts from. Held within
    /// what is a pH at all, for absurd amounts of acid or alkali.
    /// </summary>
    public double LikelyAlone =>
        Math.Clamp(Ph.Likely + (Counted(Ph.Likely, 1) / StartingValues.Of("ph.buffer.wort").Value), 0, 14);

    /// <summary>mEq that the mash's load has given at a pH, in so many kilograms of malt's worth of wort.</summary>
    public double Counted(double ph, double maltKilograms) =>
        MaltKilograms > 0 ? Load.Given(ph) / MaltKilograms * maltKilograms * ShareMashed : 0;

    /// <summary>The wort of a recipe's lines in those liquors.</summary>
    public static MaltWort Of(PlannedLiquors? liquors, IReadOnlyList<PlannedLine> lines)
    {
        Wort mashed = liquors is { MashPh: not null }
            ? Minerals.In(liquors.Carried.Strike, liquors.StrikeLitres * Wort.WaterKilogramsPerLitre) : default;
        double extract = 0;
        foreach (PlannedLine line in lines)
        {
            if (line.Line.At.Point == AdditionPoint.Mash)
            {
                mashed.Add(line.Makeup);
            }
            else
            {
                extract += line.Makeup[Component.MaltBuffer];
            }
        }

        double malt = mashed[Component.MaltBuffer];
        AcidLoad load = AcidsCarried.Of(mashed);
        StartingValue usual = StartingValues.Of("ph.maltWort");
        Band ordinary = new(usual.Low!.Value, usual.Value, usual.High!.Value, Words.PhAt20C, BandKind.Bounds);
        Band ph = liquors?.MashPh ?? Moved(ordinary, load, malt);
        return new MaltWort
        {
            Ph = ph,
            Shift = liquors?.MashPh is null ? (ph.Low - ordinary.Low, ph.Likely - ordinary.Likely, ph.High - ordinary.High) : default,
            Load = load,
            MaltKilograms = malt,
            ShareMashed = malt > 0 ? malt / (malt + extract) : 0,
        };
    }

    private static Band Moved(Band ordinary, AcidLoad load, double malt)
    {
        if (load.IsNothing)
        {
            return ordinary;
        }

        StartingValue mash = StartingValues.Of("ph.buffer.mash");

        // So much acid or alkali that no pH balances it is no mash: it is left as an ordinary one.
        double At(double anchor, double buffering) =>
            malt > 0 && WortAcidity.TryPhOf(load, buffering * malt, anchor, 0, out double ph) ? ph : anchor;
        double least = mash.Low!.Value, most = mash.High!.Value;
        return ordinary with
        {
            Low = Math.Min(At(ordinary.Low, least), At(ordinary.Low, most)),
            Likely = At(ordinary.Likely, mash.Value),
            High = Math.Max(At(ordinary.High, least), At(ordinary.High, most)),
        };
    }
}
