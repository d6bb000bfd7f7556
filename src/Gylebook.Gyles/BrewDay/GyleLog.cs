namespace Gylebook.Gyles.BrewDay;

/// <summary>Where a brew day stands: the plan's steps, and what the log says of them.</summary>
/// <remarks>The log is only ever added to. An entry counts unless a later one that counts takes it back; so an undoing can be undone.</remarks>
public sealed class GyleLog
{
    private readonly HashSet<Guid> _undone;
    private readonly List<BrewAction> _actions;

    /// <summary>A log read against a plan.</summary>
    /// <param name="planned">The plan's steps.</param>
    /// <param name="actions">All that was done, in the order in which it was done.</param>
    /// <param name="readings">All that was read, in the order in which it was read.</param>
    public GyleLog(IReadOnlyList<BrewStep> planned, IReadOnlyList<BrewAction> actions, IReadOnlyList<GyleReading> readings)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(actions);
        ArgumentNullException.ThrowIfNull(readings);
        _undone = TakenBack(actions);
        _actions = [.. actions.Where(Counts)];
        Readings = [.. readings.Where(reading => reading.EntryId is not { } id || !_undone.Contains(id))];
        Steps = [.. WithAdded(planned).Select(Now)];
        Timers = [.. Running()];
    }

    /// <summary>All steps, those that were added among them, as they stand.</summary>
    public IReadOnlyList<StepNow> Steps { get; }

    /// <summary>The first step that is open; null once all is done.</summary>
    public StepNow? Current => Steps.FirstOrDefault(step => step.State == StepState.Open);

    /// <summary>Timers that nobody has stopped or heard, the next to end first.</summary>
    public IReadOnlyList<RunningTimer> Timers { get; }

    /// <summary>When yeast went in: the pitch is done, or all that goes in there is ticked off; null while it was not.</summary>
    public DateTimeOffset? Pitched => Steps.FirstOrDefault(step => step.Step.Key == BrewSteps.PitchKey) switch
    {
        { State: StepState.Done, At: { } done } => done,
        { Step.Items: { Count: > 0 } items } pitch when items.All(item => pitch.Ticked.ContainsKey(item.Key)) =>
            _actions.FindLast(action => action is { Kind: ActionKind.Ticked, Step: BrewSteps.PitchKey })!.At,
        _ => null,
    };

    /// <summary>Readings that count.</summary>
    public IReadOnlyList<GyleReading> Readings { get; }

    /// <summary>Actions that count, in the order in which they were done.</summary>
    public IReadOnlyList<BrewAction> Actions => _actions;

    /// <summary>Readings that hold for a portion: its own, and those of the whole.</summary>
    /// <param name="portion">Which; null for all of the gyle.</param>
    public IEnumerable<GyleReading> ReadingsOf(string? portion) => Readings.Where(reading => portion is null || reading.Portion is null || reading.Portion == portion);

    /// <summary>Actions that hold for a portion: its own, and those on the whole.</summary>
    /// <param name="portion">Which; null for all of the gyle.</param>
    public IEnumerable<BrewAction> ActionsOf(string? portion) => _actions.Where(action => portion is null || action.Portion is null || action.Portion == portion);

    /// <summary>Whether an entry was taken back.</summary>
    public bool IsUndone(Guid? entry) => entry is { } id && _undone.Contains(id);

    private bool Counts(BrewAction action) => !IsUndone(action.EntryId);

    /// <summary>The entries that others take back. From the last to the first: one that counts takes another back.</summary>
    public static HashSet<Guid> TakenBack(IReadOnlyList<BrewAction> actions)
    {
        ArgumentNullException.ThrowIfNull(actions);
        HashSet<Guid> undone = [];
        foreach (BrewAction action in actions.Reverse())
        {
            if (action is { Kind: ActionKind.Undone, Undoes: { } taken } && !(action.EntryId is { } id && undone.Contains(id)))
            {
                undone.Add(taken);
            }
        }

        return undone;
    }

    /// <summary>A step that was added stands behind the one it names, later ones behind earlier ones.</summary>
    private IEnumerable<BrewStep> WithAdded(IReadOnlyList<BrewStep> planned)
    {
        ILookup<string?, BrewAction> added = _actions.Where(action => action.Kind == ActionKind.Added).ToLookup(action => planned.Any(step => step.Key == action.Step) ? action.Step : null);
        foreach (BrewStep step in planned)
        {
            yield return step;
            foreach (BrewAction own in added[step.Key])
            {
                yield return Own(own, step.Stage);
            }
        }

        foreach (BrewAction own in added[null])
        {
            yield return Own(own, "");
        }
    }

    private static BrewStep Own(BrewAction added, string stage) => new() { Key = KeyOf(added), Stage = stage, Title = "Added", Say = added.What };

    /// <summary>What the log calls an added step by.</summary>
    public static string KeyOf(BrewAction added)
    {
        ArgumentNullException.ThrowIfNull(added);
        return $"own-{added.EntryId:N}";
    }

    private StepNow Now(BrewStep step)
    {
        List<BrewAction> own = _actions.FindAll(action => action.Step == step.Key);
        BrewAction? last = own.FindLast(action => action.Kind is ActionKind.Done or ActionKind.Skipped or ActionKind.Reopened);
        StepState state = last?.Kind switch { ActionKind.Done => StepState.Done, ActionKind.Skipped => StepState.Skipped, _ => StepState.Open };
        return new StepNow(step, state)
        {
            At = last?.At,
            Why = last is { Kind: ActionKind.Skipped, What: { Length: > 0 } why } ? why : null,
            Ticked = own.Where(action => action is { Kind: ActionKind.Ticked, Item: not null }).GroupBy(action => action.Item!).ToDictionary(same => same.Key, same => same.Last().EntryId ?? default),
        };
    }

    /// <summary>A timer ends with its step.</summary>
    private IEnumerable<RunningTimer> Running() => _actions
        .Where(action => action.Kind is ActionKind.Timed or ActionKind.Heard or ActionKind.Done or ActionKind.Skipped && action.Step is not null)
        .GroupBy(action => action.Step!)
        .Select(same => same.Last())
        .Where(last => last is { Kind: ActionKind.Timed, Until: not null })
        .Select(last => new RunningTimer(last.Step!, Steps.FirstOrDefault(step => step.Step.Key == last.Step)?.Step.Title ?? last.What, last.Until!.Value))
        .OrderBy(timer => timer.Until);
}

/// <summary>A step as it stands.</summary>
/// <param name="Step">Which.</param>
/// <param name="State">How far.</param>
public sealed record StepNow(BrewStep Step, StepState State)
{
    /// <summary>When it came to that; null while it was never touched.</summary>
    public DateTimeOffset? At { get; init; }

    /// <summary>Why it was left out; null when nobody said.</summary>
    public string? Why { get; init; }

    /// <summary>What of it is ticked off, by key, with the entry that says so.</summary>
    public IReadOnlyDictionary<string, Guid> Ticked { get; init; } = new Dictionary<string, Guid>();
}

/// <summary>How far a step is.</summary>
public enum StepState
{
    /// <summary>Not done yet.</summary>
    Open,

    /// <summary>Done.</summary>
    Done,

    /// <summary>Left out.</summary>
    Skipped,
}

/// <summary>A timer that runs, or has run out and was not heard.</summary>
/// <param name="Step">Key of its step.</param>
/// <param name="Title">What it is for.</param>
/// <param name="Until">When it ends: a moment, not a number of seconds, so that it is right after any sleep.</param>
public sealed record RunningTimer(string Step, string Title, DateTimeOffset Until);
