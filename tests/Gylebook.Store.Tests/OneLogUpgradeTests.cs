using Gylebook.Store.Sqlite;

namespace Gylebook.Store.Tests;

/// <summary>A book with checksums and whole texts in its log comes into the packed log with every text, and with its damage.</summary>
/// <remarks>
/// The book was written by the program before the packed log. Three of its rows were changed by hand: the edit "step 7" and the
/// only version of "Run", and the kit "Cellar". What is expected is what was typed in.
/// </remarks>
public sealed class OneLogUpgradeTests : IAsyncLifetime
{
    private readonly Bench _bench = new();
    private Book _book = null!;

    public async ValueTask InitializeAsync()
    {
        File.Copy(Path.Combine(AppContext.BaseDirectory, "Books", "0.1.0-checksums.sqlite"), _bench.File);
        _book = await _bench.OpenAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await _book.DisposeAsync();
        _bench.Dispose();
    }

    [Fact]
    public async Task Every_text_of_the_log_is_there_with_its_place_in_the_tree()
    {
        (string Label, string Before, string After, bool IsSetAside)[] typed =
        [
            ("figs", "rolled oats, plums", "rolled oats, plums, figs", false),
            ("plums", "rolled oats", "rolled oats, plums", false),
            ("honey", "rolled oats", "rolled oats, honey", false),
            ("late", "rolled oats", "too late", true),
            ("oats", "rolled", "rolled oats", false),
            ("typed on", "root", "rolled", false),
            ("typed", "root", "ro", false),
        ];

        List<DraftEdit> log = await _book.Drafts.HistoryAsync(await IdAsync("Tree"), cancellation: Bench.Cancellation);

        Assert.Equal(
            typed.Select(edit => (edit.Label, Tree(edit.Before), Tree(edit.After), edit.IsSetAside, false)),
            log.Select(edit => (edit.Label, edit.Before, edit.After, edit.IsSetAside, edit.IsDamaged)));
        Assert.Equal([log[1].Id, log[4].Id, log[4].Id, log[4].Id, log[5].Id, null, null], log.Select(edit => edit.ParentId));
        Assert.Equal("A", Assert.Single(log.Select(edit => edit.TabId).Except(["B"])));
    }

    [Fact]
    public async Task Undo_goes_to_the_root_and_redo_along_the_youngest_branch()
    {
        Guid id = await IdAsync("Tree");
        foreach (string notes in (string[])["rolled oats", "rolled", "root"])
        {
            Assert.Equal(Tree(notes), await MoveAsync(id, undo: true));
        }

        Assert.Null(await MoveAsync(id, undo: true));
        foreach (string notes in (string[])["rolled", "rolled oats", "rolled oats, plums", "rolled oats, plums, figs"])
        {
            Assert.Equal(Tree(notes), await MoveAsync(id, undo: false));
        }

        NumberedVersion version = Assert.Single(await _book.Versions.ListAsync(id, Bench.Cancellation));
        Assert.Equal((Tree("rolled oats"), "with oats", false), (version.Document, version.Note, version.IsDamaged));
    }

    [Fact]
    public async Task What_was_damaged_still_is_and_nothing_else_was_lost_with_it()
    {
        Assert.Equal(
            ["A version of the recipe \"Run, 1\"", "An edit of the recipe \"Run, step 7\"", "The kit \"Cellar\""],
            BookCheck.Damage(_bench.File).Select(place => place.What).Order());
        Guid run = await IdAsync("Run");
        List<DraftEdit> log = await _book.Drafts.HistoryAsync(run, cancellation: Bench.Cancellation);
        Assert.Equal(40, log.Count);
        Assert.Equal("step 7", Assert.Single(log, edit => edit.IsDamaged).Label);
        Assert.All(log.Where(edit => !edit.IsDamaged), edit => Assert.Equal((Run(Number(edit) - 1), Run(Number(edit))), (edit.Before, edit.After)));
        Assert.True(Assert.Single(await _book.Versions.ListAsync(run, Bench.Cancellation)).IsDamaged);
        Assert.Equal(Run(40), (await _book.Drafts.FindAsync(run, Bench.Cancellation))!.Document);
    }

    [Fact]
    public async Task Sheets_are_as_they_were_and_can_be_edited_and_undone()
    {
        Sheet kit = Assert.Single(await _book.Kits.ListAsync("barn", Bench.Cancellation));
        Assert.Equal((Bench.Kit("Barn"), 2L, false), (kit.Document, kit.Revision, kit.IsDamaged));
        Assert.Equal(Bench.Food("Plums", "plums"), (await _book.Foods.FindAsync("plums", Bench.Cancellation))!.Document);
        Assert.Equal(Bench.Water("Tap"), (await _book.Waters.OfRecipeAsync(await IdAsync("Run"), Bench.Cancellation))!.Document);

        await _book.Kits.Drafts.SaveAsync(kit.Id, 2, Bench.Kit("Attic"), "Name", "A", Bench.Cancellation);
        var undone = (DraftMove.Moved)await _book.Kits.Drafts.UndoAsync(kit.Id, 3, "A", Bench.Cancellation);
        Assert.Equal(Bench.Kit("Barn"), undone.Draft.Document);
    }

    [Fact]
    public void No_row_hangs_in_the_air()
    {
        Assert.Null(_bench.Sql("PRAGMA foreign_key_check"));
        Assert.Equal("ok", _bench.Sql("PRAGMA integrity_check"));
        Assert.Equal(0L, _bench.Sql("SELECT count(*) FROM edits e JOIN edits b ON b.id = e.base_id WHERE b.base_id IS NOT NULL OR b.label = 'step 7'"));
    }

    private static string Tree(string notes) => Bench.Recipe("Tree", notes);

    private static string Run(int number) => Bench.Recipe("Run", number == 0 ? "0" : $"{number} {new string('x', 300)}");

    private static int Number(DraftEdit edit) => int.Parse(edit.Label["step ".Length..], System.Globalization.CultureInfo.InvariantCulture);

    private async Task<Guid> IdAsync(string name) => Assert.Single(await _book.Recipes.ListAsync(name, Bench.Cancellation)).Id;

    private async Task<string?> MoveAsync(Guid id, bool undo)
    {
        long seen = (await _book.Drafts.FindAsync(id, Bench.Cancellation))!.Revision;
        DraftMove move = undo
            ? await _book.Drafts.UndoAsync(id, seen, "A", Bench.Cancellation)
            : await _book.Drafts.RedoAsync(id, seen, "A", Bench.Cancellation);
        return (move as DraftMove.Moved)?.Draft.Document;
    }
}
