using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Gylebook.Engine.State;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Beer;
using Gylebook.Forecast.Report.Pitching;
using Gylebook.Pictures;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Tests.Shared;
using Gylebook.Web.Features.Larders;
using Gylebook.Recipes.Larders;
using Gylebook.Web.Features.Recipes;
using Gylebook.Web.Drafting;
using Gylebook.Web.Features.Recipes.Showing;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Tests.Features.Recipes;

/// <summary>Bitterness, glass, yeast and style on the recipe's page, each with the forecast of a sample.</summary>
public sealed class BeerPartsTests : GylebookTestContext
{
    private const int Fuggle = 5;
    private const int Yeast = 7;

    // Weights are typed to a tenth of a gram: of some 56 g for 28 IBU that is less than a tenth of an IBU.
    private const double IbuOfATenthGram = 0.1;

    [Fact]
    public async Task A_swapped_hop_keeps_the_bitterness_and_loses_what_was_said_of_the_old_one()
    {
        RecipeDesk desk = await DeskAsync();
        await desk.EditAsync(d => d.Put($"ingredients[{Fuggle}].age", "100 d"));
        double before = desk.Outlook!["bitterness"]!.Likely;
        IRenderedComponent<HopKeep> keep = RenderMetric<HopKeep>(p => p.Add(x => x.Desk, desk).Add(x => x.Line, desk.Now.Lines[Fuggle]).Add(x => x.Name, "Fuggle"));
        await keep.FindAll("select")[1].ChangeAsync(new ChangeEventArgs { Value = "Target" });
        await keep.FindAll("form")[1].SubmitAsync();
        DraftLine line = desk.Now.Lines[Fuggle];
        Assert.Equal(("Target", null, null), (line.Of, line.Alpha, line.Age));
        Assert.Equal(before, desk.Outlook!["bitterness"]!.Likely, IbuOfATenthGram);
        Assert.Contains($"swapped for Target, {line.Amount}", keep.Find("[role=status]").TextContent, StringComparison.Ordinal);
        Assert.Equal($"Fuggle: swapped for Target, {line.Amount}, IBU kept", desk.Draft.UndoLabel);
        // More alpha takes less hop: 56 g of Fuggle at 4.8 %, aged, against Target by the table.
        Assert.True(double.Parse(line.Amount.Split(' ')[0], CultureInfo.InvariantCulture) < 56);
    }

    [Fact]
    public async Task A_swap_is_weighed_by_the_model_that_is_shown()
    {
        RecipeDesk desk = await DeskAsync();
        desk.Ask(ForecastRequest.Usual with { Bitterness = BitternessModel.Isomerisation });
        double before = desk.Outlook!["bitterness"]!.Likely;
        IRenderedComponent<HopKeep> keep = RenderMetric<HopKeep>(p => p.Add(x => x.Desk, desk).Add(x => x.Line, desk.Now.Lines[Fuggle]).Add(x => x.Name, "Fuggle"));
        await keep.FindAll("input")[0].InputAsync("20");
        await keep.FindAll("form")[0].SubmitAsync();
        Assert.Equal("boil 20 min", desk.Now.Lines[Fuggle].At);
        Assert.Equal(before, desk.Outlook!["bitterness"]!.Likely, IbuOfATenthGram);
    }

    [Fact]
    public async Task A_move_that_cannot_keep_the_bitterness_says_why_and_changes_nothing()
    {
        RecipeDesk desk = await DeskAsync();
        IRenderedComponent<HopKeep> keep = RenderMetric<HopKeep>(p => p.Add(x => x.Desk, desk).Add(x => x.Line, desk.Now.Lines[Fuggle]).Add(x => x.Name, "Fuggle"));
        string text = desk.Now.Text;
        await keep.FindAll("select")[0].ChangeAsync(new ChangeEventArgs { Value = nameof(AdditionPoint.Ferment) });
        await keep.FindAll("form")[0].SubmitAsync();
        Assert.Equal("hop.noAmount", keep.Find("[data-code]").GetAttribute("data-code"));
        Assert.Equal(text, desk.Now.Text);
        await keep.FindAll("input")[0].InputAsync("soon");
        await keep.FindAll("form")[0].SubmitAsync();
        Assert.Equal("at.unknown", keep.Find("[data-code]").GetAttribute("data-code"));
    }

