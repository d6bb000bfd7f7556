using Gylebook.Gyles.Vessels;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;

namespace Gylebook.Gyles.Tests;

/// <summary>Vessels: who has which, and what is refused.</summary>
public sealed class VesselTests
{
    private static readonly DateOnly First = new(2026, 12, 1);

    [Theory]
    [InlineData(0, 10, 10, 20, false)] // filled again on the day on which it is emptied
    [InlineData(0, 10, 9, 20, true)]
    [InlineData(5, 15, 0, 5, false)]
    [InlineData(5, 15, 0, 6, true)]
    [InlineData(0, 0, 0, 0, true)] // a day at least
    [InlineData(0, 0, 1, 1, false)]
    [InlineData(3, 4, 0, 20, true)] // within the other
    [InlineData(0, null, 400, 410, true)] // nobody knows when it is empty
    [InlineData(10, null, 0, 10, false)]
    [InlineData(10, null, 30, null, true)]
    public void Two_stays_clash_when_they_share_a_day(int from, int? until, int otherFrom, int? otherUntil, bool clash)
    {
        VesselStay one = Stay("Left", from, until), other = Stay("left", otherFrom, otherUntil);
        Assert.Equal(clash, one.Clashes(other));
        Assert.Equal(clash, other.Clashes(one));
        Assert.False(one.Clashes(other with { Vessel = "Right" }));
        Assert.False(one.Clashes(other with { Kind = VesselKind.Keg }));
    }

    [Theory]
    [InlineData(GyleStatus.Fermenting, 11, false)] // overdue, and still in it
    [InlineData(GyleStatus.Brewing, 11, false)]
    [InlineData(GyleStatus.Packaged, 11, true)]
    [InlineData(GyleStatus.Fermenting, 10, true)]
    public void What_ferments_stands_where_it_is_until_somebody_packages_it(GyleStatus status, int today, bool isFree)
    {
        VesselHold hold = new(Guid.NewGuid(), "Mild", status, Stay("Left", 0, 10));
        IReadOnlyList<VesselClash> clashes = VesselClash.Of([Stay("Left", today, today + 10)], [hold], First.AddDays(today));
        Assert.Equal(isFree, clashes.Count == 0);
    }

    [Fact]
    public void A_clash_names_vessel_gyle_and_days()
    {
        VesselHold hold = new(Guid.NewGuid(), "Mild", GyleStatus.Fermenting, Stay("Left", 0, 10)), keg = hold with { Stay = new(VesselKind.Keg, "Robin", First.AddDays(10), null) };
        VesselClash clash = Assert.Single(VesselClash.Of([Stay("Left", 3, 13)], [hold, keg], First));
        Assert.Equal("Left holds Mild from 1 December 2026 to 11 December 2026, and is wanted from 4 December 2026 to 14 December 2026", clash.Sentence);
        clash = Assert.Single(VesselClash.Of([new(VesselKind.Keg, "Robin", First.AddDays(40), null)], [hold, keg], First));
        Assert.StartsWith("Robin holds Mild from 11 December 2026 until it is empty", clash.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_keg_is_held_from_packaging_and_where_no_day_of_it_is_known_from_the_cast()
    {
        VesselPlan plan = new("Left", "Robin");
        Assert.Equal([new(VesselKind.Fermenter, "Left", First, First.AddDays(10)), new(VesselKind.Keg, "Robin", First.AddDays(10), null)], plan.Stays(First, First.AddDays(10)));
        Assert.Equal([new(VesselKind.Fermenter, "Left", First, null), new(VesselKind.Keg, "Robin", First, null)], plan.Stays(First, null));
    }

    [Fact]
    public void Names_are_the_kits_whatever_their_case_and_what_is_none_is_said()
    {
        Kit kit = BuiltInKit.LanternShed with
        {
            Name = "Mine",
            Vessels = [new("Left", VesselKind.Fermenter, null), new("Right", VesselKind.Fermenter, null), new("Robin", VesselKind.Keg, null)],
        };
        List<Finding> findings = [];
        Recipe keg = BlankRecipe.For(kit, "Mild") with { Package = BlankRecipe.For(kit, "Mild").Package with { In = "small keg" } };
        Assert.Equal(new VesselPlan("Left", "Robin"), new VesselPlan(" left ", "ROBIN").In(kit, keg, findings));
        Assert.Empty(findings);

        new VesselPlan("Robin", null).In(kit, keg, findings);
        new VesselPlan("Left", "Robin").In(kit, keg with { Package = keg.Package with { In = "bottle" } }, findings);
        new VesselPlan("Left", null).In(kit with { Vessels = [] }, keg, findings);
        Assert.Equal(
            [
                "fermenter: \"Robin\" is no fermenter of the kit Mine; it has Left, Right",
                "keg: \"Robin\"; the recipe is packaged in bottle, so that no keg is filled",
                "fermenter: \"Left\" is no fermenter of the kit Mine; it names none: add them to the kit",
            ],
            findings.Select(finding => $"{finding.Where}: {finding.Message}"));
    }

    private static VesselStay Stay(string vessel, int from, int? until) => new(VesselKind.Fermenter, vessel, First.AddDays(from), until is { } end ? First.AddDays(end) : null);
}
