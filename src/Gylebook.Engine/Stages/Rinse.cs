using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;

namespace Gylebook.Engine.Stages;

/// <summary>What the lay-out knows of a rinse.</summary>
/// <param name="Kilograms">Liquor, kg; 0 for none.</param>
/// <param name="Continuous">Whether the liquor trickles on while wort runs off.</param>
public readonly record struct RinseStep(double Kilograms, bool Continuous);

/// <summary>Liquor mixes with a share of the wort the grain holds and takes its extract along; the mass held stays.</summary>
/// <remarks>
/// One pour, dunk or batch mixes once. A continuous sparge is the limit of many small ones: what is left of the wort that
/// mixes falls off as e^(−liquor/held). Source for the mixing law: reference tables of batch sparging, hobby literature;
/// the shares from common practice, no source. See <c>docs/science/mashing.md</c>.
/// </remarks>
public static class Rinse
{
    /// <summary>Rinses the bed into the kettle.</summary>
    public static void Through<TLog>(
        ref Wort kettle, ref Wort bed, int portion, in RinseStep step, in Wort minerals, Draw draw,
        ref TLog log)
        where TLog : struct, IRunLog
    {
        double held = bed.LiquidMass;
        double reached = draw[Known.RinsingShare] * held;
        double washedOut = step.Continuous
            ? 1 - Math.Exp(-step.Kilograms / reached)
            : step.Kilograms / (step.Kilograms + reached);
        if (reached <= 0)
        {
            washedOut = 0;
        }

        // Liquor takes the place of what it washed out, mass for mass; the rest of it runs through.
        Wort washed = Parting.Move(ref bed, new Shares { Liquid = washedOut * draw[Known.RinsingShare] });
        double stays = Lift.ShareOf(washed.LiquidMass, step.Kilograms);
        Wort liquor = Minerals.In(minerals, step.Kilograms);
        Wort runsThrough = liquor;
        Wort left = default;
        left.Add(liquor, stays);
        runsThrough.Add(left, -1);
        Parting.Enter(ref bed, Stage.Rinse, portion, left, ref log);
        Parting.Enter(ref kettle, Stage.Rinse, portion, runsThrough, ref log);
        kettle.Add(washed);
    }
}
