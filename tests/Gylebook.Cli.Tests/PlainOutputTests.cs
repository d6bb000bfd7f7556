namespace Gylebook.Cli.Tests;

/// <summary>What a file or an argument says never steers the terminal it is shown in.</summary>
public sealed class PlainOutputTests : IDisposable
{
    /// <summary>A title set, a screen cleared by the other set of controls, text turned round, a line begun again.</summary>
    private const string Nasty = "A\u001b]0;owned\u0007B\u009b2JC\u202eD\u2066E\rF\u200fG\u007f";

    /// <summary>The same without controls, which a recipe's name may not have.</summary>
    private static readonly string OnOneLine = string.Concat(Nasty.Where(letter => !char.IsControl(letter)));

    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-plain-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_recipe_with_escapes_in_its_words_is_told_without_them()
    {
        string text = File.ReadAllText(SampleFile.Recipe("plain-bitter"));
        string file = Path.Combine(_folder, "nasty.json");
        File.WriteAllText(file, text.Replace("\"Plain Bitter\"", System.Text.Json.JsonSerializer.Serialize("Plain " + OnOneLine), StringComparison.Ordinal));

        foreach (string[] arguments in (string[][])[["forecast", file], ["forecast", file, "--json"], ["check", file], ["pitch", file]])
        {
            Ran ran = GylebookProgram.Run(arguments);
            Assert.Equal(0, ran.ExitCode);
            AssertPlain(ran);
        }

        Assert.Contains(@"C\u202ED", GylebookProgram.Run(["forecast", file]).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_finding_that_repeats_escapes_tells_them_without()
    {
        string text = File.ReadAllText(SampleFile.Recipe("plain-bitter"));
        string file = Path.Combine(_folder, "nasty.json");
        File.WriteAllText(file, text.Replace("\"Plain Bitter\"", "\"Plain Bitter\", " + System.Text.Json.JsonSerializer.Serialize(Nasty) + ": 1", StringComparison.Ordinal));

        Ran ran = GylebookProgram.Run(["check", file]);

        AssertPlain(ran);
        Assert.Contains("owned", ran.Output + ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_still_says_the_same_name()
    {
        string text = File.ReadAllText(SampleFile.Recipe("plain-bitter"));
        string file = Path.Combine(_folder, "nasty.json");
        File.WriteAllText(file, text.Replace("\"Plain Bitter\"", System.Text.Json.JsonSerializer.Serialize("Plain " + OnOneLine), StringComparison.Ordinal));

        using var told = System.Text.Json.JsonDocument.Parse(GylebookProgram.Run(["forecast", file, "--json"]).Output);

        Assert.Equal("Plain " + OnOneLine, told.RootElement.GetProperty("recipe").GetProperty("name").GetString());
    }

    [Theory]
    [InlineData("check")]
    [InlineData("forecast")]
    [InlineData("convert")]
    [InlineData("restore")]
    [InlineData("serve")]
    public void An_argument_with_escapes_in_it_is_told_without_them(string verb)
    {
        Ran ran = GylebookProgram.Run([verb, Nasty]);
        Assert.NotEqual(0, ran.ExitCode);
        AssertPlain(ran);
    }

    private static void AssertPlain(Ran ran) => Assert.DoesNotContain(
        ran.Output + ran.Errors,
        letter => (char.IsControl(letter) && letter is not ('\n' or '\t')) || letter is '\u202e' or '\u2066' or '\u200f');
}
