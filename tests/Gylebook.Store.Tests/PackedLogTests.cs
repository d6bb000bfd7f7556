using Gylebook.Store.Sqlite;

namespace Gylebook.Store.Tests;

/// <summary>The log is small, gives back every text, and says which it cannot give back.</summary>
public sealed class PackedLogTests : IAsyncLifetime
{
    private const int Edits = 40;

    private readonly Bench _bench = new();
    private Book _book = null!;
    private Guid _recipe;

    public async ValueTask InitializeAsync()
    {
        _book = await _bench.OpenAsync();
        _recipe = await _book.Recipes.CreateAsync(Text(0), cancellation: Bench.Cancellation);
        for (int i = 1; i <= Edits; i++)
        {
            await SaveAsync(i, Text(i));
        }
    }

    public async ValueTask DisposeAsync()
    {
        await _book.DisposeAsync();
        _bench.Dispose();
    }

    [Fact]
    public async Task Every_text_comes_back_as_it_was_typed()
    {
        string[] odd = [Bench.Recipe("Ångström 🍺", "\\u0000 \\n ß"), Bench.Recipe("x"), Bench.Recipe("Long", new string('ø', 70_000))];
        foreach (string text in odd)
        {
            await SaveAsync((await _book.Drafts.FindAsync(_recipe, Bench.Cancellation))!.Revision, text);
        }

        List<DraftEdit> log = await LogAsync();

        string[] typed = [.. Enumerable.Range(0, Edits + 1).Select(Text), .. odd];
        Assert.Equal(typed.Zip(typed.Skip(1)).Reverse(), log.Select(edit => (edit.Before, edit.After)));
    }

    [Fact]
    public void Most_texts_are_differences_and_no_whole_one_carries_too_many()
    {
        long whole = (long)_bench.Sql("SELECT count(*) FROM edits WHERE base_id IS NULL")!;
        long most = (long)_bench.Sql("SELECT max(n) FROM (SELECT count(*) n FROM edits WHERE base_id IS NOT NULL GROUP BY base_id)")!;

        Assert.Equal((3L, 15L), (whole, most));
        Assert.True((long)_bench.Sql("SELECT sum(length(after) + length(before)) FROM edits")! < Edits * Text(0).Length / 8);
    }

    [Fact]
    public async Task Every_flipped_byte_of_a_difference_is_noticed_and_takes_nothing_with_it()
    {
        long id = (long)_bench.Sql("SELECT min(id) + 20 FROM edits")!;
        foreach (string column in (string[])["after", "before"])
        {
            await FlipEachAsync(id, column, log => Assert.Equal(id, Assert.Single(log, edit => edit.IsDamaged).Id));
        }
    }

    [Fact]
    public async Task Every_flipped_byte_of_a_whole_text_is_noticed_with_those_that_stand_on_it()
    {
        long id = (long)_bench.Sql("SELECT min(id) FROM edits")!;
        await FlipEachAsync(id, "after", log =>
        {
            Assert.Equal(16, log.Count(edit => edit.IsDamaged));
            Assert.All(log.Where(edit => !edit.IsDamaged), edit => Assert.StartsWith("{", edit.After, StringComparison.Ordinal));
        });
    }

    [Fact]
    public async Task On_a_damaged_whole_text_nothing_more_is_built()
    {
        _bench.Sql("DROP TRIGGER edits_refuse_update; UPDATE edits SET label = 'x' WHERE id = (SELECT max(id) FROM edits WHERE base_id IS NULL)");

        await SaveAsync(Edits + 1, Text(99));

        DraftEdit last = (await LogAsync())[0];
        Assert.Equal((Text(Edits), Text(99), false), (last.Before, last.After, last.IsDamaged));
        Assert.Equal(BookTrouble.Damaged, (await Assert.ThrowsAsync<BookUnavailableException>(async () =>
        {
            await _book.Drafts.UndoAsync(_recipe, Edits + 2, "tab", Bench.Cancellation);
            await _book.Drafts.UndoAsync(_recipe, Edits + 3, "tab", Bench.Cancellation);
        })).Trouble);
    }

    private async Task FlipEachAsync(long id, string column, Action<List<DraftEdit>> check)
    {
        _bench.Sql("DROP TRIGGER IF EXISTS edits_refuse_update");
        byte[] good = Convert.FromHexString((string)_bench.Sql($"SELECT hex({column}) FROM edits WHERE id = {id}")!);
        for (int at = 0; at < good.Length; at++)
        {
            byte[] bad = [.. good];
            bad[at] ^= (byte)(1 << (at % 8));
            Put(id, column, bad);

            check(await LogAsync());
            if (at % 10 == 0)
            {
                Assert.StartsWith("An edit of the recipe \"Typed, step", Assert.Single(BookCheck.Damage(_bench.File)).What, StringComparison.Ordinal);
            }
        }

        Put(id, column, good);
        Assert.DoesNotContain(await LogAsync(), edit => edit.IsDamaged);
    }

    private void Put(long id, string column, byte[] bytes) => _bench.Sql($"UPDATE edits SET {column} = X'{Convert.ToHexString(bytes)}' WHERE id = {id}");

    private static string Text(int step) =>
        Bench.Recipe("Typed", $"{string.Join(", ", Enumerable.Range(0, 60).Select(line => $"line {line * line} of the notes"))}, step {step}");

    private Task<List<DraftEdit>> LogAsync() => _book.Drafts.HistoryAsync(_recipe, cancellation: Bench.Cancellation);

    private Task<DraftSave> SaveAsync(long seen, string text) => _book.Drafts.SaveAsync(_recipe, seen, text, $"step {seen}", "tab", Bench.Cancellation);
}
