using Gylebook.Engine.State;

namespace Gylebook.Engine.Stages;

/// <summary>Something that goes in, laid out.</summary>
/// <param name="Place">Where it goes in.</param>
/// <param name="Makeup">Row of what it is made of in the plan; several additions may share it.</param>
/// <param name="Share">How much of that goes in here.</param>
/// <param name="BeforeRacking">Whether it counts into the original gravity: anything between cast and racking.</param>
/// <param name="Hop">Its alpha acid; the default for what is no hop.</param>
public sealed record Addition(Place Place, int Makeup, double Share, bool BeforeRacking, HopDose Hop)
{
    /// <summary>Puts the addition into a portion.</summary>
    public void Into<TLog>(ref Portion portion, int index, in Wort makeup, ref TLog log)
        where TLog : struct, IRunLog
    {
        // Nearly everything goes in whole: hundreds of bytes need not be copied then.
        if (Share == 1)
        {
            Enter(ref portion, index, makeup, ref log);
            return;
        }

        Wort part = makeup;
        part.Multiply(Share);
        Enter(ref portion, index, part, ref log);
    }

    private void Enter<TLog>(ref Portion portion, int index, in Wort added, ref TLog log)
        where TLog : struct, IRunLog
    {
        Parting.Enter(ref portion.Wort, Place.Stage, index, added, ref log);
        if (BeforeRacking)
        {
            portion.Unfermented.Add(added.Part(Shares.ClearLiquid));
        }
    }
}
