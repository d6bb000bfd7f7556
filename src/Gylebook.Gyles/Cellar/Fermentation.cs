using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Readouts;
using Gylebook.Forecast.Fermenting;
using Gylebook.Forecast.Report;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Days;
using Gylebook.Gyles.Plans;
using Gylebook.Gyles.Portions;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Fermenting.Kinetics;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Gyles.Cellar;

/// <summary>A fermentation from the pitch on: what was read, how it goes on, whether it is finished, and what to do.</summary>
/// <remarks>
/// The end is the engine's: final gravities of the draws as brew day's readings left them. The course to it is
/// <see cref="CourseForecast"/>'s, brought to what was read since. Sugar that goes in meanwhile meets the yeast there is by then
/// (<c>docs/science/fermentation-course.md</c>).
/// </remarks>
public sealed record Fermentation
{
    private const int Times = 97, MostRead = 80, MostTemperatures = 120, MostDraws = 500;
    private const double LeastDays = 14, DaysOn = 4, HoursADay = 24, LatestDays = 60;

    /// <summary>When yeast was pitched.</summary>
    public required DateTimeOffset Pitched { get; init; }

    /// <summary>The time it was told at.</summary>
    public required DateTimeOffset Now { get; init; }

    /// <summary>All that was read.</summary>
    public required CellarSeries Series { get; init; }

    /// <summary>What each instrument's last days say, the one read last first.</summary>
    public required IReadOnlyList<Stillness> Read { get; init; }

    /// <summary>The forecast it starts from: with all that was read before the pitch, and nothing since.</summary>
    public required BrewForecast Before { get; init; }

    /// <summary>The portion it is of, as that forecast tells it.</summary>
    public required PortionView Portion { get; init; }

    /// <summary>How it goes on, in hours since the pitch.</summary>
    public required CourseFan Fan { get; init; }

    /// <summary>How it was to go before any reading of it.</summary>
    public required CourseFan Planned { get; init; }

    /// <summary>Where it was expected to end before any reading of it, SG.</summary>
    public required Quantiles Expected { get; init; }

    /// <summary>By how much what goes into the fermenter raises the gravity, SG.</summary>
    public required double Added { get; init; }

    /// <summary>When it goes in, hours since the pitch; null where nothing does.</summary>
    public required double? AddedHours { get; init; }

    /// <summary>"Finished?"</summary>
    public required FinishedAnswer Finished { get; init; }

    /// <summary>What to do, the next first.</summary>
    public required IReadOnlyList<CellarTask> ToDo { get; init; }

    /// <summary>When it is likely done, and between when; null where fewer than half of the draws come to an end within sixty days. While it is not finished, not before now, and not before what goes in has had its days.</summary>
    public (DateTimeOffset Low, DateTimeOffset Likely, DateTimeOffset High)? Done
    {
        get
        {
            double least = Finished.Verdict == FinishedVerdict.Finished ? 0 : Math.Max((Now - Pitched).TotalHours, AddedHours + (FinishedCheck.DaysAfterSugar * HoursADay) ?? 0);
            return !double.IsFinite(Fan.DoneHours.Middle) ? null
                : (At(Math.Max(least, Fan.DoneHours.Low)), At(Math.Max(least, Fan.DoneHours.Middle)), At(Math.Max(least, Math.Min(Fan.DoneHours.High, LatestDays * HoursADay))));
        }
    }

    /// <summary>The moment so many hours after the pitch.</summary>
    public DateTimeOffset At(double hours) => Pitched.AddHours(hours);

    /// <summary>The fermentation of a gyle.</summary>
    /// <param name="plan">Its plan.</param>
    /// <param name="log">Its log.</param>
    /// <param name="forecast">The forecast with all that was read before the pitch, and nothing since.</param>
    /// <param name="series">What was read since.</param>
    /// <param name="pitched">When yeast was pitched.</param>
    /// <param name="now">The time.</param>
    /// <param name="portion">Which portion; null, or none there is, for the whole.</param>
    /// <returns>Null where nothing was drawn, or this program can no longer read the plan.</returns>
    public static Fermentation? Of(GylePlan plan, GyleLog log, BrewForecast forecast, CellarSeries series, DateTimeOffset pitched, DateTimeOffset now, string? portion = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(forecast);
        ArgumentNullException.ThrowIfNull(series);
        return AsBrewed.Of(plan, log) is { } inputs && (forecast.AfterReadings?.Ensemble ?? forecast.HowSure?.Ensemble) is { } drawn && drawn.Has(BeerReadouts.FinalGravity)
            ? new Making(plan, inputs, log, forecast, drawn, PortionView.Of(forecast, Division.Of(plan, log), portion), series, pitched, now).Made()
            : null;
    }

