using System.Globalization;
using Gylebook.Tests.Shared;

namespace Gylebook.Fuzz.Tests;

/// <summary>What is asked of a fuzz on the way: how many cases, of which seed, or one again.</summary>
/// <remarks><c>GYLEBOOK_FUZZ_CASES</c>, 1,000 when unsaid; <c>GYLEBOOK_FUZZ_SEED</c>, a word; <c>GYLEBOOK_FUZZ_FILE</c>, a saved case. See CONTRIBUTING.</remarks>
internal static class FuzzRun
{
    public const int UsualCases = 1000;
    private const int MostFailuresTold = 20;

    /// <summary>The cases asked for: drawn, or the one that was saved.</summary>
    /// <param name="draw">Draws one by seed and number.</param>
    /// <param name="ending">Of saved cases of this kind.</param>
    /// <param name="read">Reads a saved one.</param>
    public static IEnumerable<T> Cases<T>(Func<string, int, T> draw, string ending, Func<string, T> read)
    {
        string seed = Environment.GetEnvironmentVariable("GYLEBOOK_FUZZ_SEED") ?? "gyle";
        int cases = Environment.GetEnvironmentVariable("GYLEBOOK_FUZZ_CASES") is { } count ? int.Parse(count, CultureInfo.InvariantCulture) : UsualCases;
        return Environment.GetEnvironmentVariable("GYLEBOOK_FUZZ_FILE") is { } file
            ? file.EndsWith(ending, StringComparison.Ordinal) ? [read(RepositoryFile.PathOf(file))] : []
            : Enumerable.Range(0, cases).Select(number => draw(seed, number));
    }

    /// <summary>Runs all of them; fails with each kind of failure once, and where its case was saved.</summary>
    /// <returns>How many there were, and how many came to something.</returns>
    public static (int All, int Ran) Run<T>(IEnumerable<T> cases, Func<T, bool> journey, Func<T, string> save)
    {
        (int all, int ran) = (0, 0);
        SortedDictionary<string, string> failures = new(StringComparer.Ordinal);
        foreach (T one in cases)
        {
            all++;
            string? failure = Watchdog.Failure(() => journey(one), ref ran, TestContext.Current.CancellationToken);
            if (failure is not null && failures.Count < MostFailuresTold && failures.TryAdd(Watchdog.KindOf(failure), ""))
            {
                failures[Watchdog.KindOf(failure)] = $"{save(one)}\n{failure}";
            }
        }

        Assert.True(failures.Count == 0, $"Run one again with GYLEBOOK_FUZZ_FILE=<file>.\n\n{string.Join("\n\n", failures.Values)}");
        return (all, ran);
    }

    /// <summary>Where failing cases are kept.</summary>
    public static string Save(string name, byte[] bytes)
    {
        string path = Path.Combine(Directory.CreateDirectory(RepositoryFile.PathOf("artifacts/fuzz")).FullName, name);
        File.WriteAllBytes(path, bytes);
        return path;
    }

    /// <summary>The same number for the same text on every machine and in every run, which the framework's own hash is not: FNV-1a.</summary>
    public static int StableHash(string text) => unchecked((int)text.Aggregate(2166136261u, (hash, letter) => (hash ^ letter) * 16777619u));
}
