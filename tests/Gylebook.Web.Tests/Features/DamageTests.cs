using Bunit;
using Gylebook.Pictures;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Store;
using Gylebook.Store.Sqlite;
using Gylebook.Tests.Shared;
using Gylebook.Web.Features.Liquors;
using Gylebook.Web.Features.Recipes;
using Gylebook.Web.Drafting;
using Gylebook.Web.Features.Recipes.Showing;
using Gylebook.Web.Reading;
using Gylebook.Web.Widgets;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace Gylebook.Web.Tests.Features;

/// <summary>What cannot be reckoned, or not even read, takes nothing else with it.</summary>
public sealed class DamageTests : GylebookTestContext
{
    private readonly Terminal _terminal = new();

    [Fact]
    public async Task A_recipe_that_cannot_be_reckoned_is_a_finding_and_can_be_undone()
    {
        string recipe = (await TextAsync("samples/recipes/hedgerow-brown.json")).Replace("\"food\": \"pumpkin-seed-flour\"", "\"food\": \"pumpkin-seed-flour\", \"lot\": \"one\"", StringComparison.Ordinal);
        Guid id = await Book.Recipes.CreateAsync(recipe, cancellation: Cancellation);
        using OpenDraft<RecipeDraft> draft = (await OpenDraft.OpenAsync(Book.Drafts, id, RecipeDraft.Of, "one"))!;
        bool isBroken = false;
        FoodSheet flour = FoodFile.Read(await TextAsync("samples/recipes/foods/pumpkin-seed-flour.json")).Value! with { Lots = new FailingLots(() => isBroken, "the food is made of nothing") };
        RecipeDesk desk = new(draft, BuiltInKit.LanternShed, new Larder([flour]), new Shown(ReaderUnits.Metric), door: new ReckoningDoor(_terminal));
        isBroken = true;
        await desk.EditAsync(d => d.Put("ingredients[0].amount", "4 kg"));
        Assert.Contains(desk.OfStage(null), f => f.Message.StartsWith("this cannot be reckoned: the food is made of nothing.", StringComparison.Ordinal));
        Assert.Contains(_terminal.Heard, said => said.Contains("the food is made of nothing", StringComparison.Ordinal) && said.Contains("\"4 kg\"", StringComparison.Ordinal));
        Assert.True(desk.IsStale);
        Assert.Equal("pale ale malt: 3.6 kg → 4 kg", draft.UndoLabel);
        isBroken = false;
        await desk.UndoAsync();
        Assert.False(desk.IsStale);
        Assert.DoesNotContain(desk.Findings, f => f.Code == "forecast.notReckoned");
    }

