using Gylebook.Engine.Makeups;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Science.Acidity;

namespace Gylebook.Engine.Running;

/// <summary>What is known of a brew's acidity before anything is run.</summary>
/// <param name="MashPh">Where the pH of the mash stands that a water plan forecast; null when nobody knows the liquor.</param>
/// <param name="StrikeLitres">How much strike liquor that was reckoned for, litres; 0 without a plan.</param>
/// <param name="IsBoiled">Whether the wort is boiled, which lowers its pH.</param>
/// <param name="BeerOf">By packaged portion, the pH of an ordinary beer of its yeast; null where nothing ferments.</param>
public sealed record AcidityPlan(Slot? MashPh, double StrikeLitres, bool IsBoiled, Known?[] BeerOf)
{
    /// <summary>Nothing known.</summary>
    public static AcidityPlan None { get; } = new(null, 0, false, []);
}

/// <summary>The wort that a mash gives, as what comes after it is counted from: its pH, and the acids and alkalinity in that pH already.</summary>
/// <remarks>
/// With a water plan the pH is the mash's. Without one it is that of wort in print, moved by what the recipe itself puts into
/// the mash, against the mash's own buffering: its grain takes a part. See <c>docs/science/beer-ph.md</c>.
/// </remarks>
public readonly record struct MaltWort
{
    private readonly AcidLoad _load;
    private readonly double _maltKilograms;
    private readonly double _shareMashed;

    private MaltWort(AcidLoad load, double maltKilograms, double shareMashed, double ph, double shift)
    {
        (_load, _maltKilograms, _shareMashed) = (load, maltKilograms, shareMashed);
        (Ph, Shift) = (ph, shift);
    }

    /// <summary>pH of a cooled sample before the boil.</summary>
    public double Ph { get; }

    /// <summary>By how much that is off an ordinary wort's: none with a plan, whose mash is ordinary.</summary>
    public double Shift { get; }

    /// <summary>The wort of a plan at a draw, from what goes into its mash.</summary>
    public static MaltWort Of(RunPlan plan, Draw draw, RunTrace trace)
    {
        AcidityPlan acidity = plan.Acidity;
        Wort mashed = acidity.MashPh is null ? default : Minerals.In(plan.Minerals.Strike, acidity.StrikeLitres * Wort.WaterKilogramsPerLitre);
        double extract = 0;
        foreach (Addition addition in plan.Additions)
        {
            ref readonly Wort makeup = ref trace.Makeup(addition.Makeup);
            if (addition.Place.Stage == Stage.Mash)
            {
                // A plan's mash pH knows nothing of the acids of foods: in its wort they are still to be counted.
                if (acidity.MashPh is not null && plan.Makeups[addition.Makeup] is FoodInPlace)
                {
                    continue;
                }

                mashed.Add(makeup);
            }
            else
            {
                extract += makeup[Component.MaltBuffer] * addition.Share;
            }
        }

        double malt = mashed[Component.MaltBuffer];
        AcidLoad load = AcidsCarried.Of(mashed);
        double ordinary = draw[Known.PhOfMaltWort];
        double ph = acidity.MashPh is { } planned ? draw[planned] : Moved(ordinary, load, malt, draw[Known.MashBuffering]);
        return new MaltWort(load, malt, malt > 0 ? malt / (malt + extract) : 0, ph, acidity.MashPh is null ? ph - ordinary : 0);
    }

    /// <summary>
    /// The pH that would have been there without the load, at wort's buffering: what souring starts from. Held within what is a pH at
    /// all, for absurd amounts of acid or alkali.
    /// </summary>
    public double Alone(Draw draw) => Math.Clamp(Ph + (Counted(Ph, 1) / draw[Known.WortBuffering]), 0, 14);

    /// <summary>mEq that the mash's load has given at a pH, in so many kilograms of malt's worth of wort.</summary>
    public double Counted(double ph, double maltKilograms) =>
        _maltKilograms > 0 ? _load.Given(ph) / _maltKilograms * maltKilograms * _shareMashed : 0;

    /// <summary>So much acid or alkali that no pH balances it is no mash: it is left as an ordinary one.</summary>
    private static double Moved(double ordinary, in AcidLoad load, double malt, double buffering) =>
        !load.IsNothing && malt > 0 && WortAcidity.TryPhOf(load, buffering * malt, ordinary, 0, out double ph) ? ph : ordinary;
}
