using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readings;
using Gylebook.Forecast.Learning;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Science.Quantities;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests.Readings;

/// <summary>What finished gyles teach of a kit: five simulated ones, from a truth that its file does not know, the fourth of them odd.</summary>
public sealed class KitLearningTests
{
    private static readonly Recipe Bitter = RecipeFile.Read(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json"))).Value!;
    private static readonly FinishedGyle[] Gyles = [.. Enumerable.Range(1, 5).Select(number => Gyle(Bitter, Invariant($"bitter-{number}")))];
    private static readonly Kit Shed = BuiltInKit.LanternShed;
    private static readonly KitLearning All = KitLearning.Of(Shed, Gyles, "learning");

    // The middles that bench/Gylebook.Benchmarks/SimulatedGyles.cs draws about. A band of nine in ten; these four are all there is.
    [Theory]
    [InlineData("kettle.evaporation", 4.9)]
    [InlineData("bag.liquorKept", 0.65)]
    [InlineData("conversion", 0.92)]
    [InlineData("kettle.leftBehind", 1.2)]
    public void The_hidden_truth_lies_within_the_band_of_the_kits_own_middle(string name, double truth) =>
        Assert.InRange(truth, Figure(All, name).Own.Low, Figure(All, name).Own.High);

    [Fact]
    public void What_is_taught_gets_narrower_and_never_narrower_than_one_brewers_gyles()
    {
        ProposedFigure boiledOff = Figure(All, "kettle.evaporation");
        Assert.True(boiledOff.IsTaught);
        Assert.Equal("4.0 L/h", boiledOff.Said);
        Assert.Equal(4.0, boiledOff.Before.Middle, 1e-12);
        Assert.All(All.Figures.Where(figure => figure.IsTaught), figure =>
        {
            Assert.InRange(figure.Learned.NextGyle, figure.Learned.Within, figure.Learned.NextGyleBefore);
            Assert.True(figure.Learned.Deviation <= 0.9 * figure.Learned.DeviationBefore, figure.Name);
            Assert.True(figure.Own.Width < figure.After.Width, figure.Name);
            Assert.NotEmpty(figure.Behind);
        });
    }

    [Fact]
    public void The_odd_gyle_is_named_counts_for_less_and_moves_little()
    {
        ProposedFigure with = Figure(All, "kettle.evaporation"), without = Figure(KitLearning.Of(Shed, [.. Gyles.Where((_, place) => place != 3)], "learning"), "kettle.evaporation");
        (string gyle, double value, double weight) = with.Behind.MinBy(behind => behind.Weight);
        Assert.Equal("Simulated bitter 4", gyle);
        Assert.True(value < 0.75 * with.Own.Middle);
        Assert.InRange(weight, 0, 0.7);
        Assert.Contains("odd, counted", with.Sentence, StringComparison.Ordinal);

        // Counted as the others, it would be a fifth of all there is.
        double asOthers = without.Own.Middle * Math.Pow(value / without.Own.Middle, 0.2);
        Assert.True(with.Own.Middle > asOthers);
        Assert.InRange(with.Own.Middle, without.Own.Low, without.Own.High);
    }

    [Fact]
    public void Instruments_that_are_off_alike_in_all_gyles_leave_what_no_number_of_gyles_takes_away()
    {
        GyleEvidence alone = new("a", 0, 0.04), alike = new("a", 0, 0.04) { SharedVariance = 0.03 };
        KitProposal many = KitProposal.Of(0, 10, 0.1, [.. Enumerable.Repeat(alone, 400)]), shared = KitProposal.Of(0, 10, 0.1, [.. Enumerable.Repeat(alike, 400)]);

        // By hand: (0.01 + 0.04)/400, and 0.03 + (0.01 + 0.01)/400.
        Assert.Equal(Math.Sqrt(0.000125), many.Deviation, 1e-6);
        Assert.Equal(Math.Sqrt(0.03005), shared.Deviation, 1e-4);
        Assert.All(Figure(All, "kettle.evaporation").Learned.Behind, behind => Assert.InRange(behind.Gyle.SharedVariance, 0, behind.Gyle.Variance));
        Assert.Contains(Figure(All, "kettle.evaporation").Learned.Behind, behind => behind.Gyle.SharedVariance > 0.1 * behind.Gyle.Variance);
    }

    [Fact]
    public void What_nobody_read_was_not_taught_and_says_so()
    {
        ProposedFigure racking = Figure(All, "racking.leftBehind");
        Assert.False(racking.IsTaught);
        Assert.EndsWith("these gyles taught nothing about it", racking.Sentence, StringComparison.Ordinal);
        Assert.EndsWith("this gyle taught nothing about it", Figure(KitLearning.Of(Shed, [Gyles[0]], "learning"), "racking.leftBehind").Sentence, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => All.Accepted(["racking.leftBehind"], new DateOnly(2026, 3, 1)));
    }

    [Fact]
    public void A_yeasts_figure_is_proposed_and_no_kit_takes_it()
    {
        ProposedFigure yeast = All.Figures.Single(figure => figure.Parameter.Id.EndsWith(".maltotriose", StringComparison.Ordinal));
        Assert.Null(yeast.Its);
        Assert.False(yeast.CanBeAccepted);
    }

    [Fact]
    public void What_cannot_be_told_apart_is_shown_with_the_gyles_it_is_so_in() => Assert.All(All.Pairs, tied =>
    {
        Assert.NotEmpty(tied.Gyles);
        Assert.InRange(Math.Abs(tied.Pair.Correlation), 0.7, 1);
    });

    [Fact]
    public void What_is_accepted_is_in_the_kit_with_its_history_and_reads_back()
    {
        Kit kit = KitFile.Read(KitFile.Write(All.Accepted(["kettle.evaporation", "bag.liquorKept"], new DateOnly(2026, 3, 1)))).Value!;
        ProposedFigure boiledOff = Figure(All, "kettle.evaporation");
        AcceptedFigure line = kit.Learned[0];
        Assert.Equal(boiledOff.Own.Middle, kit.Kettle.Evaporation.Value.LitresPerHour, 0.005);
        Assert.Equal((new DateOnly(2026, 3, 1), "4.0 L/h", kit.Kettle.Evaporation.Text), (line.On, line.From, line.To));
        Assert.Equal(["Simulated bitter 1", "Simulated bitter 2", "Simulated bitter 3", "Simulated bitter 4", "Simulated bitter 5"], line.Gyles);
        Assert.Equal(2, kit.Learned.Count);
        Assert.Empty(KitCheck.Findings(kit));

        // Three digits of the ends move the width by a hundredth of it at most.
        Assert.Equal(boiledOff.Learned.Deviation, Between(kit, Known.Evaporation), 0.02 * boiledOff.Learned.Deviation);
        Assert.Equal(Figure(All, "bag.liquorKept").Learned.Deviation, Between(kit, Known.WortHeld), 0.02 * Figure(All, "bag.liquorKept").Learned.Deviation);
        Assert.Equal(Within(Shed, Known.Evaporation), Within(kit, Known.Evaporation));
        Assert.Equal(Between(Shed, Known.Conversion), Between(kit, Known.Conversion));

        // Typed anew, it is as unsure as ever.
        Kit typed = kit with { Kettle = kit.Kettle with { Evaporation = new(Evaporation.FromLitresPerHour(5), "5 L/h") } };
        Assert.Equal(Between(Shed, Known.Evaporation), Between(typed, Known.Evaporation));
    }

    [Fact]
    public void A_gyle_does_not_count_twice_neither_in_one_learning_nor_after_it_was_accepted()
    {
        KitLearning twice = KitLearning.Of(Shed, [Gyles[0], Gyles[0]], "learning");
        Assert.Single(twice.Findings, finding => finding.Code == "learn.twice");
        Assert.Single(Figure(twice, "kettle.evaporation").Behind);
        Kit kit = twice.Accepted(["kettle.evaporation"], new DateOnly(2026, 3, 1));
        KitLearning again = KitLearning.Of(kit, [Gyles[0], Gyles[1]], "learning");
        Assert.Contains(again.Findings, finding => finding.Code == "learn.already" && finding.Message.Contains("Simulated bitter 1: kettle.evaporation", StringComparison.Ordinal));
        Assert.Equal(["Simulated bitter 2"], Figure(again, "kettle.evaporation").Behind.Select(behind => behind.Gyle));
        Assert.Equal(Between(kit, Known.Evaporation), Figure(again, "kettle.evaporation").Learned.DeviationBefore, 1e-12);
        Assert.Equal(2, Figure(again, "bag.liquorKept").Learned.Behind.Count + Figure(again, "bag.liquorKept").Silent.Count);
    }

    [Fact]
    public void A_gyle_that_cannot_be_brewed_on_the_kit_is_an_error_and_teaches_nothing()
    {
        KitLearning learning = KitLearning.Of(Shed, [new(Bitter with { Mash = Bitter.Mash! with { Method = MashMethod.Tun } }, Gyles[0].Readings, Larder.Empty)], "learning");
        Assert.Empty(learning.Gyles);
        Assert.Empty(learning.Figures);
        Assert.Contains(learning.Findings, finding => finding is { Code: "learn.notBrewed", Severity: Severity.Error });
        Assert.Contains(learning.Findings, finding => finding.Code == "kit.noTun");
    }

    [Fact]
    public void A_reading_that_nothing_explains_is_told_with_its_gyle()
    {
        FinishedGyle far = Gyles[0] with { Readings = ReadingsFile.Read("""{ "format": "gylebook-readings/1", "name": "far", "readings": [ { "at": "copper-up", "volume": "39 L", "temperature": "20 °C" } ] }""").Value! };
        Assert.Contains(KitLearning.Of(Shed, [far], "learning").Findings, finding => finding.Code == "reading.unexplained" && finding.Message.StartsWith("far: ", StringComparison.Ordinal));
    }

    private static FinishedGyle Gyle(Recipe recipe, string name) =>
        new(recipe, ReadingsFile.Read(File.ReadAllText(RepositoryFile.PathOf($"samples/gyles/{name}.json"))).Value!, Larder.Empty);

    private static ProposedFigure Figure(KitLearning learning, string name) => learning.Figures.Single(figure => figure.Name == name);

    private static double Between(Kit kit, Known place) => Spread(kit, place).Between.Spread;

    private static double Within(Kit kit, Known place) => Spread(kit, place).Within!.Value.Spread;

    private static Prior.Spread Spread(Kit kit, Known place) => (Prior.Spread)BrewPlanner.Plan(Bitter, kit, Larder.Empty).Plan!.Parameters[(int)place].Prior;
}
