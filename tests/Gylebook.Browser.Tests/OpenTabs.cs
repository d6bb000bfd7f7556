using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace Gylebook.Browser.Tests;

/// <summary>The tabs that are open at each Gylebook. When it goes they go too: left open they would knock at its door, and keep the machine busy for every test behind.</summary>
internal static class OpenTabs
{
    private static readonly ConcurrentDictionary<string, ConcurrentBag<IBrowserContext>> At = new();

    /// <summary>Remembers a tab.</summary>
    public static void Add(string url, IBrowserContext tab) => At.GetOrAdd(url, _ => []).Add(tab);

    /// <summary>Closes all that are open there.</summary>
    public static async Task CloseAsync(string url)
    {
        if (At.TryRemove(url, out ConcurrentBag<IBrowserContext>? tabs))
        {
            await Task.WhenAll(tabs.Select(tab => tab.CloseAsync()));
        }
    }
}
