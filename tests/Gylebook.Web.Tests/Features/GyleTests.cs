using System.Text.Json;
using Bunit;
using Gylebook.Gyles;
using Gylebook.Gyles.Vessels;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;
using Gylebook.Store;
using Gylebook.Tests.Shared;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Larders;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

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
        GyleToBe gyle = (await Gyles.PrepareAsync(recipe, Cancellation))!;
        Assert.NotNull(gyle.Plan);
        ToWeigh[] fromLots = [.. gyle.Weighing(new Dictionary<string, double>()).Where(item => item.LeftKilograms is not null)];
        Assert.NotEmpty(fromLots);
        ToWeigh yeast = fromLots.Single(item => item.Lot!.Name == "H118");
        Assert.Equal((0.023, 0.0115), (yeast.LeftKilograms!.Value, yeast.Item.Kilograms!.Value));

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
    public async Task With_yeast_in_it_ferments_and_with_that_taken_back_it_is_on_brew_day_again()
    {
        OpenGyle gyle = await StartedAsync();
        SentEntry pitched = Sent("done", step: "pitch");
        await new GyleIntake(Gyles).TakeAsync(gyle, [Sent("done", step: "cast"), pitched], Cancellation);
        Assert.Equal(GyleStatus.Fermenting, (await Book.Gyles.FindAsync(gyle.Line.Id, Cancellation))!.Status);
        await new GyleIntake(Gyles).TakeAsync(gyle, [Sent("undone") with { Undoes = pitched.Id }], Cancellation);
        Assert.Equal(GyleStatus.Brewing, (await Book.Gyles.FindAsync(gyle.Line.Id, Cancellation))!.Status);
    }

    [Fact]
    public async Task A_planned_gyle_is_planned_anew_and_started_itself_and_only_once()
    {
        Guid recipe = await BitterAsync();
        GyleLine planned = (await Gyles.PlanAsync(new(recipe), new(2026, 3, 20), Cancellation)).Gyle!;
        Assert.Equal(("Plain Bitter, 20 March 2026", GyleStatus.Planned), (planned.Name, planned.Status));
        GyleOrder order = new(recipe) { GyleId = planned.Id };
        Assert.Equal("Plain Bitter, 22 March 2026", (await Gyles.PlanAsync(order, new(2026, 3, 22), Cancellation)).Gyle!.Name);
        (GyleLine? none, IReadOnlyList<Finding> findings) = await Gyles.PlanAsync(order, new(2026, 3, 13), Cancellation);
        Assert.Null(none);
        Assert.Equal("13 March 2026; must be today, 14 March 2026, or later", Assert.Single(findings).Message);

        // Called by its day, it is called by the day on which it is brewed.
        GyleLine started = (await Gyles.StartAsync(order, cancellation: Cancellation)).Gyle!;
        Assert.Equal((planned.Id, "Plain Bitter, 14 March 2026", GyleStatus.Brewing), (started.Id, started.Name, started.Status));
        Assert.Single(await Book.Gyles.ListAsync(Cancellation));
        Assert.Equal("gyle.gone", Assert.Single((await Gyles.StartAsync(order, cancellation: Cancellation)).Findings).Code);
    }

    [Fact]
    public async Task What_was_looked_at_is_frozen_and_reckoned_again_only_when_something_has_changed()
    {
        Guid recipe = await BitterAsync();
        GyleToBe seen = (await Gyles.PrepareAsync(recipe, Cancellation))!;
        Clock.Step(TimeSpan.FromMinutes(5));
        GyleToBe same = (await Gyles.SketchAsync(new(recipe), Cancellation))!.Reckoned(seen);
        Assert.Same(seen.Plan!.Priors, same.Plan!.Priors);
        Assert.Equal(Clock.GetUtcNow(), same.Plan.Frozen);

        Draft draft = (await Book.Drafts.FindAsync(recipe, Cancellation))!;
        await Book.Drafts.SaveAsync(recipe, draft.Revision, draft.Document.Replace("3.6 kg", "3.7 kg", StringComparison.Ordinal), "more", "tab", Cancellation);
        GyleToBe other = (await Gyles.SketchAsync(new(recipe), Cancellation))!.Reckoned(seen);
        Assert.NotSame(seen.Plan.Priors, other.Plan!.Priors);
        Assert.Contains("3.7 kg", (await Gyles.OpenAsync((await Gyles.StartAsync(new(recipe), seen, Cancellation)).Gyle!.Id, Cancellation))!.Plan.Recipe, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_vessel_that_is_taken_is_refused_by_name_and_moves_with_the_pitch()
    {
        Guid kit = await Book.Kits.CreateAsync(File.ReadAllText(RepositoryFile.PathOf("samples/kits/lantern-shed.json")), cancellation: Cancellation);
        Guid recipe = await BitterAsync();
        OpenGyle first = (await Gyles.OpenAsync((await Gyles.StartAsync(new GyleOrder(recipe) { Name = "First", Vessels = new("left", null) }, cancellation: Cancellation)).Gyle!.Id, Cancellation))!;
        Assert.Equal(kit, first.Line.KitId);

        // Ten days at 19 °C by samples/recipes/plain-bitter.json.
        Assert.Equal(new VesselStay(VesselKind.Fermenter, "Left", new(2026, 3, 14), new(2026, 3, 24)), Assert.Single(first.Line.Stays));
        GyleOrder wish = new(recipe) { Vessels = new("Left", null) };
        (GyleLine? none, IReadOnlyList<Finding> findings) = await Gyles.PlanAsync(wish, new(2026, 3, 23), Cancellation);
        Assert.Null(none);
        Assert.Equal(("vessel.taken", "fermenter"), (Assert.Single(findings).Code, findings[0].Where));
        Assert.Equal("Left holds First from 14 March 2026 to 24 March 2026, and is wanted from 23 March 2026 to 2 April 2026", findings[0].Message);
        Assert.Contains("no keg is filled", Assert.Single((await Gyles.PlanAsync(wish with { Vessels = new(null, "Robin") }, new(2026, 4, 1), Cancellation)).Findings).Message, StringComparison.Ordinal);
        GyleLine next = (await Gyles.PlanAsync(wish, new(2026, 3, 24), Cancellation)).Gyle!;

        // Pitched a day late: nobody is refused what has happened, and the calendar says that both want it.
        await new GyleIntake(Gyles).TakeAsync(first, [Sent("done", step: "pitch") with { At = Clock.GetUtcNow().AddDays(1) }], Cancellation);
        Assert.Equal(new DateOnly(2026, 3, 25), Assert.Single((await Book.Gyles.FindAsync(first.Line.Id, Cancellation))!.Stays).Until);
        IRenderedComponent<VesselCalendar> calendar = RenderMetric<VesselCalendar>(with => with.Add(p => p.MayEmpty, true));
        Assert.Contains($"for {next.Name}: one of them has to go elsewhere", calendar.Find(".clash").TextContent, StringComparison.Ordinal);
        Assert.Equal(["Left", "Right", "Robin", "Wren", "Finch"], calendar.FindAll("th[scope=row]").Select(head => head.TextContent.Split(' ')[0]));
        Assert.Equal(2, calendar.FindAll("tbody tr")[0].QuerySelectorAll("rect").Length);
        calendar.FindAll("button").First(button => button.TextContent.StartsWith("Give it up", StringComparison.Ordinal)).Click();
        calendar.WaitForAssertion(() => Assert.Empty(calendar.FindAll(".clash")));
        Assert.Empty((await Book.Gyles.FindAsync(next.Id, Cancellation))!.Stays);
    }

    [Fact]
    public async Task The_page_starts_the_planned_gyle_or_plans_one_and_says_what_is_taken()
    {
        await Book.Kits.CreateAsync(File.ReadAllText(RepositoryFile.PathOf("samples/kits/lantern-shed.json")), cancellation: Cancellation);
        Guid recipe = await BitterAsync();
        GyleLine planned = (await Gyles.PlanAsync(new(recipe) { Name = "Soon", Vessels = new("Left", null) }, new(2026, 3, 20), Cancellation)).Gyle!;
        IRenderedComponent<StartGylePage> page = RenderMetric<StartGylePage>(with => with.Add(p => p.Recipe, recipe));
        Assert.Equal($"recipes/{recipe}/start?gyle={planned.Id}", page.FindAll("a").Single(link => link.TextContent == "Start that one").GetAttribute("href"));
        Assert.Equal(["none said", "Left: Soon from 20 March 2026 to 30 March 2026", "Right: free"], page.FindAll("#fermenter option").Select(option => option.TextContent));
        Assert.Empty(page.FindAll("#keg"));
        page.Find("#fermenter").Change("Left");
        page.Find("#day").Change("2026-03-22");
        page.Find("form").Submit();
        page.WaitForAssertion(() => Assert.Contains("Left holds Soon", page.Find("#refused").TextContent, StringComparison.Ordinal));
        Assert.Equal("true", page.Find("#fermenter").GetAttribute("aria-invalid"));
        page.Find("#fermenter").Change("Right");
        page.Find("form").Submit();
        page.WaitForAssertion(() => Assert.StartsWith($"{PageUrls.Gyles}/", new Uri(Services.GetRequiredService<NavigationManager>().Uri).AbsolutePath[1..], StringComparison.Ordinal));
        Assert.Equal(2, (await Gyles.PlannedAsync(recipe, Cancellation)).Count);
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
        Assert.Equal([$"recipes/{recipe}", $"recipes/{recipe}/start?gyle={gyle}"], page.FindAll("p a").Select(link => link.GetAttribute("href")));
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

    private Task<Guid> BitterAsync() => Book.Recipes.CreateAsync(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json")), cancellation: Cancellation);

    private async Task<OpenGyle> StartedAsync()
    {
        Guid recipe = await BitterAsync();
        (GyleLine? gyle, _) = await Gyles.StartAsync(recipe, cancellation: Cancellation);
        Assert.Equal(GyleStatus.Brewing, gyle!.Status);
        return (await Gyles.OpenAsync(gyle.Id, Cancellation))!;
    }

    private SentEntry Sent(string kind, string? step = null, string? item = null, string? what = null) =>
        new(Guid.CreateVersion7(), Clock.GetUtcNow(), kind) { Step = step, Item = item, What = what };
}
