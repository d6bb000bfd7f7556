using CsCheck;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Tests.Editing;

public sealed class RecipeDraftTests
{
    private static RecipeDraft Hedgerow => RecipeDraft.Of(Samples.Text("samples", "recipes", "hedgerow-brown.json"));

    [Fact]
    public void An_amount_is_changed_in_its_place_and_nothing_else_moves()
    {
        DraftEdit<RecipeDraft> edit = Hedgerow.Put("ingredients[0].amount", "4 kg")!;
        Assert.Equal("pale ale malt: 3.6 kg → 4 kg", edit.Label);
        Assert.Equal(Hedgerow.Text.Replace("\"3.6 kg\"", "\"4 kg\"", StringComparison.Ordinal), edit.After.Text);
        Assert.Equal(4, edit.After.Recipe!.Ingredients[0].Amount.Mass!.Value.Value.Kilograms);
    }

    [Fact]
    public void What_cannot_be_read_stays_in_the_text_and_is_found_at_its_field()
    {
        RecipeDraft draft = Hedgerow.Put("ingredients[0].amount", "about four")!.After;
        Assert.Null(draft.Recipe);
        Assert.Contains(draft.Findings, f => f.Where == "ingredients[0].amount" && f.Severity == Severity.Error);
        RecipeDraft reopened = RecipeDraft.Of(draft.Text);
        Assert.Equal("about four", reopened["ingredients[0].amount"]);
        Assert.NotNull(reopened.Put("ingredients[0].amount", "4 kg")!.After.Recipe);
    }

    [Theory]
    [InlineData("ingredients[0].amount", "4", "4 kg")]
    [InlineData("ingredients[5].alpha", "5,2", "5,2 %")]
    [InlineData("mash.rests[0].temperature", "67", "67 °C")]
    [InlineData("boil.time", "75", "75 min")]
    public void A_bare_number_keeps_the_unit_it_replaces(string path, string typed, string kept) =>
        Assert.Equal(kept, Hedgerow.Put(path, typed)!.After[path]);

    [Fact]
    public void Souring_is_added_typed_into_and_taken_out()
    {
        DraftEdit<RecipeDraft> added = Hedgerow.AddSouring();
        Assert.Equal("souring: added", added.Label);
        Assert.True(added.After.Text.IndexOf("\"souring\"", StringComparison.Ordinal) < added.After.Text.IndexOf("\"boil\"", StringComparison.Ordinal));
        DraftEdit<RecipeDraft> sourer = added.After.Put("souring.ph", "3,2")!;
        Assert.Equal("souring, pH: 3.4 → 3,2", sourer.Label);
        Assert.Equal(3.2, sourer.After.Recipe!.Souring!.Ph.Value);
        Assert.Contains(sourer.After.Put("souring.ph", "very")!.After.Findings, f => f.Where == "souring.ph");
        Assert.Equal(Hedgerow.Text, sourer.After.Drop("souring")!.After.Text);
    }

    [Fact]
    public void A_bare_number_over_a_text_without_a_unit_stays_bare_and_is_a_finding()
    {
        RecipeDraft draft = Hedgerow.Put("boil.time", "an hour")!.After.Put("boil.time", "75")!.After;
        Assert.Equal("75", draft["boil.time"]);
        Assert.Contains(draft.Findings, f => f.Where == "boil.time");
    }

    [Fact]
    public void An_optional_field_emptied_goes_and_its_empty_parent_with_it()
    {
        DraftEdit<RecipeDraft> fixedStrike = Hedgerow.Put("liquor.strike", "24 L")!;
        Assert.Equal("strike liquor: planned → 24 L", fixedStrike.Label);
        Assert.Equal(24, fixedStrike.After.Recipe!.Liquor!.Strike!.Value.Value.Litres);
        DraftEdit<RecipeDraft> planned = fixedStrike.After.Put("liquor.strike", " ")!;
        Assert.Equal("strike liquor: 24 L → planned", planned.Label);
        Assert.Equal(Hedgerow.Text, planned.After.Text);
    }

    [Fact]
    public void A_needed_field_emptied_stays_empty_and_is_a_finding()
    {
        RecipeDraft draft = Hedgerow.Put("boil.time", "")!.After;
        Assert.Equal("", draft["boil.time"]);
        Assert.Contains(draft.Findings, f => f.Where == "boil.time");
    }

    [Fact]
    public void A_recipe_never_loses_its_name() => Assert.Null(Hedgerow.Put("name", "  "));

    [Fact]
    public void An_edit_that_changes_nothing_is_none() => Assert.Null(Hedgerow.Put("boil.time", "60 min"));

