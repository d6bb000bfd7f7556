using System.Text;
using Gylebook.Gyles;
using Gylebook.Gyles.Cellar;
using Gylebook.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace Gylebook.Store.Tests;

/// <summary>What a disk changes by itself is named; what we write ourselves never is.</summary>
public sealed class DamageTests : IDisposable
{
    private const int Flips = 120;

    private readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public async Task A_book_with_everything_in_it_is_sound()
    {
        await FillAsync();

        Assert.Empty(BookCheck.Damage(_bench.File));
    }

    [Fact]
    public async Task A_book_of_the_first_release_gets_its_checksums_when_it_is_brought_up_to_date()
    {
        File.Copy(Path.Combine(AppContext.BaseDirectory, "Books", "0.1.0.sqlite"), _bench.File);
        Assert.Equal(BookTrouble.Older, Assert.Throws<BookUnavailableException>(() => BookCheck.Damage(_bench.File)).Trouble);

        await using (await _bench.OpenAsync())
        {
        }

        Assert.Empty(BookCheck.Damage(_bench.File));
        Assert.NotEqual(0L, _bench.Sql("SELECT checksum FROM edits LIMIT 1"));
    }

    /// <remarks>What is harmful is said by SQL, not by our checksums: whatever reads otherwise than before, or not at all.</remarks>
    [Fact]
    public async Task Every_flipped_bit_that_changes_what_the_book_says_is_noticed()
    {
        await FillAsync();
        _bench.Sql("PRAGMA wal_checkpoint(TRUNCATE)");
        byte[] good = await File.ReadAllBytesAsync(_bench.File, Bench.Cancellation);
        string before = Everything(_bench.File)!;
        var chance = new Random(20261128);
        int harmful = 0;
        for (int i = 0; i < Flips; i++)
        {
            int at = chance.Next(good.Length);
            int bit = chance.Next(8);
            string file = await FlipAsync(good, at, bit);
            if (Everything(file) != before)
            {
                harmful++;
                Assert.True(IsNoticed(file), $"bit {bit} of byte {at} went unnoticed");
            }
        }

        Assert.True(harmful > Flips / 4, $"only {harmful} flips did harm");
    }

