using AngleSharp.Dom;
using Bunit;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;
using Gylebook.Store;
using Gylebook.Tests.Shared;
using Gylebook.Web.Features.Foods.Labels;
using Gylebook.Web.Features.Larders;
using Gylebook.Web.Features.Recipes;
using Gylebook.Web.Features.Recipes.Showing;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Tests.Features;

/// <summary>What is at hand, what is ageing, what it cost; and a sheet with its lots, edited in place. The clock says 14 March 2026.</summary>
public sealed class LarderTests : GylebookTestContext
{
    [Fact]
    public async Task The_list_shows_lots_with_what_they_cost_and_names_first_what_must_be_used_first()
    {
        await MakeAsync(Malt with
        {
            Lots = [Lot("fresh", "25 kg", "31.50 EUR", best: "2027-11-01"), Lot("old", "5 kg", "7.25 EUR", best: "2026-03-01"), Lot("soon", "1 kg", null, best: "2026-04-13")],
        });
        IRenderedComponent<LarderPage> page = RenderMetric<LarderPage>();
        page.WaitForElement(".sheet");
        Assert.Equal(
            ["Field pale, old: past its best for 13 days, bought 1 Feb 2026", "Field pale, soon: best for 30 days more, bought 1 Feb 2026"],
            page.FindAll("section[aria-labelledby=ageing] li").Select(line => $"{line.Children[0].TextContent}: {line.Children[1].TextContent}"));
        Assert.Equal(
            [["fresh", "25 kg", "31.50 EUR"], ["old", "5 kg", "7.25 EUR"], ["soon", "1 kg", ""]],
            page.FindAll(".sheet li").Select(line => line.Children.Take(3).Select(cell => cell.TextContent).ToArray()));

        // 31.50 and 7.25, by hand.
        Assert.Equal("All lots here cost 38.75 EUR when they were bought. 1 of 3 lots have no price.", page.Find(".cost").TextContent);
    }

    [Fact]
    public async Task Sums_of_two_currencies_are_not_one_sum()
    {
        await MakeAsync(Malt with { Lots = [Lot("a", "1 kg", "2 EUR"), Lot("b", "1 kg", "3 GBP"), Lot("c", "1 kg", "0.5 EUR")] });
        IRenderedComponent<LarderPage> page = RenderMetric<LarderPage>();
        page.WaitForAssertion(() => Assert.Equal("All lots here cost 2.50 EUR and 3.00 GBP when they were bought.", page.Find(".cost").TextContent));
    }

