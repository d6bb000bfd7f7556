using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Records;
using Gylebook.Science.Boiling;
using Gylebook.Science.Liquids;

namespace Gylebook.Forecast.Report.Stages;

/// <summary>A stage of one portion.</summary>
/// <param name="Stage">Stable name: <c>copperUp</c>.</param>
/// <param name="Portion">Name of the portion.</param>
/// <param name="LitresAt20C">Clear liquid.</param>
/// <param name="LitresWithSolids">What the vessel's marks would read at 20 °C.</param>
/// <param name="LitresHot">Clear liquid as it stands at its temperature.</param>
/// <param name="TemperatureC">Degrees; null when nobody knows.</param>
/// <param name="Gravity">Of the clear liquid.</param>
/// <param name="SuspensionGravity">With what has not settled stirred in.</param>
/// <param name="ExtractPlato">Real extract.</param>
/// <param name="AlcoholByVolume">Per cent.</param>
/// <param name="ColourSrm">Colour of the liquid once it has one: from knock-out on.</param>
public sealed record StageRow(
    string Stage, string Portion, double LitresAt20C, double LitresWithSolids, double LitresHot, double? TemperatureC,
    double Gravity, double SuspensionGravity, double ExtractPlato, double AlcoholByVolume, double ColourSrm)
{
    /// <summary>What the vessel's marks read as it stands: hot, with everything that has not settled out of it.</summary>
    public double VesselLitres => LitresWithSolids + LitresHot - LitresAt20C;
}

/// <summary>A loss.</summary>
/// <param name="Stage">Where.</param>
/// <param name="Portion">From which portion.</param>
/// <param name="What">Stable name: <c>heldInGrain</c>.</param>
/// <param name="LitresAt20C">Clear liquid lost.</param>
/// <param name="Kilograms">Everything lost, solids and gas included.</param>
/// <param name="ExtractKg">Extract lost.</param>
public sealed record LossRow(string Stage, string Portion, string What, double LitresAt20C, double Kilograms, double ExtractKg);

/// <summary>Stages and losses of a run, as rows to tell.</summary>
internal static class StageRows
{
    /// <summary>One row a stage and portion.</summary>
    public static IReadOnlyList<StageRow> Of(BrewPlan brew, RunRecord record)
    {
        StageTemperatures temperatures = new(brew);
        return [.. record.Stages.Select(s => Row(brew, s, temperatures.At(s.Stage)))];
    }

    /// <summary>One row a loss: losses of one kind at one stage are told together.</summary>
    public static IReadOnlyList<LossRow> LossesOf(BrewPlan brew, RunRecord record) =>
    [
        .. record.Losses.GroupBy(l => (l.Stage, l.Portion, l.Loss)).Select(group =>
        {
            Wort sum = default;
            foreach (Movement loss in group)
            {
                sum.Add(loss.What);
            }

            return new LossRow(
                Words.Of(group.Key.Stage), PortionAt(brew, group.Key.Stage, group.Key.Portion), Words.Of(group.Key.Loss!.Value),
                sum.Litres, sum.Mass, sum.ExtractMass);
        }),
    ];

    /// <summary>The name of a portion: the bed is told as part of the main one.</summary>
    public static string NameOf(BrewPlan brew, int portion) =>
        portion == 0 && brew.PortionNames.Count > 1 ? brew.PortionNames[0] : brew.PortionNames.GetValueOrDefault(portion, "main");

    /// <summary>The portion's name as it is told at a stage: before the cast is divided there is but one.</summary>
    public static string PortionAt(BrewPlan brew, Stage stage, int portion) =>
        stage is < Stage.Split or Stage.TopUp ? "main" : NameOf(brew, portion);

    private static StageRow Row(BrewPlan brew, Reached reached, double? celsius)
    {
        Wort wort = reached.State.Wort;
        double litres = wort.Litres;
        double warmed = celsius is > 20 and <= 100.5 ? WaterDensity.KilogramsPerLitreAt(20) / WaterDensity.KilogramsPerLitreAt(Math.Min(100, celsius.Value)) : 1;
        double together = Suspension.Litres(wort, brew.Plan!.Medians);
        double suspension = Suspension.Gravity(wort, brew.Plan.Medians);
        double srm = litres > 0 ? WortColour.SrmOfAbsorbance(wort[Component.Colour] / litres) : 0;
        return new StageRow(
            Words.Of(reached.Stage), PortionAt(brew, reached.Stage, reached.Portion),
            litres, together, litres * warmed, celsius, wort.Gravity, suspension, wort.RealExtractPlato, wort.AlcoholByVolumePercent, srm);
    }
}
