using System.Text.Json;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook gyle finished, package, taste, taught: from the pitch to the glass, and what is refused on the way.</summary>
public sealed class CellarVerbsTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-cellar-").FullName;

    public CellarVerbsTests()
    {
        Assert.Equal(0, Gyle("start", SampleFile.Recipe("plain-bitter"), "--kit", Gylebook.Tests.Shared.RepositoryFile.PathOf("samples/kits/lantern-shed.json"), "--as", "Bitter").ExitCode);
    }

    private string Book => Path.Combine(_folder, "book.sqlite");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Before_the_pitch_there_is_nothing_to_finish_and_after_it_nothing_to_bottle_yet()
    {
        Ran ran = Gyle("finished", "Bitter");
        Assert.Equal((1, ""), (ran.ExitCode, ran.Output));
        Assert.Contains("was not pitched yet", ran.Errors, StringComparison.Ordinal);

        Assert.Equal(0, Gyle("do", "Bitter", "--step", "pitch").ExitCode);
        JsonElement finished = Json(Gyle("finished", "Bitter", "--json"));
        Assert.Equal("notRead", finished.GetProperty("verdict").GetString());
        JsonElement end = finished.GetProperty("end");
        Assert.InRange(end.GetProperty("likely").GetDouble(), end.GetProperty("low").GetDouble(), end.GetProperty("high").GetDouble());

        // A gravity of the first hour is a point of the course: the forecast's end stays where it was.
        double planned = Likely(Json(Gyle("show", "Bitter", "--json")).GetProperty("headline"), "finalGravity");
        Assert.Equal(planned, Likely(Json(Gyle("read", "Bitter", "ferment", "--gravity", "1.040", "--temperature", "20 °C", "--json")).GetProperty("headline"), "finalGravity"), 1e-9);
        Assert.Equal("notYet", Json(Gyle("finished", "Bitter", "--json")).GetProperty("verdict").GetString());

        Ran refused = Gyle("package", "Bitter", "--in", "bottle", "--json");
        Assert.Equal(1, refused.ExitCode);
        JsonElement plan = JsonDocument.Parse(refused.Output).RootElement;
        Assert.True(plan.GetProperty("refused").GetBoolean());
        Assert.Contains("package.moving", plan.GetProperty("refusals").EnumerateArray().Select(refusal => refusal.GetProperty("code").GetString()));
        Assert.Equal((JsonValueKind.Null, 0), (plan.GetProperty("primingGrams").ValueKind, plan.GetProperty("packages").GetArrayLength()));
        Assert.Equal(1, Gyle("package", "Bitter", "--in", "bottle", "--done").ExitCode);
        Assert.Contains("Bitter: fermenting", Gyle("list").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tasting_and_a_panel_go_into_the_log_and_say_what_they_show()
    {
        Assert.Equal(0, Gyle("taste", "Bitter", "--by", "Ash", "--mark", "malt=7, body=4.5", "--note", "bread").ExitCode);

        // 8 of 12 in a triangle test: one chance in 53 (ISO 4120's binomial).
        Ran panel = Gyle("taste", "Bitter", "--test", "triangle", "--tasters", "12", "--right", "8");
        Assert.Equal((0, ""), (panel.ExitCode, panel.Errors));
        Assert.Contains("once in 53 tries", panel.Output, StringComparison.Ordinal);
        Assert.Contains("It does not say which is better.", panel.Output, StringComparison.Ordinal);

        // Four tasters: honest about what they cannot show.
        Assert.Contains("4 tasters cannot show a difference", Gyle("taste", "Bitter", "--test", "duo-trio", "--tasters", "4", "--right", "4").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--right: 13; must be from 0 to 12", "taste", "--test", "triangle", "--tasters", "12", "--right", "13")]
    [InlineData("must be one of triangle", "taste", "--test", "square", "--tasters", "12", "--right", "8")]
    [InlineData("--mark: malt=11", "taste", "--by", "Ash", "--mark", "malt=11")]
    [InlineData("--in", "package", "--in", "barrel")]
    [InlineData("--volumes", "package", "--volumes", "lively")]
    [InlineData("--store", "package", "--store", "warm")]
    [InlineData("--burst", "package", "--burst", "40 bar")]
    [InlineData("ten times what is usual", "fine", "--with", "gelatine", "--amount", "3 kg")]
    [InlineData("it goes into the kettle", "fine", "--with", "carrageenan", "--amount", "1 g")]
    [InlineData("must be one of gelatine, isinglass", "fine", "--with", "charcoal", "--amount", "1 g")]
    [InlineData("go together", "fine", "--with", "gelatine")]
    [InlineData("the beer of this gyle is not divided", "finished", "--portion", "plain")]
    public void What_is_wrong_is_named(string told, string verb, params string[] options)
    {
        Ran ran = Gyle([verb, "Bitter", .. options]);
        Assert.NotEqual(0, ran.ExitCode);
        Assert.Contains(told, ran.Output + ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_and_measured_stand_side_by_side_and_the_kit_is_changed_only_when_told()
    {
        Assert.Equal(0, Gyle("read", "Bitter", "copper-up", "--gravity", "1.038", "--volume", "26 L", "--temperature", "20 °C").ExitCode);
        JsonElement taught = Json(Gyle("taught", "Bitter", "--json"));
        Assert.Equal(2, taught.GetProperty("held").GetArrayLength());
        Assert.All(taught.GetProperty("held").EnumerateArray(), held => Assert.True(held.GetProperty("low").GetDouble() < held.GetProperty("high").GetDouble()));
        Ran wrong = Gyle("taught", "Bitter", "--take", "kettle.colour");
        Assert.Equal((1, ""), (wrong.ExitCode, wrong.Output));
        Assert.Contains("--take: kettle.colour; must be one of", wrong.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_beer_is_divided_and_each_portion_goes_its_own_way()
    {
        Assert.Equal(1, Gyle("divide", "Bitter", "on fruit=50 %, plain=50 %").ExitCode);
        Assert.Equal(0, Gyle("do", "Bitter", "--step", "pitch").ExitCode);
        Ran wrong = Gyle("divide", "Bitter", "on fruit=50 %, plain=40 %");
        Assert.Equal((1, ""), (wrong.ExitCode, wrong.Output));
        Assert.Contains("the shares come to 90 %; must be 100 %", wrong.Errors, StringComparison.Ordinal);
        Assert.Equal(0, Gyle("divide", "Bitter", "on fruit=50 %, plain=50 %").ExitCode);

        // Sugar into one half: its end moves, the other's does not.
        double[] before = Ends();
        Assert.Equal(before[0], before[1], 1e-9);
        Assert.Contains("say which", Gyle("put", "Bitter", "white sugar", "300 g").Errors, StringComparison.Ordinal);
        Assert.Contains("neither larder nor tables", Gyle("put", "Bitter", "moon dust", "300 g", "--portion", "on fruit").Errors, StringComparison.Ordinal);
        Ran put = Gyle("put", "Bitter", "white sugar", "300 g", "--portion", "on fruit");
        Assert.True(put.ExitCode == 0, put.Errors);
        double[] after = Ends();
        Assert.True(after[0] < before[0] - 0.0005);
        Assert.Equal(before[1], after[1], 1e-9);

        // Read apart, refused apart.
        Assert.Equal(0, Gyle("read", "Bitter", "ferment", "--gravity", "1.020", "--portion", "plain").ExitCode);
        JsonElement[] told = [.. Json(Gyle("finished", "Bitter", "--json")).GetProperty("portions").EnumerateArray()];
        Assert.Equal(["notRead", "notYet"], told.Select(portion => portion.GetProperty("verdict").GetString()));
        Assert.Contains("--portion: say which", Gyle("package", "Bitter").Errors, StringComparison.Ordinal);
        Assert.Contains("must be one of on fruit, plain", Gyle("package", "Bitter", "--portion", "sour").Errors, StringComparison.Ordinal);
        JsonElement refused = JsonDocument.Parse(Gyle("package", "Bitter", "--portion", "on fruit", "--in", "bottle", "--json").Output).RootElement;
        Assert.Contains("package.notRead", refused.GetProperty("refusals").EnumerateArray().Select(refusal => refusal.GetProperty("code").GetString()));

        double[] Ends() => [.. Json(Gyle("finished", "Bitter", "--json")).GetProperty("portions").EnumerateArray().Select(portion => portion.GetProperty("end").GetProperty("likely").GetDouble())];
    }

    private Ran Gyle(params string[] arguments) => WarmProgram.Run(["gyle", .. arguments, "--book", Book]);

    private static JsonElement Json(Ran ran)
    {
        Assert.Equal(("", 0), (ran.Errors, ran.ExitCode));
        return JsonDocument.Parse(ran.Output).RootElement;
    }

    private static double Likely(JsonElement headline, string name) => headline.GetProperty(name).GetProperty("likely").GetDouble();
}
