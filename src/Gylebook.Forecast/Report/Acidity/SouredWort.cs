using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Records;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Report.Acidity;

/// <summary>The kettle when souring ends: its pH is measured there, and what comes after is counted from it.</summary>
internal sealed record SouredWort
{
    /// <summary>pH where it ended: the target, or below it where acid of the brewer's own had gone further already.</summary>
    public required Band Ph { get; init; }

    /// <summary>The wort then.</summary>
    public required BufferedLiquid Wort { get; init; }

    /// <summary>Lactic acid that the culture made, kg.</summary>
    public required double Made { get; init; }

    /// <summary>Carbon dioxide that the culture made, kg.</summary>
    public required double Gas { get; init; }

    /// <summary>Whether all sugar that lactic bacteria are counted as taking was gone.</summary>
    public required bool RanOut { get; init; }

    /// <summary>Reads it off a run; null when nothing was soured, or nothing buffers it.</summary>
    public static SouredWort? Of(BrewPlan brew, RunRecord record)
    {
        Wort before = record.At(Stage.CopperUp);
        Wort after = record.At(Stage.Sour);
        BufferedLiquid wort = new(after);
        if (brew.Recipe.Souring is not { } plan || !wort.IsBuffered)
        {
            return null;
        }

        double made = after[Component.LacticAcid] - before[Component.LacticAcid];
        bool ranOut = Reactions.Sourable.All(sugar => after[sugar] <= 0);
        return new SouredWort
        {
            Wort = wort,
            Ph = PhOf(brew, wort, plan.Ph.Value, reached: made > 0 && !ranOut, ranOut),
            Made = made,
            Gas = after[Component.CarbonDioxide] - before[Component.CarbonDioxide]
                + record.Losses.Where(l => l.Stage == Stage.Sour).Sum(l => l.What[Component.CarbonDioxide]),
            RanOut = ranOut,
        };
    }

    /// <summary>A band counted from here, with protons set free since: as much as lower an unsoured wort by so many pH.</summary>
    public Band Band(in BufferedLiquid later, double lowDrop, double likelyDrop, double highDrop)
    {
        StartingValue buffering = StartingValues.Of("ph.buffer.wort");
        double least = buffering.Low!.Value, most = buffering.High!.Value;
        return new Band(
            Math.Min(At(later, least, Ph.Low, lowDrop), At(later, most, Ph.Low, lowDrop)),
            At(later, buffering.Value, Ph.Likely, likelyDrop),
            Math.Max(At(later, least, Ph.High, highDrop), At(later, most, Ph.High, highDrop)),
            Words.PhAt20C, BandKind.Bounds);
    }

    private double At(in BufferedLiquid later, double buffering, double anchor, double drop) =>
        later.PhSince(buffering, anchor, Wort, drop * buffering * later.MaltKilograms);

    /// <summary>A culture that made acid has brought the wort to the target; otherwise the wort is where its load brings it.</summary>
    private static Band PhOf(BrewPlan brew, in BufferedLiquid wort, double target, bool reached, bool ranOut)
    {
        if (reached)
        {
            return new Band(target, target, target, Words.PhAt20C, BandKind.Bounds);
        }

        MaltWort malt = MaltWort.Of(brew.Liquors, brew.Lines);
        StartingValue buffering = StartingValues.Of("ph.buffer.wort");
        double most = ranOut ? double.MaxValue : target;
        return new Band(
            Math.Min(most, wort.Ph(buffering.Low!.Value, malt.Ph.Low, malt)),
            Math.Min(most, wort.Ph(buffering.Value, malt.Ph.Likely, malt)),
            Math.Min(most, wort.Ph(buffering.High!.Value, malt.Ph.High, malt)),
            Words.PhAt20C, BandKind.Bounds);
    }
}
