using Gylebook.Gyles.Cellar;
using Gylebook.Store;

namespace Gylebook.Web.Features.Gyles.Cellar;

/// <summary>What became of a table of readings.</summary>
/// <param name="Taken">How many are in the book now that were not.</param>
/// <param name="Known">How many were in it before.</param>
/// <param name="Refused">Lines that cannot be taken, and why.</param>
/// <param name="PassedOver">Columns that mean nothing here.</param>
/// <param name="Fault">Why nothing of it can be taken; null when something may.</param>
public sealed record TableReport(int Taken, int Known, IReadOnlyList<RefusedLine> Refused, IReadOnlyList<string> PassedOver, string? Fault)
{
    /// <summary>Lines that are told one by one.</summary>
    public const int MostTold = 20;

    /// <summary>It in a sentence.</summary>
    public string Sentence => Fault is not null ? $"Nothing was taken: {Fault}."
        : Invariant($"{Taken} {(Taken == 1 ? "reading" : "readings")} taken, {Known} known already, {Refused.Count} {(Refused.Count == 1 ? "line" : "lines")} refused.")
            + (PassedOver.Count > 0 ? $" Passed over: {string.Join(", ", PassedOver)}." : "");
}

/// <summary>Takes tables of readings into a gyle: as what a device of the file's name said.</summary>
public static class TableIntake
{
    /// <summary>Bytes of a table: more than two hundred thousand lines take.</summary>
    public const long MostBytes = 16 << 20;

    /// <summary>Takes one; a reading that came before, from a file of the same name, is passed over.</summary>
    /// <param name="book">The book.</param>
    /// <param name="portion">Into which portion.</param>
    /// <param name="name">What the table is called: its file's name.</param>
    /// <param name="text">All of it.</param>
    /// <param name="clock">The time, and the zone of times that name none.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public static async Task<TableReport> TakeAsync(Book book, long portion, string name, string text, TimeProvider clock, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(clock);
        var table = CsvReadings.Read(text, clock.GetUtcNow(), clock.LocalTimeZone);
        if (table.Fault is not null || table.Taken.Count == 0)
        {
            return new TableReport(0, 0, table.Refused, table.PassedOver, table.Fault);
        }

        long device = await book.Devices.TableAsync(name.Length <= BookDevices.LongestName ? name : name[..BookDevices.LongestName], portion, cancellation);
        int taken = (await book.Sensors.AppendAsync([new SensorBatch(device, table.Taken)], cancellation))[0];
        return new TableReport(taken, table.Taken.Count - taken, table.Refused, table.PassedOver, null);
    }
}