    [Fact]
    public void A_new_line_stands_behind_those_of_its_time()
    {
        DraftEdit<RecipeDraft> edit = Hedgerow.Add(IngredientKind.Hop, "Golding", "20 g", new AdditionTime(AdditionPoint.Boil, 10));
        Assert.Equal("Golding: added, 20 g", edit.Label);
        int place = edit.After.Lines.Single(l => l.Of == "Golding").Number;
        Assert.Equal(AdditionPoint.Boil, edit.After.Lines[place - 1].Time.Point);
        Assert.Equal(AdditionPoint.Pitch, edit.After.Lines[place + 1].Time.Point);
        Assert.NotNull(edit.After.Recipe);
    }

    [Fact]
    public void Lines_are_copied_moved_and_taken_out()
    {
        RecipeDraft twice = Hedgerow.Duplicate(1).After;
        Assert.Equal(["pale ale malt", "munich malt", "munich malt", "caramel malt"], twice.Lines.Take(4).Select(l => l.Of));
        Assert.Equal(Hedgerow.Text, twice.Remove(2).After.Text);
        DraftEdit<RecipeDraft> moved = Hedgerow.Move(3, 0)!;
        Assert.Equal("chocolate malt: moved up", moved.Label);
        Assert.Equal(Hedgerow.Text, moved.After.Move(0, 3)!.After.Text);
    }

    [Fact]
    public void A_rinse_comes_with_usual_figures_and_goes_as_a_whole()
    {
        RecipeDraft none = Hedgerow.Sparge(SpargeMethod.None)!.After;
        Assert.Equal(SpargePlan.None, none.Recipe!.Mash!.Sparge);
        RecipeDraft dunked = none.Sparge(SpargeMethod.Dunk)!.After;
        Assert.Equal(SpargeMethod.Dunk, dunked.Recipe!.Mash!.Sparge.Method);
        Assert.NotNull(dunked.Recipe.Mash.Sparge.Volume);
    }

    [Fact]
    public void Rests_stages_and_portions_come_and_go()
    {
        RecipeDraft draft = Hedgerow.AddRest("mash.rests").After.AddRest("ferment").After.AddPortion().After.AddStand().After;
        Assert.Equal((2, 2, 2, true), (draft.Recipe!.Mash!.Rests.Count, draft.Recipe.Ferment.Count, draft.Recipe.Portions.Count, draft.Recipe.Stand is not null));
        RecipeDraft back = draft.RemoveItem("mash.rests", 1).After.RemoveItem("ferment", 1).After
            .RemoveItem("portions", 1).After.RemoveItem("portions", 0).After.Drop("stand")!.After;
        Assert.Equal(RecipeDraft.Of(Hedgerow.Text).Recipe!.Name, back.Recipe!.Name);
        Assert.Empty(DraftComparison.Between(Hedgerow, back));
    }

    [Fact]
    public void The_first_lines_of_an_empty_recipe_make_it_one_that_can_be_brewed()
    {
        RecipeDraft empty = Hedgerow;
        while (empty.Lines.Count > 0)
        {
            empty = empty.Remove(0).After;
        }

        Assert.NotNull(empty.Recipe);
        RecipeDraft filled = empty
            .Add(IngredientKind.Malt, "pale ale malt", "4 kg", new AdditionTime(AdditionPoint.Mash)).After
            .Add(IngredientKind.Yeast, "English ale", "11 g", new AdditionTime(AdditionPoint.Pitch)).After;
        Assert.DoesNotContain(RecipeCheck.Findings(filled.Recipe!), f => f.Severity == Severity.Error);
    }

    [Fact]
    public void Text_that_is_no_recipe_is_refused_at_the_door()
    {
        Assert.Throws<ArgumentException>(() => RecipeDraft.Of("[]"));
        Assert.Throws<ArgumentException>(() => RecipeDraft.Of("{ \"name\": \"a\", \"name\": \"b\" }"));
    }

    [Fact]
    public void Any_text_in_any_field_of_any_recipe_is_kept()
    {
        string[] fields = ["name", "notes", "package.volume", "package.in", "ferment[0].time", "ingredients[0].amount", "ingredients[0].at", "ingredients[0].as"];
        Gen.Select(RandomRecipes.Any, Gen.Int[0, fields.Length - 1].Select(i => fields[i]), Gen.String[Gen.Char[' ', '\u24ff'], 1, 80]).Sample((recipe, field, typed) =>
        {
            RecipeDraft draft = RecipeDraft.Of(RecipeFile.Write(recipe));
            DraftEdit<RecipeDraft>? edit = draft.Put(field, typed);
            string trimmed = typed.Trim();
            Assert.True(edit is null || RecipeDraft.Of(edit.After.Text)[field] is null || RecipeDraft.Of(edit.After.Text)[field]!.StartsWith(trimmed, StringComparison.Ordinal));
            Assert.True(edit is not null || trimmed.Length == 0 || draft[field] == trimmed || draft[field]!.StartsWith(trimmed, StringComparison.Ordinal));
        });
    }
}
