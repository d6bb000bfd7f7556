using AngleSharp.Dom;
using Bunit;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;
using Gylebook.Store;
using Gylebook.Tests.Shared;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Features.Recipes;

namespace Gylebook.Web.Tests.Features.Recipes;

/// <summary>An open recipe hears at once of what its numbers hang on, whoever changes it.</summary>
/// <remarks>What is expected is what a page says that is opened afterwards.</remarks>
public sealed class ChangedElsewhereTests : GylebookTestContext
{
    private const string Another = "another tab";

    [Fact]
    public async Task The_kit_in_use_has_other_figures()
    {
        Guid kit = await KitAsync("Shed", 0.9);
        (IRenderedComponent<RecipePage> page, Guid id) = await PageAsync();
        string before = Gravity(page);
        await Book.Kits.Drafts.SaveAsync(kit, 1, Kit("Barn", 0.5), "another text", Another, Cancellation);
        page.WaitForAssertion(() => Assert.NotEqual(before, Gravity(page)));
        page.WaitForAssertion(() => Assert.Equal("Barn", Chosen(page)));
        Assert.Equal(Gravity(Open(id)), Gravity(page));
    }

    [Fact]
    public async Task Another_kit_is_in_use()
    {
        Guid first = await KitAsync("Shed", 0.9);
        await KitInUse.ChooseAsync(Book, first, Cancellation);
        (IRenderedComponent<RecipePage> page, Guid id) = await PageAsync();
        string before = Gravity(page);
        await KitInUse.ChooseAsync(Book, await KitAsync("Barn", 0.5), Cancellation);
        page.WaitForAssertion(() => Assert.NotEqual(before, Gravity(page)));
        page.WaitForAssertion(() => Assert.Equal("Barn", Chosen(page)));
        Assert.Equal(Gravity(Open(id)), Gravity(page));
    }

    [Fact]
    public async Task A_slip_of_the_finger_in_the_kit_in_use_plans_for_no_other_kit()
    {
        await KitAsync("Attic", 0.9);
        Guid kit = await KitAsync("Barn", 0.5);
        await KitInUse.ChooseAsync(Book, kit, Cancellation);
        (IRenderedComponent<RecipePage> page, Guid id) = await PageAsync();
        string before = Gravity(page);
        await Book.Kits.Drafts.SaveAsync(kit, 1, Kit("Barn", 0.5).Replace("\"50 %\"", "\"half\"", StringComparison.Ordinal), "another text", Another, Cancellation);
        Assert.Equal((kit, "50 %"), ((await KitInUse.FindAsync(Book, Cancellation)).Id, (await KitInUse.FindAsync(Book, Cancellation)).Kit.Conversion.Text));
        Assert.Equal(before, Gravity(Open(id)));
    }

    [Fact]
    public async Task The_kit_in_use_goes_into_the_bin_and_comes_back()
    {
        Guid kit = await KitAsync("Barn", 0.5);
        (IRenderedComponent<RecipePage> page, _) = await PageAsync();
        string before = Gravity(page);
        await Book.Kits.DeleteAsync(kit, Cancellation);
        page.WaitForAssertion(() => Assert.NotEqual(before, Gravity(page)));
        await Book.Kits.RestoreAsync(kit, Cancellation);
        page.WaitForAssertion(() => Assert.Equal(before, Gravity(page)));
    }

