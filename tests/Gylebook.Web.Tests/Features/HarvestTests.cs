using Bunit;
using Gylebook.Forecast.Report.Pitching;
using Gylebook.Gyles;
using Gylebook.Gyles.Cellar;
using Gylebook.Gyles.Plans;
using Gylebook.Gyles.Shopping;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;
using Gylebook.Store;
using Gylebook.Tests.Shared;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Cellar;
using Gylebook.Web.Features.Larders;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Tests.Features;

/// <summary>Yeast taken out of a fermenter becomes a lot of the larder, goes with its entry, and is pitched into the next gyle.</summary>
public sealed class HarvestTests : GylebookTestContext
{
    private HarvestDesk Harvests => Services.GetRequiredService<HarvestDesk>();

    [Fact]
    public async Task A_jar_is_a_lot_and_taken_back_it_is_none_and_the_taking_back_taken_back_it_is_one_again()
    {
        OpenGyle gyle = await PitchedAsync();
        BrewAction entry = await HarvestAsync(gyle);
        YeastSheet sheet = Assert.Single(await SheetsAsync());
        Lot<YeastFigures> lot = Assert.Single(sheet.Lots);
        Assert.Equal(("english-ale", gyle.Line.Name, "400 mL", $"{sheet.Id}/{gyle.Line.Name}"), (sheet.Like, lot.Name, lot.Amount!.Value.Text, entry.Lot));
        Assert.Equal((new DateOnly(2026, 3, 14), gyle.Line.Name, 1d, "barley"), (lot.Assay!.Harvest!.Day, lot.Assay.Harvest.From, lot.Assay.Harvest.Generation, lot.Assay.Harvest.MayContain));
        Assert.Equal("took out 400 mL of yeast, lot " + lot.Name + " of English ale", (await OpenAsync(gyle)).Log.Actions[^1].What);

        Clock.Step(TimeSpan.FromDays(3));
        Assert.Contains($"harvested 3 days ago from {gyle.Line.Name}, generation 1; may contain barley", RenderMetric<LarderPage>().Markup, StringComparison.Ordinal);

        // The answer got lost, and it is sent once more.
        await Gyles.DoAsync(gyle, [entry], Cancellation);
        Assert.Single((await SheetsAsync()).Single().Lots);

        Guid undone = await UndoAsync(gyle, entry.EntryId!.Value);
        Assert.Empty((await SheetsAsync()).Single().Lots);
        Assert.Empty(HarvestDesk.Jars(await OpenAsync(gyle)));

        await UndoAsync(gyle, undone);
        Assert.Equal(lot, (await SheetsAsync()).Single().Lots.Single());
    }

