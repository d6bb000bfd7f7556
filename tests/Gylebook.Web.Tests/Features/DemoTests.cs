using Bunit;
using Gylebook.Engine.Readings;
using Gylebook.Gyles;
using Gylebook.Recipes.Interchange;
using Gylebook.Store;
using Gylebook.Web.Demo;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Larders;
using Gylebook.Web.Features.Kits;

namespace Gylebook.Web.Tests.Features;

/// <summary>The demo comes once and goes for good.</summary>
public sealed class DemoTests : GylebookTestContext
{
    [Fact]
    public async Task Everything_of_it_reads_and_is_marked()
    {
        Assert.True(await LanternShed.MoveInAsync(Book, Cancellation));
        List<RecipeLine> recipes = await Book.Recipes.ListAsync(cancellation: Cancellation);
        Assert.Equal(4, recipes.Count);
        Assert.All(recipes, recipe => Assert.True(recipe.IsDemo));
        foreach (RecipeLine recipe in recipes)
        {
            Draft draft = (await Book.Drafts.FindAsync(recipe.Id, Cancellation))!;
            Assert.NotNull(RecipeFile.Read(draft.Document).Value);
        }

        Assert.NotNull((await OwnLarder.OfAsync(Book, Cancellation)).Food("pumpkin-seed-flour"));
        KitInUse kit = await KitInUse.FindAsync(Book, Cancellation);
        Assert.Equal(LanternShed.Name, kit.Kit.Name);
        Assert.NotNull(kit.Id);
    }

    [Fact]
    public async Task Its_gyles_stand_at_four_places_of_the_way_and_go_with_it()
    {
        await LanternShed.MoveInAsync(Book, Cancellation);
        await LanternShed.BrewAsync(Book, Clock, Cancellation);
        List<GyleLine> gyles = await Book.Gyles.ListAsync(Cancellation);
        Assert.All(gyles, gyle => Assert.True(gyle.IsDemo));
        Assert.Equal([GyleStatus.Planned, GyleStatus.Brewing, GyleStatus.Fermenting, GyleStatus.Packaged], gyles.Select(gyle => gyle.Status).Order());
        OpenGyle half = (await Gyles.OpenAsync(gyles.Single(gyle => gyle.Status == GyleStatus.Brewing).Id, Cancellation))!;
        Assert.Equal("to-boil", half.Log.Current!.Step.Key);
        Assert.Equal(2, half.Taken.Count);
        Assert.All(half.Log.Actions, action => Assert.True(action.At <= Clock.GetUtcNow()));

        // The hidden truth is one of the draws: no reading of it is out of reach.
        Assert.All(half.Live()!.AfterReadings!.Readings, reading => Assert.NotEqual(ReadingTrust.SetAside, reading.Gate.Trust));
        await Book.RemoveDemoAsync(Cancellation);
        Assert.Empty(await Book.Gyles.ListAsync(Cancellation));
    }

    [Fact]
    public async Task It_never_comes_twice_nor_after_it_was_sent_away_nor_to_a_book_in_use()
    {
        Assert.True(await LanternShed.MoveInAsync(Book, Cancellation));
        Assert.False(await LanternShed.MoveInAsync(Book, Cancellation));
        IRenderedComponent<DemoNote> note = Render<DemoNote>();
        note.WaitForElement("button").Click();
        note.WaitForAssertion(() => Assert.Contains("The demo is removed", note.Markup, StringComparison.Ordinal));
        Assert.Empty(await Book.Recipes.ListAsync(cancellation: Cancellation));
        Assert.False(await LanternShed.MoveInAsync(Book, Cancellation));
        Assert.Empty(await Book.Recipes.ListAsync(cancellation: Cancellation));
        Assert.Null((await KitInUse.FindAsync(Book, Cancellation)).Id);
    }

    [Fact]
    public async Task A_book_that_has_recipes_is_left_alone()
    {
        await Book.Recipes.CreateAsync("""{ "format": "gylebook-recipe/1", "name": "Mine" }""", cancellation: Cancellation);
        Assert.False(await LanternShed.MoveInAsync(Book, Cancellation));
        Assert.Single(await Book.Recipes.ListAsync(cancellation: Cancellation));
    }
}
