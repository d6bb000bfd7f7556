using System.Text.Json;
using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook learn: proposals from finished gyles, and a kit written only with what was accepted.</summary>
public sealed class LearnTests : IDisposable
{
    private static readonly string Kit = SampleFile.Kit("lantern-shed"), Bitter = SampleFile.Recipe("plain-bitter");

    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-learn-").FullName;

    [Fact]
    public void Proposals_are_printed_and_nothing_is_changed()
    {
        Ran ran = GylebookProgram.Run(["learn", "--kit", Kit, .. Gyles(1, 2, 3, 4, 5)]);
        Assert.Equal((0, ""), (ran.ExitCode, ran.Errors));
        string told = string.Join(' ', ran.Output.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        foreach (string said in new[] { "how much boils off in an hour (kettle.evaporation)", "rather than 4.0 L/h", "Simulated bitter 4", "these gyles taught nothing about it", "Nothing was changed" })
        {
            Assert.Contains(said, told, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_json_is_of_its_form_and_the_same_every_time()
    {
        string[] command = ["learn", "--kit", Kit, .. Gyles(1, 2), "--draws", "500", "--json"];
        Ran ran = GylebookProgram.Run(command);
        Assert.Empty(PublishedSchema.Objections("learned", ran.Output));
        Assert.Equal(ran.Output, GylebookProgram.Run(command).Output);
        using JsonDocument told = JsonDocument.Parse(ran.Output);
        Assert.Equal("kettle.evaporation", told.RootElement.GetProperty("figures").EnumerateArray().First(figure => figure.GetProperty("parameter").GetString() == "kit.kettle.evaporation").GetProperty("name").GetString());
        Assert.DoesNotContain(told.RootElement.GetProperty("figures").EnumerateArray(), figure => figure.GetProperty("accepted").GetBoolean());
    }

    [Fact]
    public void What_is_accepted_is_written_checked_and_brewed_with()
    {
        string written = Path.Combine(_folder, "kit.json");
        string[] accept = ["learn", "--kit", Kit, .. Gyles(1, 2, 3), "--accept", "evaporation,wortHeld", "--out", written, "--date", "2026-03-01"];
        Ran ran = GylebookProgram.Run(accept);
        Assert.True(ran.ExitCode == 0, ran.Errors);
        Assert.Contains("Accepted: kettle.evaporation, bag.liquorKept.", ran.Output, StringComparison.Ordinal);
        string kit = File.ReadAllText(written);
        Assert.Empty(PublishedSchema.Objections("kit", kit));
        using JsonDocument told = JsonDocument.Parse(kit);
        JsonElement line = told.RootElement.GetProperty("learned")[0];
        Assert.Equal(("2026-03-01", "kettle.evaporation", "4.0 L/h"), (line.GetProperty("on").GetString(), line.GetProperty("figure").GetString(), line.GetProperty("from").GetString()));
        Assert.Equal(line.GetProperty("to").GetString(), told.RootElement.GetProperty("kettle").GetProperty("evaporation").GetString());
        Assert.Equal(0, GylebookProgram.Run(["check", written]).ExitCode);
        Assert.True(Width(written) < Width(Kit));

        Assert.Contains("--force", GylebookProgram.Run(accept).Errors, StringComparison.Ordinal);
        Assert.Equal(kit, File.ReadAllText(written));
        Assert.Contains("already", GylebookProgram.Run(["learn", "--kit", written, .. Gyles(1), "--json"]).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--accept: \"evaporated\"; there are ", "--accept", "evaporated", "--out", "OUT")]
    [InlineData("--accept: racking.leftBehind; these gyles taught nothing about it", "--accept", "racking.leftBehind", "--out", "OUT")]
    [InlineData("--accept: yeast.", "--accept", "maltotriose", "--out", "OUT")]
    [InlineData("\"leftBehind\" may mean ", "--accept", "leftBehind", "--out", "OUT")]
    [InlineData("--accept says what to take into the kit and --out where to write it", "--accept", "evaporation")]
    [InlineData("--accept says what to take into the kit and --out where to write it", "--out", "OUT")]
    [InlineData("--date: 1 March; write a day as 2026-03-01", "--date", "1 March")]
    [InlineData("--draws: 0; must be from 100 to 100000", "--draws", "0")]
    [InlineData("plain: a gyle is its recipe's file", "plain")]
    [InlineData("there is no such file", "nothing.json=nothing.json")]
    public void What_cannot_be_says_why_and_nothing_is_written(string said, params string[] more)
    {
        string written = Path.Combine(_folder, "none.json");
        Ran ran = WarmProgram.Run(["learn", "--kit", Kit, .. Gyles(1), .. more.Select(word => word == "OUT" ? written : word)]);
        Assert.NotEqual(0, ran.ExitCode);
        Assert.Contains(said, ran.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(written));
    }

    [Fact]
    public void Without_a_kit_nobody_knows_whose_gyles_they_are()
    {
        Ran ran = WarmProgram.Run(["learn", .. Gyles(1)]);
        Assert.NotEqual(0, ran.ExitCode);
        Assert.Contains("--kit: must name the file of the kit", ran.Errors, StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static double Width(string kit)
    {
        using JsonDocument told = JsonDocument.Parse(GylebookProgram.Run(["forecast", Bitter, "--kit", kit, "--json", "--draws", "2000"]).Output);
        JsonElement litres = told.RootElement.GetProperty("headline").GetProperty("packagedLitres");
        return litres.GetProperty("high").GetDouble() - litres.GetProperty("low").GetDouble();
    }

    private static IEnumerable<string> Gyles(params int[] numbers) => numbers.Select(number => $"{Bitter}={RepositoryFile.PathOf($"samples/gyles/bitter-{number}.json")}");
}
