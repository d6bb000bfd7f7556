using System.Text.Json;
using System.Text.Json.Nodes;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook gyle harvest: yeast out of a fermenter into the larder, into the next gyle, and back.</summary>
public sealed class HarvestTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-harvest-").FullName;

    public HarvestTests()
    {
        Assert.Equal(0, Gyle("start", SampleFile.Recipe("plain-bitter"), "--kit", Gylebook.Tests.Shared.RepositoryFile.PathOf("samples/kits/lantern-shed.json"), "--as", "Bitter").ExitCode);
    }

    private string Book => Path.Combine(_folder, "book.sqlite");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_jar_goes_into_the_larder_and_a_recipe_beside_its_sheet_is_told_how_much_of_it_to_pitch()
    {
        Ran early = Gyle("harvest", "Bitter", "--amount", "400 mL");
        Assert.Equal((1, ""), (early.ExitCode, early.Output));
        Assert.Contains("was not pitched yet", early.Errors, StringComparison.Ordinal);

        Assert.Equal(0, Gyle("do", "Bitter", "--step", "pitch").ExitCode);
        Ran ran = Gyle("harvest", "Bitter", "--amount", "400 mL", "--cells", "1.2 billion/mL", "--called", "jar one", "--json");
        Assert.Equal(("", 0), (ran.Errors, ran.ExitCode));
        JsonElement told = JsonDocument.Parse(ran.Output).RootElement;
        string lot = told.GetProperty("lot").GetString()!, id = lot[..lot.IndexOf('/', StringComparison.Ordinal)];
        Assert.Equal(("jar one", "barley"), (lot[(id.Length + 1)..], told.GetProperty("mayContain").GetString()));
        Assert.Contains(told.GetProperty("cautions").EnumerateArray(), caution => caution.GetString()!.Contains("A closed jar bursts", StringComparison.Ordinal));

        // The sheet goes out as its file, and a recipe beside it pitches the jar.
        string larder = Directory.CreateDirectory(Path.Combine(_folder, "larder")).FullName, recipe = Path.Combine(_folder, "next.json");
        Assert.Equal(0, WarmProgram.Run(["export", "English ale", "--out", Path.Combine(larder, "yeast.json"), "--book", Book]).ExitCode);
        JsonObject next = JsonNode.Parse(File.ReadAllText(SampleFile.Recipe("plain-bitter")))!.AsObject();
        JsonArray lines = next["ingredients"]!.AsArray();
        lines[lines.ToList().FindIndex(line => line!["yeast"] is not null)] = new JsonObject { ["yeast"] = id, ["lot"] = "jar one", ["amount"] = "100 mL", ["at"] = "pitch" };
        File.WriteAllText(recipe, next.ToJsonString());
        JsonElement pitch = JsonDocument.Parse(WarmProgram.Run(["pitch", recipe, "--json"]).Output).RootElement.GetProperty("pitch");
        Assert.Equal(120, pitch.GetProperty("cellsBillions").GetDouble());
        Assert.Equal(Math.Round(pitch.GetProperty("cellsNeededBillions").GetDouble() / 1.2), pitch.GetProperty("ofThisSlurryLowMl").GetDouble(), 1);
        Assert.Contains("Of this slurry: ", WarmProgram.Run(["pitch", recipe]).Output, StringComparison.Ordinal);

        // Taken back, it is in the larder no more.
        Assert.Equal(0, Gyle("do", "Bitter", "--undo", told.GetProperty("entry").GetString()!).ExitCode);
        string after = Path.Combine(_folder, "after.json");
        Assert.Equal(0, WarmProgram.Run(["export", "English ale", "--out", after, "--book", Book]).ExitCode);
        Assert.DoesNotContain("jar one", File.ReadAllText(after), StringComparison.Ordinal);
        Assert.Contains("jar one", File.ReadAllText(Path.Combine(larder, "yeast.json")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--amount: say how much slurry", "--called", "jar")]
    [InlineData("--amount: ", "--amount", "much")]
    [InlineData("--cells: 12 billion/mL; write \"1.2 billion/mL\", above 0 and at most 10 billion/mL", "--amount", "400 mL", "--cells", "12 billion/mL")]
    [InlineData("--on: tomorrow; write a day as \"2026-03-01\"", "--amount", "400 mL", "--on", "tomorrow")]
    [InlineData("--on: 2020-01-01; must be from the pitch", "--amount", "400 mL", "--on", "2020-01-01")]
    [InlineData("--of: another; must be one of English ale", "--amount", "400 mL", "--of", "another")]
    public void What_is_wrong_is_named_with_its_limit(string told, params string[] options)
    {
        Assert.Equal(0, Gyle("do", "Bitter", "--step", "pitch").ExitCode);
        Ran ran = Gyle(["harvest", "Bitter", .. options]);
        Assert.NotEqual(0, ran.ExitCode);
        Assert.Contains(told, ran.Output + ran.Errors, StringComparison.Ordinal);
    }

    private Ran Gyle(params string[] arguments) => WarmProgram.Run(["gyle", .. arguments, "--book", Book]);
}
