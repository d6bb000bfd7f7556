using System.Runtime.CompilerServices;
using Gylebook.Gyles;
using Gylebook.Science.Quantities;
using Gylebook.Store.Sqlite;

namespace Gylebook.Store.Tests;

/// <summary>A book written by every released schema must open in this Gylebook, with all it says.</summary>
/// <remarks>
/// A new release adds a file to <c>Books/</c> by running the second test with <c>GYLEBOOK_KEEP_RELEASE=1</c> set, and never
/// touches the older files.
/// What the tests expect is what was put in by hand, not what came out.
/// </remarks>
public sealed class ReleasedBookTests : IDisposable
{
    private static readonly DateTimeOffset BrewDay = new(2026, 3, 14, 9, 30, 0, TimeSpan.Zero);

    private readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Theory]
    [InlineData("0.1.0")]
    public async Task A_book_of_an_earlier_release_opens_with_all_it_says(string release)
    {
        File.Copy(Path.Combine(AppContext.BaseDirectory, "Books", release + ".sqlite"), _bench.File);

        await using Book book = await _bench.OpenAsync();

        await CheckAsync(book);
    }

    [Fact]
    public async Task A_copy_of_a_book_written_today_opens_with_all_it_says()
    {
        string copy = _bench.File + ".copy";
        await WriteAsync(copy);

        await using Book book = await SqliteBook.OpenAsync(copy, TimeProvider.System, cancellation: Bench.Cancellation);

        await CheckAsync(book);
        if (Environment.GetEnvironmentVariable("GYLEBOOK_KEEP_RELEASE") == "1")
        {
            string release = typeof(Book).Assembly.GetName().Version!.ToString(3);
            await book.BackupAsync(Path.Combine(SourceFolder(), "Books", release + ".sqlite"), Bench.Cancellation);
        }
    }

    private static async Task CheckAsync(Book book)
    {
        RecipeLine recipe = Assert.Single(await book.Recipes.ListAsync("chatai", Bench.Cancellation));
        Assert.Equal(("Châtaigne Mild", 4L, 2, 1), (recipe.Name, recipe.Revision, recipe.LatestVersion, recipe.PublishedVersion));
        Draft draft = (await book.Drafts.FindAsync(recipe.Id, Bench.Cancellation))!;
        Assert.Equal((Bench.Recipe("Châtaigne Mild", "less water"), "Notes", "Yeast"), (draft.Document, draft.UndoLabel, draft.RedoLabel));
        Assert.Equal(Bench.Recipe("Châtaigne Mild"), (await book.Versions.FindAsync(recipe.Id, 1, Bench.Cancellation))!.Document);
        Assert.Equal("Thrown away", Assert.Single(await book.Recipes.DeletedAsync(Bench.Cancellation)).Name);
        Sheet kit = Assert.Single(await book.Kits.ListAsync(cancellation: Bench.Cancellation));
        Assert.Equal(Bench.Kit("Shed"), kit.Document);
        Assert.Equal(Bench.Food("Dark honey", "honey"), (await book.Foods.FindAsync("honey", Bench.Cancellation))!.Document);
        Assert.Equal("metric", await book.Settings.FindAsync("units", Bench.Cancellation));
        Assert.Equal(DemoState.Removed, await book.Demo.StateAsync(Bench.Cancellation));
        await CheckGyleAsync(book, kit.Id);
    }

    private static async Task CheckGyleAsync(Book book, Guid kit)
    {
        GyleLine gyle = Assert.Single(await book.Gyles.ListAsync(Bench.Cancellation));
        Assert.Equal(("Gyle 1", 2, kit, GyleStatus.Fermenting, BrewDay), (gyle.Name, gyle.VersionNumber, gyle.KitId, gyle.Status, gyle.Started));
        Assert.Equal("""{ "format": "gylebook-plan/1", "recipeVersion": 2 }""", await book.Gyles.PlanDocumentAsync(gyle.Id, Bench.Cancellation));
        GylePortion portion = Assert.Single(gyle.Portions);
        Assert.Equal(Measured, Assert.Single(await book.Readings.ListAsync([portion.Id], Bench.Cancellation)).Entry);
        Assert.Equal(Done, Assert.Single(await book.Readings.ActionsAsync([portion.Id], Bench.Cancellation)).Entry);

        // And it can be written on.
        await book.Readings.AddAsync(portion.Id, [Measured with { EntryId = null }], Bench.Cancellation);
        Assert.Equal(2, (await book.Readings.ListAsync([portion.Id], Bench.Cancellation)).Count);
    }

    private async Task WriteAsync(string copy)
    {
        await using Book book = await _bench.OpenAsync();
        Guid recipe = await book.Recipes.CreateAsync(Bench.Recipe("Châtaigne Mild"), cancellation: Bench.Cancellation);
        await book.Publications.PublishAsync(recipe, null, null, to => to.Version.Document, Bench.Cancellation);
        await EditAsync(book, recipe, 1, "less water", "Notes");
        await EditAsync(book, recipe, 2, "another yeast", "Yeast");
        await book.Drafts.UndoAsync(recipe, 3, "tab", Bench.Cancellation);
        Guid thrown = await book.Recipes.CreateAsync(Bench.Recipe("Thrown away"), isDemo: true, Bench.Cancellation);
        Guid kit = await book.Kits.CreateAsync(Bench.Kit("Shed"), cancellation: Bench.Cancellation);
        await book.Foods.CreateAsync(Bench.Food("Dark honey", "honey"), cancellation: Bench.Cancellation);
        Guid gyle = await book.Gyles.PlanAsync(recipe, "Gyle 1", kit, BrewDay, cancellation: Bench.Cancellation);
        await book.Gyles.StartAsync(gyle, Bench.Plan, Bench.Cancellation);
        await book.Gyles.SetStatusAsync(gyle, GyleStatus.Fermenting, Bench.Cancellation);
        long portion = (await book.Gyles.FindAsync(gyle, Bench.Cancellation))!.Portions[0].Id;
        await book.Readings.AddAsync(portion, [Measured], Bench.Cancellation);
        await book.Readings.AddAsync(portion, [Done], Bench.Cancellation);
        await book.Settings.SetAsync("units", "metric", Bench.Cancellation);
        await book.RemoveDemoAsync(Bench.Cancellation);
        Assert.NotNull((await book.Recipes.FindAsync(thrown, Bench.Cancellation))!.Deleted);
        await book.BackupAsync(copy, Bench.Cancellation);
    }

    private static GyleReading Measured { get; } = new()
    {
        At = BrewDay.AddHours(3),
        EntryId = new Guid("0195955e-0000-7000-8000-000000000001"),
        Stage = "copperUp",
        Instrument = "hydrometer",
        Gravity = SpecificGravity.FromRatio(1.036),
        Volume = HotVolume.FromLitres(27.5),
        Temperature = Temperature.FromCelsius(66),
        Ph = 5.4,
        Pressure = GaugePressure.FromBar(0),
        Note = "clear",
    };

    private static BrewAction Done { get; } = new()
    {
        At = BrewDay.AddHours(2),
        EntryId = new Guid("0195955e-0000-7000-8000-000000000002"),
        What = "added roasted chestnut",
        Stage = "mash",
        Mass = Mass.FromKilograms(0.9),
    };

    private static Task<DraftSave> EditAsync(Book book, Guid recipe, long seen, string notes, string label) =>
        book.Drafts.SaveAsync(recipe, seen, Bench.Recipe("Châtaigne Mild", notes), label, "tab", Bench.Cancellation);

    private static string SourceFolder([CallerFilePath] string here = "") => Path.GetDirectoryName(here)!;
}
