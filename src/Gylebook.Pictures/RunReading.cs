using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Stages;
using Gylebook.Recipes;

namespace Gylebook.Pictures;

/// <summary>Reads a forecast as a picture: which stages are drawn, and what happened on the way into each.</summary>
internal sealed class RunReading(BrewForecast forecast, Shown shown)
{
    private const string Main = "main";

    public RunPicture Picture()
    {
        // Parting a cast in three happens in two steps; the last word on each portion counts.
        List<StageRow> drawn = [.. forecast.Stages
            .Where(s => RunWords.IsDrawn(s.Stage))
            .GroupBy(s => (s.Stage, s.Portion))
            .Select(g => g.Last())];
        string[] portions = [.. drawn.Where(s => s.Stage == RunWords.Parting).Select(s => s.Portion).Distinct()];
        bool IsTrunk(StageRow s) => portions.Length == 0 || s.Stage < RunWords.Parting;
        return new RunPicture
        {
            Recipe = forecast.Recipe,
            Kit = forecast.Kit,
            Trunk = StepsOf([.. drawn.Where(IsTrunk)], null, portion => true, portions.Length == 0),
            Branches =
            [
                .. portions.Select(name => new RunBranch(
                    name, StepsOf([.. drawn.Where(s => !IsTrunk(s) && s.Portion == name)], RunWords.Parting - 1, p => p == name, false))),
            ],
            Shown = shown,
        };
    }

    /// <summary>Steps of the trunk or of a branch; each takes all that happened since the one before it.</summary>
    private List<RunStep> StepsOf(List<StageRow> rows, Stage? after, Func<string, bool> isMine, bool whole)
    {
        List<RunStep> steps = [];
        foreach (StageRow row in rows)
        {
            Stage? since = after;
            bool Between(Stage stage) => stage > (since ?? (Stage)(-1)) && stage <= row.Stage;
            steps.Add(new RunStep
            {
                Stage = row.Stage,
                Portion = row.Portion,
                Name = Names.Reached(row.Stage),
                Litres = LitresOf(row, whole),
                TemperatureC = row.TemperatureC,
                Gravity = row.Gravity,
                Says = Says(row, whole),
                Tint = Tint.Of(row.ColourSrm, row.ExtractPlato),
                Additions = [.. forecast.Additions.Where(a => Between(RunWords.OfAddition(a.Place)) && isMine(a.Portion)).Select(Addition)],
                Losses = [.. forecast.Losses.Where(l => Between(l.Place.Stage) && isMine(l.Portion)).Select(Loss)],
                Cautions = CautionsAt(Between, row.Portion),
            });
            after = after > row.Stage ? after : row.Stage;
        }

        return steps;
    }

    /// <summary>Litres with the band of the headline that reads the same litres, so that picture and headline agree.</summary>
    private Band LitresOf(StageRow row, bool whole)
    {
        string? headline = row.Stage switch
        {
            Stage.CopperUp => "copperUpLitres",
            Stage.Cast => "castLitres",
            Stage.Package when whole => "packagedLitres",
            _ => null,
        };
        Band? band = forecast.Headline.FirstOrDefault(h => h.Name == headline)?.Band;
        return band is { Kind: not BandKind.Point } ? band with { Likely = row.LitresAt20C } : Band.Point(row.LitresAt20C, "L at 20 °C");
    }

    private string Says(StageRow row, bool whole)
    {
        IEnumerable<string?> parts = row.Stage switch
        {
            Stage.Strike or Stage.Mash or Stage.Sour or Stage.Stand => [Warmth(row)],
            Stage.Lift or Stage.CopperUp or Stage.KnockOut => [shown.Gravity(row.Gravity)],
            Stage.Cast => [shown.Gravity(row.Gravity), Warmth(row)],
            Stage.Ferment => [shown.Gravity(row.Gravity), shown.Percent(row.AlcoholByVolume) + " alcohol"],
            Stage.Split or Stage.Rack => [],
            Stage.Package => Package(whole),
            Stage.Pour => [shown.Percent(row.AlcoholByVolume) + " alcohol", Bitterness(whole), row.ColourSrm > 0 ? shown.Srm(row.ColourSrm) : null],
            _ => [shown.Gravity(row.Gravity)],
        };
        return string.Join(" · ", parts.Where(p => p is not null));
    }

    private string? Warmth(StageRow row) => row.TemperatureC is double celsius ? shown.Celsius(celsius) : null;

    private IEnumerable<string?> Package(bool whole) => forecast.Package is { } package
        ? [whole && package.Count is int count ? Invariant($"{count} × {package.In}") : package.In, shown.Volumes(package.Co2Volumes)]
        : [];

    /// <summary>The headline speaks of the whole gyle: of one portion of several it would not be true.</summary>
    private string? Bitterness(bool whole) =>
        whole && forecast.Headline.FirstOrDefault(h => h.Name == "bitterness")?.Band is { } band ? shown.Ibu(band.Likely) : null;

    private static RunAddition Addition(AdditionRow row) =>
        new(row.What, row.Kilograms, row.LitresAt20C, row.Place.Stage is Stage.Strike or Stage.Rinse or Stage.TopUp);

    private static RunLoss Loss(LossRow row) => new(Names.Said(row.What), row.LitresAt20C, row.Kilograms);

    /// <summary>What is so on every brew day is no mark of this one. Cautions speak of stages, not of portions: after a parting they stand at the first portion alone.</summary>
    private List<RunCaution> CautionsAt(Func<Stage, bool> between, string portion)
    {
        if (portion != Main && forecast.Stages.FirstOrDefault(s => s.Stage == RunWords.Parting)?.Portion is string first && first != portion)
        {
            return [];
        }

        return
        [
            .. forecast.Cautions.Where(c => between(c.Place.Stage) && c.Kind.Weight != CautionWeight.Reminder).GroupBy(c => c.Kind.Mark).Select(g => new RunCaution(
                g.First().Code, g.Any(c => c.Severity != Severity.Note), string.Join("\n", g.Select(c => ToldText.Of(c.Message, shown.Units)).Distinct()))),
        ];
    }
}
