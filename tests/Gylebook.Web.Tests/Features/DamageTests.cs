using Bunit;
using Gylebook.Pictures;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Kits;
using Gylebook.Store;
using Gylebook.Tests.Shared;
using Gylebook.Web.Features.Liquors;
using Gylebook.Web.Features.Recipes;
using Gylebook.Web.Features.Recipes.Drafting;
using Gylebook.Web.Features.Recipes.Showing;

namespace Gylebook.Web.Tests.Features;

/// <summary>What cannot be reckoned, or not even read, takes nothing else with it.</summary>
public sealed class DamageTests : GylebookTestContext
{
    [Fact]
    public async Task A_recipe_that_cannot_be_reckoned_is_a_finding_and_can_be_undone()
    {
        Guid id = await RecipeAsync();
        using OpenDraft draft = (await OpenDraft.OpenAsync(Book, id, "one"))!;
        bool isBroken = false;
        RecipeDesk desk = new(draft, BuiltInKit.LanternShed, _ => isBroken ? throw new InvalidOperationException("the food is made of nothing") : null, new Shown(ReaderUnits.Metric));
        isBroken = true;
        await desk.EditAsync(d => d.Put("ingredients[0].amount", "4 kg"));
        Assert.Contains(desk.OfStage(null), f => f.Message.StartsWith("This cannot be reckoned: the food is made of nothing.", StringComparison.Ordinal));
        Assert.True(desk.IsStale);
        Assert.Equal("pale ale malt: 3.6 kg → 4 kg", draft.UndoLabel);
        isBroken = false;
        await desk.UndoAsync();
        Assert.False(desk.IsStale);
        Assert.DoesNotContain(desk.Findings, f => f.Code == "reckoning.failed");
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

    private async Task<Guid> RecipeAsync()
    {
        await Book.Foods.CreateAsync(await TextAsync("samples/recipes/foods/pumpkin-seed-flour.json"), cancellation: Cancellation);
        return await Book.Recipes.CreateAsync(await TextAsync("samples/recipes/hedgerow-brown.json"), cancellation: Cancellation);
    }

    private static Task<string> TextAsync(string file) => File.ReadAllTextAsync(RepositoryFile.PathOf(file), Cancellation);
}