    [Fact]
    public async Task How_a_hop_was_kept_begins_with_what_was_assumed_and_can_be_taken_back()
    {
        RecipeDesk desk = await DeskAsync();
        double fresh = desk.Outlook!["bitterness"]!.Likely;
        await desk.EditAsync(d => d.Put($"ingredients[{Fuggle}].age", "200 d"));
        double open = desk.Outlook!["bitterness"]!.Likely;
        Assert.True(open < fresh);
        await desk.EditAsync(d => d.Packed(Fuggle, "open"));
        Assert.Equal("20 °C", desk.Now[$"ingredients[{Fuggle}].storage.temperature"]);
        Assert.Equal(open, desk.Outlook!["bitterness"]!.Likely, 1e-9);
        await desk.EditAsync(d => d.Put($"ingredients[{Fuggle}].storage.temperature", "0 °C"));
        Assert.Equal("Fuggle, kept at: 20 °C → 0 °C", desk.Draft.UndoLabel);
        Assert.InRange(desk.Outlook!["bitterness"]!.Likely, open, fresh);
        await desk.EditAsync(d => d.Packed(Fuggle, ""));
        Assert.False(desk.Now.Has($"ingredients[{Fuggle}].storage"));
        await desk.EditAsync(d => d.Put($"ingredients[{Fuggle}].age", ""));
        Assert.Equal(fresh, desk.Outlook!["bitterness"]!.Likely, 1e-9);
    }

