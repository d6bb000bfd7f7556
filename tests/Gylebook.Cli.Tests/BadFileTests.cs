using System.Diagnostics;
using System.Text.Json;
using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>Files that are wrong, broken, missing or meant to hurt: plain lines on the error stream, exit code 1, no stack trace.</summary>
public sealed class BadFileTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("gylebook-bad-");

    /// <summary>Each broken sample, with the verb that reads it.</summary>
    public static TheoryData<string> Bad => [.. SampleFile.Names("samples/bad")];

    public void Dispose() => _folder.Delete(recursive: true);

    [Theory]
    [MemberData(nameof(Bad))]
    public void A_broken_sample_is_told_line_by_line_with_code_and_place(string name)
    {
        string[] expected = [.. File.ReadAllLines(RepositoryFile.PathOf($"samples/bad/{name}.expected.txt")).Select(line => line.Trim()).Where(line => line.Length > 0)];
        string verb = name.Split('-')[0] is "kit" or "water" or "larder" ? "check" : "forecast";
        Ran ran = WarmProgram.Run([verb, RepositoryFile.PathOf($"samples/bad/{name}.json")]);
        Assert.Equal(("", 1), (ran.Output, ran.ExitCode));
        string[] lines = Lines(ran.Errors);
        Assert.Equal(expected.Length, lines.Length);
        Assert.All(expected, line =>
        {
            // The severity is told by the reader's own tests.
            string[] words = line.Split(' ', 3);
            string place = words.Length > 2 ? " " + words[2] : "";
            Assert.Contains(lines, told => told.EndsWith($"[{words[1]}]", StringComparison.Ordinal) && told.Contains($"{place}: ", StringComparison.Ordinal));
        });
        AssertNoTrace(ran);
    }

    [Theory]
    [InlineData("\"66 °C\"", "\"400 °C\"", "mash.rests[0].temperature: 400 °C", "30 °C to 85 °C")]
    [InlineData("\"alpha\": \"5.2 %\"", "\"alpha\": \"300 %\"", "ingredients[2].alpha: 300 %", "0 % to 100 %")]
    [InlineData("\"45 g\"", "\"-1 kg\"", "ingredients[2].amount: -1 kg", "0 kg to 1000000 kg")]
    [InlineData("\"45 g\"", "\"NaN kg\"", "ingredients[2].amount: NaN kg", "a mass is written with kg")]
    [InlineData("\"45 g\"", "NaN", "the JSON is broken", "line ")]
    [InlineData("\"20 L\"", "\"5 gal\"", "package.volume: 5 gal", "US gal or 5 imp gal")]
    public void An_absurd_value_is_told_with_place_value_and_limit(string was, string wrong, string told, string limit)
    {
        string good = File.ReadAllText(SampleFile.Recipe("plain-bitter"));
        int at = good.IndexOf(was, StringComparison.Ordinal);
        AssertRefused(Written("recipe.json", good.Remove(at, was.Length).Insert(at, wrong)), told, limit);
    }

    [Fact]
    public void A_kit_that_converts_nothing_is_refused()
    {
        string kit = File.ReadAllText(SampleFile.Kit("lantern-shed"));
        string wrong = System.Text.RegularExpressions.Regex.Replace(kit, "\"conversion\": \"[^\"]*\"", "\"conversion\": \"0 %\"");
        Assert.NotEqual(kit, wrong);
        string path = Written("kit.json", wrong);
        AssertRefusedBy("check", path, "conversion: 0 %", "[kit.conversion]");
        Ran ran = WarmProgram.Run(["forecast", SampleFile.Recipe("plain-bitter"), "--kit", path]);
        Assert.Equal(("", 1), (ran.Output, ran.ExitCode));
        Assert.Contains("conversion: 0 %", ran.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{\"a\":")]
    public void Ten_thousand_levels_get_one_line_quickly(string level) =>
        AssertRefused(Written("deep.json", string.Concat(Enumerable.Repeat(level, 10_000))), "nested more than 64 deep", "[file.depth]");

    [Fact]
    public void More_than_fifty_megabytes_get_one_line_quickly()
    {
        string path = Path.Combine(_folder.FullName, "huge.json");
        using (FileStream huge = File.Create(path))
        {
            huge.SetLength(60_000_000);
        }

        AssertRefused(path, "50 MB", "[file.large]");
    }

    [Fact]
    public void A_missing_file_a_folder_and_an_unreadable_kit_are_named()
    {
        string nowhere = Path.Combine(_folder.FullName, "nowhere.json");
        AssertRefused(nowhere, "nowhere.json: there is no such file", "[file.unreadable]");
        AssertRefused(_folder.FullName, "this is a folder", "[file.unreadable]");
        Ran ran = GylebookProgram.Run(["forecast", SampleFile.Recipe("plain-bitter"), "--kit", nowhere]);
        Assert.Equal(("", 1), (ran.Output, ran.ExitCode));
        Assert.Contains("nowhere.json: there is no such file", Assert.Single(Lines(ran.Errors)), StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_as_json_come_on_the_output_with_the_same_exit_code()
    {
        Ran ran = GylebookProgram.Run(["check", RepositoryFile.PathOf("samples/bad/negative-amount.json"), "--json"]);
        Assert.Equal(("", 1), (ran.Errors, ran.ExitCode));
        using JsonDocument told = JsonDocument.Parse(ran.Output);
        JsonElement finding = Assert.Single(told.RootElement.GetProperty("findings").EnumerateArray());
        Assert.Equal(
            ("quantity.wrong", "error", "ingredients[2].amount", "-1 kg", "0 kg to 1000000 kg"),
            (Text(finding, "code"), Text(finding, "severity"), Text(finding, "where"), Text(finding, "value"), Text(finding, "limit")));
    }

    private static string Text(JsonElement finding, string key) => finding.GetProperty(key).GetString()!;

    private static void AssertRefused(string path, params string[] words)
    {
        AssertRefusedBy("check", path, words);
        AssertRefusedBy("forecast", path, words);
    }

    private static void AssertRefusedBy(string verb, string path, params string[] words)
    {
        Stopwatch watch = Stopwatch.StartNew();
        Ran ran = WarmProgram.Run([verb, path]);
        // A process starts in well under a second, here beside others; a reader that took such a file in whole would be longer.
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 20);
        Assert.Equal(("", 1), (ran.Output, ran.ExitCode));
        string line = Assert.Single(Lines(ran.Errors));
        Assert.All(words, word => Assert.Contains(word, line, StringComparison.Ordinal));
        AssertNoTrace(ran);
    }

    private static void AssertNoTrace(Ran ran) => Assert.DoesNotContain("   at ", ran.Errors, StringComparison.Ordinal);

    private static string[] Lines(string text) => text.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    private string Written(string name, string text)
    {
        string path = Path.Combine(_folder.FullName, name);
        File.WriteAllText(path, text);
        return path;
    }
}
