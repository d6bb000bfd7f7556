using Gylebook.Engine.Drawing;
using Gylebook.Engine.Ensembles;
using Gylebook.Engine.Parameters;
using Gylebook.Engine.Readings;
using Gylebook.Engine.Readouts;
using Gylebook.Engine.Running;
using Gylebook.Forecast.Tests.Planning;

namespace Gylebook.Forecast.Tests.Readings;

/// <summary>Learning over gyles: normal means in two levels, by hand.</summary>
public sealed class KitProposalTests
{
    private const double Between = 0.6, Within = 0.3, Reading = 0.35;

    // Printed to three digits.
    [Theory]
    [InlineData(0, 0.600, 0.671)]
    [InlineData(1, 0.366, 0.473)]
    [InlineData(2, 0.286, 0.415)]
    [InlineData(5, 0.195, 0.358)]
    [InlineData(20, 0.102, 0.317)]
    public void Gyles_narrow_the_kit_and_never_the_next_gyle_below_its_own_spread(int gyles, double kit, double next)
    {
        KitProposal proposal = KitProposal.Of(4, Between, Within, [.. Enumerable.Repeat(new GyleEvidence("a Saturday", 4.2, Reading * Reading), gyles)]);
        Assert.Equal(kit, proposal.Deviation, 0.0005);
        Assert.Equal(next, proposal.NextGyle, 0.0005);
        Assert.True(proposal.NextGyle > Within);
        Assert.Equal(gyles > 0, proposal.IsTaught);
    }

    [Fact]
    public void One_odd_gyle_moves_little()
    {
        GyleEvidence[] sound = [.. new[] { 4.1, 4.3, 4.2, 4.25, 4.15 }.Select(value => new GyleEvidence("sound", value, Reading * Reading))];
        GyleEvidence odd = new("the lid was on", 9, Reading * Reading);
        KitProposal without = KitProposal.Of(4, Between, Within, sound), with = KitProposal.Of(4, Between, Within, [.. sound, odd]);
        Assert.All(without.Behind, gyle => Assert.Equal(1, gyle.Weight));

        // Left alone it would move the middle by nearly a sixth of its distance.
        Assert.InRange(with.Behind[^1].Weight, 0, 0.1);
        Assert.InRange(Math.Abs(with.Middle - without.Middle), 0, 0.5 * without.Deviation);
    }

    [Fact]
    public void A_gyle_without_a_reading_of_it_taught_nothing_and_one_with_it_says_what_it_was()
    {
        RunPlan bitter = ParameterTests.Plan("plain-bitter.json")!;
        Draws draws = Draws.Of(bitter.Parameters, "learning", 1000);
        Ensemble before = Ensemble.Of(bitter, draws, new ReadoutTable(bitter).All);
        Reading[] read =
        [
            new("before the boil", BeerReadouts.CopperUpLitres, 26, 0.01, ReadingInstrument.Exact),
            new("after the boil", BeerReadouts.KnockOutLitres, 21, 0.01, ReadingInstrument.Exact),
        ];
        Ensemble after = Assimilation.Repeated(bitter, before, read, ReadingReach.Of(bitter, before, read), "learning").Ensemble;
        GyleEvidence boiledOff = GyleEvidence.Of("one gyle", before.Draws, after.Draws, (int)Known.Evaporation)!;

        // 26 L at 20 °C less 21 in an hour: 5 L, known to √0.02 of them.
        Assert.Equal(Math.Log(5), boiledOff.Value, 0.05);
        Assert.Null(GyleEvidence.Of("one gyle", before.Draws, after.Draws, (int)Known.RackingLeftBehind));
        KitProposal proposal = KitProposal.For(bitter.Parameters[(int)Known.Evaporation], [boiledOff])!;
        Assert.True(proposal.IsTaught);
        Assert.InRange(proposal.Within, 0.049, 0.051);
        Assert.Null(KitProposal.For(bitter.Parameters[(int)Known.GrainDensity], []));
    }
}
