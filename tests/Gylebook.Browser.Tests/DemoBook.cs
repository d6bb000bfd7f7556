namespace Gylebook.Browser.Tests;

/// <summary>A book with the whole demo in it, made once by the program itself and copied for each test that wants one.</summary>
internal static class DemoBook
{
    private static readonly Lazy<Task<byte[]>> Made = new(MakeAsync);

    /// <summary>A copy of it in a folder of its own.</summary>
    public static async Task<string> CopyAsync()
    {
        string copy = RunningGylebook.NewBook();
        await File.WriteAllBytesAsync(copy, await Made.Value);
        return copy;
    }

    /// <summary>Asked to stop at its first start, the program goes when all of the demo is in; a book that is closed is one file.</summary>
    private static async Task<byte[]> MakeAsync()
    {
        RunningGylebook first = await RunningGylebook.StartAsync(RunningGylebook.NewBook());
        (int exitCode, string errors) = await first.StopAsync();
        // In a clone that was never run the script says that it builds.
        Assert.True(exitCode == 0, errors);
        byte[] made = await File.ReadAllBytesAsync(first.Book);
        await first.DisposeAsync();
        return made;
    }
}
