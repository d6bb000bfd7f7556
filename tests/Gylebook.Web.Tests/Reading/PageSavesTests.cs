using Gylebook.Web.Reading;

namespace Gylebook.Web.Tests.Reading;

/// <summary>When a typed text counts as stored.</summary>
public sealed class PageSavesTests
{
    private string _here = "kits/1";

    [Fact]
    public async Task Nothing_is_settled_before_the_last_save_is_over()
    {
        PageSaves saves = new(() => _here);
        PageSaves.Run pause = saves.Begin();
        Task<IReadOnlyDictionary<string, string>> answer = saves.SettledAsync();
        PageSaves.Run save = saves.Begin();
        pause.LeavesItToOthers();
        pause.Dispose();
        Assert.False(answer.IsCompleted);
        save.Ends(null);
        save.Dispose();
        Assert.Empty(await answer);
    }

    [Fact]
    public async Task A_save_that_throws_or_says_why_it_failed_leaves_no_text_as_stored_until_another_succeeds()
    {
        PageSaves saves = new(() => _here);
        saves.Begin().Dispose();
        Assert.True((await saves.SettledAsync()).ContainsKey("kits/1"));
        Save(saves, "no room");
        _here = "kits/2";
        Save(saves, null);
        Assert.Equal(new KeyValuePair<string, string>("kits/1", "no room"), Assert.Single(await saves.SettledAsync()));
        _here = "kits/1";
        Save(saves, null);
        Assert.Empty(await saves.SettledAsync());
    }

    [Fact]
    public async Task A_page_read_from_the_book_anew_owes_nothing()
    {
        PageSaves saves = new(() => _here);
        saves.Fail("anything");
        saves.Opened();
        Assert.Empty(await saves.SettledAsync());
    }

    private static void Save(PageSaves saves, string? why)
    {
        using PageSaves.Run run = saves.Begin();
        run.Ends(why);
    }
}
