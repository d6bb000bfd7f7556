namespace Gylebook.Cli.Tests;

/// <summary>gylebook backup and restore, and the run drawn into a file.</summary>
public sealed class BackupTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-backup").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Path(string name) => System.IO.Path.Combine(_folder, name);

    [Fact]
    public void Without_a_book_there_is_nothing_to_back_up()
    {
        Ran ran = GylebookProgram.Run(["backup", Path("copy.sqlite"), "--book", Path("none.sqlite")]);
        Assert.Equal((1, ""), (ran.ExitCode, ran.Output));
        Assert.Contains("none.sqlite: there is no book here", ran.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(Path("none.sqlite")), "asking must not make a book");
    }

    [Fact]
    public void A_file_that_is_no_book_is_not_restored()
    {
        File.WriteAllText(Path("letter.txt"), "Dear brewer");
        Ran ran = GylebookProgram.Run(["restore", Path("letter.txt"), "--book", Path("book.sqlite")]);
        Assert.Equal((1, ""), (ran.ExitCode, ran.Output));
        Assert.Contains("letter.txt", ran.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(Path("book.sqlite")), "a bad backup must leave no book behind");
    }

    [Fact]
    public void A_released_book_is_restored_backed_up_and_restored_over_itself()
    {
        string book = Path("book.sqlite");
        Assert.Equal(0, GylebookProgram.Run(["restore", RestoredBook.Released, "--book", book]).ExitCode);
        Assert.Equal(0, GylebookProgram.Run(["backup", Path("copy.sqlite"), "--book", book]).ExitCode);
        Ran again = GylebookProgram.Run(["restore", Path("copy.sqlite"), "--book", book]);
        Assert.Equal((0, ""), (again.ExitCode, again.Errors));
        Assert.Contains("is kept as", again.Output, StringComparison.Ordinal);
        Assert.Single(Directory.GetFiles(_folder, "book.sqlite.replaced-*"));
    }

    [Fact]
    public void The_run_is_drawn_into_a_file()
    {
        Ran ran = GylebookProgram.Run(["forecast", SampleFile.Recipe("hedgerow-brown"), "--svg", Path("run.svg")]);
        Assert.Equal((0, ""), (ran.ExitCode, ran.Errors));
        System.Xml.Linq.XDocument drawn = System.Xml.Linq.XDocument.Load(Path("run.svg"));
        Assert.Equal("svg", drawn.Root!.Name.LocalName);
        Assert.Contains("sludge", drawn.ToString(), StringComparison.Ordinal);
    }
}
