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
    private readonly MashLoad _mash;

    private MaltWort(in MashLoad mash, double ph, double shift) => (_mash, Ph, Shift) = (mash, ph, shift);

    /// <summary>pH of a cooled sample before the boil.</summary>
    public double Ph { get; }

    /// <summary>By how much that is off an ordinary wort's: none with a plan, whose mash is ordinary.</summary>
    public double Shift { get; }

    /// <summary>The wort of a plan at a draw, from what goes into its mash.</summary>
    public static MaltWort Of(RunPlan plan, Draw draw, RunTrace trace)
    {
        MashLoad mash = trace.MashOf(plan);
        if (plan.Acidity.MashPh is { } planned)
        {
            return new MaltWort(mash, draw[planned], 0);
        }

        double ordinary = draw[Known.PhOfMaltWort];
        double ph = mash.PhFrom(ordinary, draw[Known.MashBuffering]);
        return new MaltWort(mash, ph, ph - ordinary);
    }

    /// <summary>
    /// The pH that would have been there without the load, at wort's buffering: what souring starts from. Held within what is a pH at
    /// all, for absurd amounts of acid or alkali.
    /// </summary>
    public double Alone(Draw draw) => Math.Clamp(Ph + (Counted(Ph, 1) / draw[Known.WortBuffering]), 0, 14);

    /// <summary>mEq that the mash's load has given at a pH, in so many kilograms of malt's worth of wort.</summary>
    public double Counted(double ph, double maltKilograms) =>
        _mash.MaltKilograms > 0 ? _mash.Acids.Given(ph) / _mash.MaltKilograms * maltKilograms * _mash.ShareMashed : 0;
}

/// <summary>Acids and malt that go into a mash.</summary>
/// <param name="Acids">What the wort's pH has in it already.</param>
/// <param name="MaltKilograms">Malt that buffers it.</param>
/// <param name="ShareMashed">Share of all malt and malt extract that is mashed.</param>
internal readonly record struct MashLoad(AcidLoad Acids, double MaltKilograms, double ShareMashed)
{
    /// <summary>As a run's makeups have it.</summary>
    public static MashLoad Of(RunPlan plan, RunTrace trace)
    {
        AcidityPlan acidity = plan.Acidity;
        Wort mashed = acidity.MashPh is null ? default : Minerals.In(plan.Minerals.Strike, acidity.StrikeLitres * Wort.WaterKilogramsPerLitre);
        double extract = 0;
        foreach (Addition addition in plan.Additions)
        {
            ref readonly Wort makeup = ref trace.Makeup(addition.Makeup);
            if (addition.Place.Stage != Stage.Mash)
            {
                extract += makeup[Component.MaltBuffer] * addition.Share;
            }
            else if (acidity.MashPh is null || plan.Makeups[addition.Makeup] is not FoodInPlace)
            {
                // A plan's mash pH knows nothing of the acids of foods: in its wort they are still to be counted.
                mashed.Add(makeup);
            }
        }

        double malt = mashed[Component.MaltBuffer];
        return new MashLoad(AcidsCarried.Of(mashed), malt, malt > 0 ? malt / (malt + extract) : 0);
    }

    /// <summary>pH to which it moves an ordinary wort. So much acid or alkali that no pH balances it is no mash: it is left as an ordinary one.</summary>
    public double PhFrom(double ordinary, double buffering) =>
        !Acids.IsNothing && MaltKilograms > 0 && WortAcidity.TryPhOf(Acids, buffering * MaltKilograms, ordinary, 0, out double ph) ? ph : ordinary;
}
