using System.Globalization;
using Gylebook.Tests.Shared;

namespace Gylebook.Fuzz.Tests;

/// <summary>Whatever files say: findings, and never an exception, a number that is none, a litre below nought, a hang or a second answer.</summary>
/// <remarks>
/// <c>GYLEBOOK_FUZZ_CASES</c> says how many cases, 1,000 when unsaid; <c>GYLEBOOK_FUZZ_SEED</c> which, a word;
/// <c>GYLEBOOK_FUZZ_FILE</c> runs one saved case again. See CONTRIBUTING.
/// </remarks>
public sealed class FuzzTests(ITestOutputHelper output)
{
    private const int UsualCases = 1000;
    private const int MostFailuresTold = 20;

    /// <summary>No case takes a second of work; one that is not done after so much hangs. Work, not time: a busy machine hangs nothing.</summary>
    private static readonly TimeSpan Watchdog = TimeSpan.FromSeconds(30);

    /// <summary>One that waits for something does no work, and waits no longer than this.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(10);

    [Fact]
    public void Mutated_files_make_findings_and_nothing_else()
    {
        string seed = Environment.GetEnvironmentVariable("GYLEBOOK_FUZZ_SEED") ?? "gyle";
        int cases = Environment.GetEnvironmentVariable("GYLEBOOK_FUZZ_CASES") is { } count ? int.Parse(count, CultureInfo.InvariantCulture) : UsualCases;
        IEnumerable<FuzzCase> drawn = Environment.GetEnvironmentVariable("GYLEBOOK_FUZZ_FILE") is { } file
            ? [FuzzCase.Read(RepositoryFile.PathOf(file))]
            : Enumerable.Range(0, cases).Select(number => FuzzCase.Draw(seed, number));
        (int all, int ran) = (0, 0);
        SortedDictionary<string, string> failures = new(StringComparer.Ordinal);
        foreach (FuzzCase one in drawn)
        {
            all++;
            string? failure = Failure(one, ref ran);
            if (failure is not null && failures.Count < MostFailuresTold && failures.TryAdd(KindOf(failure), ""))
            {
                failures[KindOf(failure)] = $"{one.Save()}\n{failure}";
            }
        }

        output.WriteLine($"{all} cases, {ran} of them with a run.");
        Assert.True(failures.Count == 0, $"Run one again with GYLEBOOK_FUZZ_FILE=<file>.\n\n{string.Join("\n\n", failures.Values)}");
        // A fuzz that only ever meets refusals, or none, tests nothing.
        Assert.True(all < UsualCases || (ran > all / 10 && ran < all * 9 / 10), $"{ran} of {all} cases had a run");
    }

    private static string? Failure(FuzzCase one, ref int ran)
    {
        Task<bool> journey = Task.Run(() => Journey.Of(one), TestContext.Current.CancellationToken);
        try
        {
            TimeSpan before = Environment.CpuUsage.TotalTime;
            long began = Environment.TickCount64;
            while (!journey.Wait(TimeSpan.FromSeconds(1), TestContext.Current.CancellationToken))
            {
                if (Environment.CpuUsage.TotalTime - before > Watchdog || Environment.TickCount64 - began > Patience.TotalMilliseconds)
                {
                    return $"hangs: not done after {Watchdog.TotalSeconds} s of work";
                }
            }

            ran += journey.Result ? 1 : 0;
            return null;
        }
        catch (AggregateException failed)
        {
            return failed.InnerException!.ToString();
        }
    }

    /// <summary>Failures whose last words are alike, numbers aside, are one.</summary>
    private static string KindOf(string failure)
    {
        const int Words = 80;
        string message = failure.Split('\n')[0];
        return string.Concat(message[Math.Max(0, message.Length - Words)..].Where(letter => !char.IsAsciiDigit(letter)));
    }
}
