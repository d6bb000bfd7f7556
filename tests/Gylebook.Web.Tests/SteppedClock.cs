namespace Gylebook.Web.Tests;

/// <summary>A clock that stands, and rings its timers when it is moved.</summary>
public sealed class SteppedClock : TimeProvider
{
    private readonly List<Ring> _rings = [];
    private DateTimeOffset _now = new(2026, 3, 14, 9, 30, 0, TimeSpan.Zero);

    /// <inheritdoc/>
    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => _now;

    /// <inheritdoc/>
    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
    {
        Ring ring = new(this, () => callback(state));
        ring.Change(dueTime, period);
        return ring;
    }

    /// <summary>Moves the clock on.</summary>
    public void Step(TimeSpan by)
    {
        _now += by;
        Ring[] due;
        lock (_rings)
        {
            due = [.. _rings.Where(ring => ring.Due <= _now)];
            _rings.RemoveAll(due.Contains);
        }

        foreach (Ring ring in due)
        {
            ring.Call();
        }
    }

    private sealed class Ring(SteppedClock clock, Action call) : ITimer
    {
        public Action Call { get; } = call;

        public DateTimeOffset Due { get; private set; }

        public bool Change(TimeSpan dueTime, TimeSpan period)
        {
            lock (clock._rings)
            {
                clock._rings.Remove(this);
                if (dueTime >= TimeSpan.Zero)
                {
                    Due = clock._now + dueTime;
                    clock._rings.Add(this);
                }
            }

            return true;
        }

        public void Dispose()
        {
            lock (clock._rings)
            {
                clock._rings.Remove(this);
            }
        }

        public ValueTask DisposeAsync()
        {
            Dispose();
            return ValueTask.CompletedTask;
        }
    }
}
