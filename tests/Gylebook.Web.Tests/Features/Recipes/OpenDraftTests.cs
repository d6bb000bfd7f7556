using Gylebook.Recipes.Editing;
using Gylebook.Store;
using Gylebook.Tests.Shared;
using Gylebook.Web.Drafting;

namespace Gylebook.Web.Tests.Features.Recipes;

/// <summary>Two tabs at one draft, without any page: on a real book.</summary>
public sealed class OpenDraftTests : GylebookTestContext
{
    private const string PaleAle = "ingredients[0].amount";
    private const string Munich = "ingredients[1].amount";

    /// <summary>More than the pages a file has can hold.</summary>
    private static readonly string Long = new('x', 15_000);

    [Fact]
    public async Task An_edit_is_on_disk_under_its_label_and_undo_takes_it_back()
    {
        using OpenDraft<RecipeDraft> draft = await OpenAsync("one");
        string before = draft.Now.Text;
        await draft.EditAsync(d => d.Put(PaleAle, "4 kg"));
        Assert.Equal("pale ale malt: 3.6 kg → 4 kg", draft.UndoLabel);
        Assert.Equal("4 kg", RecipeDraft.Of((await Book.Drafts.FindAsync(draft.Id, Cancellation))!.Document)[PaleAle]);
        await draft.UndoAsync();
        Assert.Equal(before, draft.Now.Text);
        Assert.Equal("pale ale malt: 3.6 kg → 4 kg", draft.RedoLabel);
        await draft.RedoAsync();
        Assert.Equal("4 kg", draft.Now[PaleAle]);
    }

    [Fact]
    public async Task A_pause_in_mid_word_is_in_the_log_but_is_no_step_of_its_own()
    {
        using OpenDraft<RecipeDraft> draft = await OpenAsync("one");
        string before = draft.Now.Text;
        object field = new();
        draft.Focus(field);
        await draft.EditFocusedAsync(field, d => d.Put(PaleAle, "4 k"));
        Clock.Step(TimeSpan.FromSeconds(2));
        await draft.EditFocusedAsync(field, d => d.Put(PaleAle, "4 kg"));
        Assert.Equal("pale ale malt: 3.6 kg → 4 kg", draft.UndoLabel);
        Assert.Equal(["4 kg", "4 k"], (await Book.Drafts.HistoryAsync(draft.Id, cancellation: Cancellation)).Select(e => RecipeDraft.Of(e.After)[PaleAle]));
        await draft.UndoAsync();
        Assert.Equal((before, null), (draft.Now.Text, draft.UndoLabel));
        await draft.RedoAsync();
        Assert.Equal("4 kg", draft.Now[PaleAle]);
    }

    [Fact]
    public async Task Typing_on_much_later_or_elsewhere_or_after_another_tab_is_a_step_of_its_own()
    {
        using OpenDraft<RecipeDraft> one = await OpenAsync("one");
        using OpenDraft<RecipeDraft> two = (await OpenDraft.OpenAsync(Book.Drafts, one.Id, RecipeDraft.Of, "two"))!;
        object field = new();
        object other = new();
        await one.EditFocusedAsync(field, d => d.Put(PaleAle, "4 kg"));
        Clock.Step(TimeSpan.FromSeconds(6));
        await one.EditFocusedAsync(field, d => d.Put(PaleAle, "5 kg"));
        Assert.Equal("pale ale malt: 4 kg → 5 kg", one.UndoLabel);
        await one.EditFocusedAsync(other, d => d.Put(Munich, "700 g"));
        await one.EditFocusedAsync(field, d => d.Put(PaleAle, "6 kg"));
        Assert.Equal("pale ale malt: 5 kg → 6 kg", one.UndoLabel);
        await two.AdoptAsync();
        await two.EditAsync(d => d.Put(Munich, "800 g"));
        await one.EditFocusedAsync(field, d => d.Put(PaleAle, "7 kg"));
        Assert.Equal(("pale ale malt: 6 kg → 7 kg", "800 g"), (one.UndoLabel, one.Now[Munich]));
        await one.EditAsync(d => d.Put(PaleAle, "8 kg"));
        Assert.Equal("pale ale malt: 7 kg → 8 kg", one.UndoLabel);
    }

