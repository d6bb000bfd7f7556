using System.Text;
using System.Text.Json;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook import and export: files in and out of the book.</summary>
public sealed class FilesOfTheBookTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-files").FullName;

    public FilesOfTheBookTests() => RestoredBook.CopyTo(Path("book.sqlite"));

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("samples/recipes/plain-bitter.json", "recipe")]
    [InlineData("samples/kits/lantern-shed.json", "kit")]
    [InlineData("samples/water/hard-well.json", "water")]
    [InlineData("samples/recipes/foods/pumpkin-seed-flour.json", "food")]
    [InlineData("samples/recipes/lots/larder/north-field-pale.json", "malt")]
    public void What_enters_leaves_byte_for_byte(string sample, string kind)
    {
        string text = File.ReadAllText(Gylebook.Tests.Shared.RepositoryFile.PathOf(sample)).Replace("\n", "\n ", StringComparison.Ordinal);
        string file = Written("in.json", text);
        string name = JsonDocument.Parse(text).RootElement.GetProperty("name").GetString()!;
        Ran taken = Run("import", file, "--as", "Seldom Called So");
        Assert.Equal((0, ""), (taken.ExitCode, taken.Errors));
        Assert.Contains($"{kind} \"Seldom Called So\"", taken.Output, StringComparison.Ordinal);

        Assert.Equal(0, Run("export", "seldom called so", "--kind", kind, "--out", Path("out.json")).ExitCode);
        string given = File.ReadAllText(Path("out.json"));
        Assert.Contains("\"Seldom Called So\"", given, StringComparison.Ordinal);
        string asBefore = given.Replace("Seldom Called So", name, StringComparison.Ordinal).Replace("seldom-called-so", IdOf(text) ?? "", StringComparison.Ordinal);
        Assert.Equal(text, asBefore);
        Assert.Equal(given, Run("export", "Seldom Called So").Output);

        // Once more as it is: the book says the same already.
        Ran again = Run("import", Path("out.json"));
        Assert.Equal((0, ""), (again.ExitCode, again.Errors));
        Assert.Contains("says the same already", again.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_that_is_there_is_asked_about_and_nothing_is_overwritten()
    {
        string first = Written("first.json", Recipe("Twice", "20 L")), second = Written("second.json", Recipe("TWICE", "25 L"));
        Assert.Equal(0, Run("import", first).ExitCode);
        Ran asked = Run("import", second);
        Assert.Equal((1, ""), (asked.ExitCode, asked.Output));
        Assert.Contains("recipe \"Twice\" is in the book already. Say --replace, --keep-both or --as NAME.", asked.Errors, StringComparison.Ordinal);
        Assert.Equal(Recipe("Twice", "20 L"), Run("export", "Twice").Output);

        Assert.Equal(0, Run("import", second, "--keep-both").ExitCode);
        Assert.Equal(Recipe("TWICE 2", "25 L"), Run("export", "Twice 2").Output);
        Assert.Equal(0, Run("import", second, "--replace").ExitCode);
        Assert.Equal(Recipe("TWICE", "25 L"), Run("export", "Twice").Output);
        Ran both = Run("import", second, "--replace", "--keep-both");
        Assert.Equal(2, both.ExitCode);
    }

    [Fact]
    public void A_bad_file_does_not_stop_the_others_and_every_one_is_told()
    {
        string broken = Written("broken.json", "{ \"format\": \"gylebook-recipe/1\", ");
        string unread = Written("unread.json", Recipe("Half Read", "twenty litres"));
        string sound = Written("sound.json", Recipe("Sound", "20 L"));
        Ran ran = Run("import", broken, Path("none.json"), unread, _folder, sound);
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains("sound.json: recipe \"Sound\" is in the book.", ran.Output, StringComparison.Ordinal);
        Assert.Contains("1 of 5 files are in the book.", ran.Output, StringComparison.Ordinal);
        Assert.Contains("[file.json]", ran.Errors, StringComparison.Ordinal);
        Assert.Contains("there is no such file", ran.Errors, StringComparison.Ordinal);
        Assert.Contains("this is a folder", ran.Errors, StringComparison.Ordinal);
        Assert.Contains("error package.volume: twenty litres", ran.Errors, StringComparison.Ordinal);
        Assert.Contains("--even-unreadable takes it as it is", ran.Errors, StringComparison.Ordinal);

        Ran asked = Run("import", unread, "--even-unreadable");
        Assert.Equal(0, asked.ExitCode);
        Assert.Contains("error package.volume: twenty litres", asked.Output, StringComparison.Ordinal);
        Assert.Equal(Recipe("Half Read", "twenty litres"), Run("export", "Half Read").Output);
    }

    [Theory]
    [InlineData("Dear brewer", "file.json")]
    [InlineData("[1, 2]", "file.shape")]
    [InlineData("{ \"name\": \"x\" }", "format.wrong")]
    [InlineData("{ \"format\": \"gylebook-recipe/9\", \"name\": \"x\" }", "format.wrong")]
    [InlineData("{ \"format\": \"gylebook-recipe/1\", \"name\": \"x\", \"name\": \"y\" }", "key.duplicate")]
    [InlineData("{ \"format\": \"gylebook-recipe/1\" }", "key.missing")]
    [InlineData("{ \"format\": \"gylebook-malt/1\", \"name\": \"x\", \"id\": 5 }", "json.kind")]
    public void What_is_no_file_of_ours_never_enters(string text, string code)
    {
        Ran ran = Run("import", Written("bad.json", text), "--even-unreadable", "--json");
        Assert.Equal((1, ""), (ran.ExitCode, ran.Errors));
        JsonElement file = JsonDocument.Parse(ran.Output).RootElement.GetProperty("files")[0];
        Assert.Equal("unread", file.GetProperty("did").GetString());
        Assert.Contains(file.GetProperty("findings").EnumerateArray(), finding => finding.GetProperty("code").GetString() == code);
    }

    [Fact]
    public void A_huge_and_a_deep_file_are_told_with_their_limit()
    {
        string huge = Path("huge.json");
        using (FileStream stream = File.Create(huge))
        {
            stream.SetLength(50_000_001);
        }

        string deep = Written("deep.json", string.Concat(Enumerable.Repeat("[", 100)));
        Ran ran = Run("import", huge, deep);
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains("larger than 50 MB", ran.Errors, StringComparison.Ordinal);
        Assert.Contains("nested more than 64 deep", ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_of_several_kinds_is_listed_and_asked_for()
    {
        Run("import", Written("recipe.json", Recipe("Lantern Shed Twin", "20 L")));
        Run("import", Gylebook.Tests.Shared.RepositoryFile.PathOf("samples/kits/lantern-shed.json"), "--as", "Lantern Shed Twin");
        Ran several = Run("export", "Lantern Shed Twin", "--json");
        Assert.Equal(1, several.ExitCode);
        JsonElement candidates = JsonDocument.Parse(several.Output).RootElement.GetProperty("candidates");
        Assert.Equal(["recipe", "kit"], candidates.EnumerateArray().Select(file => file.GetProperty("kind").GetString()));
        Assert.Equal(Recipe("Lantern Shed Twin", "20 L"), Run("export", "Lantern Shed Twin", "--kind", "recipe").Output);
        string number = candidates[0].GetProperty("number").GetString()!;
        Assert.Equal(Recipe("Lantern Shed Twin", "20 L"), Run("export", number).Output);

        Ran none = Run("export", "Nobody Brewed This");
        Assert.Equal((1, ""), (none.ExitCode, none.Output));
        Assert.Contains("there is nothing of that name", none.Errors, StringComparison.Ordinal);
        Assert.Equal(2, Run("export", "x", "--kind", "cheese").ExitCode);
    }

    [Fact]
    public void A_file_that_lies_there_is_written_over_only_when_it_is_ours_and_asked_for()
    {
        Run("import", Written("in.json", Recipe("Once", "20 L")));
        string letter = Written("letter.txt", "Dear brewer");
        Assert.Equal(1, Run("export", "Once", "--out", letter, "--force").ExitCode);
        Assert.Equal("Dear brewer", File.ReadAllText(letter));
        string ours = Written("ours.json", Recipe("Other", "20 L"));
        Assert.Equal(1, Run("export", "Once", "--out", ours).ExitCode);
        Assert.Equal(0, Run("export", "Once", "--out", ours, "--force").ExitCode);
        Assert.Equal(Recipe("Once", "20 L"), File.ReadAllText(ours));
    }

    [Fact]
    public void Without_a_book_nothing_is_made()
    {
        Ran ran = GylebookProgram.Run(["import", Written("in.json", Recipe("Once", "20 L")), "--book", Path("none.sqlite")]);
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains("there is no book here", ran.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(Path("none.sqlite")));
    }

    private static string Recipe(string name, string volume) =>
        $$"""{"format":"gylebook-recipe/1", "name":"{{name}}","package":{"volume":"{{volume}}","in":"bottle"},"ferment":[{"temperature":"19 °C","time":"12 d"}],"ingredients":[]}""" + "\n";

    private static string? IdOf(string text) => JsonDocument.Parse(text).RootElement.TryGetProperty("id", out JsonElement id) ? id.GetString() : null;

    private Ran Run(params string[] arguments) => WarmProgram.Run([.. arguments, "--book", Path("book.sqlite")]);

    private string Path(string name) => System.IO.Path.Combine(_folder, name);

    private string Written(string name, string text)
    {
        File.WriteAllText(Path(name), text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        return Path(name);
    }
}
