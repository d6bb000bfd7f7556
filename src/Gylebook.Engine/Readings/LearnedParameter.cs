using Gylebook.Engine.Drawing;
using Gylebook.Engine.Parameters;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Engine.Readings;

/// <summary>A parameter before and after readings.</summary>
/// <param name="Parameter">Which.</param>
/// <param name="Place">Its place among the draws.</param>
/// <param name="Before">Its 5, 50 and 95 % before.</param>
/// <param name="After">The same after.</param>
public sealed record LearnedParameter(Parameter Parameter, int Place, Quantiles Before, Quantiles After)
{
    /// <summary>Less than this was taught nothing: a tenth of the width, gone or moved by.</summary>
    public const double Something = 0.1;

    /// <summary>By which share its width shrank; below 0 where it grew.</summary>
    public double Narrower => 1 - (After.Width / Before.Width);

    /// <summary>How far its middle moved, in widths before.</summary>
    public double Moved => (After.Middle - Before.Middle) / Before.Width;

    /// <summary>The name of what it hangs together with; its own id where with nothing.</summary>
    public string Bond => Bonds.NameOf(Parameter);

    /// <summary>Whether the readings taught something about it.</summary>
    public bool IsTaught => Narrower >= Something || Math.Abs(Moved) >= Something;

    /// <summary>The parameters that readings taught something about, the most first.</summary>
    public static IReadOnlyList<LearnedParameter> Of(Draws before, Draws after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        List<LearnedParameter> all = [];
        foreach (int place in before.Moving)
        {
            if (!before[place].SequenceEqual(after[place]))
            {
                all.Add(new(before.Parameters[place], place, Quantiles.Of([.. before[place]]), Quantiles.Of([.. after[place]])));
            }
        }

        return [.. all.Where(learned => learned.Before.Width > 0 && learned.IsTaught).OrderByDescending(learned => Math.Max(learned.Narrower, Math.Abs(learned.Moved)))];
    }
}
