using CsCheck;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Tests.Editing;

public sealed class DraftMergeTests
{
    private static readonly AdditionTime Mash = new(AdditionPoint.Mash);

    private static RecipeDraft Hedgerow => RecipeDraft.Of(Samples.Text("samples", "recipes", "hedgerow-brown.json"));

    [Fact]
    public void Differences_are_told_in_words()
    {
        RecipeDraft other = Hedgerow.Put("ingredients[0].amount", "4 kg")!.After.Put("boil.time", "75 min")!.After
            .Remove(3).After.Add(IngredientKind.Malt, "wheat malt", "300 g", Mash).After;
        Assert.Equal(
            ["boil, time: 60 min → 75 min", "pale ale malt: 3.6 kg → 4 kg", "chocolate malt: 100 g → ", "wheat malt:  → 300 g, mash"],
            DraftComparison.Between(Hedgerow, other).Select(c => $"{c.What}: {c.Before} → {c.After}"));
    }

    [Fact]
    public void Edits_of_different_fields_are_both_had()
    {
        DraftMerge<RecipeDraft> merge = DraftMerge.Of(
            Hedgerow, Hedgerow.Put("ingredients[0].amount", "4 kg")!.After, Hedgerow.Put("ingredients[1].amount", "700 g")!.After);
        Assert.False(merge.HasConflicts);
        RecipeDraft both = merge.With(_ => true);
        Assert.Equal(("4 kg", "700 g"), (both["ingredients[0].amount"], both["ingredients[1].amount"]));
    }

    [Fact]
    public void Edits_of_one_field_are_a_choice_between_both_texts()
    {
        DraftMerge<RecipeDraft> merge = DraftMerge.Of(
            Hedgerow, Hedgerow.Put("ingredients[0].amount", "4 kg")!.After, Hedgerow.Put("ingredients[0].amount", "5 kg")!.After);
        MergeChoice choice = Assert.Single(merge.Choices);
        Assert.Equal(("5 kg", "4 kg", true), (choice.Yours.After, choice.Theirs, choice.IsConflict));
        Assert.Equal("5 kg", merge.With(_ => true)["ingredients[0].amount"]);
        Assert.Equal("4 kg", merge.With(_ => false)["ingredients[0].amount"]);
    }

    [Fact]
    public void The_same_edit_twice_is_one() => Assert.Empty(DraftMerge.Of(
        Hedgerow, Hedgerow.Put("ingredients[0].amount", "4 kg")!.After, Hedgerow.Put("ingredients[0].amount", "4 kg")!.After).Choices);

    [Fact]
    public void Work_on_a_line_they_took_out_brings_it_back_when_chosen()
    {
        DraftMerge<RecipeDraft> merge = DraftMerge.Of(Hedgerow, Hedgerow.Remove(1).After, Hedgerow.Put("ingredients[1].amount", "700 g")!.After);
        Assert.True(merge.HasConflicts);
        Assert.DoesNotContain(merge.With(_ => false).Lines, l => l.Of == "munich malt");
        Assert.Equal((1, "700 g"), merge.With(_ => true).Lines.Where(l => l.Of == "munich malt").Select(l => (l.Number, l.Amount)).Single());
    }

    [Fact]
    public void Work_on_a_rest_they_took_out_is_a_choice_of_the_whole_list()
    {
        RecipeDraft basis = Hedgerow.AddRest("mash.rests").After;
        DraftMerge<RecipeDraft> merge = DraftMerge.Of(basis, basis.RemoveItem("mash.rests", 1).After, basis.Put("mash.rests[1].time", "20 min")!.After);
        Assert.True(Assert.Single(merge.Choices).IsConflict);
        Assert.Equal(1, merge.With(_ => false).CountOf("mash.rests"));
        Assert.Equal("20 min", merge.With(_ => true)["mash.rests[1].time"]);
    }

    [Fact]
    public void Lines_added_on_both_sides_are_all_there()
    {
        RecipeDraft both = DraftMerge.Of(
            Hedgerow,
            Hedgerow.Add(IngredientKind.Malt, "wheat malt", "1 kg", Mash).After,
            Hedgerow.Add(IngredientKind.Malt, "rye malt", "1 kg", Mash).After.Add(IngredientKind.Malt, "oat malt", "1 kg", Mash).After).With(_ => true);
        Assert.Equal(Hedgerow.Lines.Count + 3, both.Lines.Count);
        Assert.True(Place(both, "rye malt") < Place(both, "oat malt"));
    }

    [Fact]
    public void With_nobody_else_editing_your_side_comes_out_whole() =>
        Gen.Select(RandomRecipes.Any, RandomRecipes.Any).Sample((one, other) =>
        {
            RecipeDraft basis = RecipeDraft.Of(RecipeFile.Write(one));
            RecipeDraft yours = RecipeDraft.Of(RecipeFile.Write(other));
            DraftMerge<RecipeDraft> merge = DraftMerge.Of(basis, basis, yours);
            Assert.False(merge.HasConflicts);
            Assert.Empty(DraftComparison.Between(yours, merge.With(_ => true)));
            Assert.Empty(DraftComparison.Between(basis, merge.With(_ => false)));
        });

    [Fact]
    public void A_draft_differs_from_itself_in_nothing() => RandomRecipes.Any.Sample(recipe =>
        Assert.Empty(DraftComparison.Between(RecipeDraft.Of(RecipeFile.Write(recipe)), RecipeDraft.Of(RecipeFile.Write(recipe)))));

    private static int Place(RecipeDraft draft, string of) => draft.Lines.Single(l => l.Of == of).Number;
}