    [Fact]
    public async Task Different_fields_changed_in_two_tabs_are_both_saved()
    {
        using OpenDraft<RecipeDraft> one = await OpenAsync("one");
        using OpenDraft<RecipeDraft> two = (await OpenDraft.OpenAsync(Book.Drafts, one.Id, RecipeDraft.Of, "two"))!;
        await one.EditAsync(d => d.Put(PaleAle, "4 kg"));
        await two.EditAsync(d => d.Put(Munich, "700 g"));
        Assert.Null(two.Choices);
        Assert.Equal(("4 kg", "700 g"), (two.Now[PaleAle], two.Now[Munich]));
        await one.AdoptAsync();
        Assert.Equal(two.Now.Text, one.Now.Text);
    }

    [Theory]
    [InlineData(true, "5 kg")]
    [InlineData(false, "4 kg")]
    public async Task One_field_changed_in_two_tabs_keeps_both_texts_and_asks(bool yours, string stands)
    {
        using OpenDraft<RecipeDraft> one = await OpenAsync("one");
        using OpenDraft<RecipeDraft> two = (await OpenDraft.OpenAsync(Book.Drafts, one.Id, RecipeDraft.Of, "two"))!;
        await one.EditAsync(d => d.Put(PaleAle, "4 kg"));
        await two.EditAsync(d => d.Put(PaleAle, "5 kg"));
        MergeChoice choice = Assert.Single(two.Merge()!.Choices);
        Assert.Equal(("5 kg", "4 kg"), (choice.Yours.After, choice.Theirs));
        Assert.Equal("4 kg", two.Now[PaleAle]);
        Assert.Contains(await Book.Drafts.HistoryAsync(one.Id, cancellation: Cancellation), e => e.IsSetAside && RecipeDraft.Of(e.After)[PaleAle] == "5 kg");

        await two.ChooseAsync(_ => yours);
        Assert.Null(two.Choices);
        Assert.Equal(stands, RecipeDraft.Of((await Book.Drafts.FindAsync(one.Id, Cancellation))!.Document)[PaleAle]);
    }

    [Fact]
    public async Task What_is_typed_answers_to_what_stood_there_when_the_field_got_the_focus()
    {
        using OpenDraft<RecipeDraft> one = await OpenAsync("one");
        using OpenDraft<RecipeDraft> two = (await OpenDraft.OpenAsync(Book.Drafts, one.Id, RecipeDraft.Of, "two"))!;
        object field = new();
        two.Focus(field);
        await one.EditAsync(d => d.Put(PaleAle, "4 kg"));
        await two.AdoptAsync();
        Assert.Equal("4 kg", two.Now[PaleAle]);
        await two.EditFocusedAsync(field, d => d.Put(PaleAle, "5 kg"));
        Assert.NotNull(two.Choices);
    }

    [Fact]
    public async Task A_line_added_above_does_not_lead_typing_into_another_line()
    {
        using OpenDraft<RecipeDraft> one = await OpenAsync("one");
        using OpenDraft<RecipeDraft> two = (await OpenDraft.OpenAsync(Book.Drafts, one.Id, RecipeDraft.Of, "two"))!;
        object field = new();
        two.Focus(field);
        await one.EditAsync(d => d.Move(3, 0));
        await two.AdoptAsync();
        await two.EditFocusedAsync(field, d => d.Put(PaleAle, "4 kg"));
        Assert.Null(two.Choices);
        Assert.Equal("4 kg", two.Now.Lines.Single(l => l.Of == "pale ale malt").Amount);
        Assert.Equal("chocolate malt", two.Now.Lines[0].Of);
    }

