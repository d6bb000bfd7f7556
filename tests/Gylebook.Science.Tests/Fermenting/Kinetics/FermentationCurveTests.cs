using System.Diagnostics;
using Gylebook.Science.Fermenting;
using Gylebook.Science.Fermenting.Kinetics;
using Gylebook.Science.Liquids;

namespace Gylebook.Science.Tests.Fermenting.Kinetics;

public class FermentationCurveTests
{
    private const double Point = 0.001;
    private static readonly FermentationCurve Ale = new() { StartGravity = 1.050, EndGravity = 1.012, LagHours = 6 };

    [Theory]
    [InlineData(9)]
    [InlineData(12)]
    [InlineData(20)]
    [InlineData(30)]
    [InlineData(40)]
    public void Limits_it_starts_at_the_start_falls_all_the_way_and_ends_at_the_end(double celsius)
    {
        double[] hours = [.. Enumerable.Range(0, 200).Select(i => i * 5.0), 1440], gravities = new double[hours.Length];
        double there = Ale.Follow(TemperatureCourse.Constant(celsius), hours, gravities, 0.5 * Point);
        Assert.Equal(1.050, gravities[0]);

        // Maltotriose is slow in the cold: sixty days at 9 °C leave 0.06 points.
        Assert.Equal(1.012, gravities[^1], 0.1 * Point);

        // What the steps' 0.01 % of a sugar leave of a wiggle at its end.
        Assert.All(gravities.Zip(gravities.Skip(1)), pair => Assert.True(pair.Second <= pair.First + (0.004 * Point)));
        Assert.InRange(there, 12, 1000);
    }

    /// <summary>Without lag, at one pace, it is the growth model in the model's own sugars; the steps' 0.01 % is 0.004 points.</summary>
    [Theory]
    [InlineData(10.5)]
    [InlineData(16)]
    public void Known_the_way_is_the_growth_models(double celsius)
    {
        double[] hours = [12, 24, 48, 96, 168, 240], gravities = new double[hours.Length];
        FermentationCurve curve = Ale with { LagHours = 0 };
        curve.Follow(TemperatureCourse.Constant(celsius), hours, gravities, 0.5 * Point);
        SugarsAndYeast start = curve.Sugars.Of(Fermentable(1.050, 1.012), 125);
        SugarsAndYeast[] course = new SugarsAndYeast[hours.Length];
        GrowthModel.Follow(start, TemperatureCourse.Constant(celsius), true, hours, course);
        double all = SugarShares.Grams(start.Glucose, start.Maltose, start.Maltotriose);
        for (int i = 0; i < hours.Length; i++)
        {
            double left = SugarShares.Grams(course[i].Glucose, course[i].Maltose, course[i].Maltotriose) / all;
            Assert.Equal(1.012 + (0.038 * left), gravities[i], 0.02 * Point);
        }
    }

    /// <summary>Sugar on the third day, against the equations written anew and an implicit integrator in two legs: the glucose is put into the state between them.</summary>
    [Theory]
    [InlineData(10.5, 0.007)]
    [InlineData(16, 0.019)]
    public void Known_sugar_that_goes_in_on_the_way_meets_the_yeast_there_is(double celsius, double added)
    {
        const double At = 60;
        double[] hours = [24, 60, 61, 72, 96, 144], gravities = new double[hours.Length];
        FermentationCurve curve = Ale with { LagHours = 0, AddedGravity = added, AddedHours = At };
        double there = curve.Follow(TemperatureCourse.Constant(celsius), hours, gravities, 0.5 * Point);
        SugarsAndYeast start = curve.Sugars.Of(Fermentable(1.050, 1.012), 125);
        double[] Leg(double[] from, double[] at, int which) => GaussLegendre.Follow((_, y) => GrowthModelTests.Written(0, y, _ => celsius, true), from, 0.01, at)[which];
        double all = SugarShares.Grams(start.Glucose, start.Maltose, start.Maltotriose);
        double[] first = [start.Glucose, start.Maltose, start.Maltotriose, start.Yeast, 0], middle = Leg(first, [24, At], 1), second = [.. middle];
        second[0] += SugarShares.MolesOfGlucose(all * added / 0.038);
        for (int i = 0; i < hours.Length; i++)
        {
            double[] y = hours[i] <= At ? Leg(first, [hours[i]], 0) : Leg(second, [hours[i] - At], 0);
            Assert.Equal(1.012 + (0.038 * SugarShares.Grams(y[0], y[1], y[2]) / all), gravities[i], 0.02 * Point);
        }

        // It is not done before it is in, however little is left by then.
        Assert.True(there > At);
        Assert.True((curve with { AddedHours = 700 }).Follow(TemperatureCourse.Constant(celsius), hours, gravities, 0.5 * Point) > 700);
    }

