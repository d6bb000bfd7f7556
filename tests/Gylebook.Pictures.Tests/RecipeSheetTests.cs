using System.Xml;
using System.Xml.Linq;
using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Forecast.Report;
using Gylebook.Pictures.Sheets;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Pictures.Tests;

/// <summary>The sheet to print: nothing that goes in is missing, nothing typed becomes markup, units are the reader's.</summary>
public sealed class RecipeSheetTests
{
    public static TheoryData<string> Brewable() => SampleForecasts.Brewable();

    public static TheoryData<string> All() => [.. SampleForecasts.Names];

    [Theory]
    [MemberData(nameof(All))]
    public void Every_line_stands_where_it_goes_in_with_its_weight_and_its_time(string recipe)
    {
        RecipeSheet sheet = SampleForecasts.SheetOf(recipe);
        Shown shown = new(ReaderUnits.Metric);
        string[] written = TextsOf(RecipeSheetHtml.File(sheet));
        foreach (IngredientLine line in SampleForecasts.Recipe(recipe).Ingredients.Where(line => !line.Amount.IsNothing))
        {
            string amount = line.Amount.Mass is { } mass ? shown.Kilograms(mass.Value.Kilograms) : shown.Litres(line.Amount.Volume!.Value.Value.Litres);
            string when = line.At.Point is AdditionPoint.Mash or AdditionPoint.Package ? "" : Words.Of(line.At);
            string place = line.At.Point switch
            {
                AdditionPoint.Mash => "Mash",
                <= AdditionPoint.Stand => SampleForecasts.Recipe(recipe).Boil is null ? "Kettle" : "Boil",
                <= AdditionPoint.Ferment => "Ferment",
                _ => "Package",
            };
            SheetPart part = Assert.Single(sheet.Parts, part => part.Name == place);
            Assert.Contains(part.Rows, row => row.When == when && row.Amount.Split(", ")[0] == amount);
            Assert.Contains(amount, string.Join('\n', written), StringComparison.Ordinal);
        }

        int own = sheet.Parts.Where(part => part.Name != "Water").Sum(part => part.Rows.Count);
        Assert.True(own >= SampleForecasts.Recipe(recipe).Ingredients.Count(line => !line.Amount.IsNothing));
        Assert.All(sheet.Parts.SelectMany(part => part.Rows), row => Assert.Contains(row.What, written));
    }

    [Theory]
    [MemberData(nameof(Brewable))]
    public void Liquor_numbers_allergens_and_cautions_are_those_of_the_forecast(string recipe)
    {
        BrewForecast forecast = SampleForecasts.Of(recipe);
        RecipeSheet sheet = SampleForecasts.SheetOf(recipe);
        Shown shown = new(ReaderUnits.Metric);
        string written = string.Join('\n', TextsOf(RecipeSheetHtml.File(sheet)));
        Assert.Equal(
            forecast.Additions.Where(a => a.Place.Stage is Stage.Strike or Stage.Rinse or Stage.TopUp).Select(a => shown.Litres(a.LitresAt20C)),
            sheet.Parts.Where(part => part.Name == "Water").SelectMany(part => part.Rows).Select(row => row.Amount));
        Assert.Contains(shown.Gravity(forecast.Headline.Single(h => h.Name == "originalGravity").Band!.Likely), written, StringComparison.Ordinal);
        Assert.Contains(forecast.Allergens.StatementEu, written, StringComparison.Ordinal);
        Assert.Contains(forecast.Allergens.StatementUs, written, StringComparison.Ordinal);
        Assert.NotEmpty(forecast.Cautions);
        Assert.All(forecast.Cautions, caution =>
        {
            Assert.Equal(caution.IsGrave, sheet.Parts.Any(part => part.Cautions.Any(grave => grave.Message == caution.Message)));
            Assert.Contains(caution.IsGrave ? caution.Message : caution.Kind.Mark, written, StringComparison.Ordinal);
        });
    }

    [Theory]
    [InlineData("hard-well.json")]
    [InlineData("soft-blend.json")]
    [InlineData("glass-and-kettle.json")]
    [InlineData("measured-mash.json")]
    public void All_that_the_water_plan_weighs_out_stands_there_as_it_is_sold(string water)
    {
        BrewForecast forecast = SampleForecasts.Of("hedgerow-brown.json", water: water);
        SheetRow[] rows = [.. SampleForecasts.SheetOf("hedgerow-brown.json", water).Parts.SelectMany(part => part.Rows)];
        Shown shown = new(ReaderUnits.Metric);
        (string Name, double Amount, string Unit)[] doses =
        [
            .. new[] { forecast.Water!.Mash, forecast.Water.Sparge, forecast.Water.Kettle, forecast.Water.Package }.SelectMany(liquor =>
                liquor.Salts.Select(dose => (dose.Salt.Name, dose.Grams, "g")).Concat(liquor.Acids.Select(dose => (dose.Acid.Name, dose.Units, dose.Acid.Acid.UnitSymbol)))),
        ];
        Assert.NotEmpty(doses);
        Assert.All(doses, dose => Assert.Contains(rows, row => row.What == Words.Sentence(dose.Name) && row.Amount == $"{shown.Number(dose.Amount, 1)}{Shown.Space}{dose.Unit}"));

        // Each stands there once: not again as the pure salt or acid that the run is told.
        Assert.Equal(doses.Length, rows.Count(row => doses.Any(dose => row.What == Words.Sentence(dose.Name) && row.Amount.EndsWith(dose.Unit, StringComparison.Ordinal))));
    }

