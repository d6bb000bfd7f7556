using Gylebook.Engine.Drawing;
using Gylebook.Engine.Readings;
using Gylebook.Science.Fermenting.Kinetics;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Fermenting;

/// <summary>Tells how a fermentation will go on, from what is known of it and what was read.</summary>
/// <remarks>
/// <para>Draws of <see cref="FermentationCurve"/> are brought to the readings in four steps of an ensemble smoother (<see cref="Assimilation"/>). The error of a
/// reading is its own, and the curve's misfit to foreign courses as often as other readings stand within half a day: what is wrong with the shape is
/// wrong for all of them. Then each reading is held against the middle of the fan; one that lies off by more than two of its own deviations is taken with the variance
/// R(4 + z²)/5, and all is done again from the start.</para>
/// <para>Source: Emerick and Reynolds 2013, as in <see cref="Assimilation"/>; Student's t with four degrees of freedom as in
/// <c>docs/science/uncertainty.md</c>; half a day is judged.</para>
/// <para>Accuracy: measured against foreign curves in <c>docs/science/fermentation-course.md</c>.</para>
/// <para>Notes: where four or more readings reach past the middle and still lie off by more than two and a half deviations on average, a four-parameter
/// logistic is laid through them.</para>
/// </remarks>
public static class CourseForecast
{
    private const double Together = 12, Freedom = 4, AsItIs = 2, Settled = 0.02, NotFollowed = 2.5;
    private const int MostRounds = 6, LeastForLogistic = 4;

    /// <summary>Forecasts.</summary>
    /// <param name="prior">What was known before.</param>
    /// <param name="readings">What was read, in any order; may be empty.</param>
    /// <param name="hours">When to tell the gravity, rising, from 0 up.</param>
    /// <param name="seed">The word of the draws.</param>
    /// <exception cref="ArgumentOutOfRangeException">Draws of the two gravities differ in number or are fewer than two, or a reading has no meaning.</exception>
    public static CourseFan Of(CoursePrior prior, IReadOnlyList<CourseReading> readings, IReadOnlyList<double> hours, string seed)
    {
        ArgumentNullException.ThrowIfNull(prior);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(hours);
        Refuse(prior, readings);
        CourseReading[] read = [.. readings.OrderBy(reading => reading.Hours)];
        double[] when = [.. hours];
        CourseDraws before = CourseDraws.Of(prior, seed), after = before;
        double[] variances = [.. read.Select(reading => VarianceOf(reading, read))], weights = [.. read.Select(_ => 1.0)];
        double[] off = [];
        for (int round = 0; round < MostRounds && read.Length > 0; round++)
        {
            after = Moved(before, prior, read, [.. variances.Zip(weights, (variance, weight) => variance / weight)], seed);
            off = Off(after, prior, read, variances);
            if (!Weighed(off, weights))
            {
                break;
            }
        }

        bool isLogistic = IsNotFollowed(off, read, prior);
        CourseFan fan = isLogistic ? LogisticFan(prior, read, variances, when, seed) : Fan(after, prior, when);
        return fan with { Off = OffInOrder(readings, read, off) };
    }

    private static void Refuse(CoursePrior prior, IReadOnlyList<CourseReading> readings)
    {
        if (prior.StartGravities.Count != prior.EndGravities.Count || prior.StartGravities.Count < 2)
        {
            throw new ArgumentOutOfRangeException(
                nameof(prior), prior.EndGravities.Count, Invariant($"EndGravities must be as many as the {prior.StartGravities.Count} StartGravities, two at least."));
        }

        foreach (CourseReading reading in readings)
        {
            if (!(reading.Hours is >= 0 and <= FermentationCurve.LatestHours && reading.Gravity is >= 0.9 and <= 1.3 && reading.Deviation is > 0 and < 1))
            {
                throw new ArgumentOutOfRangeException(
                    nameof(readings), reading, "readings must be from 0 to 1440 h, from 0.9 to 1.3 SG, with a deviation above 0 and below 1.");
            }
        }
    }

    private static double VarianceOf(CourseReading reading, CourseReading[] all)
    {
        double about = all.Sum(other => Math.Max(0, 1 - (Math.Abs(other.Hours - reading.Hours) / Together)));
        return (reading.Deviation * reading.Deviation) + (CourseWidths.Misfit * CourseWidths.Misfit * about);
    }

    /// <summary>The draws after four steps; each draw's reading scatters by a number of its own.</summary>
    private static CourseDraws Moved(CourseDraws before, CoursePrior prior, CourseReading[] read, double[] variances, string seed)
    {
        CourseDraws now = before.Copy();
        Strata strata = new(now.Count);
        for (int step = 0; step < Assimilation.FourSteps.Count; step++)
        {
            double alpha = Assimilation.FourSteps[step];
            string word = Invariant($"step {step}");
            SmootherStep move = new(
                Shown(now, prior, read),
                [.. read.Select((reading, i) => Assimilation.Scattered(reading.Gravity, alpha * variances[i], seed, Invariant($"course {i} {word}"), strata))],
                [.. variances.Select(variance => alpha * variance)]);
            foreach (double[] column in now.Columns)
            {
                move.Move(column);
            }
        }

        return now;
    }