    /// <summary>Gravity against sugar is not quite straight: Balling's chain from the same sugar is at most 0.3 points away.</summary>
    [Theory]
    [InlineData(1.040, 1.008)]
    [InlineData(1.060, 1.012)]
    [InlineData(1.090, 1.020)]
    public void Known_a_straight_line_is_near_Ballings(double start, double end)
    {
        double original = SucroseSolution.PlatoAt(start), last = Balling.RealExtractOf(original, SucroseSolution.PlatoAt(end));
        double whole = Balling.ExtractFermented((original - last) / original, last);
        double worst = 0;
        for (double share = 0.05; share < 1; share += 0.05)
        {
            // The real extract at which that part of the sugar that will ferment has fermented: x = a/(1 − c·RE) solved for RE.
            double x = share * whole, c = 0.0051609, real = original * (1 - x) / (1 - (c * x * original));
            double gravity = SucroseSolution.GravityAt(Balling.ApparentExtractOf(original, real));
            worst = Math.Max(worst, Math.Abs(gravity - (start - (share * (start - end)))));
        }

        Assert.InRange(worst / Point, 0, 0.3);
    }

    [Fact]
    public void Known_it_is_there_when_it_says()
    {
        TemperatureCourse temperature = TemperatureCourse.Of([(0, 10), (72, 10), (96, 16)]);
        double there = Ale.Follow(temperature, [], [], Point);
        double[] gravities = new double[2];
        Ale.Follow(temperature, [there - 0.01, there], gravities, Point);
        Assert.True(gravities[0] > 1.013);
        Assert.Equal(1.013, gravities[1], 1e-3 * Point);
    }

    [Fact]
    public void Monotone_pace_cells_and_warmth_hasten_lag_and_tail_delay()
    {
        double Hours(FermentationCurve curve, double celsius = 12) => curve.Follow(TemperatureCourse.Constant(celsius), [], [], Point);
        double usual = Hours(Ale);
        Assert.True(Hours(Ale with { Pace = 1.2 }) < usual);
        Assert.True(Hours(Ale with { MillionCells = 25 }) < usual);
        Assert.True(Hours(Ale, 14) < usual);
        Assert.Equal(Hours(Ale, 14), Hours(Ale with { WarmerBy = 2 }), 1e-9);
        Assert.True(Hours(Ale with { LagHours = 20 }) > usual);
        Assert.True(Hours(Ale with { Tail = 0.2 }) < usual);
    }

    /// <summary>Pace multiplies time: twice the pace without a lag is there in half the hours, to the last digits of the search.</summary>
    [Fact]
    public void Known_pace_is_a_scale_of_time()
    {
        FermentationCurve curve = Ale with { LagHours = 0 };
        double once = curve.Follow(TemperatureCourse.Constant(12), [], [], Point);
        double twice = (curve with { Pace = 2 }).Follow(TemperatureCourse.Constant(12), [], [], Point);
        Assert.Equal(once / 2, twice, 0.01);
    }

    /// <summary>Whatever the tail, the papers' pace on the first sugar is kept: the gravity of the first hours moves by less than half a point.</summary>
    [Fact]
    public void Known_the_tail_leaves_the_start_alone()
    {
        double[] whole = new double[1], none = new double[1];
        (Ale with { Tail = 1 }).Follow(TemperatureCourse.Constant(12), [24], whole, Point);
        (Ale with { Tail = 0.01 }).Follow(TemperatureCourse.Constant(12), [24], none, Point);
        Assert.Equal(whole[0], none[0], 0.5 * Point);
    }

    [Fact]
    public void Limits_nothing_to_ferment_is_done_at_once_and_without_yeast_never()
    {
        double[] gravities = new double[1];
        Assert.Equal(0, (Ale with { EndGravity = 1.050 }).Follow(TemperatureCourse.Constant(12), [10], gravities, Point));
        Assert.Equal(1.050, gravities[0]);
        Assert.Equal(double.PositiveInfinity, (Ale with { Pace = 0 }).Follow(TemperatureCourse.Constant(12), [10], gravities, Point));
        Assert.Equal(1.050, gravities[0]);
    }

    [Fact]
    public void Range_it_says_where_the_papers_end()
    {
        Assert.True(FermentationCurve.IsWithinPublishedRange(TemperatureCourse.Of([(0, 8), (100, 16)])));
        Assert.False(FermentationCurve.IsWithinPublishedRange(TemperatureCourse.Of([(0, 8), (100, 17)])));
        Assert.False(FermentationCurve.IsWithinPublishedRange(TemperatureCourse.Constant(4)));
    }

    [Fact]
    public void Many_draws_take_little_and_nothing_is_allocated()
    {
        double[] hours = [.. Enumerable.Range(1, 30).Select(i => i * 8.0)], gravities = new double[30];
        TemperatureCourse temperature = TemperatureCourse.Of([(0, 10), (72, 10), (96, 16)]);
        Ale.Follow(temperature, hours, gravities, Point);
        long before = GC.GetAllocatedBytesForCurrentThread();
        long started = Stopwatch.GetTimestamp();
        for (int draw = 0; draw < 1000; draw++)
        {
            (Ale with { Pace = 0.5 + (draw / 1000.0), Tail = (draw + 1) / 1000.0 }).Follow(temperature, hours, gravities, Point);
        }

        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        TestContext.Current.TestOutputHelper?.WriteLine(Stopwatch.GetElapsedTime(started).ToString());
        Assert.Equal(0, allocated);
    }

    private static double Fermentable(double start, double end)
    {
        double original = SucroseSolution.PlatoAt(start), real = Balling.RealExtractOf(original, SucroseSolution.PlatoAt(end));
        return Balling.ExtractFermented((original - real) / original, real) * original * 10 * SucroseSolution.KilogramsPerLitreOfGravity(start);
    }
}
