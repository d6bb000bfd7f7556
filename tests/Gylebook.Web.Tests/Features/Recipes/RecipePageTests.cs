using AngleSharp.Dom;
using Bunit;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Kits;
using Gylebook.Store;
using Gylebook.Tests.Shared;
using Gylebook.Web.Features.Recipes;
using Gylebook.Web.Features.Today;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Tests.Features.Recipes;

public sealed class RecipePageTests : GylebookTestContext
{
    private const string PaleAle = "Amount of Pale ale malt";

    [Fact]
    public async Task The_page_shows_what_goes_in_by_stage_and_what_comes_of_it()
    {
        (IRenderedComponent<RecipePage> page, _) = await PageAsync();
        Assert.Equal(["Mash", "Boil", "Knock-out", "Ferment", "Package"], page.FindAll(".stage h2 .term").Select(h => h.TextContent));
        Assert.Equal("3.6 kg", Field(page, PaleAle).GetAttribute("value"));
        Assert.Contains("28", page.Find("[data-headline=bitterness] dd").TextContent, StringComparison.Ordinal);
        Assert.NotNull(page.Find("#run svg"));
        Assert.Contains("scalds", page.Find("[data-stage=Mash] .caution").TextContent, StringComparison.Ordinal);
    }

    /// <summary>What is missing before anything was done is no mistake.</summary>
    [Fact]
    public async Task A_recipe_in_which_nothing_goes_yet_invites_and_accuses_nobody()
    {
        Guid id = await Book.Recipes.CreateAsync(NewRecipe.DocumentFor(BuiltInKit.LanternShed), cancellation: Xunit.TestContext.Current.CancellationToken);
        IRenderedComponent<RecipePage> page = RenderMetric<RecipePage>(p => p.Add(x => x.Id, id));
        page.WaitForElement(".wish");
        Assert.Empty(page.FindAll(".findings"));
        Assert.Contains("Begin with a malt and a yeast", page.Find(".wish").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_word_of_the_trade_says_what_it_means_where_it_stands()
    {
        (IRenderedComponent<RecipePage> page, _) = await PageAsync();
        IElement word = page.Find("[data-stage=KnockOut] h2 .term");
        Assert.Equal("Knock-out: flame off, the end of the boil.", page.Find($"#{word.GetAttribute("popovertarget")}").TextContent);
    }

    /// <summary>The demo's flour may hold sesame, as its pack says: so may the beer.</summary>
    [Fact]
    public async Task What_a_pack_may_contain_is_on_the_page_of_the_beer()
    {
        await Demo.LanternShed.MoveInAsync(Book, Xunit.TestContext.Current.CancellationToken);
        Guid id = (await Book.Recipes.ListAsync("Hedgerow Brown", Xunit.TestContext.Current.CancellationToken)).Single().Id;
        (IRenderedComponent<RecipePage> page, _) = await PageAsync(id);
        string told = page.Find("[data-headline=allergens]").TextContent;
        Assert.Contains("may contain sesame", told, StringComparison.Ordinal);
        Assert.Contains("May contain: Sesame.", told, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_key_reckons_a_pause_saves_and_undo_takes_back()
    {
        (IRenderedComponent<RecipePage> page, Guid id) = await PageAsync();
        string gravity = Gravity(page);
        Task typed = Field(page, PaleAle).InputAsync("4.6");
        page.WaitForAssertion(() => Assert.NotEqual(gravity, Gravity(page)));
        Assert.Equal("3.6 kg", await SavedAsync(id));
        Clock.Step(TimeSpan.FromMilliseconds(300));
        await typed;
        page.WaitForAssertion(() => Assert.Contains("Undo pale ale malt: 3.6 kg → 4.6 kg", page.Markup, StringComparison.Ordinal));
        Assert.Equal("4.6 kg", await SavedAsync(id));
        await page.FindAll("button").First(b => b.TextContent == "Undo").ClickAsync();
        page.WaitForAssertion(() => Assert.Equal(gravity, Gravity(page)));
    }

    [Fact]
    public async Task Text_that_cannot_be_read_is_saved_with_its_finding_and_comes_back_with_the_page()
    {
        (IRenderedComponent<RecipePage> page, Guid id) = await PageAsync();
        IElement field = Field(page, PaleAle);
        Task typed = field.InputAsync("a bag");
        Clock.Step(TimeSpan.FromMilliseconds(300));
        await typed;
        page.WaitForAssertion(() => Assert.Equal("true", Field(page, PaleAle).GetAttribute("aria-invalid")));
        Assert.Equal("a bag", await SavedAsync(id));

        IRenderedComponent<RecipePage> again = RenderMetric<RecipePage>(p => p.Add(x => x.Id, id));
        again.WaitForAssertion(() => Assert.Equal("a bag", Field(again, PaleAle).GetAttribute("value")));
        Assert.Contains("cannot be read yet", again.Find("#run .old").TextContent, StringComparison.Ordinal);
        Assert.NotNull(again.Find("#run svg"));
    }

    [Fact]
    public async Task An_edit_elsewhere_is_shown()
    {
        (IRenderedComponent<RecipePage> page, Guid id) = await PageAsync();
        Draft draft = (await Book.Drafts.FindAsync(id, Cancellation))!;
        DraftEdit<RecipeDraft> edit = RecipeDraft.Of(draft.Document).Put("ingredients[0].amount", "4 kg")!;
        await Book.Drafts.SaveAsync(id, draft.Revision, edit.After.Text, edit.Label, "another", Cancellation);
        page.WaitForAssertion(() => Assert.Equal("4 kg", Field(page, PaleAle).GetAttribute("value")));
    }

    [Fact]
    public async Task A_reader_of_pounds_sees_pounds_and_the_text_stays_as_typed()
    {
        Guid id = await RecipeAsync();
        IRenderedComponent<RecipePage> page = RenderFor<RecipePage>(Gylebook.Pictures.ReaderUnits.UnitedStates, p => p.Add(x => x.Id, id));
        // 3.6 kg / 0.45359237 kg/lb = 7.937 lb: by definition.
        page.WaitForAssertion(() => Assert.Equal("7.937 lb", Field(page, PaleAle).GetAttribute("value")));
        Assert.Equal("3.6 kg", await SavedAsync(id));
    }

    [Fact]
    public async Task Versions_are_kept_and_compared()
    {
        Guid id = await RecipeAsync();
        await Book.Versions.KeepAsync(id, "first", Cancellation);
        (IRenderedComponent<RecipePage> page, _) = await PageAsync(id, "versions");
        Assert.Contains("They say the same.", page.Markup, StringComparison.Ordinal);
        Task typed = Field(page, PaleAle).InputAsync("4.6");
        Clock.Step(TimeSpan.FromMilliseconds(300));
        await typed;
        page.WaitForAssertion(() => Assert.Equal(
            ["pale ale malt", "3.6 kg", "4.6 kg"],
            page.FindAll(".panel tbody tr").Single().Children.Select(cell => cell.TextContent)));
    }

    [Fact]
    public async Task What_nothing_is_called_leads_to_a_new_food_for_this_recipe()
    {
        (IRenderedComponent<RecipePage> page, Guid id) = await PageAsync();
        IElement search = Field(page, "Add to mash");
        await search.InputAsync("walnut crumble");
        IElement offer = Assert.Single(page.FindAll("[data-stage=Mash] [role=option]"));
        Assert.Contains("New food from its label", offer.TextContent, StringComparison.Ordinal);
        Assert.Equal("Nothing of that name.", page.Find("[data-stage=Mash] .search [role=status]").TextContent);
        await offer.ClickAsync();
        Assert.EndsWith(PageUrls.NewFoodFor(id, "walnut crumble", "mash", "20 L"), Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_search_shows_all_that_fit()
    {
        (IRenderedComponent<RecipePage> page, _) = await PageAsync();
        await page.Find("[data-stage=Ferment] [role=combobox]").FocusAsync(new());

        // And the one food of the brewer's own.
        Assert.Equal(Gylebook.Recipes.Ingredients.YeastStyles.All.Count + 1, page.FindAll("[data-stage=Ferment] [role=option]").Count);
    }

    [Fact]
    public async Task More_beer_offers_the_grist_and_one_tap_takes_it_along()
    {
        (IRenderedComponent<RecipePage> page, Guid id) = await PageAsync();
        IElement beer = Field(page, "Beer");
        Task typed = beer.InputAsync("26.6");
        Clock.Step(TimeSpan.FromMilliseconds(300));
        await typed;
        page.WaitForAssertion(() => Assert.Equal("Take the malts and foods along (× 1.33)", page.Find(".along button").TextContent));
        await page.Find(".along button").ClickAsync();
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".along")));
        Assert.Equal("4.79 kg", await SavedAsync(id));
    }

    [Fact]
    public void A_recipe_that_is_not_there_says_so()
    {
        IRenderedComponent<RecipePage> page = RenderMetric<RecipePage>(p => p.Add(x => x.Id, Guid.CreateVersion7(Clock.GetUtcNow())));
        page.WaitForAssertion(() => Assert.Equal("There is no such recipe", page.Find("h1").TextContent));
    }

    [Fact]
    public async Task The_list_searches_deletes_and_restores()
    {
        await RecipeAsync();
        IRenderedComponent<RecipesPage> page = RenderMetric<RecipesPage>();
        page.WaitForAssertion(() => Assert.Single(page.FindAll("ul.rows > li")));
        await page.Find("#find").InputAsync("plain");
        page.WaitForAssertion(() => Assert.Contains("No recipe of that name.", page.Markup, StringComparison.Ordinal));
        await page.Find("#find").InputAsync("hedge");
        page.WaitForAssertion(() => Assert.Single(page.FindAll("ul.rows > li")));
        await page.FindAll("button").Single(b => b.TextContent == "Delete Hedgerow Brown").ClickAsync();
        page.WaitForAssertion(() => Assert.Contains("In the bin: 1", page.Markup, StringComparison.Ordinal));
        await page.FindAll("button").Single(b => b.TextContent == "Take it out").ClickAsync();
        page.WaitForAssertion(() => Assert.Single(page.FindAll("ul.rows > li a")));
    }

    [Fact]
    public async Task A_recipe_duplicated_is_brewed_with_the_same_water_but_not_with_the_others_reading()
    {
        Guid first = await RecipeAsync();
        string plan = await File.ReadAllTextAsync(RepositoryFile.PathOf("samples/water/measured-mash.json"), Cancellation);
        Assert.NotNull(WaterDraft.Of(plan)["mashReading.ph"]);
        await Book.Waters.CreateForAsync(first, plan, cancellation: Cancellation);
        IRenderedComponent<RecipesPage> page = RenderMetric<RecipesPage>();
        page.WaitForAssertion(() => Assert.Single(page.FindAll("ul.rows > li")));
        await page.FindAll("button").Single(b => b.TextContent == "Duplicate Hedgerow Brown").ClickAsync();

        Guid second = (await Book.Recipes.ListAsync(cancellation: Cancellation)).Single(r => r.Id != first).Id;
        WaterDraft copy = WaterDraft.Of((await Book.Waters.OfRecipeAsync(second, Cancellation))!.Document);
        Assert.Equal("Liquor for Hedgerow Brown, again", copy.Name);
        Assert.Equal(WaterDraft.Of(plan)["sources[0].report.calcium"], copy["sources[0].report.calcium"]);
        Assert.False(copy.Has("mashReading") || copy.Has("grist") || copy.Has("strike"));
        Assert.NotNull(copy.Plan);
        Assert.Equal(plan, (await Book.Waters.OfRecipeAsync(first, Cancellation))!.Document);
        Assert.EndsWith(second.ToString(), Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
    }

    private static IElement Field(IRenderedComponent<RecipePage> page, string label) =>
        page.Find($"#{page.FindAll("label").Single(l => l.TextContent == label).GetAttribute("for")}");

    private static string Gravity(IRenderedComponent<RecipePage> page) => page.Find("[data-headline=originalGravity] dd").TextContent;

    private async Task<string?> SavedAsync(Guid id) =>
        RecipeDraft.Of((await Book.Drafts.FindAsync(id, Cancellation))!.Document)["ingredients[0].amount"];

    private async Task<Guid> RecipeAsync()
    {
        await Book.Foods.CreateAsync(await TextAsync("samples/recipes/foods/pumpkin-seed-flour.json"), cancellation: Cancellation);
        return await Book.Recipes.CreateAsync(await TextAsync("samples/recipes/hedgerow-brown.json"), cancellation: Cancellation);
    }

    private async Task<(IRenderedComponent<RecipePage> Page, Guid Id)> PageAsync(Guid? recipe = null, string? panel = null)
    {
        Guid id = recipe ?? await RecipeAsync();
        if (panel is not null)
        {
            Services.GetRequiredService<NavigationManager>().NavigateTo(PageUrls.RecipeAs(id, panel, null, null));
        }

        IRenderedComponent<RecipePage> page = RenderMetric<RecipePage>(p => p.Add(x => x.Id, id));
        page.WaitForElement("[data-headline=originalGravity]");
        return (page, id);
    }

    private static Task<string> TextAsync(string file) => File.ReadAllTextAsync(RepositoryFile.PathOf(file), Cancellation);
}