    /// <summary>What the instrument is forecast to show at each reading, draw by draw.</summary>
    private static double[][] Shown(CourseDraws draws, CoursePrior prior, CourseReading[] read)
    {
        double[] hours = [.. read.Select(reading => reading.Hours)];
        double[][] shown = [.. read.Select(_ => new double[draws.Count])];
        double[] gravities = new double[hours.Length];
        for (int draw = 0; draw < draws.Count; draw++)
        {
            draws.CurveOf(draw).Follow(prior.Temperature, hours, gravities, double.MaxValue);
            for (int i = 0; i < gravities.Length; i++)
            {
                shown[i][draw] = gravities[i] + draws.OffsetOf(draw);
            }
        }

        return shown;
    }

    private static double[] Off(CourseDraws draws, CoursePrior prior, CourseReading[] read, double[] variances) =>
    [
        .. Shown(draws, prior, read).Select((column, i) => (read[i].Gravity - Quantiles.Of(column).Middle) / Math.Sqrt(variances[i])),
    ];

    /// <summary>New weights of the readings; whether one moved.</summary>
    private static bool Weighed(double[] off, double[] weights)
    {
        bool moved = false;
        for (int i = 0; i < off.Length; i++)
        {
            double z = Math.Abs(off[i]), weight = z > AsItIs ? (Freedom + 1) / (Freedom + (z * z)) : 1;
            moved |= Math.Abs(weight - weights[i]) > Settled;
            weights[i] = weight;
        }

        return moved;
    }

    private static bool IsNotFollowed(double[] off, CourseReading[] read, CoursePrior prior)
    {
        double half = (prior.StartGravities.Average() + prior.EndGravities.Average()) / 2;
        double[] sizes = [.. off.Select(Math.Abs).Order()];
        return sizes.Length >= LeastForLogistic && read.Any(reading => reading.Gravity < half) && sizes[sizes.Length / 2] > NotFollowed;
    }

    private static CourseFan Fan(CourseDraws draws, CoursePrior prior, double[] hours)
    {
        double[][] gravities = [.. hours.Select(_ => new double[draws.Count])];
        double[] done = new double[draws.Count], now = new double[hours.Length];
        for (int draw = 0; draw < draws.Count; draw++)
        {
            done[draw] = draws.CurveOf(draw).Follow(prior.Temperature, hours, now, prior.Within);
            for (int i = 0; i < hours.Length; i++)
            {
                gravities[i][draw] = now[i];
            }
        }

        return FanOf(prior, hours, gravities, (double[])draws.Columns[1].Clone(), done, isLogistic: false);
    }

    private static CourseFan LogisticFan(CoursePrior prior, CourseReading[] read, double[] variances, double[] hours, string seed)
    {
        int count = prior.StartGravities.Count;
        LogisticFit fit = LogisticFit.Of(
            [.. read.Select(reading => reading.Hours)], [.. read.Select(reading => reading.Gravity + ToCome(prior, reading.Hours))], [.. variances.Select(Math.Sqrt)],
            LevelOf(prior.StartGravities), LevelOf(prior.EndGravities));
        Strata strata = new(count);
        double[][] scores = [.. Enumerable.Range(0, 4).Select(i => Assimilation.Scattered(0, 1, seed, Invariant($"logistic {i}"), strata))];
        double[][] gravities = [.. hours.Select(_ => new double[count])];
        double[] end = new double[count], done = new double[count];
        for (int draw = 0; draw < count; draw++)
        {
            LogisticAttenuation curve = fit.Drawn([scores[0][draw], scores[1][draw], scores[2][draw], scores[3][draw]]);
            end[draw] = curve.End;
            double share = 1 - (prior.Within / (curve.Start - curve.End));
            done[draw] = share is > 0 and < 1 ? Math.Max(0, curve.HoursUntil(share)) : 0;
            for (int i = 0; i < hours.Length; i++)
            {
                gravities[i][draw] = curve.At(hours[i]) - ToCome(prior, hours[i]);
            }
        }

        return FanOf(prior, hours, gravities, end, done, isLogistic: true);
    }

    /// <summary>What has yet to go in: a plain curve counts it as there from the start.</summary>
    private static double ToCome(CoursePrior prior, double hours) => hours < prior.AddedHours ? prior.Added : 0;

    private static KnownLevel LevelOf(IReadOnlyList<double> draws)
    {
        double mean = draws.Average(), variance = draws.Sum(draw => (draw - mean) * (draw - mean)) / (draws.Count - 1);
        return new(mean, Math.Sqrt(variance) + CourseWidths.Misfit);
    }

    private static CourseFan FanOf(CoursePrior prior, double[] hours, double[][] gravities, double[] end, double[] done, bool isLogistic)
    {
        double share = done.Count(hour => hour <= FermentationCurve.LatestHours) / (double)done.Length;

        // Hours beyond the last are late, not absent: counted as the latest to rank them, told as infinite.
        Quantiles ranked = Quantiles.Of([.. done.Select(hour => Math.Min(hour, FermentationCurve.LatestHours))]);
        return new CourseFan
        {
            Hours = hours,
            Gravities = [.. gravities.Select(column => Quantiles.Of(column))],
            End = Quantiles.Of(end),
            DoneHours = new(Told(ranked.Low), Told(ranked.Middle), Told(ranked.High)),
            DoneShare = share,
            Off = [],
            IsLogistic = isLogistic,
            IsWithinPublishedRange = FermentationCurve.IsWithinPublishedRange(prior.Temperature),
        };
    }

    private static double Told(double hours) => hours >= FermentationCurve.LatestHours ? double.PositiveInfinity : hours;

    /// <summary>What was found in order of time, in the order that the readings were given in.</summary>
    private static double[] OffInOrder(IReadOnlyList<CourseReading> given, CourseReading[] sorted, double[] off) =>
        [.. given.Select(reading => off[Array.IndexOf(sorted, reading)])];
}
