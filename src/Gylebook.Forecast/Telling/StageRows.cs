using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.LayingOut;
using Gylebook.Science.Boiling;
using Gylebook.Science.Liquids;

namespace Gylebook.Forecast.Telling;

/// <summary>Stages and losses of a run, as rows to tell.</summary>
internal static class StageRows
{
    /// <summary>One row a stage and portion.</summary>
    public static IReadOnlyList<StageRow> Of(LaidOut laidOut, RunRecord record)
    {
        Temperatures temperatures = new(laidOut);
        return [.. record.Stages.Select(s => Row(laidOut, s, temperatures.At(s.Stage)))];
    }

    /// <summary>One row a loss: losses of one kind at one stage are told together.</summary>
    public static IReadOnlyList<LossRow> LossesOf(LaidOut laidOut, RunRecord record) =>
    [
        .. record.Losses.GroupBy(l => (l.Stage, l.Portion, l.Loss)).Select(group =>
        {
            Wort sum = default;
            foreach (Movement loss in group)
            {
                sum.Add(loss.What);
            }

            return new LossRow(
                Words.Of(group.Key.Stage), PortionAt(laidOut, group.Key.Stage, group.Key.Portion), Words.Of(group.Key.Loss!.Value),
                sum.Litres, sum.Mass, sum.ExtractMass);
        }),
    ];

    /// <summary>The name of a portion: the bed is told as part of the main one.</summary>
    public static string NameOf(LaidOut laidOut, int portion) =>
        portion == 0 && laidOut.PortionNames.Count > 1 ? laidOut.PortionNames[0] : laidOut.PortionNames.GetValueOrDefault(portion, "main");

    /// <summary>The portion's name as it is told at a stage: before the cast is divided there is but one.</summary>
    public static string PortionAt(LaidOut laidOut, Stage stage, int portion) =>
        stage is < Stage.Split or Stage.TopUp ? "main" : NameOf(laidOut, portion);

    private static StageRow Row(LaidOut laidOut, Reached reached, double? celsius)
    {
        Wort wort = reached.State.Wort;
        double litres = wort.Litres;
        double warmed = celsius is > 20 and <= 100.5 ? WaterDensity.KilogramsPerLitreAt(20) / WaterDensity.KilogramsPerLitreAt(Math.Min(100, celsius.Value)) : 1;
        double together = Suspension.Litres(wort, laidOut.Plan!.Medians);
        double suspension = Suspension.Gravity(wort, laidOut.Plan.Medians);
        double srm = litres > 0 ? WortColour.SrmOfAbsorbance(wort[Component.Colour] / litres) : 0;
        return new StageRow(
            Words.Of(reached.Stage), PortionAt(laidOut, reached.Stage, reached.Portion),
            litres, together, litres * warmed, celsius, wort.Gravity, suspension, wort.RealExtractPlato, wort.AlcoholByVolumePercent, srm);
    }
}
