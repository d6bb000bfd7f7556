using Gylebook.Engine.Drawing;
using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readings;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Readings;
using Gylebook.Forecast.Tests.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Readings;
using Gylebook.Science.Numerics.Distributions;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Readings;

/// <summary>Readings of a whole brew: what moves, what must not, and what is said.</summary>
public sealed class AfterReadingsTests
{
    private static readonly Recipe Bitter = RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json"))).Value!;
    private static readonly RunPlan Plan = ParameterTests.Plan("plain-bitter.json")!;
    private static readonly Ensemble Before = Ensemble.Of(Plan, Draws.Of(Plan.Parameters, "before", 1000), new ReadoutTable(Plan).All);

    private static readonly Reading CopperUp = new("litres", StageReadouts.Of(Stage.CopperUp, 0).LitresWithSolids, 26.6, 0.09, ReadingInstrument.Exact);

    [Fact]
    public void A_reading_moves_what_acts_before_it_and_no_bit_of_what_acts_after()
    {
        foreach (Ensemble after in new[] { Once(), Repeated(1) })
        {
            HashSet<string> moved = [.. Before.Draws.Moving.ToArray().Where(place => !Before.Draws[place].SequenceEqual(after.Draws[place])).Select(place => Plan.Parameters[place].Id)];
            Assert.Contains("kit.wortHeld", moved);
            Assert.All(moved, id => Assert.False(IsAfterTheMash(id), id));
            Assert.True(Before.QuantilesOf(CopperUp.Readout).Width > 1.5 * after.QuantilesOf(CopperUp.Readout).Width);
        }

        static bool IsAfterTheMash(string id) =>
            id.StartsWith("hop.", StringComparison.Ordinal) || id.StartsWith("yeast.", StringComparison.Ordinal) || id.StartsWith("bitterness.", StringComparison.Ordinal)
            || id.StartsWith("sludge.", StringComparison.Ordinal) || id is "kit.kettle.evaporation" or "kit.kettle.leftBehind" or "kit.racking.leftBehind" or "ferment.residualGas";
    }

    [Fact]
    public void The_bits_are_the_same_every_time_and_on_any_number_of_threads()
    {
        Assert.Equal(Bits(Once()), Bits(Once()));
        long[] one = Bits(Repeated(1));
        Assert.Equal(one, Bits(Repeated(2)));
        Assert.Equal(one, Bits(Repeated(7)));

        static long[] Bits(Ensemble ensemble) => [.. ensemble.Readouts.SelectMany(readout => ensemble[readout].ToArray()).Select(BitConverter.DoubleToInt64Bits)];
    }

    [Fact]
    public void Draws_stay_within_their_ends_and_bonds_hold()
    {
        // Far more than the mash can give: everything is pushed to its end.
        Reading much = new("much", BeerReadouts.CopperUpGravity, 1.06, 1e-7, ReadingInstrument.Exact);
        Assimilated pushed = Assimilation.Repeated(Plan, Before, [much], ReadingReach.Of(Plan, Before, [much]), "ends");
        Ensemble after = pushed.Ensemble;
        foreach (int place in after.Draws.Moving)
        {
            Parameter parameter = Plan.Parameters[place];
            Distribution prior = parameter.Prior is Prior.Spread spread ? spread.Between.About(parameter.Median) : default;
            if (prior.Family is Family.LogNormal or Family.LogitNormal or Family.Triangular or Family.Uniform)
            {
                double low = Math.Min(prior.Low, Before.Draws[place].ToArray().Min()), high = Math.Max(prior.High, Before.Draws[place].ToArray().Max());
                Assert.All(after.Draws[place].ToArray(), value => Assert.InRange(value, low, high));
            }
        }

        int[] sugars = [(int)Known.SpectrumMaltose, (int)Known.SpectrumMaltotriose, (int)Known.SpectrumGlucose];
        double whole = sugars.Sum(place => Plan.Medians[place]);
        Assert.All(Enumerable.Range(0, after.Draws.Count), draw => Assert.Equal(whole, sugars.Sum(place => after.Draws[place][draw]), 1e-9));
        Assert.Equal(whole, sugars.Sum(place => pushed.Likely[place]), 1e-9);
    }

