using System.Text.Json;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook export RECIPE --as html: a recipe as a sheet to print.</summary>
public sealed class RecipeSheetTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-sheet").FullName;

    public RecipeSheetTests() => RestoredBook.CopyTo(Path("book.sqlite"));

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_recipe_file_is_written_with_the_food_beside_it()
    {
        Ran ran = Run("export", SampleFile.Recipe("hedgerow-brown"), "--as", "html", "--out", Path("sheet.html"));
        Assert.Equal(0, ran.ExitCode);
        Assert.Contains("recipe \"Hedgerow Brown\", as a sheet to print, is written to", ran.Output, StringComparison.Ordinal);
        string html = File.ReadAllText(Path("sheet.html"));
        Assert.StartsWith("<!DOCTYPE html>", html, StringComparison.Ordinal);
        Assert.Contains("Pumpkin-seed flour, toasted, defatted", html, StringComparison.Ordinal);
        Assert.Contains("<style>", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        Assert.DoesNotContain("http", html.Replace("http://www.w3.org/2000/svg", "", StringComparison.Ordinal), StringComparison.Ordinal);

        // The same text goes to a pipe.
        Assert.Equal(html, Run("export", SampleFile.Recipe("hedgerow-brown"), "--as", "html").Output);
    }

    [Fact]
    public void Of_the_book_it_is_that_recipe_whatever_kit_is_named()
    {
        Assert.Equal(0, Run("import", SampleFile.Recipe("plain-bitter"), "--as", "Printed Bitter").ExitCode);
        Ran own = Run("export", "printed bitter", "--as", "html");
        Assert.Equal(0, own.ExitCode);
        Assert.Contains("<h1>Printed Bitter</h1>", own.Output, StringComparison.Ordinal);
        Ran other = Run("export", "Printed Bitter", "--as", "html", "--kit", SampleFile.Kit("coil-and-element"));
        Assert.Equal(0, other.ExitCode);
        Assert.NotEqual(own.Output, other.Output);

        JsonElement told = JsonDocument.Parse(Run("export", "Printed Bitter", "--as", "html", "--json").Output).RootElement;
        Assert.Equal("recipe", told.GetProperty("kind").GetString());
        Assert.Equal(own.Output, told.GetProperty("text").GetString());
    }

    [Fact]
    public void In_words_and_for_search_engines_it_is_the_same_recipe()
    {
        Ran words = Run("export", SampleFile.Recipe("hedgerow-brown"), "--as", "text"), engines = Run("export", SampleFile.Recipe("hedgerow-brown"), "--as", "jsonld");
        Assert.Equal((0, 0), (words.ExitCode, engines.ExitCode));
        Assert.Contains("- 3.60 kg (7.94 lb) Pale ale malt", words.Output, StringComparison.Ordinal);
        Assert.Contains("Take care: ", words.Output, StringComparison.Ordinal);
        JsonElement recipe = JsonDocument.Parse(engines.Output).RootElement;
        Assert.Equal(("Recipe", "Hedgerow Brown"), (recipe.GetProperty("@type").GetString(), recipe.GetProperty("name").GetString()));
    }

    [Theory]
    [InlineData("--as pdf: must be one of html, ics, beerjson, beerxml, csv, text, jsonld.", "--as", "pdf")]
    [InlineData("--kind kit: must be recipe with --as html", "--as", "html", "--kind", "kit")]
    [InlineData("--kind kit: does not go with --as ics, which is of a gyle.", "--as", "ics", "--kind", "kit")]
    [InlineData("--kit some.json: goes with --as html, beerjson, beerxml, csv, text, jsonld alone.", "--as", "ics", "--kit", "some.json")]
    [InlineData("--kit some.json: goes with --as html, beerjson, beerxml, csv, text, jsonld alone.", "--kit", "some.json")]
    [InlineData("Option '--as' needs a form after it.", "--as")]
    public void Words_that_do_not_fit_are_told_with_their_limit(string says, params string[] words)
    {
        Ran ran = WarmProgram.Run(["export", "Anything", "--book", Path("book.sqlite"), .. words]);
        Assert.Equal((2, ""), (ran.ExitCode, ran.Output));
        Assert.Contains(says, ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_no_recipe_has_no_sheet()
    {
        Assert.Equal(0, Run("import", SampleFile.Kit("big-pot"), "--as", "A Pot").ExitCode);
        Ran kit = Run("export", "A Pot", "--as", "html");
        Assert.Equal((1, ""), (kit.ExitCode, kit.Output));
        Assert.Contains("kit \"A Pot\" is no recipe; --as html must name a recipe of the book or a recipe file.", kit.Errors, StringComparison.Ordinal);

        Ran file = Run("export", SampleFile.Kit("big-pot"), "--as", "html", "--out", Path("none.html"));
        Assert.Equal(1, file.ExitCode);
        Assert.Contains("format.wrong", file.Errors + file.Output, StringComparison.Ordinal);
        Ran none = Run("export", "nobody.json", "--as", "html");
        Assert.Equal(1, none.ExitCode);
        Assert.Contains("nobody.json: there is nothing of that name in the book.", none.Errors, StringComparison.Ordinal);
        Ran noKit = Run("export", SampleFile.Recipe("plain-bitter"), "--as", "html", "--kit", Path("nokit.json"), "--out", Path("none.html"));
        Assert.Equal(1, noKit.ExitCode);
        Assert.Contains("there is no such file", noKit.Errors + noKit.Output, StringComparison.Ordinal);
        Assert.False(File.Exists(Path("none.html")));
    }

    [Fact]
    public void What_cannot_be_brewed_is_told_and_nothing_is_written()
    {
        Ran ran = Run("export", SampleFile.Recipe("edges/tun-batch"), "--as", "html", "--out", Path("none.html"));
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains("kit.noTun", ran.Errors + ran.Output, StringComparison.Ordinal);
        Assert.False(File.Exists(Path("none.html")));
    }

    [Fact]
    public void A_file_of_another_kind_is_left_alone()
    {
        File.WriteAllText(Path("letter.html"), "Dear brewer");
        Assert.Equal(1, Run("export", SampleFile.Recipe("plain-bitter"), "--as", "html", "--out", Path("letter.html"), "--force").ExitCode);
        Assert.Equal("Dear brewer", File.ReadAllText(Path("letter.html")));
        Assert.Equal(0, Run("export", SampleFile.Recipe("plain-bitter"), "--as", "html", "--out", Path("sheet.html")).ExitCode);
        Assert.Equal(1, Run("export", SampleFile.Recipe("hedgerow-brown"), "--as", "html", "--out", Path("sheet.html")).ExitCode);
        Assert.Equal(0, Run("export", SampleFile.Recipe("hedgerow-brown"), "--as", "html", "--out", Path("sheet.html"), "--force").ExitCode);
        Assert.Contains("<h1>Hedgerow Brown</h1>", File.ReadAllText(Path("sheet.html")), StringComparison.Ordinal);
    }

    private Ran Run(params string[] arguments) => WarmProgram.Run([.. arguments, "--book", Path("book.sqlite")]);

    private string Path(string name) => System.IO.Path.Combine(_folder, name);
}