    [Fact]
    public async Task A_sheet_goes_into_the_bin_and_comes_back_and_another_tab_sees_it()
    {
        await MakeAsync(Malt);
        IRenderedComponent<LarderPage> page = RenderMetric<LarderPage>();
        IRenderedComponent<LarderPage> other = RenderMetric<LarderPage>();
        other.WaitForElement(".sheet");
        page.WaitForElement("button[aria-label='Delete Field pale']").Click();
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".sheet")));
        other.WaitForAssertion(() => Assert.Empty(other.FindAll(".sheet")));
        page.Find("button[aria-label='Restore Field pale']").Click();
        page.WaitForAssertion(() => Assert.Single(page.FindAll(".sheet")));
    }

    [Fact]
    public void A_new_sheet_from_any_row_of_the_tables_can_be_read_without_a_fault()
    {
        IngredientSearch tables = new(Larder.Empty);
        List<IngredientChoice> rows = [.. tables.Find("").Where(choice => choice.Kind is not (IngredientKind.Food or IngredientKind.Water))];
        Assert.True(rows.Count > 150, "The tables have shrunk.");
        foreach (IngredientChoice row in rows)
        {
            LarderSheet sheet = NewSheet.Like(row, row.Name, []);
            FileDraft draft = LarderDraft.Of(LarderFile.Write(sheet));
            Assert.True(draft.IsReadable, $"{row.Kind} {row.Of}: {string.Join("; ", draft.Findings.Select(finding => finding.Message))}");
        }
    }

    [Fact]
    public async Task What_is_found_in_the_search_becomes_a_sheet_of_its_own_name_and_id()
    {
        IRenderedComponent<LarderPage> page = RenderMetric<LarderPage>();
        for (int i = 0; i < 2; i++)
        {
            page.WaitForElement("[role=combobox]").Input("gypsum");
            page.WaitForElement("[role=option]").Click();
            int made = i + 1;
            page.WaitForAssertion(() => Assert.Equal(made, Book.Larder.ListAsync(cancellation: Cancellation).Result.Count));
        }

        List<Sheet> sheets = await Book.Larder.ListAsync(cancellation: Cancellation);
        Assert.Equal(["gypsum", "gypsum 2"], sheets.Select(sheet => sheet.Name));
        Assert.Equal(["my-gypsum", "my-gypsum-2"], sheets.Select(sheet => LarderDraft.SheetOf(LarderDraft.Of(sheet.Document))!.Id));
        Assert.EndsWith($"larder/{sheets[1].Id}", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_damaged_sheet_is_named_and_hides_no_other()
    {
        Guid id = await MakeAsync(Malt);
        await MakeAsync(Malt with { Id = "other", Name = "Other pale" });
        await DamageAsync($"UPDATE larder_sheets SET document = substr(document, 1, 40) WHERE id = '{id.ToString().ToUpperInvariant()}'");
        IRenderedComponent<LarderPage> page = RenderMetric<LarderPage>();
        page.WaitForAssertion(() => Assert.Equal(2, page.FindAll(".sheet").Count));
        Assert.Contains("damaged: its page says what can be done", page.Markup, StringComparison.Ordinal);
        Assert.Equal(["other"], (await OwnLarder.OfAsync(Book, Cancellation)).Sheets.Select(sheet => sheet.Id));
    }

    [Fact]
    public async Task Fields_of_sheet_lot_and_assay_are_saved_as_typed_and_what_cannot_be_is_said_under_its_field()
    {
        Guid id = await MakeAsync(Malt);
        IRenderedComponent<LarderSheetPage> page = await OpenAsync(id);
        Type(page, "sheet", "Extract, dry", "80,5");
        page.FindAll("button").Single(button => button.TextContent == "Add a lot").Click();
        page.WaitForElement("[data-field='lots[0].lot']");
        Type(page, "lots", "Amount bought", "25 kg");
        Type(page, "lots", "Price", "31.50 EUR");
        Type(page, "lots", "Colour", "6.2 EBC");
        Type(page, "lots", "Best before", "1 Nov");
        page.WaitForAssertion(() => Assert.Contains("write a day as", page.Find("section[aria-labelledby=lots]").TextContent, StringComparison.Ordinal));
        Type(page, "lots", "Best before", "2027-11-01");
        page.WaitForAssertion(() => Assert.DoesNotContain("write a day as", page.Markup, StringComparison.Ordinal));

        var read = (MaltSheet)LarderDraft.SheetOf(LarderDraft.Of((await Book.Larder.FindAsync(id, Cancellation))!.Document))!;
        Lot<MaltFigures> lot = Assert.Single(read.Lots);
        Assert.Equal(("80,5 %", "2026-03-14", "25 kg", 31.50m, "6.2 EBC", new DateOnly(2027, 11, 1)),
            (read.Figures!.Extract!.Value.Text, lot.Name, lot.Amount!.Value.Text, lot.Price!.Value.Value, lot.Assay!.Colour!.Value.Text, lot.BestBefore!.Value));
        Assert.Equal(new DateOnly(2026, 3, 14), lot.Bought);
    }

    [Fact]
    public async Task Undo_goes_back_field_by_field_and_a_text_that_cannot_be_read_outlives_the_page()
    {
        Guid id = await MakeAsync(Malt);
        IRenderedComponent<LarderSheetPage> page = await OpenAsync(id);
        Type(page, "sheet", "Extract, dry", "79 %");
        Type(page, "sheet", "Moisture", "wet");
        page.WaitForAssertion(() => Assert.Equal("wet", Field(page, "sheet", "Moisture").GetAttribute("value")));
        IRenderedComponent<LarderSheetPage> again = await OpenAsync(id);
        Assert.Equal("wet", Field(again, "sheet", "Moisture").GetAttribute("value"));
        Undo(again);
        again.WaitForAssertion(() => Assert.Equal("3.5 %", Field(again, "sheet", "Moisture").GetAttribute("value")));
        Assert.Equal("79 %", Field(again, "sheet", "Extract, dry").GetAttribute("value"));
        Undo(again);
        again.WaitForAssertion(() => Assert.Equal("81 %", Field(again, "sheet", "Extract, dry").GetAttribute("value")));
        page.WaitForAssertion(() => Assert.Equal("81 %", Field(page, "sheet", "Extract, dry").GetAttribute("value")));
    }

    [Fact]
    public async Task A_food_has_lots_beside_its_label()
    {
        Guid id = await Book.Foods.CreateAsync(await File.ReadAllTextAsync(RepositoryFile.PathOf("samples/recipes/foods/pumpkin-seed-flour.json"), Cancellation), cancellation: Cancellation);
        IRenderedComponent<FoodLabelPage> page = RenderMetric<FoodLabelPage>(p => p.Add(x => x.Id, id));
        page.WaitForElement("section[aria-labelledby=lots]");
        page.FindAll("button").Single(button => button.TextContent == "Add a lot").Click();
        page.WaitForElement("[data-field='lots[0].price']").Change("4.20 EUR");
        page.WaitForAssertion(() => Assert.Equal("4.20 EUR", FoodFile.Read(Book.Foods.FindAsync(id, Cancellation).Result!.Document).Value!.Lots.Single().Price?.Text));
    }

    [Fact]
    public async Task A_food_goes_into_the_bin_and_comes_back_even_a_damaged_one()
    {
        Guid id = await Book.Foods.CreateAsync(await File.ReadAllTextAsync(RepositoryFile.PathOf("samples/recipes/foods/pumpkin-seed-flour.json"), Cancellation), cancellation: Cancellation);
        string name = (await Book.Foods.FindAsync(id, Cancellation))!.Name;
        await DamageAsync($"UPDATE foods SET document = substr(document, 1, 40) WHERE id = '{id.ToString().ToUpperInvariant()}'");
        IRenderedComponent<LarderPage> page = RenderMetric<LarderPage>();
        page.WaitForElement($"button[aria-label='Delete {name}']").Click();
        page.WaitForElement($"button[aria-label='Restore {name}']").Click();
        page.WaitForAssertion(() => Assert.Equal("Foods", page.Find("section:has(.sheet) h2").TextContent));
    }

    [Theory]
    [InlineData(IngredientKind.Acid, "lactic-88", "goggles")]
    [InlineData(IngredientKind.Salt, "slaked lime", "goggles")]
    [InlineData(IngredientKind.Salt, "gypsum", null)]
    public async Task What_burns_says_so_on_its_sheet(IngredientKind kind, string like, string? caution)
    {
        IRenderedComponent<LarderSheetPage> page = await OpenAsync(await MakeAsync(new ShelfSheet { Id = "it", Name = "It", Like = like, Kind = kind }));
        Assert.Equal(caution is not null, page.FindAll(".caution").Count == 1);
        Assert.Contains(caution ?? "", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_line_may_name_one_of_its_lots_and_the_beer_is_reckoned_and_priced_with_it()
    {
        foreach (string file in Directory.GetFiles(RepositoryFile.PathOf("samples/recipes/lots/larder"), "*.json"))
        {
            await Book.Larder.CreateAsync(await File.ReadAllTextAsync(file, Cancellation), cancellation: Cancellation);
        }

        Guid id = await Book.Recipes.CreateAsync(await File.ReadAllTextAsync(RepositoryFile.PathOf("samples/recipes/lots/larder-bitter.json"), Cancellation), cancellation: Cancellation);
        IRenderedComponent<RecipePage> page = RenderMetric<RecipePage>(p => p.Add(x => x.Id, id));
        page.WaitForElement("[data-headline=costPerLitre]");
        string colour = page.Find("[data-headline=colourSrm] dd").TextContent;
        Assert.Contains("lot 2611-04", page.Markup, StringComparison.Ordinal);

        page.FindAll("button.more").Single(button => button.TextContent == "More of North Field pale").Click();
        IElement lots = page.WaitForElement("select[data-field$='.lot']");
        Assert.Equal(["of no lot", "2611-04"], lots.QuerySelectorAll("option").Select(option => option.TextContent));
        await lots.ChangeAsync("");
        page.WaitForAssertion(() => Assert.NotEqual(colour, page.Find("[data-headline=colourSrm] dd").TextContent));
        Assert.Empty(page.FindAll("[data-headline=costPerLitre]"));
        Assert.Contains("no cost is told", page.Markup, StringComparison.Ordinal);
    }

    private static MaltSheet Malt => (MaltSheet)LarderDraft.SheetOf(LarderDraft.Of(
        """{ "format": "gylebook-malt/1", "id": "field-pale", "name": "Field pale", "like": "pale ale malt", "figures": { "extract": "81 %", "moisture": "3.5 %" } }"""))!;

    private static Lot<MaltFigures> Lot(string name, string amount, string? price, string? best = null)
    {
        string dates = best is null ? "" : $$""", "bestBefore": "{{best}}" """;
        string cost = price is null ? "" : $$""", "price": "{{price}}" """;
        string text = $$"""{ "format": "gylebook-malt/1", "id": "x", "name": "x", "like": "pale ale malt", "lots": [ { "lot": "{{name}}", "amount": "{{amount}}"{{cost}}, "bought": "2026-02-01"{{dates}} } ] }""";
        return ((MaltSheet)LarderDraft.SheetOf(LarderDraft.Of(text))!).Lots[0];
    }

    private static void Undo(IRenderedComponent<LarderSheetPage> page) =>
        page.FindAll("button").First(button => button.TextContent.TrimStart().StartsWith("Undo", StringComparison.Ordinal)).Click();

    private static IElement Field(IRenderedComponent<LarderSheetPage> page, string part, string label)
    {
        IElement name = page.FindAll($"section[aria-labelledby={part}] label").First(found => found.TextContent == label);
        return page.Find($"#{name.GetAttribute("for")}");
    }

    private static void Type(IRenderedComponent<LarderSheetPage> page, string part, string label, string text)
    {
        Field(page, part, label).Focus();
        Field(page, part, label).Input(text);
        Field(page, part, label).Change(text);
        Field(page, part, label).Blur();
    }

    private async Task<IRenderedComponent<LarderSheetPage>> OpenAsync(Guid id)
    {
        IRenderedComponent<LarderSheetPage> page = RenderMetric<LarderSheetPage>(p => p.Add(x => x.Id, id));
        await Task.Yield();
        page.WaitForElement("section[aria-labelledby=sheet]");
        return page;
    }

    private Task<Guid> MakeAsync(LarderSheet sheet) => Book.Larder.CreateAsync(LarderFile.Write(sheet), cancellation: Cancellation);
}
