using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Foods.Labels;
using Gylebook.Store;
using Gylebook.Web.Features.Larders;
using Gylebook.Web.Features.Foods.Labels;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Tests.Features;

/// <summary>A label typed as printed.</summary>
public sealed class FoodLabelTests : GylebookTestContext
{
    [Theory]
    [InlineData(PanelStyle.Us, "Serving size", "Protein")]
    [InlineData(PanelStyle.Eu, "Figures are for", "Salt")]
    public void A_panel_has_its_lines_in_printed_order_and_with_words_and_name_at_most_fourteen_fields(PanelStyle style, string first, string last)
    {
        IReadOnlyList<PanelLine> fields = PanelLines.Of(style);
        Assert.Equal((first, last), (fields[0].Name, fields[^1].Name));

        // Ingredients, "may contain" and the name stand on the packet too. Each is a press of "next" on a phone, for everybody: what
        // is folded away below is passed over, and not counted.
        Assert.True(fields.Count + 3 <= 14);
    }

    // 21 CFR 101.9(c)(8) prints potassium since 2020 (from memory); Regulation (EU) No 1169/2011, article 30, does not among its lines.
    [Fact]
    public void Potassium_is_asked_for_where_panels_print_it_in_milligrams_and_further_down()
    {
        PanelLine potassium = Assert.Single(PanelLines.FurtherDown(PanelStyle.Us));
        Assert.Equal(("potassium", "Potassium", "mg", true), (potassium.Key, potassium.Name, potassium.Units[0], potassium.MayBeLess));
        Assert.Empty(PanelLines.FurtherDown(PanelStyle.Eu));
    }

    // 300 mg of potassium are 295 to 305 mg (21 CFR 101.9, from memory: to the nearest 10 mg). 10 g/L of the food bring 30 mg/L, less
    // what 200 g, at most 0.2 L, add to 20 L.
    [Fact]
    public async Task Potassium_comes_into_the_sheet_the_answer_and_the_beer()
    {
        IRenderedComponent<FoodLabelPage> page = await NewAmericanAsync();
        Assert.DoesNotContain(page.FindAll("section[aria-labelledby=does] th"), head => head.TextContent == "potassium");
        Assert.False(page.Find("form details").HasAttribute("open"));
        await TypeAsync(page, "Potassium", "300");
        Assert.Equal("300 mg", (await StoredAsync(food => food.Label!.Potassium is not null)).Label!.Potassium!.Value.Text);
        page.WaitForAssertion(() => Assert.Equal("295 to 305", Cells(page, "means", "potassium")[^1]));
        string beer = Cells(page, "does", "potassium")[^1];
        Assert.InRange(double.Parse(beer[..beer.IndexOf('\u00A0', StringComparison.Ordinal)], CultureInfo.InvariantCulture), 30 / 1.01, 30);
        Assert.True(page.Find("form details").HasAttribute("open"));
        await TypeAsync(page, "Potassium", "");
        await StoredAsync(food => food.Label!.Potassium is null);
        page.WaitForAssertion(() => Assert.DoesNotContain(page.FindAll("section[aria-labelledby=does] th"), head => head.TextContent == "potassium"));
        Assert.True(page.Find("form details").HasAttribute("open"));
    }

    [Fact]
    public async Task A_sheet_that_cannot_be_read_shows_what_its_fields_say_with_the_reason_and_can_be_mended_there()
    {
        const string Broken = """{ "format": "gylebook-food/1", "name": "Plum jam", "id": "plum-jam", "family": "other", "label": { "style": "EU", "fat": "some", "carbohydrate": "60 g", "sugars": "48 g" } }""";
        Guid id = await Book.Foods.CreateAsync(Broken, cancellation: Cancellation);
        IRenderedComponent<FoodLabelPage> page = OpenPage(id);
        page.WaitForElement("form");
        Assert.Equal(("Plum jam", "some", "48"), (page.Find("h1").TextContent, Value(page, "Fat"), Value(page, "of which sugars")));
        Assert.NotEmpty(Line(page, "Fat").QuerySelectorAll(".error"));
        await TypeAsync(page, "Fat", "0.5");
        Assert.Equal("0.5 g", (await StoredAsync(food => food.Label!.Fat is not null)).Label!.Fat!.Value.Text);
        page.WaitForElement("#does");
    }