    [Fact]
    public async Task A_food_has_another_label()
    {
        (IRenderedComponent<RecipePage> page, _) = await PageAsync();
        Assert.Contains("may contain sesame", Allergens(page), StringComparison.Ordinal);
        Sheet food = (await Book.Foods.FindAsync("pumpkin-seed-flour", Cancellation))!;
        await Book.Foods.Drafts.SaveAsync(food.Id, food.Revision, food.Document.Replace("sesame", "milk", StringComparison.Ordinal), "another text", Another, Cancellation);
        page.WaitForAssertion(() => Assert.Contains("may contain milk", Allergens(page), StringComparison.Ordinal));
        Assert.DoesNotContain("sesame", Allergens(page), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_sheet_of_the_larder_has_other_figures_and_a_slip_in_it_changes_nothing()
    {
        Guid malt = await Book.Larder.CreateAsync(Malt("81 %"), cancellation: Cancellation);
        (IRenderedComponent<RecipePage> page, Guid id) = await PageAsync("\"pale ale malt\"", "\"field-pale\"");
        string before = Gravity(page);
        await Book.Larder.Drafts.SaveAsync(malt, 1, Malt("71 %"), "another text", Another, Cancellation);
        page.WaitForAssertion(() => Assert.NotEqual(before, Gravity(page)));
        string poorer = Gravity(page);
        await Book.Larder.Drafts.SaveAsync(malt, 2, Malt("7x %"), "another text", Another, Cancellation);
        Assert.Equal(poorer, Gravity(Open(id)));
        Assert.Equal(poorer, Gravity(page));
    }

    [Fact]
    public async Task What_is_being_typed_stays_and_is_reckoned_on_the_changed_kit()
    {
        Guid kit = await KitAsync("Shed", 0.9);
        (IRenderedComponent<RecipePage> page, Guid id) = await PageAsync();
        string before = Gravity(page);
        Task typed = page.Find($"#{page.FindAll("label").Single(l => l.TextContent == "Amount of Pale ale malt").GetAttribute("for")}").InputAsync("4.6");
        page.WaitForAssertion(() => Assert.NotEqual(before, Gravity(page)));
        string richer = Gravity(page);
        await Book.Kits.Drafts.SaveAsync(kit, 1, Kit("Shed", 0.5), "another text", Another, Cancellation);
        page.WaitForAssertion(() => Assert.NotEqual(richer, Gravity(page)));
        string poorer = Gravity(page);
        Clock.Step(TimeSpan.FromMilliseconds(300));
        await typed;
        Assert.Equal(poorer, Gravity(page));
        Assert.Equal(poorer, Gravity(Open(id)));
    }

    private static string Kit(string name, double conversion) =>
        KitFile.Write(BuiltInKit.LanternShed with { Name = name, Conversion = new(Fraction.FromRatio(conversion), Invariant($"{100 * conversion} %")) });

    private static string Malt(string extract) =>
        $$"""{ "format": "gylebook-malt/1", "id": "field-pale", "name": "Field pale", "like": "pale ale malt", "figures": { "extract": "{{extract}}" } }""";

    private static string Gravity(IRenderedComponent<RecipePage> page) => page.Find("[data-headline=originalGravity] dd").TextContent;

    private static string Allergens(IRenderedComponent<RecipePage> page) => page.Find("[data-headline=allergens]").TextContent;

    private static string Chosen(IRenderedComponent<RecipePage> page)
    {
        IElement picker = page.Find(".kit select");
        return picker.QuerySelectorAll("option").Single(option => option.GetAttribute("value") == picker.GetAttribute("value")).TextContent;
    }

    private Task<Guid> KitAsync(string name, double conversion) => Book.Kits.CreateAsync(Kit(name, conversion), cancellation: Cancellation);

    private async Task<(IRenderedComponent<RecipePage> Page, Guid Id)> PageAsync(string other = "", string instead = "")
    {
        await Book.Foods.CreateAsync(await TextAsync("samples/recipes/foods/pumpkin-seed-flour.json"), cancellation: Cancellation);
        string recipe = await TextAsync("samples/recipes/hedgerow-brown.json");
        Guid id = await Book.Recipes.CreateAsync(other.Length == 0 ? recipe : recipe.Replace(other, instead, StringComparison.Ordinal), cancellation: Cancellation);
        return (Open(id), id);
    }

    private IRenderedComponent<RecipePage> Open(Guid id)
    {
        IRenderedComponent<RecipePage> page = RenderMetric<RecipePage>(p => p.Add(x => x.Id, id));
        page.WaitForElement("[data-headline=originalGravity]");
        return page;
    }

    private static Task<string> TextAsync(string file) => File.ReadAllTextAsync(RepositoryFile.PathOf(file), Cancellation);
}
