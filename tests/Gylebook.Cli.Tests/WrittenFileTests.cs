namespace Gylebook.Cli.Tests;

/// <summary>Verbs that write a file leave alone what they are not sure of.</summary>
public sealed class WrittenFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-written").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string PathOf(string name) => Path.Combine(_folder, name);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_recipe_itself_is_never_drawn_over(bool force)
    {
        string recipe = PathOf("beer.json");
        File.Copy(SampleFile.Recipe("plain-bitter"), recipe);
        Ran ran = Draw(recipe, recipe, force);
        Assert.Equal((1, ""), (ran.ExitCode, ran.Output));
        Assert.Contains("beer.json: there is a file already, and it is not an SVG drawing", ran.Errors, StringComparison.Ordinal);
        Assert.Equal(File.ReadAllText(SampleFile.Recipe("plain-bitter")), File.ReadAllText(recipe));
    }

    [Fact]
    public void A_drawing_is_drawn_over_only_with_force()
    {
        string drawing = PathOf("run.svg");
        Assert.Equal(0, Draw(SampleFile.Recipe("plain-bitter"), drawing, force: false).ExitCode);
        string first = File.ReadAllText(drawing);
        Ran refused = Draw(SampleFile.Recipe("hedgerow-brown"), drawing, force: false);
        Assert.Equal((1, ""), (refused.ExitCode, refused.Output));
        Assert.Contains("--force", refused.Errors, StringComparison.Ordinal);
        Assert.Equal(first, File.ReadAllText(drawing));

        Assert.Equal(0, Draw(SampleFile.Recipe("hedgerow-brown"), drawing, force: true).ExitCode);
        Assert.NotEqual(first, File.ReadAllText(drawing));
        Assert.Equal(["run.svg"], Directory.GetFiles(_folder).Select(Path.GetFileName));
    }

    [Fact]
    public void A_folder_is_no_file_to_draw_into()
    {
        Ran ran = Draw(SampleFile.Recipe("plain-bitter"), _folder, force: true);
        Assert.Equal((1, ""), (ran.ExitCode, ran.Output));
        Assert.Contains("this is a folder", ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_book_is_not_restored_over_a_letter()
    {
        string letter = PathOf("letter.txt");
        File.WriteAllText(letter, "Dear brewer");
        Ran ran = GylebookProgram.Run(["restore", RestoredBook.Released, "--book", letter]);
        Assert.Equal((1, ""), (ran.ExitCode, ran.Output));
        Assert.Contains("letter.txt: there is a file already, and it is not a book", ran.Errors, StringComparison.Ordinal);
        Assert.Equal("Dear brewer", File.ReadAllText(letter));
    }

    private static Ran Draw(string recipe, string to, bool force) =>
        GylebookProgram.Run(["forecast", recipe, "--svg", to, .. force ? ["--force"] : Array.Empty<string>()]);
}