    [Fact]
    public void What_was_typed_never_becomes_markup()
    {
        const string Hostile = "<script>alert(1)</script>\"'&<img src=x onerror=alert(2)>\u0001";
        Recipe recipe = SampleForecasts.Recipe("hedgerow-brown.json");
        RecipeSheet sheet = SampleForecasts.SheetOf(
            recipe with { Name = Hostile, Notes = Hostile, Ingredients = [.. recipe.Ingredients.Select(line => line with { As = Hostile })] });
        string html = RecipeSheetHtml.Page(sheet, "style.css\"><script>", "icon.svg\"><script>", Hostile);
        XDocument page = Parsed(html);
        Assert.DoesNotContain(page.Descendants(), element => element.Name.LocalName is "script" or "img" || element.Attributes().Any(a => a.Name.LocalName is "onerror" or "style"));
        string shown = Hostile.Replace('\u0001', '?');
        Assert.Equal(shown, page.Descendants("h1").Single().Value);
        Assert.Contains(page.Descendants("th"), cell => cell.Value.StartsWith(shown, StringComparison.Ordinal));
        page = Parsed(RecipeSheetHtml.File(SampleForecasts.SheetOf(recipe with { Notes = Hostile })));
        Assert.Equal(shown, page.Descendants("p").Single(p => (string?)p.Attribute("class") == "notes").Value);
    }

    [Theory]
    [MemberData(nameof(Brewable))]
    public void Units_of_the_United_States_are_so_throughout(string recipe)
    {
        RecipeSheet sheet = SampleForecasts.SheetOf(recipe, units: ReaderUnits.UnitedStates);
        string[] texts =
        [
            .. sheet.Figures.SelectMany(figure => new[] { figure.Value, figure.Ends }),
            .. sheet.Parts.Select(part => part.Aside),
            .. sheet.Parts.SelectMany(part => part.Rows).SelectMany(row => new[] { row.What, row.When, row.Amount, row.Brings }),
            .. RunTable.Of(sheet.Run!).Rows.SelectMany(row => row),
        ];
        Assert.Contains(texts, text => text.EndsWith(Shown.Space + "US gal", StringComparison.Ordinal));
        Assert.Contains(texts, text => text.Contains("°F", StringComparison.Ordinal));
        Assert.All(texts, text =>
        {
            Assert.DoesNotContain("°C", text, StringComparison.Ordinal);
            Assert.DoesNotMatch("\u00A0(kg|L|EBC)\\b", text);
        });
    }

    [Fact]
    public void A_long_recipe_drops_its_notes_and_keeps_every_line_and_caution()
    {
        Recipe recipe = SampleForecasts.Recipe("hedgerow-brown.json") with { Notes = string.Join(' ', Enumerable.Repeat("Stir well.", 40)) };
        Recipe longer = recipe with { Ingredients = [.. Enumerable.Repeat(recipe.Ingredients[1], 18), .. recipe.Ingredients] };
        string brief = RecipeSheetHtml.File(SampleForecasts.SheetOf(recipe)), full = RecipeSheetHtml.File(SampleForecasts.SheetOf(longer));
        Assert.Contains("Stir well.", brief, StringComparison.Ordinal);
        Assert.DoesNotContain("Stir well.", full, StringComparison.Ordinal);
        Assert.Equal(19, TextsOf(full).Count(text => text == "Munich malt"));
        Assert.Contains(TextsOf(full), text => text.StartsWith("Glass bursts", StringComparison.Ordinal));
    }

    [Fact]
    public void What_cannot_be_brewed_says_why_and_still_tells_what_goes_in()
    {
        RecipeSheet sheet = SampleForecasts.SheetOf("edges/tun-batch.json");
        Assert.Null(sheet.Run);
        Assert.Empty(sheet.Figures);
        string[] written = TextsOf(RecipeSheetHtml.File(sheet));
        Assert.NotEmpty(sheet.Problems);
        Assert.All(sheet.Problems, problem => Assert.Contains(written, text => text.Contains(problem.Message, StringComparison.Ordinal)));
        Assert.NotEmpty(sheet.Parts.SelectMany(part => part.Rows));
    }

    [Fact]
    public void A_file_carries_its_style_and_a_page_of_a_site_does_not()
    {
        RecipeSheet sheet = SampleForecasts.SheetOf("plain-bitter.json");
        Assert.Single(Parsed(RecipeSheetHtml.File(sheet)).Descendants("style"));
        XDocument page = Parsed(RecipeSheetHtml.Page(sheet, "../sheet.css", "../icon.svg", "../recipe"));
        Assert.Empty(page.Descendants("style"));
        Assert.Equal([("icon", "../icon.svg"), ("stylesheet", "../sheet.css")], page.Descendants("link").Select(link => (link.Attribute("rel")!.Value, link.Attribute("href")!.Value)));
        Assert.Equal("../recipe", page.Descendants("a").Single().Attribute("href")!.Value);
    }

    private static string[] TextsOf(string html) =>
        [.. Parsed(html).Descendants().Where(element => element.Name.LocalName is "th" or "td" or "p" or "dd" or "li" or "h1" or "span" or "footer").Select(element => element.Value.Trim())];

    /// <summary>What we write is XML too, so that any unescaped sign fails here.</summary>
    private static XDocument Parsed(string html)
    {
        using XmlReader reader = XmlReader.Create(new StringReader(html), new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore });
        return XDocument.Load(reader);
    }
}