    [Fact]
    public async Task The_other_model_of_bitterness_is_asked_for_in_the_address_and_both_stand_side_by_side()
    {
        RecipeDesk desk = await DeskAsync();
        IRenderedComponent<BitternessPicker> picker = RenderMetric<BitternessPicker>(p => p.Add(x => x.Desk, desk));
        string[] byTable = Beer(picker);
        await picker.Find("select").ChangeAsync(new ChangeEventArgs { Value = "isomerisation" });
        Assert.EndsWith("?bitterness=isomerisation", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
        desk.Ask(RecipeQuery.Read("isomerisation", null));
        picker.Render();
        Assert.Equal(byTable.Reverse(), Beer(picker));
        Assert.NotEqual(byTable[0], byTable[1]);
        Assert.EndsWith("?open=history&bitterness=isomerisation", desk.Address("history"), StringComparison.Ordinal);
        Assert.Equal(ForecastRequest.Usual, RecipeQuery.Read("magic", "no-such-style"));
    }

    [Fact]
    public async Task The_glass_shows_the_colour_of_the_forecast_and_says_how_far_to_trust_it()
    {
        RecipeDesk desk = await DeskAsync();
        IRenderedComponent<GlassLook> glass = RenderMetric<GlassLook>(p => p.Add(x => x.Desk, desk));
        Appearance look = desk.Outlook!.Forecast.Appearance!;
        Assert.Equal(look.Hex, glass.Find("rect").GetAttribute("fill"));
        Assert.Contains("In 5\u00A0cm of clear beer", glass.Find("figcaption").TextContent, StringComparison.Ordinal);
        // Pumpkin seed and honey: nobody knows their colour.
        Assert.Contains("At least this dark", glass.Markup, StringComparison.Ordinal);
        Assert.Equal(!look.InGamut, glass.Markup.Contains("outside what a screen can show", StringComparison.Ordinal));
        Assert.Empty(glass.FindAll("[style]"));
    }

    [Fact]
    public async Task Old_liquid_yeast_is_told_as_a_band_with_a_starter_by_both_models()
    {
        RecipeDesk desk = await DeskAsync();
        await desk.EditAsync(d => d.Put($"ingredients[{Yeast}].form", "liquid"));
        IRenderedComponent<PitchPanel> panel = RenderMetric<PitchPanel>(p => p.Add(x => x.Desk, desk));
        Assert.Equal("not known", panel.Find("[data-pitch=pitched] dd").TextContent);
        await desk.EditAsync(d => d.Put($"ingredients[{Yeast}].cells", AgeText.InBillions("100")));
        await desk.EditAsync(d => d.Put($"ingredients[{Yeast}].age", AgeText.InDays("60")));
        panel.Render();
        PitchAdvice pitch = desk.Outlook!.Forecast.Pitch!;
        Assert.True(pitch.CellsLowBillions < pitch.CellsHighBillions && pitch.CellsHighBillions < 100);
        Assert.Equal(FormattableString.Invariant($"{pitch.CellsLowBillions:0} to {pitch.CellsHighBillions:0} billion"), panel.Find("[data-pitch=pitched] dd").TextContent);
        Assert.Contains("mg/L", panel.Find("[data-pitch=oxygen] dd").TextContent, StringComparison.Ordinal);
        string[] kept = [.. panel.FindAll(".starter tbody th").Select(th => th.TextContent.Split(',')[0]).Distinct()];
        Assert.Equal(["Left to stand", "On a stirrer"], kept);
        Assert.Equal(pitch.Starters.Sum(s => s.Steps.Count), panel.FindAll(".starter tbody tr").Count);
    }

    [Fact]
    public async Task What_speaks_against_harvesting_is_said_once_where_the_yeast_is_in_hand()
    {
        RecipeDesk desk = await DeskAsync();
        string doubt = Assert.Single(desk.Outlook!.Forecast.Pitch!.HarvestDoubts);
        Assert.Contains(doubt, Assert.Single(desk.CautionsAt(RecipeStage.Package), c => c.Code == "yeast.harvest").Message, StringComparison.Ordinal);
        IRenderedComponent<PitchPanel> panel = RenderMetric<PitchPanel>(p => p.Add(x => x.Desk, desk));
        Assert.DoesNotContain(doubt, panel.Markup, StringComparison.Ordinal);
        Assert.Contains("stands under Package", panel.Find(".harvest").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_style_is_chosen_in_the_address_and_told_in_a_sentence_and_five_rows()
    {
        RecipeDesk desk = await DeskAsync();
        IRenderedComponent<StyleBeside> beside = RenderMetric<StyleBeside>(p => p.Add(x => x.Desk, desk));
        Assert.Equal(StyleTable.All.Count + 1, beside.FindAll("option").Count);
        Assert.Empty(beside.FindAll("table"));
        await beside.Find("select").ChangeAsync(new ChangeEventArgs { Value = "munich-helles" });
        Assert.EndsWith("?style=munich-helles", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
        desk.Ask(RecipeQuery.Read(null, "munich-helles"));
        beside.Render();
        Assert.Equal(desk.Outlook!.Forecast.StyleFit!.Sentence, beside.Find("p").TextContent);
        Assert.Equal(5, beside.FindAll("tbody tr").Count);
        // The guideline's gravities as the table of the file has them: 1.044 to 1.048.
        Assert.Equal("1.044 to 1.048", beside.FindAll("tbody tr td")[1].TextContent);
        Assert.Contains("from memory", beside.Find("small").TextContent, StringComparison.Ordinal);
    }

    private static string[] Beer(IRenderedComponent<BitternessPicker> picker) =>
        [.. picker.FindAll(".sum td").Select(cell => cell.TextContent)];

    private async Task<RecipeDesk> DeskAsync()
    {
        await Book.Foods.CreateAsync(await TextAsync("samples/recipes/foods/pumpkin-seed-flour.json"), cancellation: Cancellation);
        Guid id = await Book.Recipes.CreateAsync(await TextAsync("samples/recipes/hedgerow-brown.json"), cancellation: Cancellation);
        Larder larder = await OwnLarder.OfAsync(Book, Cancellation);
        return new RecipeDesk((await OpenDraft.OpenAsync(Book.Drafts, id, RecipeDraft.Of, "one"))!, BuiltInKit.LanternShed, larder, new Shown(ReaderUnits.Metric));
    }

    private static Task<string> TextAsync(string file) => File.ReadAllTextAsync(RepositoryFile.PathOf(file), Cancellation);
}