    /// <summary>The draws' middle lies off the likely run where the model is bent: that is no reason to move the likely run.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.001)]
    [InlineData(-0.001)]
    public void The_likely_run_moves_by_how_far_off_it_was_itself(double off)
    {
        double planned = RunOutcome.Likely(Plan)[BeerReadouts.CopperUpGravity];
        Reading read = new("own", BeerReadouts.CopperUpGravity, planned + off, 1e-7, ReadingInstrument.Exact);
        IReadOnlyList<double> likely = Assimilation.Repeated(Plan, Before, [read], ReadingReach.Of(Plan, Before, [read]), "own").Likely;
        double now = RunOutcome.Likely(Plan with { Medians = [.. likely.Take(Plan.Parameters.Length)] })[BeerReadouts.CopperUpGravity];
        Assert.Equal(planned + off, now, off == 0 ? 1e-12 : 0.2 * Math.Abs(off));
        Assert.Equal(off == 0, likely.SequenceEqual(Before.Draws.Parameters.Select(parameter => parameter.Median)));
    }

    [Fact]
    public void What_models_leave_open_stays_at_least_half_as_wide()
    {
        Parameter open = Drawing.DrawsTests.Of("model.originalGravity", 0, Family.Normal, 0.0008);
        Draws draws = Draws.Of([.. Plan.Parameters, open], "floor", 1000);
        Ensemble before = Ensemble.Of(Plan, draws, [BeerReadouts.CastGravity, BeerReadouts.OriginalGravity], [new(open, BeerReadouts.CastGravity), new(open, BeerReadouts.OriginalGravity)]);
        Reading exact = new("exact", BeerReadouts.CastGravity, before[BeerReadouts.CastGravity].ToArray().Average(), 1e-10, ReadingInstrument.Exact);
        Reading[] known = [.. Enumerable.Range(0, 3).Select(i => exact with { Id = Invariant($"exact {i}") })];
        ReadingReach reach = ReadingReach.Of(Plan, before, known);
        foreach (Ensemble after in new[] { Assimilation.AtOnce(before, known, reach, "floor"), Assimilation.Repeated(Plan, before, known, reach, "floor").Ensemble })
        {
            double[] left = after.Draws[Plan.Parameters.Length].ToArray();
            Assert.True(Math.Sqrt(left.Sum(value => (value - left.Average()) * (value - left.Average())) / (left.Length - 1)) >= 0.0004 * (1 - 1e-9));
        }
    }

    [Fact]
    public void A_reading_that_cannot_be_explained_moves_nothing_until_the_brewer_says()
    {
        const string Far = """{ "at": "copper-up", "volume": "33 L", "temperature": "20 °C" }""";
        BrewForecast without = Forecast(null), with = Forecast(Far), sure = Forecast(Far.Replace(" }", ", \"sure\": true }", StringComparison.Ordinal));
        Finding finding = Assert.Single(with.Findings, finding => finding.Code == "reading.unexplained");
        Assert.Contains("33.00 L", finding.Message, StringComparison.Ordinal);
        Assert.NotNull(finding.Limit);
        Assert.All(without.Headline.Zip(with.Headline), pair => Assert.Equal(pair.First.Band, pair.Second.Band));
        Assert.NotEqual(without.Headline.First(headline => headline.Name == "copperUpLitres").Band, sure.Headline.First(headline => headline.Name == "copperUpLitres").Band);
        Assert.Empty(with.AfterReadings!.Learned);
        Assert.Empty(with.AfterReadings.Mends);
    }

