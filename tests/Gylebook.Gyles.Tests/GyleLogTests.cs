using Gylebook.Gyles.BrewDay;

namespace Gylebook.Gyles.Tests;

/// <summary>The log folded: what counts, what is taken back, which clock runs.</summary>
public sealed class GyleLogTests
{
    private static readonly DateTimeOffset Ten = new(2026, 11, 30, 10, 0, 0, TimeSpan.Zero);

    private static readonly BrewStep[] Planned =
    [
        new() { Key = "heat", Stage = "strike", Title = "Heat", Say = "Heat it." },
        new() { Key = "strike", Stage = "mash", Title = "Strike", Say = "Stir it in.", Items = [new("line-1", "pale ale malt", "3.6 kg") { Kilograms = 3.6 }] },
        new() { Key = "rest-1", Stage = "mash", Title = "Rest", Say = "Rest.", Minutes = 60 },
    ];

    private readonly List<BrewAction> _actions = [];

    [Fact]
    public void A_gyle_that_nobody_touched_begins_with_its_first_step()
    {
        GyleLog log = Log();
        Assert.Equal("heat", log.Current!.Step.Key);
        Assert.All(log.Steps, step => Assert.Equal(StepState.Open, step.State));
        Assert.Empty(log.Timers);
    }

    [Fact]
    public void Done_and_left_out_steps_are_passed_over_and_a_step_can_be_taken_up_again()
    {
        Tap(ActionKind.Done, "heat");
        Tap(ActionKind.Skipped, "strike", what: "no malt");
        Assert.Equal("rest-1", Log().Current!.Step.Key);
        Assert.Equal("no malt", Log().Steps[1].Why);
        Tap(ActionKind.Reopened, "heat");
        Assert.Equal("heat", Log().Current!.Step.Key);
    }

    [Fact]
    public void What_is_taken_back_does_not_count_and_taking_back_can_be_taken_back()
    {
        Guid tick = Tap(ActionKind.Ticked, "strike", item: "line-1");
        Assert.True(Log().Steps[1].Ticked.ContainsKey("line-1"));
        Guid back = Tap(ActionKind.Undone, undoes: tick);
        Assert.False(Log().Steps[1].Ticked.ContainsKey("line-1"));
        Assert.True(Log().IsUndone(tick));
        Tap(ActionKind.Undone, undoes: back);
        Assert.True(Log().Steps[1].Ticked.ContainsKey("line-1"));
    }

    [Fact]
    public void A_reading_that_is_taken_back_is_none()
    {
        GyleReading reading = new() { At = Ten, EntryId = Guid.CreateVersion7(), Ph = 5.4 };
        Assert.Single(new GyleLog(Planned, _actions, [reading]).Readings);
        Tap(ActionKind.Undone, undoes: reading.EntryId);
        Assert.Empty(new GyleLog(Planned, _actions, [reading]).Readings);
    }

    [Fact]
    public void A_clock_runs_until_it_is_heard_or_its_step_is_done()
    {
        Tap(ActionKind.Timed, "rest-1", until: Ten.AddHours(1));
        RunningTimer timer = Assert.Single(Log().Timers);
        Assert.Equal(("rest-1", "Rest", Ten.AddHours(1)), (timer.Step, timer.Title, timer.Until));
        Guid heard = Tap(ActionKind.Heard, "rest-1");
        Assert.Empty(Log().Timers);
        Tap(ActionKind.Undone, undoes: heard);
        Assert.Single(Log().Timers);
        Tap(ActionKind.Done, "rest-1");
        Assert.Empty(Log().Timers);
    }

    [Fact]
    public void An_added_step_stands_behind_the_one_it_names_and_can_be_done()
    {
        Guid first = Tap(ActionKind.Added, "heat", what: "add 2.0 L of boiled water");
        Tap(ActionKind.Added, "heat", what: "stir");
        Assert.Equal(["heat", $"own-{first:N}", Log().Steps[2].Step.Key, "strike", "rest-1"], Log().Steps.Select(step => step.Step.Key));
        Assert.Equal(["add 2.0 L of boiled water", "stir"], Log().Steps.Skip(1).Take(2).Select(step => step.Step.Say));
        Tap(ActionKind.Done, "heat");
        Tap(ActionKind.Done, $"own-{first:N}");
        Assert.Equal("stir", Log().Current!.Step.Say);
    }

    [Fact]
    public void An_added_step_whose_step_is_not_there_stands_at_the_end()
    {
        Tap(ActionKind.Added, "no such step", what: "call a friend");
        Assert.Equal("call a friend", Log().Steps[^1].Step.Say);
    }

    private GyleLog Log() => new(Planned, _actions, []);

    private Guid Tap(ActionKind kind, string? step = null, string? item = null, string what = "", DateTimeOffset? until = null, Guid? undoes = null)
    {
        BrewAction action = new() { At = Ten.AddMinutes(_actions.Count), EntryId = Guid.CreateVersion7(), Kind = kind, Step = step, Item = item, What = what, Until = until, Undoes = undoes };
        _actions.Add(action);
        return action.EntryId!.Value;
    }
}
