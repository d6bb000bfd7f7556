using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Records;

namespace Gylebook.Forecast.Report.Stages;

/// <summary>A stage of one portion.</summary>
/// <param name="Place">Where in the run.</param>
/// <param name="Portion">Name of the portion there; one alone before the cast is divided.</param>
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
    Place Place, string Portion, double LitresAt20C, double LitresWithSolids, double LitresHot, double? TemperatureC,
    double Gravity, double SuspensionGravity, double ExtractPlato, double AlcoholByVolume, double ColourSrm)
{
    /// <summary>The stage.</summary>
    public Stage Stage => Place.Stage;

    /// <summary>What the vessel's marks read as it stands: hot, with everything that has not settled out of it.</summary>
    public double VesselLitres => LitresWithSolids + LitresHot - LitresAt20C;
}

/// <summary>A loss.</summary>
/// <param name="Place">Where in the run.</param>
/// <param name="Portion">Name of the portion it leaves.</param>
/// <param name="What">Which loss.</param>
/// <param name="LitresAt20C">Clear liquid lost.</param>
/// <param name="Kilograms">Everything lost, solids and gas included.</param>
/// <param name="ExtractKg">Extract lost.</param>
public sealed record LossRow(Place Place, string Portion, Loss What, double LitresAt20C, double Kilograms, double ExtractKg);

/// <summary>Stages and losses of a run, as rows to tell.</summary>
internal static class StageRows
{
    /// <summary>One row a stage and portion.</summary>
    public static IReadOnlyList<StageRow> Of(BrewPlan brew, RunOutcome run) => [.. brew.Readouts!.Stages.Select(stage => Row(brew, run, stage))];

    /// <summary>One row a loss: losses of one kind at one stage are told together.</summary>
    public static IReadOnlyList<LossRow> LossesOf(BrewPlan brew, RunRecord record) =>
    [
        .. record.Losses.GroupBy(l => (l.Stage, l.Portion, l.Loss)).Select(group =>
        {
            (Stage stage, int portion, Loss? loss) = group.Key;
            LossReadouts its = LossReadouts.Of(loss!.Value, stage, portion);
            return new LossRow(
                new Place(stage, null, portion), PortionAt(brew, stage, portion), loss.Value,
                record.Outcome[its.Litres], record.Outcome[its.Kilograms], record.Outcome[its.ExtractKilograms]);
        }),
    ];

    /// <summary>The name of a portion: the bed is told as part of the main one.</summary>
    public static string NameOf(BrewPlan brew, int portion) =>
        portion == 0 && brew.PortionNames.Count > 1 ? brew.PortionNames[0] : brew.PortionNames.GetValueOrDefault(portion, "main");

    /// <summary>The portion's name as it is told at a stage: before the cast is divided there is but one.</summary>
    public static string PortionAt(BrewPlan brew, Stage stage, int portion) =>
        stage < Stage.Split ? "main" : NameOf(brew, portion);

    private static StageRow Row(BrewPlan brew, RunOutcome run, StageReadouts stage)
    {
        double celsius = run[stage.Celsius];
        return new StageRow(
            stage.Place, PortionAt(brew, stage.Place.Stage, stage.Place.Portion),
            run[stage.Litres], run[stage.LitresWithSolids], run[stage.LitresHot], double.IsNaN(celsius) ? null : celsius,
            run[stage.Gravity], run[stage.SuspensionGravity], run[stage.Plato], run[stage.Alcohol], run[stage.Colour]);
    }
}
