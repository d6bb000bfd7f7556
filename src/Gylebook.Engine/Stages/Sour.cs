using Gylebook.Engine.Parameters;
using Gylebook.Engine.State;
using Gylebook.Science.Acidity;
using Gylebook.Science.Water;

namespace Gylebook.Engine.Stages;

/// <summary>What the lay-out knows of souring in the kettle.</summary>
/// <param name="TargetPh">pH at which it is boiled.</param>
/// <param name="IsMixed">Whether the culture makes ethanol and carbon dioxide too.</param>
/// <param name="GasKept">Where the volumes of carbon dioxide stand that stay in the wort.</param>
public readonly record struct SourStep(double TargetPh, bool IsMixed, Slot GasKept);

/// <summary>Lactic bacteria turn sugar into acid until the wort's pH is what the brewer wants; gas that the wort does not hold leaves.</summary>
/// <remarks>
/// How much acid that takes is known in closed form (<see cref="WortAcidity"/>): nothing is searched for in a run. Sugars are
/// taken in the order of the table until the acid is made; where they run out, less is made.
/// </remarks>
public static class Sour
{
    private static readonly double LacticKilograms = AcidsCarried.KilogramsOf(Acids.Lactic);

    /// <summary>Sours the wort.</summary>
    /// <param name="wort">The wort.</param>
    /// <param name="portion">Which portion.</param>
    /// <param name="step">What the lay-out knows.</param>
    /// <param name="startPh">pH that malt alone gives this wort.</param>
    /// <param name="reactions">What reacts to what.</param>
    /// <param name="draw">The draw.</param>
    /// <param name="log">Who watches.</param>
    public static void To<TLog>(
        ref Wort wort, int portion, in SourStep step, double startPh, Reactions reactions, Draw draw, ref TLog log)
        where TLog : struct, IRunLog
    {
        double buffering = draw[Known.WortBuffering] * wort[Component.MaltBuffer];
        double missing = LacticKilograms
            * WortAcidity.LacticTo(AcidsCarried.Of(wort), buffering, startPh, step.TargetPh);
        foreach (Reaction row in step.IsMixed ? reactions.MixedSouring : reactions.Souring)
        {
            double makes = row.Makes(Component.LacticAcid);
            double taken = Math.Min(wort[row.Reactant], missing / makes);
            if (taken > 0)
            {
                row.Run(ref wort, taken);
                missing -= taken * makes;
            }
        }

        Ferment.Vent(ref wort, Stage.Sour, portion, draw[step.GasKept], ref log);
    }
}
