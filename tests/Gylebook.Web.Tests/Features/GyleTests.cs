using System.Text.Json;
using Bunit;
using Gylebook.Gyles;
using Gylebook.Pictures;
using Gylebook.Store;
using Gylebook.Tests.Shared;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Larders;

namespace Gylebook.Web.Tests.Features;

/// <summary>Gyles on the pages: what is weighed and bought, what browsers send, what a page shows beside the plan.</summary>
public sealed class GyleTests : GylebookTestContext
{
    [Fact]
    public async Task Before_it_starts_all_that_is_weighed_is_told_and_what_the_lots_lack()
    {
        foreach (string sheet in Directory.GetFiles(RepositoryFile.PathOf("samples/recipes/lots/larder"), "*.json"))
        {
            await Book.Files.PutAsync(File.ReadAllText(sheet), new ClashAnswer.Ask(), "test", Cancellation);
        }

        Guid recipe = await Book.Recipes.CreateAsync(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/lots/larder-bitter.json")), cancellation: Cancellation);
        GyleToBe gyle = (await Gyles.PrepareAsync(recipe, cancellation: Cancellation))!;
        Assert.NotNull(gyle.Plan);
        ToWeigh[] fromLots = [.. gyle.Weighing(new Dictionary<string, double>()).Where(item => item.LeftKilograms is not null)];
        Assert.NotEmpty(fromLots);
        Assert.All(fromLots, item => Assert.Equal(Math.Max(0, item.Item.Kilograms!.Value - item.LeftKilograms!.Value), item.ToBuyKilograms!.Value, 1e-9));

        // What one gyle used up is gone for the next; taken back, it is there again.
        OpenGyle started = (await Gyles.OpenAsync((await Gyles.StartAsync(recipe, cancellation: Cancellation)).Gyle!.Id, Cancellation))!;
        ToWeigh first = fromLots[0];
        Assert.Empty((await new GyleIntake(Gyles).TakeAsync(started, [Sent("ticked", step: started.Plan.Steps.First(step => step.Items.Contains(first.Item)).Key, item: first.Item.Key)], Cancellation)).Refused);
        Dictionary<string, double> used = await Gyles.UsedOfLotsAsync(Cancellation);
        Assert.Equal(first.Item.Kilograms!.Value, Assert.Single(used).Value, 1e-9);
        Assert.Equal(first.LeftKilograms!.Value - first.Item.Kilograms.Value, gyle.Weighing(used).First(item => item.Item.Key == first.Item.Key).LeftKilograms!.Value, 1e-9);
        IRenderedComponent<LarderPage> larder = RenderMetric<LarderPage>();
        Assert.Contains($"{new Shown(ReaderUnits.Metric).Kilograms(first.LeftKilograms.Value - first.Item.Kilograms.Value)} left", larder.Markup, StringComparison.Ordinal);
        Guid tick = (await Gyles.OpenAsync(started.Line.Id, Cancellation))!.Log.Actions[0].EntryId!.Value;
        await new GyleIntake(Gyles).TakeAsync(started, [Sent("undone") with { Undoes = tick }], Cancellation);
        Assert.Empty(await Gyles.UsedOfLotsAsync(Cancellation));
    }

    [Fact]
    public async Task What_a_browser_sends_is_taken_once_in_order_and_what_is_wrong_is_refused_by_name()
    {
        OpenGyle gyle = await StartedAsync();
        SentEntry one = Sent("said", what: "one"), two = Sent("said", what: "two") with { At = Clock.GetUtcNow().AddSeconds(1) }, odd = Sent("dances");
        SentEntry bad = Sent("read") with { Reading = JsonDocument.Parse("""{ "at": "copper-up", "gravity": "ten" }""").RootElement };
        IntakeAnswer answer = await new GyleIntake(Gyles).TakeAsync(gyle, [one, odd, two, bad], Cancellation);
        Assert.Equal([one.Id, two.Id], answer.Taken);
        Assert.Equal([odd.Id, bad.Id], answer.Refused.Select(refused => refused.Id));
        Assert.Contains("\"dances\" is no kind of entry", answer.Refused[0].Why, StringComparison.Ordinal);
        Assert.Contains("write a gravity as", answer.Refused[1].Why, StringComparison.Ordinal);

        // The answer was lost on the way, and the browser sends all of it once more.
        answer = await new GyleIntake(Gyles).TakeAsync(gyle, [one, two], Cancellation);
        Assert.Equal([one.Id, two.Id], answer.Taken);
        Assert.Equal(["one", "two"], answer.Log.Select(entry => entry.What));
    }

    [Fact]
    public async Task The_page_shows_the_plan_beside_what_is_expected_now_and_follows()
    {
        SetRendererInfo(new("Server", true));
        OpenGyle gyle = await StartedAsync();
        IRenderedComponent<GylePage> page = RenderMetric<GylePage>(with => with.Add(p => p.Id, gyle.Line.Id));
        Assert.Contains("Nothing was read yet", page.Markup, StringComparison.Ordinal);
        await new GyleIntake(Gyles).TakeAsync(gyle, [Sent("read") with { Reading = JsonDocument.Parse("""{ "at": "copper-up", "gravity": "1.034", "temperature": "20 °C", "checked": true }""").RootElement }], Cancellation);
        page.WaitForAssertion(() => Assert.Contains("Ways on", page.Markup, StringComparison.Ordinal));
        Assert.Contains("gravity, copper-up: 1.0340 SG read", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_gyle_that_is_only_planned_says_for_when_and_leads_to_its_recipe()
    {
        Guid recipe = await Book.Recipes.CreateAsync(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json")), cancellation: Cancellation);
        Guid gyle = await Book.Gyles.PlanAsync(recipe, "Soon", null, new DateTimeOffset(2026, 12, 4, 12, 0, 0, TimeSpan.Zero), cancellation: Cancellation);
        SetRendererInfo(new("Server", true));
        IRenderedComponent<GylePage> page = RenderMetric<GylePage>(with => with.Add(p => p.Id, gyle));
        Assert.Equal("Soon", page.Find("h1").TextContent);
        Assert.Contains("Planned for 4 December 2026", page.Markup, StringComparison.Ordinal);
        Assert.Equal($"recipes/{recipe}", page.Find("p a").GetAttribute("href"));
    }

    [Fact]
    public async Task A_recipe_that_cannot_be_brewed_says_why_and_starts_nothing()
    {
        string text = File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json")).Replace("pale ale malt", "no such malt", StringComparison.Ordinal);
        Guid recipe = await Book.Recipes.CreateAsync(text, cancellation: Cancellation);
        IRenderedComponent<StartGylePage> page = RenderMetric<StartGylePage>(with => with.Add(p => p.Recipe, recipe));
        Assert.Contains("no such malt", page.Markup, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("button.big"));
        (GyleLine? gyle, _) = await Gyles.StartAsync(recipe, cancellation: Cancellation);
        Assert.Null(gyle);
        Assert.Empty(await Book.Gyles.ListAsync(Cancellation));
    }

    private async Task<OpenGyle> StartedAsync()
    {
        Guid recipe = await Book.Recipes.CreateAsync(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json")), cancellation: Cancellation);
        (GyleLine? gyle, _) = await Gyles.StartAsync(recipe, cancellation: Cancellation);
        Assert.Equal(GyleStatus.Brewing, gyle!.Status);
        return (await Gyles.OpenAsync(gyle.Id, Cancellation))!;
    }

    private SentEntry Sent(string kind, string? step = null, string? item = null, string? what = null) =>
        new(Guid.CreateVersion7(), Clock.GetUtcNow(), kind) { Step = step, Item = item, What = what };
}