    /// <summary>From a recipe's search that found nothing: named, labelled, and put into that recipe.</summary>
    [Fact]
    public async Task A_new_food_that_a_recipe_wants_has_the_name_looked_for_and_leads_back_into_it()
    {
        Guid recipe = await Book.Recipes.CreateAsync(await File.ReadAllTextAsync(Gylebook.Tests.Shared.RepositoryFile.PathOf("samples/recipes/plain-bitter.json"), Cancellation), cancellation: Cancellation);
        NavigationManager navigation = Services.GetRequiredService<NavigationManager>();
        navigation.NavigateTo(PageUrls.NewFoodFor(recipe, "Hazel crumble", "knock-out", "10 L"));
        IRenderedComponent<FoodLabelPage> page = await NewAsync();
        FoodSheet food = await StoredAsync(stored => stored.Name == "Hazel crumble");
        Assert.Equal("hazel-crumble", food.Id);
        Assert.Contains($"for={recipe}", navigation.Uri, StringComparison.Ordinal);
        page.WaitForElement(".put form");
        await page.Find(".put form").SubmitAsync();
        DraftLine added = RecipeDraft.Of((await Book.Drafts.FindAsync(recipe, Cancellation))!.Document).Lines.Single(line => line.Of == "hazel-crumble");
        Assert.Equal("knock-out", added.At);
        Assert.EndsWith(PageUrls.RecipeAt(recipe, added.Number), navigation.Uri, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_text_that_is_no_file_any_more_and_a_food_that_is_not_there_are_said_to_be_so()
    {
        Guid id = await Book.Foods.CreateAsync(FoodFile.Write(new FoodSheet { Id = "plum-jam", Name = "Plum jam", Family = "other" }), cancellation: Cancellation);
        await DamageAsync("UPDATE foods SET document = substr(document, 2)");
        IRenderedComponent<FoodLabelPage> page = OpenPage(id);
        page.WaitForAssertion(() => Assert.Contains("The text of this food is damaged", page.Find("[role=alert]").TextContent, StringComparison.Ordinal));
        IRenderedComponent<FoodLabelPage> none = OpenPage(Guid.CreateVersion7(Clock.GetUtcNow()));
        none.WaitForAssertion(() => Assert.Equal("There is no such food", none.Find("h1").TextContent));
        Assert.Empty(none.FindAll("form"));
    }

    [Theory]
    [InlineData("Sodium", "lots", "lots")]
    [InlineData("Potassium", "lots", "lots")]
    [InlineData("Sodium", "-5", "-5 mg")]
    [InlineData("Potassium", "-5", "-5 mg")]
    [InlineData("Sodium", "120 g", "the serving weighs 100 g")]
    [InlineData("Potassium", "120 g", "the serving weighs 100 g")]
    public async Task Potassium_that_cannot_be_is_told_at_its_line_as_sodium_is(string line, string typed, string named)
    {
        IRenderedComponent<FoodLabelPage> page = await NewAmericanAsync();
        await TypeAsync(page, line, typed);
        page.WaitForAssertion(() => Assert.Contains(named, Line(page, line).QuerySelector(".error")?.TextContent ?? "", StringComparison.Ordinal));
        Assert.Equal("true", Field(page, line).GetAttribute("aria-invalid"));
    }

    // A setting changed in another tab draws every page again, with what its address says: for a moment that is still "a new food".
    [Fact]
    public async Task A_food_that_was_just_made_stays_on_the_page_until_it_has_its_own_address_and_then_gives_way_to_a_new_one()
    {
        IRenderedComponent<FoodLabelPage> page = RenderMetric<FoodLabelPage>();
        page.WaitForElement("form");
        await TypeAsync(page, "Name", "Rye crackers");
        page.WaitForAssertion(() => Assert.Equal("Rye crackers", page.Find("h1").TextContent));
        page.Render(p => p.Add(x => x.Id, null));
        page.WaitForAssertion(() => Assert.Equal("Rye crackers", page.Find("h1").TextContent));
        await TypeAsync(page, "May contain", "sesame");
        FoodSheet stored = await StoredAsync(food => food.MayContain == "sesame");
        Assert.Equal("Rye crackers", stored.Name);
        Sheet sheet = Assert.Single(await Book.Foods.ListAsync(cancellation: Cancellation));
        page.Render(p => p.Add(x => x.Id, sheet.Id));
        Assert.Equal("Rye crackers", page.Find("h1").TextContent);
        page.Render(p => p.Add(x => x.Id, null));
        page.WaitForAssertion(() => Assert.Equal("New food from its label", page.Find("h1").TextContent));
    }

    // More solid than liquid is told with its limit; 500 g into 5,000 L is little, and a dose all the same.
    [Theory]
    [InlineData("50 kg", "20 L", "50 kg; must be at most")]
    [InlineData("500 g", "5000 L", "")]
    [InlineData("500 g", "0.05 L", "500 g; must be at most")]
    public async Task A_dose_that_cannot_be_meant_leaves_the_page_and_both_columns(string amount, string into, string told)
    {
        IRenderedComponent<FoodLabelPage> page = await NewAmericanAsync();
        await TypeAsync(page, "Into", into);
        await TypeAsync(page, "How much", amount);
        page.WaitForAssertion(() => Assert.Equal(amount, Field(page, "How much").GetAttribute("value")));
        page.WaitForAssertion(() => Assert.All(page.FindAll("section[aria-labelledby=does] tbody tr"), row => Assert.Equal(2, row.QuerySelectorAll("td").Length)));
        page.WaitForAssertion(() => Assert.Contains(told, page.Find("form").TextContent, StringComparison.Ordinal));
        Assert.NotEmpty(page.FindAll("form"));
        Assert.DoesNotContain("cannot be reckoned", page.Markup, StringComparison.Ordinal);
    }

    // A European panel has no such line: what was typed for an American one is kept, and said to be left out.
    [Fact]
    public async Task Potassium_typed_before_the_panel_is_said_to_be_European_is_not_lost_and_not_read()
    {
        IRenderedComponent<FoodLabelPage> page = await NewAmericanAsync();
        await TypeAsync(page, "Potassium", "300");
        await StoredAsync(food => food.Label!.Potassium is not null);
        await page.InvokeAsync(() => page.FindAll("input[type=radio]")[1].Change(true));
        page.WaitForAssertion(() => Assert.Contains("potassium", page.Find("form").TextContent, StringComparison.Ordinal));
        Assert.Empty(page.FindAll("form details"));
        Assert.Equal("300 mg", (await StoredAsync(food => food.Label!.Style == PanelStyle.Eu)).Label!.Potassium!.Value.Text);
    }

    [Fact]
    public async Task The_first_figure_makes_a_sheet_of_the_book_and_gives_the_page_its_address()
    {
        IRenderedComponent<FoodLabelPage> page = RenderMetric<FoodLabelPage>();
        page.WaitForElement("form");
        Assert.Empty(await Book.Foods.ListAsync(cancellation: Cancellation));
        await TypeAsync(page, "Carbohydrate", "12,5");
        page.WaitForAssertion(() => Assert.Equal("Saved 09:30", page.Find(".saved").TextContent.Trim()));
        Sheet sheet = Assert.Single(await Book.Foods.ListAsync(cancellation: Cancellation));
        Assert.StartsWith("Food of ", sheet.Name, StringComparison.Ordinal);
        Assert.Contains($"foods/own/{sheet.Id}/label?", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
        Assert.Equal("12,5 g", Read(sheet)!.Label!.Carbohydrate!.Value.Text);
    }

    [Theory]
    [InlineData("<1", "<1 g", true)]
    [InlineData("less than 1 g", "<1 g", true)]
    [InlineData("2.5", "2.5 g", false)]
    [InlineData("300mg", "300 mg", false)]
    public async Task A_figure_is_kept_as_typed_and_less_than_is_not_half(string typed, string kept, bool isLess)
    {
        IRenderedComponent<FoodLabelPage> page = await NewAsync();
        await TypeAsync(page, "Fibre", typed);
        PrintedMass fibre = (await StoredAsync(food => food.Label!.Fibre is not null)).Label!.Fibre!.Value;
        Assert.Equal((kept, isLess), (fibre.Text, fibre.IsLessThan));
    }

    [Fact]
    public async Task Buttons_say_less_than_and_change_the_unit_of_what_stands_there()
    {
        IRenderedComponent<FoodLabelPage> page = await NewAsync();
        await TypeAsync(page, "Salt", "1");
        await page.InvokeAsync(() => Button(page, "Salt: less than, <").Click());
        Assert.Equal("<1 g", (await StoredAsync(food => food.Label!.Salt?.IsLessThan == true)).Label!.Salt!.Value.Text);
        await page.InvokeAsync(() => Button(page, "Salt in g; change to mg").Click());
        Assert.Equal("<1 mg", (await StoredAsync(food => food.Label!.Salt?.Text != "<1 g")).Label!.Salt!.Value.Text);
    }

    // 4.184 J in a calorie, by definition: 1355 kJ are 323.852772 kcal.
    [Fact]
    public async Task Energy_is_read_in_either_unit_and_shown_again_in_the_one_printed()
    {
        IRenderedComponent<FoodLabelPage> page = await NewAsync();
        await TypeAsync(page, "Energy", "1355");
        FoodSheet food = await StoredAsync(food => food.Label!.EnergyKilocalories is not null);
        Assert.Equal(323.852772, food.Label!.EnergyKilocalories!.Value, 1e-6);
        Assert.Equal("1355 kJ", await TextAsync("label.energy"));
        await page.InvokeAsync(() => Button(page, "Energy in kJ; change to kcal").Click());
        Assert.Equal(1355, (await StoredAsync(food => food.Label!.EnergyKilocalories > 1000)).Label!.EnergyKilocalories);
        await TypeAsync(page, "Energy", "460,5 kJ");
        Assert.Equal(460.5 / 4.184, (await StoredAsync(food => food.Label!.EnergyKilocalories < 1000)).Label!.EnergyKilocalories!.Value, 1e-9);
        Assert.Equal("460,5 kJ", await TextAsync("label.energy"));
    }

    // Nobody can know whether 1,355 kJ are one or a thousand.
    [Theory]
    [InlineData("1,355")]
    [InlineData("1,355 kJ")]
    public async Task An_energy_that_may_be_one_or_a_thousand_is_refused(string typed)
    {
        IRenderedComponent<FoodLabelPage> page = await NewAsync();
        await TypeAsync(page, "Energy", typed);
        page.WaitForAssertion(() => Assert.Contains("must be a number from 0 with kcal or kJ", Line(page, "Energy").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_cannot_be_read_stays_in_its_field_says_why_and_outlives_a_reload_beside_the_answer_of_before()
    {
        IRenderedComponent<FoodLabelPage> page = await NewAsync();
        await TypeAsync(page, "Fat", "two");
        page.WaitForAssertion(() => Assert.NotEmpty(Line(page, "Fat").QuerySelectorAll(".error")));
        Assert.Equal(("two", "true"), (Value(page, "Fat"), Field(page, "Fat").GetAttribute("aria-invalid")));
        page.WaitForAssertion(() => Assert.StartsWith("Saved", page.Find(".saved").TextContent.Trim(), StringComparison.Ordinal));
        Assert.Equal("two", await TextAsync("label.fat"));
        Guid id = Assert.Single(await Book.Foods.ListAsync(cancellation: Cancellation)).Id;

        IRenderedComponent<FoodLabelPage> again = OpenPage(id);
        again.WaitForElement("#does");
        Assert.Equal("two", Value(again, "Fat"));
        Assert.NotEmpty(Line(again, "Fat").QuerySelectorAll(".error"));
        Assert.Contains("of the label before it", again.Find(".old").TextContent, StringComparison.Ordinal);

        // A recipe it is in goes on with it as it could be read last.
        Sheet sheet = Assert.Single(await Book.Foods.ListAsync(cancellation: Cancellation));
        Assert.Equal("50 g", ((FoodSheet)(await OwnLarder.ReadableAsync(Book.Foods.Drafts, sheet))!).Label!.Carbohydrate!.Value.Text);
        Assert.Single((await OwnLarder.OfAsync(Book, Cancellation)).Sheets);
    }

    [Fact]
    public async Task An_impossible_label_is_told_at_its_line_and_kept_as_it_is()
    {
        IRenderedComponent<FoodLabelPage> page = await NewAsync();
        await TypeAsync(page, "Carbohydrate", "20");
        await TypeAsync(page, "of which sugars", "50");
        page.WaitForAssertion(() => Assert.Contains(
            page.FindAll(".line .error"), found => found.TextContent.Contains("sugars", StringComparison.Ordinal)));
        Assert.Equal("50 g", (await StoredAsync(food => food.Label!.Sugars is not null)).Label!.Sugars!.Value.Text);
    }

    // More fibre than carbohydrate less sugars: only a panel that states carbohydrate without fibre prints that.
    [Fact]
    public async Task Numbers_that_give_a_European_panel_away_are_told_beside_the_switch()
    {
        IRenderedComponent<FoodLabelPage> page = await NewAsync();
        await page.InvokeAsync(() => page.FindAll("input[type=radio]")[0].Change(true));
        page.WaitForAssertion(() => Assert.Contains(page.FindAll("label"), label => label.TextContent == "Total carbohydrate"));
        await TypeAsync(page, "Total carbohydrate", "19");
        await TypeAsync(page, "Dietary fibre", "30");
        page.WaitForElement(".guess button");
        await page.InvokeAsync(() => page.Find(".guess button").Click());
        Assert.Equal(PanelStyle.Eu, (await StoredAsync(food => food.Label!.Style == PanelStyle.Eu)).Label!.Style);
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".guess")));
    }

    [Fact]
    public async Task The_name_comes_last_and_makes_the_id_once()
    {
        IRenderedComponent<FoodLabelPage> page = await NewAsync();
        await TypeAsync(page, "Name", "Crêpe crumbs");
        Assert.Equal("crepe-crumbs", (await StoredAsync(food => food.Name == "Crêpe crumbs")).Id);
        await page.InvokeAsync(() => Field(page, "Name").Blur());
        await TypeAsync(page, "Name", "Pancake crumbs");
        Assert.Equal("crepe-crumbs", (await StoredAsync(food => food.Name == "Pancake crumbs")).Id);
    }

    [Fact]
    public async Task What_the_brewer_weighed_goes_before_the_familys_figure_and_the_question_stands_in_the_address()
    {
        IRenderedComponent<FoodLabelPage> page = await NewAsync();
        await TypeAsync(page, "Protein", "10");
        await TypeAsync(page, "Share that never dissolves", "12 %");
        Assert.Equal("12 %", (await StoredAsync(food => food.Assume.InsolubleShare is not null)).Assume.InsolubleShare!.Value.Text);
        await page.InvokeAsync(() => page.FindAll("select")[1].Change("package"));
        page.WaitForAssertion(() => Assert.Contains("at=mash&beside=package", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Without_an_ingredient_list_allergens_are_unknown_and_with_one_they_are_named()
    {
        IRenderedComponent<FoodLabelPage> page = await NewAsync();
        IElement Care() => page.Find("section[aria-labelledby=care]");
        Assert.Contains("allergens are unknown, not absent", Care().TextContent, StringComparison.Ordinal);
        await TypeAsync(page, "Ingredients", "maize flour, sugar, skimmed milk powder");
        await TypeAsync(page, "May contain", "hazelnuts");
        page.WaitForAssertion(() => Assert.Contains("milk", Care().QuerySelectorAll("p")[1].TextContent, StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain("allergens are unknown", Care().TextContent, StringComparison.Ordinal);
        Assert.Equal("hazelnuts", (await StoredAsync(food => food.MayContain is not null)).MayContain);
    }

    [Fact]
    public async Task Sodium_that_no_line_prints_is_unknown_and_not_nought()
    {
        IRenderedComponent<FoodLabelPage> page = await NewAsync();
        Assert.DoesNotContain(page.FindAll("section[aria-labelledby=does] th"), head => head.TextContent == "sodium");
        await TypeAsync(page, "Salt", "1");
        page.WaitForAssertion(() => Assert.Contains(page.FindAll("section[aria-labelledby=does] th"), head => head.TextContent == "sodium"));
    }

    [Fact]
    public async Task A_dose_for_the_package_is_told_against_the_air_of_the_kit_in_use()
    {
        IRenderedComponent<FoodLabelPage> page = await NewAsync();
        await TypeAsync(page, "of which sugars", "40");
        await page.InvokeAsync(() => page.FindAll("select")[1].Change("package"));
        page.WaitForAssertion(() => Assert.Contains("against the air of sea level, no height being known", Care(page), StringComparison.Ordinal));
        string high = KitFile.Write(BuiltInKit.LanternShed).Replace("120 m", "5000 ft", StringComparison.Ordinal);
        Guid kit = await Book.Kits.CreateAsync(high, cancellation: Cancellation);
        await TypeAsync(page, "Protein", "7");
        page.WaitForAssertion(() => Assert.Contains("against the air of 5000 ft", Care(page), StringComparison.Ordinal));
        await Book.Kits.Drafts.SaveAsync(kit, 1, high.Replace("5000 ft", "9000 m", StringComparison.Ordinal), "another text", "another tab", Cancellation);
        await TypeAsync(page, "Protein", "8");
        page.WaitForAssertion(() => Assert.Contains("the kit, height above the sea: 9000 m; must be -450 m to 6000 m", page.Find("form").TextContent, StringComparison.Ordinal));
        Assert.Contains("against the air of sea level", Care(page), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_late_write_of_another_field_is_merged_and_of_the_same_field_a_choice_that_loses_neither()
    {
        IRenderedComponent<FoodLabelPage> page = await NewAsync();
        Sheet sheet = Assert.Single(await Book.Foods.ListAsync(cancellation: Cancellation));
        await using Book elsewhere = await OpenAsync();
        string theirs = FoodFile.Write(Read(sheet)! with { MayContain = "sesame" });
        await elsewhere.Foods.Drafts.SaveAsync(sheet.Id, sheet.Revision, theirs, "may contain", "another program", Cancellation);
        await TypeAsync(page, "Protein", "7");
        Assert.Equal("sesame", (await StoredAsync(food => food.Label!.Protein is not null)).MayContain);

        Sheet now = Assert.Single(await Book.Foods.ListAsync(cancellation: Cancellation));
        await elsewhere.Foods.Drafts.SaveAsync(sheet.Id, now.Revision, now.Document.Replace("7 g", "9 g", StringComparison.Ordinal), "protein", "another program", Cancellation);
        await TypeAsync(page, "Protein", "8");
        IElement clash = page.WaitForElement(".clash");
        Assert.Contains("9 g", clash.TextContent, StringComparison.Ordinal);
        Assert.Contains("8 g", clash.TextContent, StringComparison.Ordinal);
        await page.FindAll("button").First(button => button.TextContent.Trim() == "All mine").ClickAsync();
        await StoredAsync(food => food.Label!.Protein?.Text == "8 g");
    }

    [Fact]
    public async Task Two_tabs_see_each_others_figures_and_undo_goes_back_to_the_empty_label()
    {
        IRenderedComponent<FoodLabelPage> one = await NewAsync();
        Guid id = Assert.Single(await Book.Foods.ListAsync(cancellation: Cancellation)).Id;
        IRenderedComponent<FoodLabelPage> two = OpenPage(id);
        two.WaitForElement("form");
        await TypeAsync(two, "Protein", "7");
        one.WaitForAssertion(() => Assert.Equal("7", Value(one, "Protein")));
        await Undo(one).ClickAsync();
        two.WaitForAssertion(() => Assert.Equal("", Value(two, "Protein")));
        await Undo(two).ClickAsync();
        one.WaitForAssertion(() => Assert.Equal("", Value(one, "Carbohydrate")));
        two.WaitForAssertion(() => Assert.True(Undo(two).HasAttribute("disabled")));
        Assert.Single(await Book.Foods.ListAsync(cancellation: Cancellation));
        await one.FindAll("button").First(button => button.TextContent == "Redo").ClickAsync();
        one.WaitForAssertion(() => Assert.Equal("50", Value(one, "Carbohydrate")));
    }

    [Fact]
    public async Task The_answer_follows_while_somebody_types_and_nothing_is_saved_before_the_pause()
    {
        IRenderedComponent<FoodLabelPage> page = await NewAsync();
        long revision = Assert.Single(await Book.Foods.ListAsync(cancellation: Cancellation)).Revision;
        string before = Cells(page, "means", "protein")[^1];
        await page.InvokeAsync(() => Field(page, "Protein").Input("7"));
        page.WaitForAssertion(() => Assert.NotEqual(before, Cells(page, "means", "protein")[^1]));
        await page.InvokeAsync(() => Field(page, "How much").Input("500 g"));
        page.WaitForAssertion(() => Assert.Contains("25", page.Find(".dose").TextContent, StringComparison.Ordinal));
        Assert.Equal(revision, Assert.Single(await Book.Foods.ListAsync(cancellation: Cancellation)).Revision);
    }

    [Fact]
    public async Task A_name_typed_with_pauses_makes_one_id_and_none_that_another_food_has()
    {
        await Book.Foods.CreateAsync(FoodFile.Write(new FoodSheet { Id = "granola", Name = "Granola", Family = "other" }), cancellation: Cancellation);
        IRenderedComponent<FoodLabelPage> page = RenderMetric<FoodLabelPage>();
        page.WaitForElement("form");
        IElement Name() => Field(page, "Name");
        await page.InvokeAsync(() => Name().Focus());
        foreach (string soFar in (string[])["Gra", "Granola"])
        {
            await page.InvokeAsync(() => Name().Input(soFar));
            Clock.Step(TimeSpan.FromSeconds(1));
            page.WaitForAssertion(() => Assert.Equal(soFar, page.Find("h1").TextContent));
        }

        await page.InvokeAsync(() => Name().Blur());
        Sheet made = (await Book.Foods.ListAsync(cancellation: Cancellation)).Single(sheet => Read(sheet)!.Id != "granola");
        Assert.Equal(("Granola", "granola-2"), (made.Name, Read(made)!.Id));
        Assert.Single(await Book.Foods.Drafts.HistoryAsync(made.Id, cancellation: Cancellation), edit => edit.ParentId is null && edit.After == made.Document);
    }

    private static string Care(IRenderedComponent<FoodLabelPage> page) => page.Find("section[aria-labelledby=care]").TextContent;

    [Fact]
    public async Task A_full_disk_is_told_the_text_stays_and_is_saved_again_once_there_is_room()
    {
        string words = string.Join(", ", Enumerable.Repeat("sugar", 3000));
        IRenderedComponent<FoodLabelPage> page = await NewAmericanAsync();
        await TypeAsync(page, "Protein", "2");
        await StoredAsync(food => food.Label!.Protein is not null);
        Disk.IsFull = true;
        await TypeAsync(page, "Ingredients", words);
        page.WaitForAssertion(() => Assert.Contains("Not saved: There is no room left", page.Find(".saved").TextContent, StringComparison.Ordinal));
        Assert.Equal(words, Value(page, "Ingredients"));
        Disk.IsFull = false;
        await page.FindAll("button").First(button => button.TextContent == "Save again").ClickAsync();
        await StoredAsync(food => food.Ingredients == words);
        page.WaitForAssertion(() => Assert.StartsWith("Saved", page.Find(".saved").TextContent.Trim(), StringComparison.Ordinal));
    }

    private static FoodSheet? Read(Sheet sheet) => FoodFile.Read(sheet.Document).Value;

    private static IElement Undo(IRenderedComponent<FoodLabelPage> page) => page.FindAll("button").First(button => button.TextContent == "Undo");

    private static string? Value(IRenderedComponent<FoodLabelPage> page, string label) => Field(page, label).GetAttribute("value");

    private IRenderedComponent<FoodLabelPage> OpenPage(Guid id) => RenderMetric<FoodLabelPage>(p => p.Add(x => x.Id, id));

    private async Task<string?> TextAsync(string path) =>
        LabelDesk.TextOf(Assert.Single(await Book.Foods.ListAsync(cancellation: Cancellation)).Document)[path];

    private static IElement Field(IRenderedComponent<FoodLabelPage> page, string label)
    {
        IElement found = page.FindAll("label").First(element => element.TextContent.Trim() == label);
        return page.Find("#" + found.GetAttribute("for"));
    }

    private static IElement Line(IRenderedComponent<FoodLabelPage> page, string label) => Field(page, label).ParentElement!;

    private static IElement Button(IRenderedComponent<FoodLabelPage> page, string name) =>
        page.FindAll("button").First(button => button.GetAttribute("aria-label") == name);

    /// <summary>Found and used in one go, since an answer that comes meanwhile draws the page anew.</summary>
    private static Task TypeAsync(IRenderedComponent<FoodLabelPage> page, string label, string text) => page.InvokeAsync(() =>
    {
        Field(page, label).Input(text);
        Field(page, label).Change(text);
    });

    /// <summary>A page for a food that stands in the book already, with 50 g of carbohydrate in 100 g, and its answer reckoned.</summary>
    private async Task<IRenderedComponent<FoodLabelPage>> NewAsync()
    {
        IRenderedComponent<FoodLabelPage> page = RenderMetric<FoodLabelPage>();
        page.WaitForElement("form");
        await TypeAsync(page, "Carbohydrate", "50");
        await StoredAsync(food => food.Label!.Carbohydrate is not null);
        page.WaitForElement("#does");
        return page;
    }

    /// <summary>The same under an American panel.</summary>
    private async Task<IRenderedComponent<FoodLabelPage>> NewAmericanAsync()
    {
        IRenderedComponent<FoodLabelPage> page = await NewAsync();
        await page.InvokeAsync(() => page.FindAll("input[type=radio]")[0].Change(true));
        page.WaitForAssertion(() => Assert.Contains(page.FindAll("label"), label => label.TextContent == "Total carbohydrate"));
        return page;
    }

    /// <summary>The figures of a row of the answer.</summary>
    private static string[] Cells(IRenderedComponent<FoodLabelPage> page, string section, string part)
    {
        IElement? head = page.FindAll($"section[aria-labelledby={section}] th").FirstOrDefault(head => head.TextContent == part);
        return head is null ? [""] : [.. head.ParentElement!.QuerySelectorAll("td").Select(cell => cell.TextContent.Trim())];
    }

    private async Task<FoodSheet> StoredAsync(Func<FoodSheet, bool> isThere)
    {
        const int Tries = 200;
        for (int i = 0; i < Tries; i++)
        {
            if ((await Book.Foods.ListAsync(cancellation: Cancellation)) is [{ } sheet] && Read(sheet) is { } food && isThere(food))
            {
                return food;
            }

            await Task.Delay(50, Cancellation);
        }

        Assert.Fail("It never came into the book.");
        throw new InvalidOperationException();
    }
}