    [Fact]
    public async Task A_second_jar_stands_beside_the_first_and_what_somebody_else_typed_into_the_sheet_stays()
    {
        OpenGyle gyle = await PitchedAsync();
        await HarvestAsync(gyle);
        Sheet sheet = (await Book.Larder.ListAsync(cancellation: Cancellation)).Single();
        await Book.Larder.Drafts.SaveAsync(sheet.Id, sheet.Revision, sheet.Document.Replace("\"lots\"", "\"pack\": \"wrong\", \"lots\"", StringComparison.Ordinal), "typed", "tab", Cancellation);
        BrewAction second = await HarvestAsync(gyle);
        string text = (await Book.Larder.ListAsync(cancellation: Cancellation)).Single().Document;
        Assert.Contains("\"wrong\"", text, StringComparison.Ordinal);
        Assert.Contains($"\"{gyle.Line.Name} 2\"", text, StringComparison.Ordinal);
        await UndoAsync(gyle, second.EntryId!.Value);
        text = (await Book.Larder.ListAsync(cancellation: Cancellation)).Single().Document;
        Assert.Contains("\"wrong\"", text, StringComparison.Ordinal);
        Assert.DoesNotContain($"\"{gyle.Line.Name} 2\"", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_next_gyle_pitches_the_jar_by_its_age_is_generation_two_and_the_jar_stays_once_it_is_used()
    {
        OpenGyle first = await PitchedAsync();
        BrewAction jar = await HarvestAsync(first);
        Clock.Step(TimeSpan.FromDays(30));
        string recipe = File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json"));
        int yeast = recipe.IndexOf("\"yeast\"", StringComparison.Ordinal), open = recipe.LastIndexOf('{', yeast), close = recipe.IndexOf('}', yeast);
        string key = jar.Lot!;
        string line = $$"""{ "yeast": "{{key[..key.IndexOf('/', StringComparison.Ordinal)]}}", "lot": "{{first.Line.Name}}", "amount": "200 mL", "at": "pitch" }""";
        Guid id = await Book.Recipes.CreateAsync(recipe[..open] + line + recipe[(close + 1)..], cancellation: Cancellation);
        Assert.Equal(0.4, Yeast((await Gyles.PrepareAsync(id, Cancellation))!).AtHandKilograms!.Value, 1e-9);
        OpenGyle second = await OpenAsync(await StartedAsync(id));

        // 30 days: 0.8 by the one rule, 0.79 by the other, of a billion in a millilitre. Common practice, both.
        PitchAdvice pitch = GyleInputs.Of(second.Plan)!.Forecast(second.Plan.Seed, [], draws: 0).Pitch!;
        Assert.Equal((158, 160), (Math.Round(pitch.CellsLowBillions!.Value, 6), Math.Round(pitch.CellsHighBillions!.Value, 6)));
        Assert.Equal(pitch.CellsNeededBillions / 0.8, pitch.OfThisSlurryMillilitres!.Value.Low, 1e-6);
        Assert.Equal(pitch.CellsNeededBillions / 0.79, pitch.OfThisSlurryMillilitres!.Value.High, 1e-6);
        HarvestableYeast again = Assert.Single(HarvestOutlook.Of(second.Plan)!.Yeasts);
        Assert.Equal((2, key[..key.IndexOf('/', StringComparison.Ordinal)]), (again.Generation!.Value, again.SheetId));

        (Gylebook.Gyles.BrewDay.BrewStep step, Gylebook.Gyles.BrewDay.StepItem item) = second.Plan.Steps.SelectMany(step => step.Items.Select(item => (step, item))).Single(one => one.item.Lot == key);
        await Gyles.DoAsync(second, [GyleDesk.Tick(step, item, new BrewAction { At = Clock.GetUtcNow(), EntryId = Guid.CreateVersion7(), What = "" })], Cancellation);
        Assert.Equal(0.2, (await Gyles.UsedOfLotsAsync(Cancellation))[key], 1e-9);
        Assert.Contains("400 mL, 200 mL left", RenderMetric<LarderPage>().Markup, StringComparison.Ordinal);
        await UndoAsync(first, jar.EntryId!.Value);
        Assert.Single((await SheetsAsync()).Single().Lots);
    }

    [Fact]
    public async Task A_day_before_the_pitch_or_to_come_a_name_twice_and_a_yeast_there_is_not_are_refused()
    {
        OpenGyle gyle = await PitchedAsync();
        await HarvestAsync(gyle);
        TypedHarvest jar = new("400 mL", Harvests.Today);
        (TypedHarvest Typed, string Where)[] wrong =
        [
            (jar with { Day = Harvests.Today.AddDays(1) }, "on"), (jar with { Day = Harvests.Today.AddDays(-1) }, "on"),
            (jar with { Called = gyle.Line.Name.ToUpperInvariant() }, "called"), (jar with { Called = new string('x', 201) }, "called"), (jar with { Of = "another" }, "of"),
        ];
        foreach ((TypedHarvest typed, string where) in wrong)
        {
            (BrewAction? entry, IReadOnlyList<Finding> findings) = await Harvests.HarvestAsync(gyle, HarvestOutlook.Of(gyle.Plan)!, typed, Cancellation);
            Assert.Null(entry);
            Assert.Equal(where, Assert.Single(findings).Where);
        }

        Assert.Single((await SheetsAsync()).Single().Lots);
    }

    [Fact]
    public async Task The_form_is_there_once_yeast_was_pitched_and_puts_a_jar_into_the_larder_and_back()
    {
        OpenGyle gyle = await StartedAsync();
        Assert.Empty(Render<HarvestForm>(with => with.Add(form => form.Gyle, gyle)).Markup.Trim());

        gyle = await PitchedAsync(gyle);
        int changed = 0;
        IRenderedComponent<HarvestForm> form = Render<HarvestForm>(with => with.Add(one => one.Gyle, gyle).Add(one => one.Changed, () => changed++));
        form.WaitForElement("form");
        Assert.Contains("A closed jar bursts", form.Markup, StringComparison.Ordinal);
        form.Find("form").Submit();
        Assert.Contains("say how much slurry", form.Find("[role=alert]").TextContent, StringComparison.Ordinal);

        form.Find("input[placeholder='400 mL']").Change("350");
        form.Find("form").Submit();
        form.WaitForAssertion(() => Assert.Equal(1, changed));
        Assert.Equal("350 mL", (await SheetsAsync()).Single().Lots.Single().Amount!.Value.Text);
        gyle = await OpenAsync(gyle);
        form.Render(with => with.Add(one => one.Gyle, gyle));
        await form.InvokeAsync(() => form.Find("li button").Click());
        form.WaitForAssertion(() => Assert.Equal(2, changed));
        Assert.Empty((await SheetsAsync()).Single().Lots);
    }

    private static ShoppingItem Yeast(GyleToBe gyle) => gyle.Shopping(new Dictionary<string, double>()).Items.Single(item => item.Sheet is YeastSheet);

    private async Task<List<YeastSheet>> SheetsAsync() =>
        [.. (await Book.Larder.ListAsync(cancellation: Cancellation)).Select(sheet => LarderFile.Yeast.Read(sheet.Document).Value!)];

    private async Task<BrewAction> HarvestAsync(OpenGyle gyle)
    {
        (BrewAction? entry, IReadOnlyList<Finding> findings) = await Harvests.HarvestAsync(gyle, HarvestOutlook.Of(gyle.Plan)!, new TypedHarvest("400 mL", Harvests.Today), Cancellation);
        Assert.True(entry is not null, string.Join('\n', findings));
        return entry;
    }

    private async Task<Guid> UndoAsync(OpenGyle gyle, Guid entry)
    {
        Clock.Step(TimeSpan.FromMinutes(1));
        BrewAction undone = new() { At = Clock.GetUtcNow(), EntryId = Guid.CreateVersion7(), Kind = ActionKind.Undone, Undoes = entry, What = "" };
        await Gyles.DoAsync(gyle, [undone], Cancellation);
        return undone.EntryId!.Value;
    }

    private async Task<OpenGyle> OpenAsync(OpenGyle gyle) => (await Gyles.OpenAsync(gyle.Line.Id, Cancellation))!;

    private async Task<OpenGyle> PitchedAsync(OpenGyle? started = null)
    {
        OpenGyle gyle = started ?? await StartedAsync();
        await Gyles.DoAsync(gyle, [new BrewAction { At = Clock.GetUtcNow(), EntryId = Guid.CreateVersion7(), Kind = ActionKind.Done, Step = "pitch", What = "" }], Cancellation);
        return await OpenAsync(gyle);
    }

    private async Task<OpenGyle> StartedAsync(Guid? recipe = null)
    {
        recipe ??= await Book.Recipes.CreateAsync(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json")), cancellation: Cancellation);
        (GyleLine? gyle, IReadOnlyList<Finding> findings) = await Gyles.StartAsync(recipe.Value, cancellation: Cancellation);
        Assert.True(gyle is not null, string.Join('\n', findings));
        return (await Gyles.OpenAsync(gyle.Id, Cancellation))!;
    }
}
