using Gylebook.Store;
using Gylebook.Terminal;

namespace Gylebook.Verbs.Devices;

/// <summary>A device, or a gyle it may be in, by the name somebody typed.</summary>
internal static class FoundGyle
{
    /// <summary>The first portion of the one gyle of that name; null, and said so, where there is none, or more.</summary>
    public static async Task<(long Portion, string Name)?> FindAsync(Book book, string called, CancellationToken cancellation)
    {
        IReadOnlyList<GyleLine> found = await book.Gyles.FindAsync(called, cancellation);
        if (found is [{ Portions: [var portion, ..] } gyle])
        {
            return (portion.Id, gyle.Name);
        }

        Console.Error.WriteLine(CommandLine.OneLine(found switch
        {
            [] => $"There is no gyle \"{called}\" in the book; gylebook gyle list tells those there are.",
            [var planned] => $"\"{planned.Name}\" has not started: there is nothing yet for a device to be in.",
            _ => $"\"{called}\" may be {string.Join(" or ", found.Select(gyle => $"\"{gyle.Name}\""))}: say which.",
        }));
        return null;
    }

    /// <summary>The one device of that name; null, and said so, where there is none, or more.</summary>
    public static async Task<Device?> DeviceAsync(Book book, string called, CancellationToken cancellation)
    {
        List<Device> all = (await book.Devices.ListAsync(cancellation)).FindAll(device => device.Kind != DeviceKind.Table);
        List<Device> found = all.FindAll(device => NameSearch.Fold(device.Name) == NameSearch.Fold(called.Trim()));
        if (found is [var one])
        {
            return one;
        }

        Console.Error.WriteLine(CommandLine.OneLine(
            found.Count > 1 ? $"{found.Count.ToString(System.Globalization.CultureInfo.InvariantCulture)} devices are called \"{called}\"; give them names of their own on the page of devices."
            : all.Count == 0 ? $"There is no device \"{called}\" in the book; gylebook device add makes one."
            : $"There is no device \"{called}\" in the book; there are {string.Join(", ", all.Select(device => $"\"{device.Name}\""))}."));
        return null;
    }
}
