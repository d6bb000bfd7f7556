using System.Diagnostics;
using System.Globalization;

namespace Gylebook.Store.Tests;

public sealed class CrashTests : IDisposable
{
    private readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    /// <remarks>
    /// A killed process loses its memory, not the system's cache: this proves that what is acknowledged has left the
    /// process whole. That it has reached the disk is the business of <c>synchronous=FULL</c>: see <see cref="ConnectionTests"/>.
    /// </remarks>
    [Theory]
    [InlineData(1)]
    [InlineData(40)]
    [InlineData(173)]
    public async Task Every_edit_that_was_acknowledged_before_a_kill_is_in_the_book(int killAfter)
    {
        Guid recipe;
        await using (Book book = await _bench.OpenAsync())
        {
            recipe = await book.Recipes.CreateAsync(Bench.Recipe("Revision 1"), cancellation: Bench.Cancellation);
        }

        List<long> acknowledged = await KillAsync(recipe, killAfter);

        Assert.True(acknowledged.Count >= killAfter);
        Assert.Equal(Enumerable.Range(2, acknowledged.Count).Select(revision => (long)revision), acknowledged);
        await using Book after = await _bench.OpenAsync();
        Draft draft = (await after.Drafts.FindAsync(recipe, Bench.Cancellation))!;
        List<DraftEdit> edits = await after.Drafts.HistoryAsync(recipe, int.MaxValue, Bench.Cancellation);
        Assert.All(acknowledged, revision => Assert.Contains(edits, edit => edit.Label == $"Edit {revision}"
            && edit.After.Contains($"\"Revision {revision}\"", StringComparison.Ordinal)));

        // Among many there are some that made one step with the edit before; none of the two is missing.
        Assert.True(killAfter < 40 || edits.GroupBy(edit => edit.ParentId).Any(step => step.Count() > 1));

        // One more may have been saved without the word getting out; draft and log agree all the same.
        Assert.InRange(draft.Revision, acknowledged[^1], acknowledged[^1] + 1);
        Assert.Equal((draft.Document, draft.UndoLabel), (edits[0].After, edits[0].Label));
        Assert.Equal("ok", _bench.Sql("PRAGMA integrity_check"));
    }

    /// <summary>Lets another process edit, kills it in the middle of its work, and says what it had acknowledged.</summary>
    private async Task<List<long>> KillAsync(Guid recipe, int after)
    {
        string program = Path.Combine(AppContext.BaseDirectory, "Gylebook.Store.Scribe.dll");
        var start = new ProcessStartInfo(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet") { RedirectStandardOutput = true };
        start.ArgumentList.Add(program);
        start.ArgumentList.Add(_bench.File);
        start.ArgumentList.Add(recipe.ToString());
        using Process scribe = Process.Start(start)!;
        var acknowledged = new List<long>();
        while (await scribe.StandardOutput.ReadLineAsync(Bench.Cancellation) is { } line)
        {
            acknowledged.Add(long.Parse(line, CultureInfo.InvariantCulture));
            if (acknowledged.Count == after)
            {
                // SIGKILL on Unix: no handler, no flush, no farewell. The pipe still gives what was said before.
                scribe.Kill();
            }
        }

        await scribe.WaitForExitAsync(Bench.Cancellation);
        Assert.NotEqual(0, scribe.ExitCode);
        return acknowledged;
    }
}
