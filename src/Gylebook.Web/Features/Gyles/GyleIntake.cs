using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;

namespace Gylebook.Web.Features.Gyles;

/// <summary>What became of entries that a browser sent.</summary>
/// <param name="Taken">Those that are in the book now, or were before.</param>
/// <param name="Refused">Those that cannot be taken, and why.</param>
/// <param name="Log">The whole log as it is now.</param>
public sealed record IntakeAnswer(IReadOnlyList<Guid> Taken, IReadOnlyList<RefusedEntry> Refused, IReadOnlyList<LogEntry> Log);

/// <summary>An entry that cannot be taken.</summary>
/// <param name="Id">Which.</param>
/// <param name="Why">Why.</param>
public sealed record RefusedEntry(Guid Id, string Why);

/// <summary>An entry of the log as a browser reads it; what is taken back is left out.</summary>
/// <param name="Id">Its number.</param>
/// <param name="At">When it was tapped.</param>
/// <param name="Kind">A kind of action, or <c>read</c>.</param>
/// <param name="Step">Key of the step; of a reading, where it was read.</param>
/// <param name="Item">Key of what was ticked off.</param>
/// <param name="What">Words.</param>
/// <param name="Until">When a timer ends.</param>
/// <param name="Undoes">The entry it takes back.</param>
public sealed record LogEntry(Guid Id, DateTimeOffset At, string Kind, string? Step, string? Item, string What, DateTimeOffset? Until, Guid? Undoes);

/// <summary>Takes entries from browsers into the log: in order, and each once, however often it comes.</summary>
/// <param name="desk">The gyles.</param>
public sealed class GyleIntake(GyleDesk desk)
{
    /// <summary>So many entries at a time; a browser that holds more sends them in parts.</summary>
    public const int Most = 500;

    /// <summary>Takes them.</summary>
    public async Task<IntakeAnswer> TakeAsync(OpenGyle gyle, IReadOnlyList<SentEntry> sent, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        ArgumentNullException.ThrowIfNull(sent);
        List<Guid> taken = [];
        List<RefusedEntry> refused = [];
        foreach (SentEntry entry in sent)
        {
            if (entry.Meant(gyle, out GyleReading? reading, out BrewAction? action) is { } why)
            {
                refused.Add(new(entry.Id, why));
                continue;
            }

            // One after the other, each in a transaction of its own: what is said to be taken is on disk, and in this order.
            _ = action is not null ? await desk.DoAsync(gyle, [action], cancellation) : await desk.KeepAsync(gyle, [reading!], cancellation);
            taken.Add(entry.Id);
        }

        return new IntakeAnswer(taken, refused, await desk.OpenAsync(gyle.Line.Id, cancellation) is { } now ? LogOf(now.Log) : []);
    }

    /// <summary>The log as a browser reads it.</summary>
    public static IReadOnlyList<LogEntry> LogOf(GyleLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        IEnumerable<LogEntry> actions = log.Actions.Where(action => action.EntryId is not null)
            .Select(action => new LogEntry(action.EntryId!.Value, action.At, action.Kind.ToString().ToLowerInvariant(), action.Step, action.Item, action.What, action.Until, action.Undoes));
        IEnumerable<LogEntry> readings = log.Readings.Where(reading => reading.EntryId is not null)
            .Select(reading => new LogEntry(reading.EntryId!.Value, reading.At, "read", reading.Stage, null, reading.Typed ?? "", null, null));
        return [.. actions.Concat(readings).OrderBy(entry => entry.At)];
    }
}
