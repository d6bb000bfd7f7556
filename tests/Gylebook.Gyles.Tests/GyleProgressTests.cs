using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Portions;

namespace Gylebook.Gyles.Tests;

/// <summary>How far a gyle is by its log: the pitch is what counts.</summary>
public sealed class GyleProgressTests
{
    private static readonly DateTimeOffset Start = new(2026, 12, 1, 9, 0, 0, TimeSpan.Zero);

    private static readonly BrewStep[] Steps =
    [
        new() { Key = "cast", Stage = "cast", Title = "Cast", Say = "" },
        new() { Key = BrewSteps.PitchKey, Stage = "ferment", Title = "Pitch", Say = "", Items = [new("line-6", "English ale", "11 g"), new("line-7", "Nutrient", "2 g")] },
    ];

    [Fact]
    public void It_ferments_once_the_pitch_is_done_and_with_that_undone_is_on_brew_day_again()
    {
        BrewAction done = Do(1, ActionKind.Done, BrewSteps.PitchKey);
        Assert.Equal((GyleStatus.Brewing, null), After(Do(0, ActionKind.Done, "cast")));
        Assert.Equal((GyleStatus.Fermenting, done.At), After(done));
        BrewAction undone = Do(2, ActionKind.Undone) with { Undoes = done.EntryId };
        Assert.Equal((GyleStatus.Brewing, null), After(done, undone));
        Assert.Equal((GyleStatus.Fermenting, done.At), After(done, undone, Do(3, ActionKind.Undone) with { Undoes = undone.EntryId }));
        Assert.Equal((GyleStatus.Brewing, null), After(done, Do(4, ActionKind.Reopened, BrewSteps.PitchKey)));
        Assert.Equal((GyleStatus.Brewing, null), After(Do(1, ActionKind.Skipped, BrewSteps.PitchKey)));
    }

    [Fact]
    public void All_that_is_pitched_ticked_off_is_a_pitch_too()
    {
        BrewAction nutrient = Do(1, ActionKind.Ticked, BrewSteps.PitchKey) with { Item = "line-7" }, yeast = Do(2, ActionKind.Ticked, BrewSteps.PitchKey) with { Item = "line-6" };
        Assert.Equal((GyleStatus.Brewing, null), After(nutrient));
        Assert.Equal((GyleStatus.Fermenting, yeast.At), After(nutrient, yeast));
        Assert.Equal((GyleStatus.Brewing, null), After(nutrient, yeast, Do(3, ActionKind.Undone) with { Undoes = nutrient.EntryId }));
    }

    [Theory]
    [InlineData(GyleStatus.Planned)]
    [InlineData(GyleStatus.Abandoned)]
    public void What_comes_before_and_after_is_not_moved_by_it(GyleStatus status)
    {
        Assert.Equal(status, GyleProgress.Of(status, new GyleLog(Steps, [], []), Division.None));
        Assert.Equal(status, GyleProgress.Of(status, new GyleLog(Steps, [Do(1, ActionKind.Done, BrewSteps.PitchKey)], []), Division.None));
    }

    [Fact]
    public void Filled_it_is_packaged_and_emptied_finished_and_both_can_be_taken_back()
    {
        BrewAction pitched = Do(1, ActionKind.Done, BrewSteps.PitchKey), filled = Do(2, ActionKind.Packaged), poured = Do(3, ActionKind.Poured), emptied = poured with { EntryId = Guid.NewGuid(), Item = GyleProgress.Emptied };
        Assert.Equal(GyleStatus.Packaged, After(pitched, filled, poured).Status);
        Assert.Equal(GyleStatus.Finished, After(pitched, filled, poured, emptied).Status);
        Assert.Equal(GyleStatus.Packaged, After(pitched, filled, emptied, Do(4, ActionKind.Undone) with { Undoes = emptied.EntryId }).Status);
        Assert.Equal(GyleStatus.Fermenting, After(pitched, filled, Do(4, ActionKind.Undone) with { Undoes = filled.EntryId }).Status);
    }

    [Fact]
    public void A_divided_one_is_packaged_once_each_portion_is_and_finished_once_each_is_emptied()
    {
        BrewAction pitched = Do(1, ActionKind.Done, BrewSteps.PitchKey), divided = Do(2, ActionKind.Divided) with { Detail = Division.Write([new("on fruit", 0.5), new("plain", 0.5)]) };
        BrewAction fruit = Do(3, ActionKind.Packaged) with { Portion = "on fruit" }, plain = Do(4, ActionKind.Packaged) with { Portion = "plain" };
        BrewAction fruitGone = Do(5, ActionKind.Poured) with { Portion = "on fruit", Item = GyleProgress.Emptied }, plainGone = fruitGone with { EntryId = Guid.NewGuid(), Portion = "plain" };
        Assert.Equal(GyleStatus.Fermenting, After(pitched, divided, fruit).Status);
        Assert.Equal(GyleStatus.Packaged, After(pitched, divided, fruit, plain, fruitGone).Status);
        Assert.Equal(GyleStatus.Finished, After(pitched, divided, fruit, plain, fruitGone, plainGone).Status);
    }

    private static (GyleStatus Status, DateTimeOffset? Pitched) After(params BrewAction[] actions)
    {
        GyleLog log = new(Steps, actions, []);
        return (GyleProgress.Of(GyleStatus.Fermenting, log, Division.ByHand(log)), log.Pitched);
    }

    private static BrewAction Do(int hours, ActionKind kind, string? step = null) => new()
    {
        At = Start.AddHours(hours),
        EntryId = Guid.NewGuid(),
        Kind = kind,
        Step = step,
        What = "",
    };
}
