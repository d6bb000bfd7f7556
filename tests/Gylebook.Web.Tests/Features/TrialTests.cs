using AngleSharp.Dom;
using Bunit;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Interchange;
using Gylebook.Store;
using Gylebook.Tests.Shared;
using Gylebook.Web.Features.Foods;
using Gylebook.Web.Features.Foods.Labels;

namespace Gylebook.Web.Tests.Features;

/// <summary>Bench trials on the pages of a food: kept with its sheet, told for a batch.</summary>
public sealed class TrialTests : GylebookTestContext
{
    [Fact]
    public async Task A_trial_is_kept_with_the_food_glass_by_glass_and_goes_again()
    {
        Guid id = await Book.Foods.CreateAsync(Flour, cancellation: Cancellation);
        IRenderedComponent<FoodLabelPage> page = RenderMetric<FoodLabelPage>(with => with.Add(p => p.Id, id));
        page.WaitForElement("section[aria-labelledby=trials]");
        Assert.Contains("Tell tasters what is in the glasses", page.Find("section[aria-labelledby=trials]").TextContent, StringComparison.Ordinal);

        await PressAsync(page, "Add a bench trial");
        await TypeAsync(page, "In which beer", "Bitter");
        await PressAsync(page, "Add a glass");
        await PressAsync(page, "Add a glass");
        await TypeAsync(page, "Mark", "8", 2);
        KeptTrial trial = (await StoredAsync(id, food => food.Trials is [{ Beer: "Bitter", Glasses: [_, _, { Mark: 8 }] }])).Trials[0];
        Assert.Equal(new DateOnly(2026, 3, 14), trial.Day);
        Assert.Equal(["0 g/L", "1 g/L", "2 g/L"], trial.Glasses.Select(glass => glass.Dose.Text));

        // What cannot be read stays as it was typed, and says why beside the field.
        await TypeAsync(page, "Dose", "a pinch", 1);
        page.WaitForAssertion(() => Assert.Contains("write a dose as", page.Find("section[aria-labelledby=trials]").TextContent, StringComparison.Ordinal));
        Assert.Contains("a pinch", (await Book.Foods.FindAsync(id, Cancellation))!.Document, StringComparison.Ordinal);
        await TypeAsync(page, "Dose", "1.5 g/L", 1);

        await PressAsync(page, "Remove this glass");
        Assert.Equal(["1.5 g/L", "2 g/L"], (await StoredAsync(id, food => food.Trials is [{ Glasses.Count: 2 }])).Trials[0].Glasses.Select(glass => glass.Dose.Text));
        await PressAsync(page, "Remove this trial");
        await StoredAsync(id, food => food.Trials.Count == 0);
    }

    /// <remarks>3 g/L in 19 L are 57 g and in 10 L 30 g, by hand.</remarks>
    [Fact]
    public async Task The_best_dose_is_told_for_the_litres_somebody_types()
    {
        const string Trial = """{ "day": "2026-03-01", "beer": "Bitter", "dosed": "tincture", "glasses": [ { "dose": "0 g/L", "mark": 5 }, { "dose": "3 g/L", "mark": 8, "notes": "toast" } ] }""";
        Guid id = await Book.Foods.CreateAsync(Flour.TrimEnd()[..^1] + $", \"trials\": [ {Trial} ] }}", cancellation: Cancellation);
        IRenderedComponent<FoodPage> page = RenderMetric<FoodPage>(with => with.Add(p => p.SheetId, id));
        IElement Section() => page.Find("section[aria-labelledby=trials]");
        Assert.Equal("1 March 2026, in Bitter, as tincture", Section().QuerySelector("h3")!.TextContent);
        Assert.StartsWith("3 g/L: 57 g in 19 L. Begin with 48.5 g", Plain(Section().QuerySelector(".best")!), StringComparison.Ordinal);
        Assert.Contains("Tell tasters", Section().TextContent, StringComparison.Ordinal);

        page.Find("section[aria-labelledby=trials] input").Change("10");
        Assert.StartsWith("3 g/L: 30 g in 10 L", Plain(Section().QuerySelector(".best")!), StringComparison.Ordinal);
        page.Find("section[aria-labelledby=trials] input").Change("a bucket");
        Assert.NotEmpty(page.Find("#into-problem").TextContent);
        Assert.StartsWith("3 g/L: 30 g in 10 L", Plain(Section().QuerySelector(".best")!), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_food_without_trials_says_nothing_of_them_and_leads_to_where_one_is_kept()
    {
        Guid id = await Book.Foods.CreateAsync(Flour, cancellation: Cancellation);
        IRenderedComponent<FoodPage> page = RenderMetric<FoodPage>(with => with.Add(p => p.SheetId, id));
        Assert.Empty(page.FindAll("section[aria-labelledby=trials]"));
        Assert.EndsWith($"foods/own/{id}/label#trials", page.FindAll("a").Single(link => link.TextContent == "Keep a bench trial").GetAttribute("href"), StringComparison.Ordinal);
    }

    private static string Flour { get; } = File.ReadAllText(RepositoryFile.PathOf("samples/recipes/foods/pumpkin-seed-flour.json"));

    private static string Plain(IElement element) => element.TextContent.Replace('\u00A0', ' ');

    private static Task PressAsync(IRenderedComponent<FoodLabelPage> page, string button) =>
        page.InvokeAsync(() => page.FindAll("section[aria-labelledby=trials] button").First(one => one.TextContent == button).Click());

    private static Task TypeAsync(IRenderedComponent<FoodLabelPage> page, string label, string text, int which = 0) => page.InvokeAsync(() =>
    {
        IElement Field() => page.Find("#" + page.FindAll("section[aria-labelledby=trials] label").Where(one => one.TextContent == label).ElementAt(which).GetAttribute("for"));
        Field().Input(text);
        Field().Change(text);
    });

    private async Task<FoodSheet> StoredAsync(Guid id, Func<FoodSheet, bool> isThere)
    {
        const int Tries = 200;
        string text = "";
        for (int i = 0; i < Tries; i++)
        {
            text = (await Book.Foods.FindAsync(id, Cancellation))!.Document;
            if (FoodFile.Read(text).Value is { } food && isThere(food))
            {
                return food;
            }

            await Task.Delay(50, Cancellation);
        }

        throw new InvalidOperationException($"It never came into the book: {text}");
    }
}