    [Fact]
    public async Task A_field_left_late_does_not_end_the_focus_of_the_next()
    {
        using OpenDraft<RecipeDraft> one = await OpenAsync("one");
        using OpenDraft<RecipeDraft> two = (await OpenDraft.OpenAsync(Book.Drafts, one.Id, RecipeDraft.Of, "two"))!;
        object first = new();
        object second = new();
        two.Focus(first);
        two.Focus(second);
        two.Blur(first);
        await one.EditAsync(d => d.Put(PaleAle, "4 kg"));
        await two.AdoptAsync();
        await two.EditFocusedAsync(second, d => d.Put(PaleAle, "5 kg"));
        Assert.NotNull(two.Choices);
    }

    [Fact]
    public async Task What_a_full_disk_kept_out_is_saved_again_beside_what_another_tab_saved_meanwhile()
    {
        using OpenDraft<RecipeDraft> one = await OpenAsync("one");
        using OpenDraft<RecipeDraft> two = (await OpenDraft.OpenAsync(Book.Drafts, one.Id, RecipeDraft.Of, "two"))!;
        Disk.IsFull = true;
        await one.EditAsync(d => d.Put(PaleAle, "4 kg"));
        await one.EditAsync(d => d.Put("notes", Long));
        Assert.Contains("no room", one.Unsaved, StringComparison.Ordinal);
        Assert.Equal("4 kg", one.Now[PaleAle]);
        Disk.IsFull = false;
        await two.EditAsync(d => d.Put(Munich, "700 g"));

        await one.RetryAsync();
        RecipeDraft stored = RecipeDraft.Of((await Book.Drafts.FindAsync(one.Id, Cancellation))!.Document);
        Assert.Equal(("4 kg", "700 g", Long), (stored[PaleAle], stored[Munich], stored["notes"]));
        Assert.Equal((null, stored.Text), (one.Unsaved, one.Now.Text));
    }

    [Fact]
    public async Task What_a_full_disk_kept_out_and_another_tab_changed_too_is_for_the_brewer_to_choose()
    {
        using OpenDraft<RecipeDraft> one = await OpenAsync("one");
        using OpenDraft<RecipeDraft> two = (await OpenDraft.OpenAsync(Book.Drafts, one.Id, RecipeDraft.Of, "two"))!;
        Disk.IsFull = true;
        await one.EditAsync(d => d.Put("notes", Long));
        await one.EditAsync(d => d.Put(PaleAle, "4 kg"));
        Disk.IsFull = false;
        await two.EditAsync(d => d.Put(PaleAle, "5 kg"));
        await one.RetryAsync();
        Assert.Contains(one.Merge()!.Choices, choice => (choice.Yours.After, choice.Theirs) == ("4 kg", "5 kg"));
        await one.ChooseAsync(_ => true);
        Assert.Equal(("4 kg", Long), (one.Now[PaleAle], one.Now["notes"]));
    }

    [Fact]
    public async Task Undo_does_not_throw_away_what_could_not_be_saved()
    {
        using OpenDraft<RecipeDraft> one = await OpenAsync("one");
        string before = one.Now.Text;
        Disk.IsFull = true;
        await one.EditAsync(d => d.Put("notes", Long));
        await one.UndoAsync();
        Assert.Equal(Long, one.Now["notes"]);
        Assert.NotNull(one.Unsaved);
        Disk.IsFull = false;
        await one.UndoAsync();
        Assert.Equal(before, one.Now.Text);
        await one.RedoAsync();
        Assert.Equal(Long, one.Now["notes"]);
    }

    [Fact]
    public async Task A_recipe_that_is_not_there_cannot_be_opened() =>
        Assert.Null(await OpenDraft.OpenAsync(Book.Drafts, Guid.CreateVersion7(Clock.GetUtcNow()), RecipeDraft.Of, "one"));

    private async Task<OpenDraft<RecipeDraft>> OpenAsync(string tab)
    {
        Guid id = await Book.Recipes.CreateAsync(await File.ReadAllTextAsync(RepositoryFile.PathOf("samples/recipes/hedgerow-brown.json"), Cancellation), cancellation: Cancellation);
        return (await OpenDraft.OpenAsync(Book.Drafts, id, RecipeDraft.Of, tab))!;
    }
}