    [Fact]
    public async Task A_strike_of_half_a_litre_in_a_part_mash_leaves_undo_history_and_every_field()
    {
        Guid id = await RecipeAsync();
        Draft stored = (await Book.Drafts.FindAsync(id, Cancellation))!;
        RecipeDraft bad = RecipeDraft.Of(stored.Document).Put("liquor.strike", "0.5 L")!.After.Put("mash.method", "part")!.After;
        await Book.Drafts.SaveAsync(id, stored.Revision, bad.Text, "a part mash", "elsewhere", Cancellation);
        IRenderedComponent<RecipePage> page = RenderMetric<RecipePage>(p => p.Add(r => r.Id, id));
        page.WaitForAssertion(() => Assert.Contains("Undo a part mash", page.Markup, StringComparison.Ordinal));
        Assert.NotEmpty(page.FindAll("input[data-field=\"ingredients[0].amount\"]"));
        await page.FindAll("button").First(b => b.TextContent == "Undo").ClickAsync();
        page.WaitForElement("[data-headline=originalGravity]");
        Assert.DoesNotContain("cannot be reckoned", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_damaged_recipe_shows_its_damage_and_the_texts_to_go_back_to()
    {
        Guid id = await RecipeAsync();
        Draft stored = (await Book.Drafts.FindAsync(id, Cancellation))!;
        await Book.Versions.KeepAsync(id, "sound", Cancellation);
        await Book.Drafts.SaveAsync(id, stored.Revision, RecipeDraft.Of(stored.Document).Put("notes", "once more")!.After.Text, "notes", "elsewhere", Cancellation);
        await DamageAsync("UPDATE drafts SET document = substr(document, 1, 40)");

        IRenderedComponent<RecipePage> page = RenderMetric<RecipePage>(p => p.Add(r => r.Id, id));
        page.WaitForAssertion(() => Assert.Contains("is damaged", page.Find("[role=alert]").TextContent, StringComparison.Ordinal));
        Assert.Contains("Version 1", page.WaitForElement("ul.rows li").TextContent, StringComparison.Ordinal);
        await page.FindAll("button").First(b => b.TextContent.StartsWith("Back to this notes", StringComparison.Ordinal)).ClickAsync();
        page.WaitForElement("[data-headline=originalGravity]");
        Assert.Equal("once more", RecipeDraft.Of((await Book.Drafts.FindAsync(id, Cancellation))!.Document)["notes"]);
    }

    [Fact]
    public async Task A_letter_that_the_disk_has_changed_is_noticed_though_the_recipe_can_still_be_read()
    {
        Guid id = await RecipeAsync();
        Draft stored = (await Book.Drafts.FindAsync(id, Cancellation))!;
        await Book.Drafts.SaveAsync(id, stored.Revision, RecipeDraft.Of(stored.Document).Put("notes", "once more")!.After.Text, "notes", "elsewhere", Cancellation);
        await DamageAsync("UPDATE drafts SET document = replace(document, 'once more', 'once mope')");

        IRenderedComponent<RecipePage> page = RenderMetric<RecipePage>(p => p.Add(r => r.Id, id));
        page.WaitForAssertion(() => Assert.Contains("no longer gives back what was written", page.Find("[role=alert]").TextContent, StringComparison.Ordinal));
        await page.FindAll("button").First(b => b.TextContent.StartsWith("Back to this notes", StringComparison.Ordinal)).ClickAsync();
        page.WaitForElement("[data-headline=originalGravity]");
        Draft mended = (await Book.Drafts.FindAsync(id, Cancellation))!;
        Assert.Equal(("once more", false), (RecipeDraft.Of(mended.Document)["notes"], mended.IsDamaged));
    }

    [Fact]
    public async Task A_water_plan_with_a_changed_letter_is_told_damaged_and_the_list_stands()
    {
        await Book.Waters.CreateAsync(WaterDraft.New("Changed").Text, cancellation: Cancellation);
        await Book.Waters.CreateAsync(WaterDraft.New("Whole").Text, cancellation: Cancellation);
        await DamageAsync("UPDATE waters SET document = replace(document, 'Changed', 'Chanced') WHERE name = 'Changed'");
        IRenderedComponent<LiquorsPage> list = RenderMetric<LiquorsPage>();
        list.WaitForAssertion(() => Assert.Equal(2, list.FindAll("ul.rows > li").Count));
        Assert.Equal(["Changed"], list.FindAll("ul.rows > li").Where(li => li.TextContent.Contains("damaged", StringComparison.Ordinal)).Select(li => li.QuerySelector("a")!.TextContent));
    }

    [Fact]
    public async Task A_book_whose_file_was_removed_offers_a_copy_of_what_is_open()
    {
        if (OperatingSystem.IsWindows())
        {
            return; // There an open book cannot be removed.
        }

        await using Book held = await OpenAsync();
        Services.AddSingleton(held);
        IRenderedComponent<BookCopy> way = RenderMetric<BookCopy>();
        Assert.Empty(way.FindAll("button"));
        await RecipeAsync();
        string folder = Path.GetDirectoryName(BookFile)!;
        foreach (string end in (string[])["", "-wal", "-shm"])
        {
            File.Delete(BookFile + end);
        }

        way.Render();
        await way.Find("button").ClickAsync();
        way.WaitForAssertion(() => Assert.Contains("Written to ", way.Find("[role=status]").TextContent, StringComparison.Ordinal));
        string copy = Assert.Single(Directory.EnumerateFiles(folder, "book-*.sqlite"));
        await using Book again = await SqliteBook.OpenAsync(copy, Clock, cancellation: Cancellation);
        Assert.Single(await again.Recipes.ListAsync(cancellation: Cancellation));
    }

    [Fact]
    public async Task A_damaged_water_plan_takes_neither_the_list_nor_its_recipe_with_it()
    {
        Guid recipe = await RecipeAsync();
        Guid bad = await Book.Waters.CreateForAsync(recipe, WaterDraft.New("Broken").Text, cancellation: Cancellation);
        await Book.Waters.CreateAsync(WaterDraft.New("Whole").Text, cancellation: Cancellation);
        await DamageAsync("UPDATE waters SET document = substr(document, 1, 20) WHERE name = 'Broken'");

        IRenderedComponent<LiquorsPage> list = RenderMetric<LiquorsPage>();
        list.WaitForAssertion(() => Assert.Equal(2, list.FindAll("ul.rows > li").Count));
        Assert.Contains(list.FindAll("ul.rows > li"), li => li.TextContent.Contains("Broken", StringComparison.Ordinal) && li.TextContent.Contains("damaged", StringComparison.Ordinal));
        await list.FindAll("button").First(b => b.GetAttribute("aria-label") == "Copy Broken").ClickAsync();
        list.WaitForAssertion(() => Assert.Contains("is damaged, so it cannot be copied", list.Markup, StringComparison.Ordinal));

        IRenderedComponent<LiquorPage> plan = RenderMetric<LiquorPage>(p => p.Add(l => l.Id, bad));
        Assert.Contains("\"format\"", plan.WaitForElement("pre").TextContent, StringComparison.Ordinal);
        IRenderedComponent<RecipePage> page = RenderMetric<RecipePage>(p => p.Add(r => r.Id, recipe));
        page.WaitForElement("[data-headline=originalGravity]");
        Assert.Contains("liquor counts as pure", page.Markup, StringComparison.Ordinal);
    }

    /// <summary>What the terminal was told: the words, and the fault.</summary>
    private sealed class Terminal : ILogger
    {
        public List<string> Heard { get; } = [];

        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) =>
            Heard.Add($"{formatter(state, exception)} {exception}");
    }

    private async Task<Guid> RecipeAsync()
    {
        await Book.Foods.CreateAsync(await TextAsync("samples/recipes/foods/pumpkin-seed-flour.json"), cancellation: Cancellation);
        return await Book.Recipes.CreateAsync(await TextAsync("samples/recipes/hedgerow-brown.json"), cancellation: Cancellation);
    }

    private static Task<string> TextAsync(string file) => File.ReadAllTextAsync(RepositoryFile.PathOf(file), Cancellation);
}