    [Theory]
    [InlineData("""{ "at": "cast", "gravity": "11.2", "temperature": "20 °C" }""", "reading.plato")]
    [InlineData("""{ "at": "knock-out", "gravity": "1.005" }""", "reading.hotHydrometer")]
    [InlineData("""{ "at": "cast", "gravity": "1.045", "temperature": "39 °C", "instrument": "hydrometerNarrow", "checked": true }, { "at": "cast", "gravity": "1.0455", "temperature": "20 °C", "instrument": "hydrometerNarrow", "checked": true }""", "reading.contradicts")]
    [InlineData("""{ "at": "cast", "gravity": "1.045", "temperature": "55 °C" }""", "reading.tooHot")]
    [InlineData("""{ "at": "cast", "gravity": "1.045" }, { "at": "cast", "gravity": "1.054", "instrument": "floatingSensor" }""", "reading.disagree")]
    [InlineData("""{ "at": "cast", "gravity": "1.045" }, { "at": "copper-up", "volume": "27 L" }""", "reading.outOfOrder")]
    [InlineData("""{ "at": "copper-up", "volume": "27 L" }""", "reading.temperatureUnsaid")]
    [InlineData("""{ "at": "copper-up", "volume": "27 L", "portion": "left" }""", "reading.portionTooEarly")]
    [InlineData("""{ "at": "mash", "ph": 5.4 }""", "reading.noNumber")]
    [InlineData("""{ "at": "ferment", "gravity": "1.012" }""", "reading.gas")]
    [InlineData("""{ "at": "copper-up", "volume": "29.5 L", "temperature": "20 °C" }""", "reading.far")]
    [InlineData("""{ "at": "ferment", "gravity": "1.020", "temperature": "20 °C", "degassed": true }""", "reading.stall")]
    [InlineData("""{ "at": "rack", "gravity": "1.026", "temperature": "20 °C", "degassed": true }""", "reading.stall")]
    public void What_is_odd_is_said_with_what_was_done(string readings, string code) =>
        Assert.Contains(Forecast(readings).Findings, finding => finding.Code == code);

    [Theory]
    [InlineData("17 L", true)]
    [InlineData("27 L", false)]
    public void Litres_that_are_missing_are_told_as_a_loss_and_litres_too_many_are_not(string litres, bool isLost) => Assert.Equal(
        isLost,
        Forecast($$"""{ "at": "cast", "volume": "{{litres}}", "temperature": "20 °C", "checked": true }""").Findings.Single(finding => finding.Code is "reading.far" or "reading.unexplained").Message.Contains("left behind or drawn off", StringComparison.Ordinal));

    [Fact]
    public void A_stage_that_the_brew_has_not_is_told()
    {
        BrewForecast forecast = Forecast(
            """{ "at": "mash", "gravity": "1.050", "temperature": "20 °C" }""",
            Bitter with { Mash = null, Ingredients = [.. Bitter.Ingredients.Where(line => line.Kind != IngredientKind.Malt), Typed.Line(IngredientKind.Extract, "dry malt extract light", 2.5, AdditionPoint.CopperUp)] });
        Assert.Contains(forecast.Findings, finding => finding.Code == "reading.noStage");
    }

    [Fact]
    public void What_was_learned_is_told_with_what_cannot_be_told_apart()
    {
        AfterReadings after = Forecast(null, null, ReadingsFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/readings/plain-bitter-brew-day.json"))).Value).AfterReadings!;
        Assert.All(after.Readings, reading => Assert.Equal(ReadingTrust.AsItIs, reading.Gate.Trust));
        Assert.Contains(after.Learned, learned => learned.Figure.Parameter.Id == "kit.kettle.evaporation" && learned.Figure.Narrower >= 0.1);
        Assert.Contains(after.Learned, learned => learned.Sentence.StartsWith("what your marks, dip stick or sight glass (kettle) shows too much", StringComparison.Ordinal));
        Assert.All(after.Learned, learned => Assert.True(learned.Figure.IsTaught));
        Assert.All(after.Pairs, pair => Assert.InRange(Math.Abs(pair.Correlation), 0.7, 1));
    }

    private static Ensemble Once() => Assimilation.AtOnce(Before, [CopperUp], ReadingReach.Of(Plan, Before, [CopperUp]), "readings");

    private static Ensemble Repeated(int threads) => Assimilation.Repeated(Plan, Before, [CopperUp], ReadingReach.Of(Plan, Before, [CopperUp]), "readings", threads).Ensemble;

    private static BrewForecast Forecast(string? readings, Recipe? recipe = null, BrewReadings? read = null)
    {
        BrewReadings? meant = read ?? (readings is null ? null : ReadingsFile.Read($$"""{ "format": "gylebook-readings/1", "name": "test", "readings": [ {{readings}} ] }""").Value!);
        return Forecaster.Forecast(recipe ?? Bitter, BuiltInKit.LanternShed, Larder.Empty, "after", null, new ForecastRequest { Draws = 1000, Readings = meant });
    }
}