    [Fact]
    public async Task A_damaged_draft_is_named_with_the_newest_sound_text_of_the_log()
    {
        string text = Bench.Recipe("Hedgerow", "second " + new string('x', 3000));
        await using (Book book = await _bench.OpenAsync())
        {
            Guid recipe = await book.Recipes.CreateAsync(Bench.Recipe("Hedgerow", "first"), cancellation: Bench.Cancellation);
            await book.Drafts.SaveAsync(recipe, 1, text, "Notes", "tab", Bench.Cancellation);
        }

        byte[] packed = Convert.FromHexString((string)_bench.Sql("SELECT hex(after) FROM edits")!);
        List<DamagedPlace> named = [.. await FlipEachAsync(Encoding.UTF8.GetBytes("second xxx")), .. await FlipEachAsync(packed)];

        DamagedPlace draft = Assert.Single(named, place => place.What == "The draft of the recipe \"Hedgerow\"");
        Assert.Equal((text, "the edit \"Notes\""), (draft.Sound!.Document, draft.Sound.From));
        DamagedPlace edit = Assert.Single(named, place => place.What == "An edit of the recipe \"Hedgerow, Notes\"");
        Assert.Equal((text, "the draft"), (edit.Sound!.Document, edit.Sound.From));
        Assert.Contains("newest sound text is that of the edit \"Notes\"", draft.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_column_that_lost_its_name_makes_its_rows_damaged_and_hides_no_others()
    {
        await using (Book book = await _bench.OpenAsync())
        {
            await book.Kits.CreateAsync(Bench.Kit("Shed"), cancellation: Bench.Cancellation);
            await book.Settings.SetAsync("units", "metric", Bench.Cancellation);
        }

        _bench.Sql("UPDATE settings SET value = 'metrik'");
        _bench.Sql("ALTER TABLE kits RENAME COLUMN checksum TO chocksum");

        Assert.Equal(["The kit \"Shed\"", "The setting \"units\""], BookCheck.Damage(_bench.File).Select(place => place.What).Order());
    }

    [Fact]
    public async Task What_was_damaged_is_not_called_sound_by_the_next_save()
    {
        await using Book book = await _bench.OpenAsync();
        Guid kit = await book.Kits.CreateAsync(Bench.Kit("Shed"), cancellation: Bench.Cancellation);
        _bench.Sql("UPDATE kits SET document = replace(document, 'gylebook-kit/1', 'gylebook-kit/9')");

        await book.Kits.DeleteAsync(kit, Bench.Cancellation);
        Assert.Equal("The kit \"Shed\"", Assert.Single(BookCheck.Damage(_bench.File)).What);

        // A text written anew is sound again.
        await book.Kits.Drafts.SaveAsync(kit, 1, Bench.Kit("Barn"), "another text", "tab", Bench.Cancellation);
        Assert.Empty(BookCheck.Damage(_bench.File));
    }

    [Fact]
    public async Task A_damaged_book_is_backed_up_and_restored_only_knowingly()
    {
        await using Book book = await _bench.OpenAsync();
        await book.Kits.CreateAsync(Bench.Kit("Shed"), cancellation: Bench.Cancellation);
        _bench.Sql("UPDATE kits SET document = replace(document, 'gylebook-kit/1', 'gylebook-kit/9')");

        BookUnavailableException refusal = await Assert.ThrowsAsync<BookUnavailableException>(
            () => book.BackupAsync(_bench.At("copy.sqlite"), Bench.Cancellation));

        Assert.Equal(BookTrouble.Damaged, refusal.Trouble);
        Assert.Contains("The kit \"Shed\"", refusal.Message, StringComparison.Ordinal);
        Assert.False(File.Exists(_bench.At("copy.sqlite")));
        await book.BackupAsync(_bench.At("copy.sqlite"), evenDamaged: true, Bench.Cancellation);
        string other = _bench.At("other.sqlite");
        await Assert.ThrowsAsync<BookUnavailableException>(
            () => SqliteBackup.RestoreAsync(_bench.At("copy.sqlite"), other, _bench.Clock, cancellation: Bench.Cancellation));
        Assert.False(File.Exists(other));
        await SqliteBackup.RestoreAsync(_bench.At("copy.sqlite"), other, _bench.Clock, evenDamaged: true, cancellation: Bench.Cancellation);
        Assert.True(File.Exists(other));
    }

    [Fact]
    public async Task A_slow_sweep_finds_what_is_damaged_while_the_book_is_open()
    {
        await using Book book = await _bench.OpenAsync();
        await book.Settings.SetAsync("units", "metric", Bench.Cancellation);
        _bench.Sql("UPDATE settings SET value = 'metrik'");

        List<DamagedPlace> found = await book.SweepAsync(TimeSpan.FromMilliseconds(1), Bench.Cancellation).ToListAsync(Bench.Cancellation);

        Assert.Equal("The setting \"units\" is damaged.", Assert.Single(found).Sentence);
    }

    private async Task FillAsync()
    {
        await using Book book = await _bench.OpenAsync();
        for (int i = 0; i < 12; i++)
        {
            Guid recipe = await book.Recipes.CreateAsync(Bench.Recipe($"Recipe {i}", Noise(i, 2000)), cancellation: Bench.Cancellation);
            await book.Drafts.SaveAsync(recipe, 1, Bench.Recipe($"Recipe {i}", Noise(i, 3000)), "Notes", "tab", Bench.Cancellation);
            await book.Versions.KeepAsync(recipe, cancellation: Bench.Cancellation);
            await book.Waters.CreateForAsync(recipe, Bench.Water($"Water {i}"), cancellation: Bench.Cancellation);
        }

        await book.Kits.CreateAsync(Bench.Kit("Shed"), cancellation: Bench.Cancellation);
        await book.Foods.CreateAsync(Bench.Food("Dark honey", "honey"), cancellation: Bench.Cancellation);
        await book.Settings.SetAsync("units", "metric", Bench.Cancellation);
        (_, long portion) = await Bench.StartedAsync(book);
        await book.Readings.AddAsync(portion, [new GyleReading { At = _bench.Clock.Now, Ph = 5.4 }], Bench.Cancellation);
        await book.Readings.AddAsync(portion, [new Gyles.BrewAction { At = _bench.Clock.Now, What = "stirred" }], Bench.Cancellation);
        long device = await book.Devices.AddAsync("Float", DeviceKind.Floating, "hash", Bench.Cancellation);
        await book.Devices.MoveAsync(device, portion, cancellation: Bench.Cancellation);
        await book.Sensors.AppendAsync([new SensorBatch(device, [.. new MadeUpFloat { Seed = "damage", From = _bench.Clock.Now }.Readings(1200)])], Bench.Cancellation);
    }

    /// <summary>Letters that no packing makes much shorter.</summary>
    private static string Noise(int seed, int length) => new(new Random(seed).GetItems("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789".AsSpan(), length));

    private async Task<string> FlipAsync(byte[] good, int at, int bit)
    {
        byte[] bytes = [.. good];
        bytes[at] ^= (byte)(1 << bit);
        string file = _bench.At("flipped.sqlite");
        await File.WriteAllBytesAsync(file, bytes, Bench.Cancellation);
        return file;
    }

    /// <summary>Flips a bit in each place where those bytes stand in the file, one at a time, and gathers what is named.</summary>
    private async Task<List<DamagedPlace>> FlipEachAsync(byte[] wanted)
    {
        byte[] good = await File.ReadAllBytesAsync(_bench.File, Bench.Cancellation);
        List<DamagedPlace> named = [];
        for (int at = good.AsSpan().IndexOf(wanted); at >= 0;)
        {
            named.AddRange(BookCheck.Damage(await FlipAsync(good, at, 0)));
            int next = good.AsSpan(at + 1).IndexOf(wanted);
            at = next < 0 ? -1 : at + 1 + next;
        }

        return named;
    }

    private static bool IsNoticed(string file)
    {
        try
        {
            return BookCheck.Damage(file).Count > 0;
        }
        catch (BookUnavailableException)
        {
            return true;
        }
    }

    /// <summary>All rows of all tables as SQL literals, checksums left out; null when they cannot be read.</summary>
    private static string? Everything(string file)
    {
        try
        {
            using var connection = new SqliteConnection($"Data Source={file};Pooling=False");
            connection.Open();
            var text = new StringBuilder();
            foreach (string table in Column(connection, "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name"))
            {
                string columns = string.Join(" || ',' || ", Column(connection, $"SELECT 'quote(' || name || ')' FROM pragma_table_info('{table}') WHERE name <> 'checksum'"));
                text.AppendJoin('\n', Column(connection, $"SELECT {columns} FROM {table} NOT INDEXED")).Append('\n');
            }

            return text.ToString();
        }
        catch (Exception fault) when (fault is SqliteException or InvalidOperationException or ArgumentException)
        {
            return null;
        }
    }

    private static List<string> Column(SqliteConnection connection, string sql)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        using SqliteDataReader rows = command.ExecuteReader();
        List<string> column = [];
        while (rows.Read())
        {
            column.Add(rows.GetString(0));
        }

        return column;
    }
}
