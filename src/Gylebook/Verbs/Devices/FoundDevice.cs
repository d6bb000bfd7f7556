using Gylebook.Store;
using Gylebook.Terminal;

namespace Gylebook.Verbs.Devices;

/// <summary>A device by the name somebody typed.</summary>
internal static class FoundDevice
{
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
