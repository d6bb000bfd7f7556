using System.Text.Json;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook gyle: from a recipe's file to a log with readings, and what cannot be.</summary>
public sealed class GyleTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-gyle-").FullName;

    public GyleTests() => RestoredBook.CopyTo(Book);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Book => Path.Combine(_folder, "book.sqlite");

    [Fact]
    public void A_brew_day_from_a_file_to_the_last_reading()
    {
        JsonElement started = Json(Gyle("start", SampleFile.Recipe("hedgerow-brown"), "--kit", Gylebook.Tests.Shared.RepositoryFile.PathOf("samples/kits/lantern-shed.json"), "--as", "The First", "--json"));
        Assert.Equal("The First", started.GetProperty("name").GetString());
        Assert.Contains("The First: brewing", Gyle("list").Output, StringComparison.Ordinal);

        JsonElement steps = Json(Gyle("steps", "the first", "--json"));
        Assert.Equal("set-out", steps.GetProperty("current").GetString());
        Assert.Equal(0, Gyle("do", "The First", "--step", "set-out").ExitCode);
        Assert.Equal(0, Gyle("do", "The First", "--tick", "line-1").ExitCode);
        steps = Json(Gyle("steps", "The First", "--json"));
        Assert.Equal("heat", steps.GetProperty("current").GetString());
        Assert.True(steps.GetProperty("steps").EnumerateArray().SelectMany(step => step.GetProperty("items").EnumerateArray()).Single(item => item.GetProperty("key").GetString() == "line-1").GetProperty("ticked").GetBoolean());

        double planned = Likely(Json(Gyle("show", "The First", "--json")).GetProperty("headline"), "originalGravity");
        JsonElement read = Json(Gyle("read", "The First", "copper-up", "--gravity", "1.040", "--volume", "26 L", "--temperature", "20 °C", "--json"));
        Assert.Equal(2, read.GetProperty("readings").GetArrayLength());
        Assert.True(Likely(read.GetProperty("headline"), "originalGravity") < planned - 0.001);
        Assert.NotEqual(0, read.GetProperty("mends").GetArrayLength());
        Assert.NotEqual(JsonValueKind.Undefined, read.GetProperty("learned").GetProperty("figures").ValueKind);

        JsonElement shown = Json(Gyle("show", "The First", "--json"));
        Assert.Equal(planned, Likely(shown.GetProperty("planned"), "originalGravity"), 1e-4);
        Assert.Equal(2, shown.GetProperty("readings").GetArrayLength());
        string entry = shown.GetProperty("readings")[0].GetProperty("entry").GetString()!;
        Assert.Equal(0, Gyle("do", "The First", "--undo", entry).ExitCode);
        Assert.Equal(1, Json(Gyle("show", "The First", "--json")).GetProperty("readings").GetArrayLength());
    }

    [Fact]
    public void The_first_gyle_makes_the_book_where_there_is_none()
    {
        string book = Path.Combine(_folder, "new.sqlite");
        Ran ran = GylebookProgram.Run(["gyle", "start", SampleFile.Recipe("plain-bitter"), "--as", "The Very First", "--book", book]);
        Assert.Equal((0, ""), (ran.ExitCode, ran.Errors));
        Assert.StartsWith("The Very First: brewing", GylebookProgram.Run(["gyle", "list", "--book", book]).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gyle_is_planned_for_a_day_and_a_vessel_and_started_and_ferments_once_pitched()
    {
        string kit = Gylebook.Tests.Shared.RepositoryFile.PathOf("samples/kits/lantern-shed.json"), recipe = SampleFile.Recipe("lots/larder-bitter");
        string soon = Day(3);
        Ran ran = Gyle("plan", recipe, "--on", soon, "--kit", kit, "--as", "Soon", "--fermenter", "left");
        Assert.Equal((0, ""), (ran.ExitCode, ran.Errors));
        Assert.Contains(", in Left. gylebook gyle start", ran.Output, StringComparison.Ordinal);

        ran = Gyle("plan", recipe, "--on", Day(5), "--kit", kit, "--fermenter", "Left", "--json");
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains("--fermenter", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Left holds Soon from", ran.Output, StringComparison.Ordinal);
        ran = Gyle("start", recipe, "--planned", "never");
        Assert.Equal((1, ""), (ran.ExitCode, ran.Output));
        Assert.Contains("there is no planned gyle \"never\" of Larder Bitter; there are \"Soon\"", ran.Errors, StringComparison.Ordinal);

        JsonElement started = Json(Gyle("start", recipe, "--planned", "soon", "--json"));
        Assert.Equal(("Soon", "brewing"), (started.GetProperty("name").GetString(), started.GetProperty("status").GetString()));
        JsonElement vessel = Assert.Single(started.GetProperty("vessels").EnumerateArray());
        Assert.Equal(("Left", Day(0)), (vessel.GetProperty("name").GetString(), vessel.GetProperty("from").GetString()));

        // 11.5 g of yeast are wanted and 23 g at hand, by samples/recipes/lots: nothing to buy.
        JsonElement yeast = started.GetProperty("shopping").EnumerateArray().Single(item => item.GetProperty("what").GetString() == "Harbour ale");
        Assert.Equal((0.0115, 0.023, 0.0), (yeast.GetProperty("wantedKg").GetDouble(), yeast.GetProperty("atHandKg").GetDouble(), yeast.GetProperty("toBuyKg").GetDouble()));
        Assert.Equal(0, Gyle("do", "Soon", "--step", "pitch").ExitCode);
        Assert.Contains("Soon: fermenting", Gyle("list").Output, StringComparison.Ordinal);

        static string Day(int days) => TimeProvider.System.GetLocalNow().AddDays(days).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
    }

    [Theory]
    [InlineData("on Friday", "--on: \"on Friday\" is no day; write it as 2026-12-05.")]
    [InlineData(null, "--on: say the day; write it as 2026-12-05.")]
    public void A_day_that_is_none_is_said(string? day, string why)
    {
        Ran ran = Gyle(["plan", "Plain Bitter", .. day is null ? Array.Empty<string>() : ["--on", day]]);
        Assert.Equal((2, ""), (ran.ExitCode, ran.Output));
        Assert.Contains(why, ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_days_are_written_for_a_calendar_and_what_is_no_gyle_is_said()
    {
        Assert.Equal(0, Gyle("start", SampleFile.Recipe("hedgerow-brown"), "--as", "Days").ExitCode);
        string file = Path.Combine(_folder, "days.ics");
        Ran ran = WarmProgram.Run(["export", "days", "--as", "ics", "--out", file, "--book", Book]);
        Assert.Equal(0, ran.ExitCode);
        Assert.Contains("gyle \"Days\", as days for a calendar, is written to", ran.Output, StringComparison.Ordinal);
        string text = File.ReadAllText(file);
        Assert.StartsWith("BEGIN:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.Contains("SUMMARY:Days: Add to the fermenter\r\n", text, StringComparison.Ordinal);

        Assert.Contains("there is a calendar file already", WarmProgram.Run(["export", "days", "--as", "ics", "--out", file, "--book", Book]).Errors, StringComparison.Ordinal);
        Ran none = WarmProgram.Run(["export", "nobody", "--as", "ics", "--book", Book]);
        Assert.Equal((1, ""), (none.ExitCode, none.Output));
        Assert.Contains("nobody: there is no gyle of that name in the book", none.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_recipe_that_cannot_be_brewed_starts_nothing()
    {
        string file = Path.Combine(_folder, "no.json");
        File.WriteAllText(file, File.ReadAllText(SampleFile.Recipe("plain-bitter")).Replace("\"pale ale malt\"", "\"no such malt at all\"", StringComparison.Ordinal).Replace("Plain Bitter", "No Beer", StringComparison.Ordinal));
        string before = Gyle("list").Output;
        Ran ran = Gyle("start", file);
        Assert.Equal((1, ""), (ran.ExitCode, ran.Output));
        Assert.Contains("no such malt at all", ran.Errors, StringComparison.Ordinal);
        Assert.Equal(before, Gyle("list").Output);
    }

    [Theory]
    [InlineData("nobody's gyle", "There is no gyle \"nobody's gyle\" in the book", "steps")]
    [InlineData("no such file.json", "there is no such file, and no recipe of that name in the book", "start")]
    public void What_is_not_there_is_said(string called, string why, string verb)
    {
        Ran ran = Gyle(verb, called);
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains(why, ran.Errors, StringComparison.Ordinal);
    }

    /// <summary>One gyle for all of them: a start takes seconds.</summary>
    [Fact]
    public void A_reading_or_a_key_that_is_none_says_which_and_keeps_nothing()
    {
        Assert.Equal(0, Gyle("start", SampleFile.Recipe("plain-bitter"), "--as", "Mine").ExitCode);
        Refused(["read", "Mine", "copper-up", "--gravity", "ten"], "gravity", "gravity.wrong");
        Refused(["read", "Mine", "copper up", "--gravity", "1.050"], "at", "copper-up");
        Refused(["read", "Mine", "copper-up"], "a reading needs a gravity", "reading.one");
        Refused(["read", "Mine", "copper-up", "--volume", "26"], "volume", "");
        Refused(["read", "Mine", "copper-up", "--gravity", "1.050", "--instrument", "sundial"], "sundial", "the nearest is");
        Refused(["do", "Mine", "--step", "dance"], "\"dance\" is no step of this gyle; they are set-out, ", "");
        Refused(["do", "Mine", "--tick", "line-99"], "\"line-99\" is nothing that goes in; there are line-1", "");
        Refused(["do", "Mine", "--undo", "7"], "\"7\" is the number of no entry", "");
        Assert.Equal(0, Json(Gyle("show", "Mine", "--json")).GetProperty("readings").GetArrayLength());

        void Refused(string[] arguments, string which, string why)
        {
            Ran ran = Gyle(arguments);
            Assert.Equal(1, ran.ExitCode);
            Assert.Contains(which, ran.Errors, StringComparison.Ordinal);
            Assert.Contains(why, ran.Errors, StringComparison.Ordinal);
        }
    }

    private Ran Gyle(params string[] arguments) => WarmProgram.Run(["gyle", .. arguments, "--book", Book]);

    private static JsonElement Json(Ran ran)
    {
        Assert.Equal((0, ""), (ran.ExitCode, ran.Errors));
        return JsonDocument.Parse(ran.Output).RootElement;
    }

    private static double Likely(JsonElement headline, string name) => headline.GetProperty(name).GetProperty("likely").GetDouble();
}