    private sealed class Making(
        GylePlan plan, GyleInputs inputs, GyleLog log, BrewForecast forecast, Ensemble drawn, PortionView portion, CellarSeries series, DateTimeOffset pitched, DateTimeOffset now)
    {
        private readonly IReadOnlyList<GyleDay> _days = GyleDays.Of(plan, pitched, pitched, portion.Name);

        public Fermentation Made()
        {
            (double[] starts, double[] ends) = Gravities();
            FermenterAddition[] additions = [.. Additions()];
            double? addedHours = additions.Length > 0 ? Math.Max(0, additions.Max(addition => Hours(addition.Done ?? addition.Planned))) : null;
            double added = addedHours is null ? 0 : Mean(starts) - CastGravity();
            CoursePrior prior = new()
            {
                StartGravities = starts, EndGravities = ends, Added = Math.Max(0, added), AddedHours = addedHours ?? 0, Temperature = Temperatures(),
                InstrumentOffset = Offset(),
                MillionCells = forecast.Pitch is { CellsBillions: { } billions } && Litres() is > 0 and var litres ? billions * portion.Share / litres : FermentationCurve.UsualMillionCells,
            };
            CourseReading[] readings = [.. Readings()];
            double[] hours = Grid();
            CourseFan fan = CourseForecast.Of(prior, readings, hours, plan.Seed), planned = readings.Length == 0 ? fan : CourseForecast.Of(prior, [], hours, plan.Seed);
            IReadOnlyList<Stillness> read = Stillness.Of(series.Points);
            FinishedAnswer finished = FinishedCheck.Of(new FinishedQuestion
            {
                Read = read, Expected = Quantiles.Of([.. ends]), Forced = Forced(), Additions = additions, Now = now,
                Celsius = series.Points.LastOrDefault(point => point.TemperatureC is not null)?.TemperatureC, PlannedCelsius = PlannedCelsius(Hours(now)),
            });
            Fermentation made = new()
            {
                Pitched = pitched, Now = now, Series = series, Read = read, Before = forecast, Fan = fan, Planned = planned, Portion = portion, Expected = Quantiles.Of([.. ends]),
                Added = added, AddedHours = addedHours, Finished = finished, ToDo = [],
            };
            return made with { ToDo = CellarTasks.Of(made, _days, DoneDays(), PlannedCelsius(0)) };
        }

        private (double[] Starts, double[] Ends) Gravities()
        {
            double[] starts = drawn[portion.OriginalGravity].ToArray(), ends = drawn[portion.FinalGravity].ToArray();
            int[] whole = [.. Enumerable.Range(0, starts.Length).Where(draw => double.IsFinite(starts[draw]) && double.IsFinite(ends[draw]) && starts[draw] > ends[draw]).Take(MostDraws)];
            return ([.. whole.Select(draw => starts[draw])], [.. whole.Select(draw => ends[draw])]);
        }

        private double CastGravity() => drawn.Has(BeerReadouts.CastGravity) ? Mean([.. drawn[BeerReadouts.CastGravity].ToArray().Where(double.IsFinite)]) : Mean(Gravities().Starts);

        private double Litres() => portion.CastLitres(forecast);

        /// <summary>What goes in after the pitch: by the days of the plan but for what was left out, and what hands put in besides.</summary>
        private IEnumerable<FermenterAddition> Additions() => _days
            .Where(day => day.Items.Count > 0 && day.Key.StartsWith(GyleDays.Fermenting, StringComparison.Ordinal) && Last(day.Key)?.Kind != ActionKind.Skipped)
            .Select(day => new FermenterAddition(string.Join(", ", day.Items), day.At, Last(day.Key)?.At))
            .Concat(log.ActionsOf(portion.Name).Where(action => action.Kind == ActionKind.Given).Select(action => new FermenterAddition(action.What, action.At, action.At)));

        private BrewAction? Last(string day) => log.ActionsOf(portion.Name).LastOrDefault(action => action.Step == day && action.Kind is ActionKind.Done or ActionKind.Skipped);

        private HashSet<string> DoneDays() => [.. _days.Where(day => Last(day.Key) is not null).Select(day => day.Key)];

        private double? Forced() => log.ReadingsOf(portion.Name).LastOrDefault(reading => reading.Stage == ForcedFerment.Stage)?.Gravity?.Ratio;

        private double Hours(DateTimeOffset at) => (at - pitched).TotalHours;

        /// <summary>Gravities to be trusted. Devices speak often: each interval is told once, by its median.</summary>
        private IEnumerable<CourseReading> Readings()
        {
            CellarPoint[] good = [.. series.Points.Where(point => point.IsGoodGravity && Hours(point.At) is >= 0 and <= LatestDays * HoursADay)];
            double interval = Math.Max(1, (good.Length > 0 ? Hours(good[^1].At) : 0) / MostRead);
            foreach (IGrouping<(string, int), CellarPoint> together in good.GroupBy(point => (point.Instrument, point.Source == CellarSource.Hand ? Array.IndexOf(good, point) : -1 - (int)(Hours(point.At) / interval))))
            {
                CellarPoint[] own = [.. together.OrderBy(point => point.GravitySg)];
                CellarPoint middle = own[own.Length / 2];
                yield return new(Hours(middle.At), middle.GravitySg!.Value, Math.Sqrt(KindOf(middle).Scatter.VarianceAt(middle.GravitySg.Value)));
            }
        }

        /// <summary>By how much the instrument with the most to doubt may be off in all its readings alike.</summary>
        private double Offset() => series.Points.Where(point => point.IsGoodGravity).Select(point => Math.Sqrt(KindOf(point).Offset.VarianceAt(point.GravitySg!.Value))).DefaultIfEmpty(0).Max();

        private static Instrument KindOf(CellarPoint point) =>
            Instruments.Find(point.Instrument) is { Unit: "SG" } known ? known : Instruments.Find(point.Source == CellarSource.Device ? "floatingSensor" : "hydrometer")!;

        /// <summary>Read where it was read, as planned from then on.</summary>
        private TemperatureCourse Temperatures()
        {
            List<(double Hours, double Celsius)> read = [.. series.Points
                .Where(point => point.TemperatureC is not null && !point.Flags.HasFlag(Oddities.TemperatureSpike) && Hours(point.At) >= 0)
                .GroupBy(point => (int)(Hours(point.At) / Math.Max(1, Hours(now) / MostTemperatures)))
                .Select(together => (Hours(together.First().At), Math.Clamp(together.Average(point => point.TemperatureC!.Value), TemperatureCourse.LeastCelsius, TemperatureCourse.MostCelsius)))];
            double since = read.Count > 0 ? read[^1].Hours : -1;
            if (log.ActionsOf(portion.Name).LastOrDefault(action => action is { Kind: ActionKind.Said, Temperature: not null } && Hours(action.At) > since) is { } set)
            {
                // Said last of all: it stays so, whatever was planned.
                double at = Math.Max(0, Hours(set.At));
                read.Add((at, read.Count > 0 ? read[^1].Celsius : PlannedCelsius(at) ?? Usual));
                return TemperatureCourse.Of([.. read, (at + HoursToSet, set.Temperature!.Value.Celsius)]);
            }

            double ends = 0;
            foreach (Rest rest in inputs.Recipe.Ferment)
            {
                (double from, ends) = (ends, ends + rest.Time.Value.Hours);
                foreach (double at in new[] { Math.Max(from, since + 1), ends - 1 }.Where(at => at > since && at >= from && (read.Count == 0 || at > read[^1].Hours)))
                {
                    read.Add((at, rest.Temperature.Value.Celsius));
                }
            }

            return read.Count > 0 ? TemperatureCourse.Of(read) : TemperatureCourse.Constant(Usual);
        }

        /// <summary>Hours in which a beer comes to what was set: judged.</summary>
        private const double HoursToSet = 12;

        /// <summary>Where neither recipe nor anybody says how warm it is: a room.</summary>
        private const double Usual = 20;

        private double? PlannedCelsius(double hours)
        {
            double ends = 0;
            foreach (Rest rest in inputs.Recipe.Ferment)
            {
                ends += rest.Time.Value.Hours;
                if (hours < ends)
                {
                    return rest.Temperature.Value.Celsius;
                }
            }

            return inputs.Recipe.Ferment.Count > 0 ? inputs.Recipe.Ferment[^1].Temperature.Value.Celsius : null;
        }

        private double[] Grid()
        {
            double last = Math.Min(Math.Max(LeastDays * HoursADay, Hours(now) + (DaysOn * HoursADay)), LatestDays * HoursADay);
            return [.. Enumerable.Range(0, Times).Select(i => last * i / (Times - 1))];
        }

        private static double Mean(double[] values) => values.Length == 0 ? 0 : values.Average();
    }
}

/// <summary>A small sample of the wort with much yeast, kept warm until nothing moves: where it ends is where the beer can.</summary>
/// <remarks>Source: limit of attenuation by fermentation to the end, MEBAK; the home form with 120 to 200 mL: common practice.</remarks>
public static class ForcedFerment
{
    /// <summary>The stage that its reading belongs to.</summary>
    public const string Stage = "forced";
}
