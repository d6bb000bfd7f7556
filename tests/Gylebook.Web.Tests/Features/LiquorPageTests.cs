using Gylebook.Tests.Shared;
using AngleSharp.Dom;
using Bunit;
using Gylebook.Recipes.Editing;
using Gylebook.Store;
using Gylebook.Web.Demo;
using Gylebook.Web.Features.Liquors;
using Gylebook.Web.Features.Recipes;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Tests.Features;

/// <summary>The water plan, edited in place.</summary>
public sealed class LiquorPageTests : GylebookTestContext
{
    [Fact]
    public async Task A_report_is_typed_line_by_line_and_kept_as_printed()
    {
        (Guid id, IRenderedComponent<LiquorPage> page) = await NewAsync();
        Type(page, "Calcium", "80");
        Type(page, "Alkalinity", "120,5");
        Type(page, "Chloride", "35");
        Type(page, "pH", "7.6");
        await StoredAsync(id, stored => Assert.Equal(
            ("80 mg/L", "120.5 mg/L CaCO3", "35 mg/L", "7.6"),
            (stored["sources[0].report.calcium"], stored["sources[0].report.alkalinity"], stored["sources[0].report.chloride"], stored["sources[0].report.ph"])));
        page.WaitForAssertion(() => Assert.StartsWith("Saved", page.Find(".saved").TextContent.Trim(), StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_number_printed_another_way_is_another_amount()
    {
        (Guid id, IRenderedComponent<LiquorPage> page) = await NewAsync();
        Type(page, "Sulphate", "10");
        Choose(page, "Sulphate, printed in", "mg/L as S");
        Type(page, "Hardness", "14");
        Choose(page, "Hardness, printed in", "°dH");
        await StoredAsync(id, stored => Assert.Equal(
            (null, "10 mg/L", "14 dH"),
            (stored["sources[0].report.sulphate"], stored["sources[0].report.sulphateSulphur"], stored["sources[0].report.hardness"])));
        Assert.Equal("10", Field(page, "Sulphate").GetAttribute("value"));
    }

    [Fact]
    public async Task What_cannot_be_is_said_under_its_field_and_the_text_is_kept()
    {
        (Guid id, IRenderedComponent<LiquorPage> page) = await NewAsync();
        Type(page, "Calcium", "90000");
        page.WaitForAssertion(() => Assert.Contains("no liquor has more than 5000 mg/L", Field(page, "Calcium").ParentElement!.TextContent, StringComparison.Ordinal));
        Type(page, "Mash pH, cooled to 20 °C", "five or so");
        page.WaitForAssertion(() => Assert.Contains("Cannot be", Field(page, "Mash pH, cooled to 20 °C").ParentElement!.TextContent, StringComparison.Ordinal));
        await StoredAsync(id, stored => Assert.Equal("five or so", stored["mashPh"]));
    }

    /// <summary>1 g of gypsum in 20 L brings 11.6 mg/L of calcium and 27.9 of sulphate (formula); 55.9 mg/L of sulphate wants 2 g.</summary>
    [Fact]
    public async Task Salts_are_weighed_for_what_is_wanted()
    {
        (_, IRenderedComponent<LiquorPage> page) = await NewAsync();
        Check(page, "Distilled, nothing in it");
        Type(page, "Into the mash", "20");
        Type(page, "Sulphate, mg/L", "55.9");
        Choose(page, "Add a salt", "gypsum");
        page.WaitForAssertion(() => Assert.Contains("2.0\u00A0g gypsum", Text(page.Find(".doses")), StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_report_whose_charges_do_not_cancel_is_said_to_be_wrong_where_it_stands()
    {
        (_, IRenderedComponent<LiquorPage> page) = await NewAsync();

        // "Munich" as many lists print it: 150 mg/L of bicarbonate that are really carbonate. Open table of 1995: +33 % as bicarbonate, printed without decimals.
        foreach ((string label, string amount) in new[] { ("Calcium", "75"), ("Magnesium", "18"), ("Sodium", "2"), ("Chloride", "2"), ("Sulphate", "10"), ("Bicarbonate, HCO3", "148") })
        {
            Type(page, label, amount);
        }

        page.WaitForAssertion(() => Assert.Contains("do not cancel", page.Find(".balance").TextContent, StringComparison.Ordinal));
        double percent = double.Parse(page.Find(".balance").TextContent.Split(' ', '\u00A0')[2], System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(percent, 32.5, 33.5);
        Assert.Contains(page.FindAll("fieldset .findings li"), li => li.GetAttribute("data-code") == "water.bicarbonateIsCarbonate");
    }

    [Fact]
    public async Task A_recipe_begins_with_a_kept_water_and_is_brewed_with_it()
    {
        Guid recipe = await DemoAsync("Plain Bitter");
        IRenderedComponent<RecipePage> before = RenderMetric<RecipePage>(p => p.Add(r => r.Id, recipe));
        Assert.Equal(PageUrls.RecipeLiquor(recipe), before.WaitForElement(".plan").GetAttribute("href"));

        IRenderedComponent<RecipeLiquorPage> start = RenderMetric<RecipeLiquorPage>(p => p.Add(r => r.Id, recipe));
        start.WaitForElement("button[aria-label=\"Begin with Hard well for a pale beer\"]").Click();
        start.WaitForAssertion(() => Assert.Contains("/liquor/", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal));
        Sheet plan = (await Book.Waters.OfRecipeAsync(recipe, Cancellation))!;
        Assert.Equal("Liquor for Plain Bitter", plan.Name);
        Assert.False(WaterDraft.Of(plan.Document).Has("strike"));

        IRenderedComponent<RecipePage> after = RenderMetric<RecipePage>(p => p.Add(r => r.Id, recipe));
        after.WaitForAssertion(() => Assert.Contains("gypsum", after.Find(".water").TextContent, StringComparison.Ordinal));
        Assert.Contains("Mash pH", after.Find(".water").TextContent, StringComparison.Ordinal);

        // The page that was open all along hears of it, and of its end.
        before.WaitForAssertion(() => Assert.Contains("gypsum", before.Find(".water").TextContent, StringComparison.Ordinal));
        await Book.Waters.DeleteAsync(plan.Id, Cancellation);
        before.WaitForAssertion(() => Assert.DoesNotContain("gypsum", before.Find(".water").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Waters_and_shelf_go_from_plan_to_plan()
    {
        Guid recipe = await DemoAsync("Plain Bitter");
        Guid id = await Book.Waters.CreateForAsync(recipe, WaterDraft.New("Mine").Text, cancellation: Cancellation);
        IRenderedComponent<LiquorPage> page = await OpenAsync(id);
        Choose(page, "Take from", "Hard well for a pale beer");
        Button(page, "its waters").Click();
        Button(page, "its shelf").Click();
        await StoredAsync(id, stored => Assert.Equal(("well", 3, 1), (stored["sources[0].name"], stored.CountOf("salts"), stored.CountOf("acids"))));

        Button(page, "Keep waters and shelf for other recipes").Click();
        page.WaitForAssertion(() => Assert.Contains("Kept as well", page.Markup, StringComparison.Ordinal));
        WaterOf kept = Assert.Single(await Book.Waters.ListWithRecipesAsync(Cancellation), water => water.Sheet.Name == "well");
        Assert.Null(kept.RecipeId);
    }

    /// <summary>Worked mashes M2 and M3 of the science page: 4.5 kg of pale malt (5.75, 40), 15 L of alkalinity 100, Ca 40, Mg 5, pH 7.5.</summary>
    [Fact]
    public async Task A_reading_says_what_to_add_now_and_its_malts_are_remembered()
    {
        WaterDraft plan = WaterDraft.New("M2")
            .Typed("sources[0].report.alkalinity", "100 mg/L CaCO3").Typed("sources[0].report.calcium", "40 mg/L").Typed("sources[0].report.magnesium", "5 mg/L").Typed("sources[0].report.ph", "7.5")
            .Typed("strike", "15 L").Typed("mashPh", "5.642").Added("acids", ("acid", "lactic acid 88 %"))
            .Added("grist", ("malt", "pale ale malt"), ("amount", "4.5 kg")).Learn([("pale ale malt", "5.75", "40")]).After;
        Guid id = await Book.Waters.CreateAsync(plan.Text, cancellation: Cancellation);
        IRenderedComponent<LiquorPage> page = await OpenAsync(id);
        page.WaitForAssertion(() => Assert.Contains("3.0\u00A0mL lactic acid 88 %", Text(page.Find(".doses")), StringComparison.Ordinal));

        // Without acid yet the meter reads what M2 comes to: the same 3.0 mL are to be added, and the malt is what it was.
        Type(page, "pH of the mash", "5.823");
        Type(page, "Sample of the mash at", "20 °C");
        Type(page, "Acid in it by then", "0");
        page.WaitForAssertion(() => Assert.Contains("3.0\u00A0mL lactic acid 88 %", Text(page.Find(".now")), StringComparison.Ordinal));

        // A tenth higher, and more is wanted; the malt is learned.
        Type(page, "pH of the mash", "5.92");
        page.WaitForAssertion(() => Assert.DoesNotContain("3.0\u00A0mL", Text(page.Find(".now")), StringComparison.Ordinal));
        Button(page, "Remember these malts").Click();
        page.WaitForAssertion(() => Assert.Contains("The plan knows these malts so", page.Markup, StringComparison.Ordinal));
        await StoredAsync(id, stored => Assert.InRange(double.Parse(stored["malts[0].distilledPh"]!, System.Globalization.CultureInfo.InvariantCulture), 5.76, 6.0));
        await StoredAsync(id, stored => Assert.Equal(1, stored.CountOf("malts")));
    }

    [Fact]
    public async Task A_second_water_shares_half_and_can_go_again()
    {
        (Guid id, IRenderedComponent<LiquorPage> page) = await NewAsync();
        Button(page, "Blend in another water").Click();
        page.WaitForAssertion(() => Assert.Equal(2, page.FindAll("legend").Count));
        await StoredAsync(id, stored => Assert.Equal(("50 %", "50 %"), (stored["sources[0].share"], stored["sources[1].share"])));
        Button(page, "Take out another water").Click();
        page.WaitForAssertion(() => Assert.Single(page.FindAll("legend")));
    }

    [Theory]
    [InlineData("All mine", "5.3")]
    [InlineData("All from the other tab", "5.6")]
    public async Task A_stale_write_loses_nothing(string button, string ph)
    {
        (Guid id, IRenderedComponent<LiquorPage> page) = await NewAsync();
        await using Book elsewhere = await OpenAsync();
        await elsewhere.Waters.Drafts.SaveAsync(id, 1, WaterDraft.New("My water").Typed("mashPh", "5.6").Text, "another text", "another program", Cancellation);

        Type(page, "Mash pH, cooled to 20 °C", "5.3");
        Assert.Contains("5.6", page.WaitForElement(".clash").TextContent, StringComparison.Ordinal);
        Button(page, button).Click();
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".clash")));
        await StoredAsync(id, stored => Assert.Equal(ph, stored["mashPh"]));
    }

    [Fact]
    public async Task A_plan_is_thrown_away_and_brought_back()
    {
        (Guid id, IRenderedComponent<LiquorPage> page) = await NewAsync();
        Button(page, "Throw the plan away").Click();
        page.WaitForAssertion(() => Assert.EndsWith("/liquor", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal));
        IRenderedComponent<LiquorsPage> list = RenderMetric<LiquorsPage>();
        list.WaitForElement("button[aria-label=\"Restore My water\"]").Click();
        list.WaitForAssertion(() => Assert.Contains("My water is back", list.Markup, StringComparison.Ordinal));
        Assert.Null((await Book.Waters.FindAsync(id, Cancellation))!.Deleted);
    }

    private static string Text(IElement element) => string.Join(' ', element.TextContent.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    private static IElement Field(IRenderedComponent<LiquorPage> page, string label)
    {
        IElement found = page.FindAll("label").First(element => element.TextContent.Trim() == label);
        return page.Find("#" + found.GetAttribute("for"));
    }

    private static IElement Button(IRenderedComponent<LiquorPage> page, string text) =>
        page.FindAll("button").First(button => button.TextContent.Trim() == text);

    private static void Check(IRenderedComponent<LiquorPage> page, string label) =>
        page.FindAll("label").First(element => element.TextContent.Trim() == label).QuerySelector("input")!.Change(true);

    private static void Choose(IRenderedComponent<LiquorPage> page, string label, string option)
    {
        IElement select = page.FindAll($"select[aria-label=\"{label}\"]").FirstOrDefault() ?? Field(page, label);
        select.Change(select.QuerySelectorAll("option").First(o => o.TextContent == option).GetAttribute("value"));
    }

    private static void Type(IRenderedComponent<LiquorPage> page, string label, string text)
    {
        Field(page, label).Input(text);
        Field(page, label).Change(text);
    }

    private async Task<Guid> DemoAsync(string recipe)
    {
        await LanternShed.MoveInAsync(Book, Cancellation);
        return (await Book.Recipes.ListAsync(recipe, Cancellation)).Single().Id;
    }

    private async Task<(Guid Id, IRenderedComponent<LiquorPage> Page)> NewAsync()
    {
        Guid id = await Book.Waters.CreateAsync(WaterDraft.New("My water").Text, cancellation: Cancellation);
        return (id, await OpenAsync(id));
    }

    private Task<IRenderedComponent<LiquorPage>> OpenAsync(Guid id)
    {
        IRenderedComponent<LiquorPage> page = RenderMetric<LiquorPage>(p => p.Add(l => l.Id, id));
        page.WaitForElement("legend");
        return Task.FromResult(page);
    }

    /// <summary>What the book holds, once the last save is through.</summary>
    private async Task StoredAsync(Guid id, Action<WaterDraft> check)
    {
        for (int attempt = 1; ; attempt++)
        {
            try
            {
                check(WaterDraft.Of((await Book.Waters.FindAsync(id, Cancellation))!.Document));
                return;
            }
            catch (Xunit.Sdk.XunitException) when (attempt < 200)
            {
                await Task.Delay(50, Cancellation);
            }
        }
    }
}
