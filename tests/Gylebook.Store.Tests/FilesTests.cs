namespace Gylebook.Store.Tests;

/// <summary>Texts go into the book and come out letter for letter, and none is overwritten unasked.</summary>
public sealed class FilesTests : IAsyncLifetime
{
    private readonly Bench _bench = new();
    private Book _book = null!;

    public async ValueTask InitializeAsync() => _book = await _bench.OpenAsync();

    public async ValueTask DisposeAsync()
    {
        await _book.DisposeAsync();
        _bench.Dispose();
    }

    public static TheoryData<string, string> EveryKind() => new()
    {
        { "recipe", Bench.Recipe("One") },
        { "kit", Bench.Kit("One") },
        { "water", Bench.Water("One") },
        { "food", Bench.Food("One", "one") },
        { "malt", Bench.Malt("One", "one") },
        { "hop", Of("hop") },
        { "yeast", Of("yeast") },
        { "shelf", Of("shelf") },
    };

    [Fact]
    public void Every_kind_is_among_those_tested() => Assert.Equal(BookFiles.Kinds.Order(), EveryKind().Select(row => row.Data.Item1).Order());

    [Theory]
    [MemberData(nameof(EveryKind))]
    public async Task What_is_replaced_comes_back_with_undo(string kind, string text)
    {
        KeptFile first = Assert.IsType<FilePut.Added>(await PutAsync(text, new ClashAnswer.Ask())).File;
        Assert.Equal((kind, text), (first.Kind, first.Text));
        Assert.Equal(first, Assert.Single(await _book.Files.FindAsync("ONE", cancellation: Bench.Cancellation)));

        string other = text.Replace("{", "{  ", StringComparison.Ordinal);
        Assert.Equal([first], Assert.IsType<FilePut.Clash>(await PutAsync(other, new ClashAnswer.Ask())).Standing);
        Assert.Equal(text, (await OneAsync(kind, first.Id)).Text);

        Assert.Equal(other, Assert.IsType<FilePut.Replaced>(await PutAsync(other, new ClashAnswer.Replace())).File.Text);
        KeptFile now = await OneAsync(kind, first.Id);
        Assert.Equal(other, now.Text);
        Assert.IsType<FilePut.Unchanged>(await PutAsync(other, new ClashAnswer.Replace()));

        BookDrafts drafts = kind switch { "recipe" => _book.Drafts, "kit" => _book.Kits.Drafts, "water" => _book.Waters.Drafts, "food" => _book.Foods.Drafts, _ => _book.Larder.Drafts };
        Assert.Equal("replaced by a file", Assert.IsType<DraftMove.Moved>(await drafts.UndoAsync(first.Id, now.Revision, "tab", Bench.Cancellation)).Label);
        Assert.Equal(text, (await OneAsync(kind, first.Id)).Text);
    }

    [Fact]
    public async Task Both_are_kept_under_names_and_ids_of_their_own()
    {
        await PutAsync(Bench.Malt("North", "north"), new ClashAnswer.Ask());
        Assert.Equal(Bench.Malt("North 2", "north-2"), Assert.IsType<FilePut.Added>(await PutAsync(Bench.Malt("North", "north"), new ClashAnswer.KeepBoth())).File.Text);
        Assert.Equal(Bench.Malt("South", "north-3"), Assert.IsType<FilePut.Added>(await PutAsync(Bench.Malt("South", "north"), new ClashAnswer.KeepBoth())).File.Text);
        Assert.Equal(Bench.Malt("Far East", "far-east"), Assert.IsType<FilePut.Added>(await PutAsync(Bench.Malt("North", "north"), new ClashAnswer.Called("Far East"))).File.Text);
        Assert.IsType<FilePut.Clash>(await PutAsync(Bench.Malt("North", "north"), new ClashAnswer.Called("south")));
    }

    [Fact]
    public async Task An_id_goes_before_a_name_and_a_choice_of_several_is_asked()
    {
        KeptFile byId = Assert.IsType<FilePut.Added>(await PutAsync(Bench.Food("Dark honey", "honey"), new ClashAnswer.Ask())).File;
        await PutAsync(Bench.Food("Light honey", "light-honey"), new ClashAnswer.Ask());
        string text = Bench.Food("Light honey", "honey");
        Assert.Equal(2, Assert.IsType<FilePut.Clash>(await PutAsync(text, new ClashAnswer.Ask())).Standing.Count);
        Assert.Equal(byId.Id, Assert.IsType<FilePut.Replaced>(await PutAsync(text, new ClashAnswer.Replace())).File.Id);

        await _book.Recipes.CreateAsync(Bench.Recipe("Twin", "a"), cancellation: Bench.Cancellation);
        await _book.Recipes.CreateAsync(Bench.Recipe("Twin", "b"), cancellation: Bench.Cancellation);
        Assert.Equal(2, Assert.IsType<FilePut.Clash>(await PutAsync(Bench.Recipe("Twin", "c"), new ClashAnswer.Replace())).Standing.Count);
    }

    [Fact]
    public async Task What_is_in_the_bin_is_in_nobodys_way()
    {
        Guid gone = await _book.Kits.CreateAsync(Bench.Kit("Shed"), cancellation: Bench.Cancellation);
        await _book.Kits.DeleteAsync(gone, Bench.Cancellation);
        Assert.NotEqual(gone, Assert.IsType<FilePut.Added>(await PutAsync(Bench.Kit("Shed"), new ClashAnswer.Replace())).File.Id);
        Assert.Equal("Shed", (await OneAsync("kit", gone)).Name);
    }

    [Fact]
    public async Task A_damaged_one_is_not_replaced_and_says_so()
    {
        await PutAsync(Bench.Kit("Shed"), new ClashAnswer.Ask());
        _bench.Sql("UPDATE kits SET document = replace(document, 'Shed', 'Shad')");
        Assert.True(Assert.Single(await _book.Files.FindAsync("Shed", cancellation: Bench.Cancellation)).IsDamaged);
        FilePut.Refused refused = Assert.IsType<FilePut.Refused>(await PutAsync(Bench.Kit("Shed"), new ClashAnswer.Replace()));
        Assert.Contains("damaged", refused.Why, StringComparison.Ordinal);
    }

    private static string Of(string form) => Bench.Malt("One", "one").Replace("gylebook-malt/1", $"gylebook-{form}/1", StringComparison.Ordinal);

    private Task<FilePut> PutAsync(string text, ClashAnswer answer) => _book.Files.PutAsync(text, answer, "tab", Bench.Cancellation);

    private async Task<KeptFile> OneAsync(string kind, Guid id) => (await _book.Files.FindAsync(kind, id, Bench.Cancellation))!;
}
