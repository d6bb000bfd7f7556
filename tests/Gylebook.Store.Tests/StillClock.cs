namespace Gylebook.Store.Tests;

/// <summary>A clock that stands where it is put.</summary>
internal sealed class StillClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 3, 14, 9, 30, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;
}
